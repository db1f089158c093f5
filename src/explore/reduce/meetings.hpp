/// \file
/// Which of the leaders may still contest with one another.
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Follows the cables over which two leaders would meet (docs/reductions.md, Seniority). Of use only where no device is
/// cut off from its leader any more (Cuts): then a leader leads until it loses a contest or restarts.
class Meetings {
 public:
  explicit Meetings(const semantics::World& world);

  /// To be called before the others, and again when the state has changed. The state must outlive them.
  void look_at(const State& s);

  /// Who of two devices outranks the other, as far as that is known for good: a state may not tell it of every pair.
  using Outranks = std::function<bool(DeviceId, DeviceId)>;

  /// Of d and e, which lead now, are of one rank but for their seniority, and have a way from one to the other: false
  /// only where they never contest before one of them restarts, or where their order follows from that of others who
  /// do.
  [[nodiscard]] bool may_contest(DeviceId d, DeviceId e, const Outranks& outranks) const;

  /// An await demands that d follows somebody before it can meet e.
  [[nodiscard]] bool follows_before(DeviceId d, DeviceId e) const;

  /// Cables on the shortest way between two devices over which they may ever meet; a large number where there is none.
  [[nodiscard]] std::size_t distance(DeviceId d, DeviceId e);

 private:
  /// An await that demands that a device follows another.
  struct Following {
    StepId step;
    std::vector<std::vector<StepId>> plugs;  ///< per cable, the steps that may plug it before
  };

  /// A step to come takes the device down, or changes its rank.
  [[nodiscard]] bool may_change(DeviceId d) const;
  [[nodiscard]] bool is_open_way(DeviceId d, DeviceId e, const semantics::CableEnd& first,
                                 const Outranks& outranks) const;

  const semantics::World& world_;
  std::vector<std::vector<StepId>> plugs_;          ///< per cable
  std::vector<std::vector<StepId>> changes_;        ///< per device, steps that take it down or change its rank
  std::vector<std::vector<Following>> followings_;  ///< per device
  const State* s_ = nullptr;
  std::vector<std::uint8_t> open_;      ///< per cable: it may carry a link, now or later
  std::vector<std::uint8_t> branches_;  ///< per device: more than two neighbours over open cables
  std::vector<std::size_t> distances_;  ///< while one is looked for
  std::vector<DeviceId> reached_;       ///< the same
};

}  // namespace cairn::explore

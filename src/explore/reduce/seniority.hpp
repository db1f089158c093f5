/// \file
/// Seniority that no later comparison can ask for is not kept (docs/reductions.md, Seniority).
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "cairn/state.hpp"
#include "explore/domains.hpp"
#include "explore/reduce/cuts.hpp"
#include "explore/reduce/meetings.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Levels the order of seniority of settled states as far as nobody will ask for it.
class Seniority {
 public:
  explicit Seniority(const semantics::World& world);

  /// Replaces the order by the flattest that agrees with it on every pair that may be asked for. Equal for states that
  /// differ in nothing else. True where that changed it.
  bool level(State& s);

  /// Pairs of devices that are up or held in the settled state `s`: those of which nobody will ask who is senior, nor
  /// can tell from the pairs that may be asked for.
  [[nodiscard]] std::vector<std::pair<DeviceId, DeviceId>> unasked(const State& s);

  /// Whether it may ever be asked which of two devices of parts that no cable joins came up first, where d is starting
  /// in the settled state `s` and e comes up whenever it may.
  [[nodiscard]] bool may_matter(const State& s, DeviceId d, DeviceId e);

  /// Of the state levelled last: whether who of d and e is senior may be asked for.
  [[nodiscard]] bool may_be_asked(DeviceId d, DeviceId e) const { return asked_[d.value * devices_ + e.value] != 0; }

 private:
  /// A step that changes a value by which devices are ranked, while the device stays up.
  struct Setting {
    StepId step;
    std::int64_t value;
  };
  using Settings = std::vector<std::vector<Setting>>;  ///< per device
  /// Two leaders that tenure may decide between.
  struct Pair {
    std::size_t distance;
    DeviceId d, e;
    auto operator<=>(const Pair&) const = default;
  };

  void add_settings();
  [[nodiscard]] bool may_be_equal(const State& s, std::int64_t DeviceState::*member, const Settings& settings,
                                  DeviceId d, DeviceId e) const;
  [[nodiscard]] bool may_come_to_tenure(const State& s, DeviceId d, DeviceId e) const;
  void find_pairs(const State& s);
  void find_meetings(const State& s);
  void keep(DeviceId d, DeviceId e);
  bool find_levels(State& s) const;
  void follow_on(const State& s);

  const semantics::World& world_;
  std::size_t devices_;
  bool by_tenure_ = false;
  std::vector<ElectionKey> before_tenure_;
  Domains domains_;
  Cuts cuts_;
  Meetings meetings_;
  Settings priorities_, numbers_;
  std::vector<DeviceId> candidates_;  ///< seniors first
  std::vector<Pair> pairs_;
  std::vector<std::uint8_t> asked_;  ///< per pair
  std::vector<std::uint8_t> known_;  ///< per pair: that the first is senior or equal follows from those that are asked
};

}  // namespace cairn::explore

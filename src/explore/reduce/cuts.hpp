/// \file
/// Whether a device that follows a leader may still be cut off from it.
#pragma once

#include <vector>

#include "cairn/state.hpp"
#include "semantics/precedence.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Whether two ports of one device that lead to different neighbours may ever have the same side, where links then give
/// way (semantics 3.b, one-neighbour). Where not, links depend on their own ends alone.
[[nodiscard]] bool may_be_crowded(const semantics::World& world);

/// Knows the events that can part a device from its leader other than by taking it down: those that take a formed link
/// away, or a device on the way. An over-approximation, read off the text of the model and the parts of a state that
/// are not its seniority (docs/reductions.md, Seniority).
class Cuts {
 public:
  explicit Cuts(const semantics::World& world);

  /// False only where no event from the settled state `s` on, however late, leaves an orphan (semantics 4.2.a).
  [[nodiscard]] bool may_follow(const State& s) const;

 private:
  /// A cable that a step would cut, and the steps that may plug it before.
  struct Way {
    CableId cable;
    std::vector<StepId> plugs;
  };
  /// A step that cuts the cables in its ways. Where it names a port it does so only by changing the port's operational
  /// side.
  struct Cutter {
    StepId step;
    PortId port;
    std::vector<Way> ways;
  };
  /// A side that a step gives to a port.
  struct Setting {
    StepId step;
    Side side;
  };

  void add_step(StepId id, const semantics::Precedence& precedence);
  void add_sides(StepId id, DeviceId d, const semantics::Precedence& precedence);
  void add(StepId id, PortId port, const std::vector<CableId>& cables, const semantics::Precedence& precedence);
  [[nodiscard]] bool may_be_plugged(const State& s, const Way& way) const;
  [[nodiscard]] bool may_change_side(const State& s, PortId p) const;

  const semantics::World& world_;
  bool crowded_ = false;
  std::vector<Cutter> cutters_;
  std::vector<std::vector<Setting>> settings_;  ///< per port
};

}  // namespace cairn::explore

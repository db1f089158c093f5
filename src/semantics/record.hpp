/// \file
/// Events taken one by one with everything that follows from them kept, for walks and replays.
#pragma once

#include <optional>

#include "cairn/walk.hpp"
#include "semantics/settle.hpp"

namespace cairn::semantics {

/// Holds the settled state at the end of a growing Walk, and looks out for the breach of one property.
class Recorder {
 public:
  /// Starts in the initial state and settles it. `watched` is the property to look out for, or nothing.
  Recorder(const World& world, const FaultBudget& budget, std::optional<Property> watched);

  [[nodiscard]] const State& state() const { return state_; }
  [[nodiscard]] const Derived& derived() const { return scratch_.derived; }
  /// What broke the watched property so far, first of all.
  [[nodiscard]] const std::optional<Breach>& breach() const { return breach_; }

  /// Takes an event that may happen, and settles.
  void take(const Event& event);
  /// 6.a; the goal is looked at afterwards.
  void take_cold_start();
  /// 6.8: one of the breaks of a loss, which nothing follows.
  void take_loss(CableId cable);
  /// 6.8, after the last of the breaks.
  void look_at_loss();
  /// 6.6, of the state as it is, which is at rest.
  void look_at_rest();

  /// The walk so far; the recorder is spent.
  [[nodiscard]] Walk finish() &&;

 private:
  class Passes;

  const World& world_;
  std::optional<Property> watched_;
  State state_;
  Scratch scratch_;
  std::optional<Breach> breach_;
  Walk walk_;
};

}  // namespace cairn::semantics

/// \file
/// Faults that can no longer strike are not kept in the budget (docs/reductions.md, Budgets).
#pragma once

#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Knows what the kinds of faults need in order to strike (semantics 5.c).
class Unspent {
 public:
  explicit Unspent(const semantics::World& world);

  /// Takes out of the budget what can never be spent from the settled state `s` on. True where that changed it.
  bool strike_off(State& s) const;

  /// From the settled state `s` on, if omissions are left: one may happen.
  [[nodiscard]] bool may_omit(const State& s) const;
  /// From the settled state `s` on: a start may complete.
  [[nodiscard]] bool may_start(const State& s) const;

 private:
  std::vector<StepId> steps_;  ///< that may be omitted
  std::vector<StepId> all_steps_;
  bool breaks_start_;  ///< a cable that breaks may take somebody down who starts again
};

}  // namespace cairn::explore

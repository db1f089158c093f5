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

 private:
  [[nodiscard]] bool may_omit(const State& s) const;
  [[nodiscard]] bool may_start(const State& s) const;

  std::vector<StepId> steps_;  ///< that may be omitted
  std::vector<StepId> all_steps_;
  bool breaks_start_;  ///< a cable that breaks may take somebody down who starts again
};

}  // namespace cairn::explore

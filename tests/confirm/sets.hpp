/// \file
/// Closed sets for the tests: as explorations give them, and changed.
#pragma once

#include <memory>
#include <vector>

#include "cairn/model.hpp"
#include "semantics/world.hpp"
#include "solver/closed_set.hpp"
#include "system/moves.hpp"

namespace cairn::test {

/// States in a row, which a test may change.
class ListedStates final : public solver::StateSet {
 public:
  explicit ListedStates(std::vector<State> states) : states_(std::move(states)) {}
  [[nodiscard]] std::uint64_t size() const override { return states_.size(); }
  [[nodiscard]] const State& at(std::uint64_t index) override { return states_[index]; }

 private:
  std::vector<State> states_;
};

/// Every reachable settled state, the first one first.
[[nodiscard]] std::vector<State> reachable(const Model& model, const FaultBudget& faults);

/// The parts of the model with a cold start, over domains that are found from nothing.
[[nodiscard]] std::unique_ptr<system::Moves> parts_of(const Model& model, const FaultBudget& faults);

/// Confirms without limits.
[[nodiscard]] solver::SetConfirmation confirm(system::Moves& moves, std::vector<State> states,
                                              const std::vector<AskedProperty>& asked);

}  // namespace cairn::test

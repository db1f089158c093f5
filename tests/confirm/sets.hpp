/// \file
/// Closed sets for the tests: as explorations give them, and changed.
#pragma once

#include <memory>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/options.hpp"
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

/// Partial states in a row, which a test may change.
class ListedPartialStates final : public solver::PartialStateSet {
 public:
  struct Entry {
    State state;
    std::vector<system::VariableId> unknown;
    std::vector<Way> ways;
  };
  std::vector<Entry> entries;

  [[nodiscard]] std::uint64_t size() const override { return entries.size(); }
  [[nodiscard]] const State& at(std::uint64_t index) override { return entries[index].state; }
  void unknown(std::uint64_t index, std::vector<system::VariableId>& out) override { out = entries[index].unknown; }
  void ways(std::uint64_t index, std::vector<Way>& out) override { out = entries[index].ways; }

  /// Takes one out, and the hints that lead to it.
  void erase(std::size_t index);
};

/// What an exploration with these reductions visits, as partial states, the first one first.
[[nodiscard]] ListedPartialStates reduced(const Model& model, const FaultBudget& faults, const Reductions& reductions);

/// Every reachable settled state, the first one first.
[[nodiscard]] std::vector<State> reachable(const Model& model, const FaultBudget& faults);

/// The parts of the model with a cold start, over domains that are found from nothing.
[[nodiscard]] std::unique_ptr<system::Moves> parts_of(const Model& model, const FaultBudget& faults);

/// Confirms without limits.
[[nodiscard]] solver::SetConfirmation confirm(system::Moves& moves, ListedPartialStates& states,
                                              const std::vector<AskedProperty>& asked);
[[nodiscard]] solver::SetConfirmation confirm(system::Moves& moves, std::vector<State> states,
                                              const std::vector<AskedProperty>& asked);

}  // namespace cairn::test

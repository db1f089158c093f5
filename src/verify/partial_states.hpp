/// \file
/// The states of a reduced exploration as partial states: what was forgotten of them is not known.
#pragma once

#include <vector>

#include "explore/expander.hpp"
#include "explore/visited.hpp"
#include "semantics/world.hpp"
#include "solver/closed_set.hpp"

namespace cairn::verify {

/// What is not known, and where events lead, is worked out anew for each state that is asked for.
class PartialStates final : public solver::PartialStateSet {
 public:
  /// \param reductions  those that `visited` was explored with under `faults`; with nothing left out but what is
  /// forgotten
  PartialStates(const semantics::World& world, const FaultBudget& faults, const Reductions& reductions,
                const explore::Visited& visited);

  [[nodiscard]] std::uint64_t size() const override { return visited_.size(); }
  [[nodiscard]] const State& at(std::uint64_t index) override;
  void unknown(std::uint64_t index, std::vector<system::VariableId>& out) override;
  void ways(std::uint64_t index, std::vector<Way>& out) override;

 private:
  system::Space space_;
  const semantics::World& world_;
  const explore::Visited& visited_;
  explore::Forgetter forgetter_;
  explore::Expander expander_;
  State state_;
};

}  // namespace cairn::verify

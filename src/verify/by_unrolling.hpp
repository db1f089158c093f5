/// \file
/// Runs laid out one event after the other, for the properties that one budget of faults is asked with.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>

#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "solver/bmc.hpp"
#include "solver/reach.hpp"
#include "verify/two_solvers.hpp"

namespace cairn::verify {

/// CaDiCaL looks, and Z3 judges what it has not found. The runs are laid out once, and how long they can be is asked
/// once.
class ByUnrolling {
 public:
  ByUnrolling(const Model& model, const FaultBudget& faults) : model_(model), faults_(faults) {}

  [[nodiscard]] const Model& model() const { return model_; }
  [[nodiscard]] const FaultBudget& faults() const { return faults_; }
  /// What the solvers did so far.
  [[nodiscard]] SolverWork work() const { return solvers_.work(); }

  /// \throws Contradiction  where two solvers disagree
  [[nodiscard]] solver::BoundedAnswer check(const AskedProperty& asked, const Limits& limits);
  /// The refutation that `check` would find, where a small effort is enough for it.
  [[nodiscard]] std::optional<Trace> glance(const AskedProperty& asked, const Limits& limits);
  /// \throws Contradiction  where two solvers disagree
  [[nodiscard]] solver::ReachAnswer look_for(solver::Sight sight, const Limits& limits);

 private:
  [[nodiscard]] solver::Unroller& unroller();

  const Model& model_;
  FaultBudget faults_;
  TwoSolvers solvers_;
  std::unique_ptr<system::System> system_;  ///< built when it is needed
  std::unique_ptr<solver::Unroller> unroller_;
  std::optional<std::size_t> longest_;  ///< no run has more events
};

}  // namespace cairn::verify

/// \file
/// The two solvers of cairn, and what they were asked.
#pragma once

#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "solver/counting_solver.hpp"

namespace cairn::verify {

/// One searches, and is quick (CaDiCaL); the other judges what was found, and alone decides (Z3).
class TwoSolvers {
 public:
  TwoSolvers() = default;
  TwoSolvers(const TwoSolvers&) = delete;
  TwoSolvers& operator=(const TwoSolvers&) = delete;

  // The solvers that these make must not outlive this; an interrupt of the limits ends their work.
  [[nodiscard]] solver::SolverMaker searching(const Limits& limits);
  [[nodiscard]] solver::SolverMaker judging(const Limits& limits);

  /// Of all of them, so far.
  [[nodiscard]] SolverWork work() const;

 private:
  solver::Tally searching_, judging_;
};

}  // namespace cairn::verify

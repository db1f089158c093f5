/// \file
/// A solver that counts what it is asked.
#pragma once

#include <cstdint>
#include <memory>

#include "solver/solver.hpp"

namespace cairn::solver {

/// Of several solvers, one after another.
struct Tally {
  std::uint64_t questions = 0;
  std::uint64_t effort = 0;  ///< in the count of Solver::effort
};

/// \param tally  counts on; must outlive the solvers that are made
[[nodiscard]] SolverMaker counting(SolverMaker maker, Tally& tally);

}  // namespace cairn::solver

/// \file
/// Z3 behind the port: the SAT solver inside it, which is given clauses and nothing else.
#pragma once

#include <atomic>
#include <memory>
#include <string>

#include "solver/solver.hpp"

namespace cairn::solver {

/// A solver without clauses.
/// \param interrupt  may be null; must outlive the solver. When another thread makes it true, a question that is being
///                   answered ends within a fraction of a second, and every later one at once.
[[nodiscard]] std::unique_ptr<Solver> make_z3_solver(const std::atomic<bool>* interrupt);

/// "Z3 4.8.12"
[[nodiscard]] std::string z3_version();

}  // namespace cairn::solver

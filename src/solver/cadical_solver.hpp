/// \file
/// CaDiCaL behind the port: quick at the many small questions of a search. What it says is a proposal; where a verdict
/// hangs on an answer, Z3 gives it.
#pragma once

#include <atomic>
#include <memory>

#include "solver/solver.hpp"

namespace cairn::solver {

/// A solver without clauses. Bounds::effort counts clauses learned, about one a conflict. CaDiCaL does not tell what it
/// holds: Bounds::megabytes is compared with all that the process holds on the heap (base/heap.hpp), the terms and
/// other solvers included, at the beginning of a question and now and then while it is being answered; where the C
/// library does not tell, it is not watched. \param interrupt  may be null; must outlive the solver. When another
/// thread makes
///                   it true, a question that is being answered ends within a fraction of a second, and every later one
///                   at once.
[[nodiscard]] std::unique_ptr<Solver> make_cadical_solver(const std::atomic<bool>* interrupt);

}  // namespace cairn::solver

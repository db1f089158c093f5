/// \file
/// The limits of a call in the solvers' terms, and what ended a question in those of a verdict.
#pragma once

#include <string>

#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "solver/solver.hpp"

namespace cairn::verify {

/// The time and the memory of the limits; whoever makes the solver hands the interrupt on.
[[nodiscard]] solver::Bounds bounds_of(const Limits& limits);

/// No verdict on this property: the search for it was ended by `cause`, or where that is none for what `complaint`
/// says. Where the solver failed, or the formulas are not those of the semantics, that is a contradiction.
void leave_undecided(solver::Cause cause, std::string complaint, PropertyVerdict& verdict);

}  // namespace cairn::verify

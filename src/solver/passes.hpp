/// \file
/// Whether the formulas have passes enough.
#pragma once

#include "solver/allowance.hpp"
#include "solver/clauses.hpp"

namespace cairn::solver {

/// Demands that `unfinished` does not hold, where it cannot: where it can, the passes of the formulas are not enough
/// for a state that can be reached, and the relation is not that of the semantics (4.5.c). \throws Unanswered  where it
/// can, or where there is no answer
void demand_enough_passes(system::Term unfinished, Clauses& clauses, Allowance& allowance);

}  // namespace cairn::solver

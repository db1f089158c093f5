#include "solver/passes.hpp"

namespace cairn::solver {

void demand_enough_passes(system::Term unfinished, Clauses& clauses, Allowance& allowance) {
  if (unfinished == system::never) return;
  const Literal literal = clauses.literal_of(unfinished);
  if (allowance.can({{literal}})) {
    throw Unanswered{Cause::none, "the formulas have too few settling passes for a state that can be reached"};
  }
  clauses.require(!unfinished);
}

}  // namespace cairn::solver

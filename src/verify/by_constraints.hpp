/// \file
/// Constraints alone: no state is ever visited.
#pragma once

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "verify/by_facts.hpp"

namespace cairn::verify {

/// Settles the property of `verdict`: by facts that the text alone suggests, else by runs of one length after the
/// other. A refutation is left in `verdict` as found, to be judged by the caller; a proof is told with how it came
/// about. \param faults  what may strike: nothing where the property is asked without faults \throws Contradiction
/// where two solvers disagree
void settle_by_constraints(const Model& model, const FaultBudget& faults, ByFacts& facts, const Limits& limits,
                           PropertyVerdict& verdict);

/// Tells a proof by facts in `verdict`.
void tell(const solver::FactsProof& proof, const system::Space& space, PropertyVerdict& verdict);

}  // namespace cairn::verify

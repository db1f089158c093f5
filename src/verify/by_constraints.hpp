/// \file
/// Constraints alone: no state is ever visited.
#pragma once

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "verify/by_facts.hpp"
#include "verify/by_unrolling.hpp"

namespace cairn::verify {

/// Every run ends (semantics 5.k), whatever the procedure: no link can form because a device goes down (proofs/, runs
/// end).
[[nodiscard]] bool ends_for_sure(const Model& model);

/// Settles the property of `verdict`: by a refutation that is found quickly, by facts that the text alone suggests,
/// else by runs of one length after the other. Of a property of the goal facts alone are not enough where a run may be
/// without end. A refutation is left in `verdict` as found, to be judged by the caller; a proof is told with how it
/// came about, and whether it holds of nothing. Both ways are under the faults that the property is asked with.
/// \returns the proof by facts, if it was one
/// \throws Contradiction  where two solvers disagree
std::optional<solver::FactsProof> settle_by_constraints(ByFacts& facts, ByUnrolling& unrolling, const Limits& limits,
                                                        PropertyVerdict& verdict);

/// Tells a proof by facts in `verdict`.
void tell(const solver::FactsProof& proof, const system::Space& space, PropertyVerdict& verdict);

}  // namespace cairn::verify

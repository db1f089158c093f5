#include "verify/by_constraints.hpp"

#include <utility>

#include "explore/limits.hpp"
#include "verify/fact_words.hpp"
#include "verify/solver_limits.hpp"
#include "verify/vacuity.hpp"

namespace cairn::verify {

namespace {

void settle_by_unrolling(ByUnrolling& unrolling, const Limits& limits, PropertyVerdict& verdict) {
  solver::BoundedAnswer answer = unrolling.check(verdict.asked, limits);
  verdict.verdict = answer.verdict;
  switch (answer.verdict) {
    case Verdict::refuted:
      verdict.events = std::move(answer.refutation);
      return;
    case Verdict::proved:
      verdict.settled.by = Settled::By::unrolling;
      verdict.settled.length = answer.depths.size() - 1;
      return;
    case Verdict::undecided:
      return leave_undecided(answer.cause, std::move(answer.complaint), verdict);
  }
}

}  // namespace

void tell(const solver::FactsProof& proof, const system::Space& space, PropertyVerdict& verdict) {
  verdict.verdict = Verdict::proved;
  verdict.settled.by = Settled::By::facts;
  verdict.settled.not_by_facts.clear();
  verdict.settled.any_number = proof.any_number;
  for (const solver::Fact& fact : proof.facts) verdict.settled.facts.push_back(words_of(space, fact));
}

bool ends_for_sure(const Model& model) {
  return model.platform.side_leads_to != SideLeadsTo::one_neighbour;
}

std::optional<solver::FactsProof> settle_by_constraints(ByFacts& facts, ByUnrolling& unrolling, const Limits& limits,
                                                        PropertyVerdict& verdict) {
  const explore::Guard guard(limits, {});
  if (auto refutation = unrolling.glance(verdict.asked, guard.left())) {
    verdict.verdict = Verdict::refuted;
    verdict.events = std::move(*refutation);
    return {};
  }
  std::optional<solver::FactsProof> proof;
  if (!speaks_of_goal(verdict.asked.property) || ends_for_sure(unrolling.model())) {
    auto answer = facts.prove(verdict.asked);
    if (auto* found = std::get_if<solver::FactsProof>(&answer)) proof = std::move(*found);
  }
  if (proof) {
    tell(*proof, facts.space(), verdict);
  } else {
    settle_by_unrolling(unrolling, guard.left(), verdict);
  }
  if (verdict.verdict == Verdict::proved) settle_vacuity(unrolling, guard.left(), verdict);
  return proof;
}

}  // namespace cairn::verify

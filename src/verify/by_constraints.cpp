#include "verify/by_constraints.hpp"

#include <utility>

#include "solver/bmc.hpp"
#include "solver/z3_solver.hpp"
#include "verify/audit.hpp"
#include "verify/fact_words.hpp"

namespace cairn::verify {

namespace {

Reason reason_of(solver::Cause cause) {
  switch (cause) {
    case solver::Cause::memory:
      return Reason::memory;
    case solver::Cause::interrupted:
      return Reason::interrupted;
    default:
      return Reason::time;
  }
}

}  // namespace

void tell(const solver::FactsProof& proof, const system::Space& space, PropertyVerdict& verdict) {
  verdict.verdict = Verdict::proved;
  verdict.settled.by = Settled::By::facts;
  verdict.settled.any_number = proof.any_number;
  for (const solver::Fact& fact : proof.facts) verdict.settled.facts.push_back(words_of(space, fact));
}

void settle_by_constraints(const Model& model, const FaultBudget& faults, ByFacts& facts, const Limits& limits,
                           PropertyVerdict& verdict) {
  const auto by_facts = facts.prove(verdict.asked);
  if (const auto* proof = std::get_if<solver::FactsProof>(&by_facts)) return tell(*proof, facts.space(), verdict);
  system::System system(model, faults, system::static_domains(model, faults));
  solver::Unroller unroller(system);
  const auto z3 = solver::make_z3_solver(limits.interrupt);
  solver::BoundedLimits bounds;
  bounds.bounds.seconds = limits.seconds;
  bounds.bounds.megabytes = limits.megabytes;
  solver::BoundedAnswer answer = check_bounded(unroller, *z3, verdict.asked, bounds);
  verdict.verdict = answer.verdict;
  switch (answer.verdict) {
    case Verdict::refuted:
      verdict.events = std::move(answer.refutation);
      return;
    case Verdict::proved:
      verdict.settled.by = Settled::By::unrolling;
      verdict.settled.length = answer.depths.empty() ? 0 : answer.depths.size() - 1;
      return;
    case Verdict::undecided:
      if (answer.cause == solver::Cause::failed) return claim_nothing(answer.complaint, verdict);
      verdict.reason = reason_of(answer.cause);
      return;
  }
}

}  // namespace cairn::verify

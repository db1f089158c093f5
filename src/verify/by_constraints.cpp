#include "verify/by_constraints.hpp"

#include <algorithm>
#include <utility>

#include "explore/limits.hpp"
#include "solver/bmc.hpp"
#include "solver/cadical_solver.hpp"
#include "solver/z3_solver.hpp"
#include "verify/fact_words.hpp"
#include "verify/solver_limits.hpp"
#include "verify/vacuity.hpp"

namespace cairn::verify {

namespace {

/// What is left of the limits of a call as time goes by.
class Left {
 public:
  explicit Left(const Limits& limits) : limits_(limits) {}
  [[nodiscard]] Limits now() const {
    Limits left = limits_;
    if (left.seconds) left.seconds = std::max(0.0, *left.seconds - watch_.seconds());
    return left;
  }

 private:
  Limits limits_;
  explore::Watch watch_;
};

void settle_by_unrolling(const Model& model, const FaultBudget& faults, const Limits& limits,
                         PropertyVerdict& verdict) {
  system::System system(model, faults, system::static_domains(model, faults));
  solver::Unroller unroller(system);
  solver::BoundedLimits bounds;
  bounds.bounds = bounds_of(limits);
  solver::BoundedAnswer answer = check_bounded(
      unroller, [&] { return solver::make_cadical_solver(limits.interrupt); },
      [&] { return solver::make_z3_solver(limits.interrupt); }, verdict.asked, bounds);
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
      return leave_undecided(answer.cause, std::move(answer.complaint), verdict);
  }
}

}  // namespace

void tell(const ProvedByFacts& proof, const system::Space& space, PropertyVerdict& verdict) {
  verdict.verdict = Verdict::proved;
  verdict.settled.by = Settled::By::facts;
  verdict.settled.any_number = proof.any_number;
  for (const solver::Fact& fact : proof.facts) verdict.settled.facts.push_back(words_of(space, fact));
}

void settle_by_constraints(const Model& model, const FaultBudget& faults, ByFacts& facts, const Limits& limits,
                           PropertyVerdict& verdict) {
  const Left left(limits);
  if (const auto proof = facts.prove(verdict.asked)) {
    tell(*proof, facts.space(), verdict);
  } else {
    settle_by_unrolling(model, faults, left.now(), verdict);
  }
  if (verdict.verdict == Verdict::proved) settle_vacuity(model, faults, left.now(), verdict);
}

}  // namespace cairn::verify

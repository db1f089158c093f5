#include "verify/by_constraints.hpp"

#include <algorithm>
#include <utility>

#include "explore/limits.hpp"
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

void tell(const ProvedByFacts& proof, const system::Space& space, PropertyVerdict& verdict) {
  verdict.verdict = Verdict::proved;
  verdict.settled.by = Settled::By::facts;
  verdict.settled.any_number = proof.any_number;
  for (const solver::Fact& fact : proof.facts) verdict.settled.facts.push_back(words_of(space, fact));
}

void settle_by_constraints(ByFacts& facts, ByUnrolling& unrolling, const Limits& limits, PropertyVerdict& verdict) {
  const Left left(limits);
  if (const auto proof = facts.prove(verdict.asked)) {
    tell(*proof, facts.space(), verdict);
  } else {
    settle_by_unrolling(unrolling, left.now(), verdict);
  }
  if (verdict.verdict == Verdict::proved) settle_vacuity(unrolling, left.now(), verdict);
}

}  // namespace cairn::verify

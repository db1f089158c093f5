#include "verify/by_unrolling.hpp"

#include "verify/solver_limits.hpp"

namespace cairn::verify {

solver::Unroller& ByUnrolling::unroller() {
  if (!unroller_) {
    system_ = std::make_unique<system::System>(model_, faults_, system::static_domains(model_, faults_));
    unroller_ = std::make_unique<solver::Unroller>(*system_);
  }
  return *unroller_;
}

solver::BoundedAnswer ByUnrolling::check(const AskedProperty& asked, const Limits& limits) {
  solver::BoundedLimits bounded;
  bounded.bounds = bounds_of(limits);
  bounded.longest = longest_;
  solver::BoundedAnswer answer =
      check_bounded(unroller(), solvers_.searching(limits), solvers_.judging(limits), asked, bounded);
  if (answer.verdict == Verdict::proved) longest_ = answer.depths.size() - 1;
  return answer;
}

std::optional<Trace> ByUnrolling::glance(const AskedProperty& asked, const Limits& limits) {
  constexpr std::uint64_t conflicts = 3'000;
  constexpr std::size_t longest_glance = 60;
  solver::BoundedLimits bounded;
  bounded.bounds = bounds_of(limits);
  bounded.bounds.effort = conflicts;
  bounded.length = longest_glance;
  bounded.longest = longest_;
  solver::BoundedAnswer answer = check_bounded(unroller(), *solvers_.searching(limits)(), asked, bounded);
  const bool is_whole = answer.cause == solver::Cause::none && answer.complaint.empty();
  if (answer.verdict != Verdict::refuted || !is_whole) return {};
  return std::move(answer.refutation);
}

solver::ReachAnswer ByUnrolling::look_for(solver::Sight sight, const Limits& limits) {
  solver::ReachAnswer answer = solver::look_for(unroller(), solvers_.searching(limits), solvers_.judging(limits), sight,
                                                bounds_of(limits), longest_);
  if (answer.outcome == solver::ReachAnswer::Outcome::never) longest_ = answer.length;
  return answer;
}

}  // namespace cairn::verify

#include "verify/audit.hpp"

#include <fmt/format.h>

#include "cairn/walk.hpp"
#include "solver/confirm.hpp"

namespace cairn::verify {

void claim_nothing(std::string disagreement, PropertyVerdict& verdict) {
  verdict.verdict = Verdict::undecided;
  verdict.reason = Reason::contradiction;
  verdict.events.clear();
  verdict.settled = {};
  verdict.vacuous.clear();
  verdict.contradiction = std::move(disagreement);
}

void judge_refutation(const Model& model, const FaultBudget& faults, Trace events, PropertyVerdict& verdict) {
  const auto walked = replay(model, faults, verdict.asked, events);
  if (const auto* no = std::get_if<NotARefutation>(&walked)) {
    claim_nothing(fmt::format("the exploration found a refutation of {} events; replayed, at event {}: {}",
                              events.size(), no->event + 1, no->why),
                  verdict);
    return;
  }
  verdict.verdict = Verdict::refuted;
  verdict.events = std::move(events);
}

void confirm_refutation(const Model& model, const FaultBudget& faults, PropertyVerdict& verdict) {
  const std::string unsatisfied = solver::unsatisfied_by(model, faults, verdict.asked, verdict.events);
  if (!unsatisfied.empty()) {
    claim_nothing(fmt::format("a refutation of {} events replays, but does not satisfy the constraints: {}",
                              verdict.events.size(), unsatisfied),
                  verdict);
    return;
  }
  verdict.settled.by = Settled::By::refutation;
  verdict.settled.confirmed = true;
}

namespace {

std::string summary(const PropertyVerdict& verdict) {
  if (verdict.verdict == Verdict::refuted) return fmt::format("refuted in {} events", verdict.events.size());
  if (verdict.vacuous.empty()) return std::string(name_of(verdict.verdict));
  return fmt::format("{} of nothing ({})", name_of(verdict.verdict), verdict.vacuous);
}

std::string_view when(Reason reason) {
  switch (reason) {
    case Reason::time:
      return "when the time limit was met";
    case Reason::memory:
      return "when the memory limit was met";
    case Reason::interrupted:
    case Reason::contradiction:
      return "when it was interrupted";
  }
  return {};
}

}  // namespace

void reconcile(const PropertyVerdict& other, PropertyVerdict& verdict) {
  const auto contradicted = [](const PropertyVerdict& v) {
    return v.verdict == Verdict::undecided && v.reason == Reason::contradiction;
  };
  if (contradicted(verdict)) return;
  if (contradicted(other)) return claim_nothing(other.contradiction, verdict);
  if (other.verdict == Verdict::undecided) {
    if (verdict.verdict == Verdict::undecided) return;
    verdict.settled.not_compared = fmt::format("constraints alone had not settled it {}", when(other.reason));
    return;
  }
  if (verdict.verdict == Verdict::undecided) {
    const Reason reason = verdict.reason;
    const std::uint64_t explored = verdict.explored;
    verdict = other;
    verdict.explored = explored;
    verdict.settled.not_compared = fmt::format("exploration had not settled it {}", when(reason));
    return;
  }
  if (summary(other) != summary(verdict)) {
    return claim_nothing(
        fmt::format("exploration says: {}; constraints alone say: {}", summary(verdict), summary(other)), verdict);
  }
  if (verdict.verdict == Verdict::proved) {
    verdict.settled = other.settled;
    verdict.settled.confirmed = true;
  }
}

}  // namespace cairn::verify

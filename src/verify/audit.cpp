#include "verify/audit.hpp"

#include <fmt/format.h>

#include "cairn/walk.hpp"

namespace cairn::verify {

void claim_nothing(std::string disagreement, PropertyVerdict& verdict) {
  verdict.verdict = Verdict::undecided;
  verdict.reason = Reason::contradiction;
  verdict.events.clear();
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

}  // namespace cairn::verify

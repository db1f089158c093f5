#include "verify/why_proved.hpp"

namespace cairn::verify {

namespace {

Standing standing_of(const PropertyVerdict& before, const PropertyVerdict& outcome) {
  if (outcome.verdict == Verdict::refuted) return Standing::needed;
  if (outcome.verdict == Verdict::undecided) return Standing::unknown;
  return before.vacuous.empty() && !outcome.vacuous.empty() ? Standing::vacuous : Standing::idle;
}

}  // namespace

ProvedOnes::ProvedOnes(const Model& model, const std::vector<PropertyVerdict>& verdicts, const Trials& trials)
    : model_(model), trials_(trials) {
  for (const PropertyVerdict& p : verdicts) {
    if (p.verdict != Verdict::proved) continue;
    proved_.push_back(&p);
    asked_.push_back(p.asked);
  }
}

std::vector<LeftOut> ProvedOnes::leave_out(const std::vector<Part>& parts) const {
  if (empty()) return {};
  Report report = trials_.ask(without(model_, parts), asked_);
  std::vector<LeftOut> all;
  all.reserve(proved_.size());
  for (std::size_t i = 0; i < proved_.size(); ++i) {
    PropertyVerdict& outcome = report.properties[i];
    const Standing standing = standing_of(*proved_[i], outcome);
    all.push_back({parts, standing, std::move(outcome)});
  }
  return all;
}

}  // namespace cairn::verify

#include "verify/emptiness.hpp"

#include <algorithm>

namespace cairn::verify {

void Emptinesses::add_part(const explore::Exploration& all, bool cold_starts_to_come) {
  rank_decided_in_part_ = rank_decided_in_part_ || all.seen.rank_decided_anything();
  every_cold_start_ = every_cold_start_ && cold_starts_to_come;
}

void Emptinesses::add(const Emptinesses& other) {
  every_cold_start_ = every_cold_start_ && other.every_cold_start_;
  missed_ = missed_ || other.missed_;
  rank_decided_in_part_ = rank_decided_in_part_ || other.rank_decided_in_part_;
  if (!other.under_.none()) under_ = other.under_;
  if (other.seen_) add(*other.seen_);
}

void Emptinesses::add(const explore::Sightings& seen) {
  if (seen_) {
    seen_->add(seen);
  } else {
    seen_ = seen;
  }
}

std::optional<std::vector<Emptiness>> Emptinesses::told(const FaultBudget& faults) const {
  if (!seen_ || !seen_->every_state() || missed_) return {};
  std::vector<Emptiness> all;
  tell_steps(all);
  if (faults.none() || under_ == faults) tell_faults(faults, all);
  const bool rank_decided = rank_decided_in_part_ || seen_->rank_decided_anything();
  if (!rank_decided && every_cold_start_) all.push_back({Emptiness::Kind::no_contest, {}, {}});
  return all;
}

// Of a step that is never reached nothing is told: that is another matter.
void Emptinesses::tell_steps(std::vector<Emptiness>& all) const {
  for (std::size_t i = 0; i < model_.procedure.steps.size(); ++i) {
    const StepId step(i);
    if (!seen_->happened(step)) continue;
    const Verb verb = model_[step].verb;
    if (verb == Verb::await && !seen_->waited(step)) all.push_back({Emptiness::Kind::never_waits, step, {}});
    if (verb == Verb::check && !seen_->failed(step)) all.push_back({Emptiness::Kind::cannot_fail, step, {}});
  }
}

void Emptinesses::tell_faults(const FaultBudget& faults, std::vector<Emptiness>& all) const {
  const auto tell = [&](bool allowed, Event::Kind kind) {
    if (allowed && !seen_->happened(kind)) all.push_back({Emptiness::Kind::never_strikes, {}, kind});
  };
  tell(faults.cable_breaks > 0, Event::Kind::broke);
  tell(faults.crashes > 0, Event::Kind::crashed);
  tell(faults.omissions > 0, Event::Kind::omitted);
  tell(faults.late_starts > 0, Event::Kind::started_late);
  tell(faults.mends, Event::Kind::mended);
}

}  // namespace cairn::verify

#include "explore/sentry.hpp"

#include "semantics/state.hpp"

namespace cairn::explore {

void Sentry::note(const State& before, const Event& event, Refusal refusal) {
  if (event.kind != Event::Kind::step) return;
  const auto by_step = [&](Property p) { return semantics::broken_by(world_, before, event, refusal, p).has_value(); };
  judge(Property::primary_stays, by_step);
  judge(Property::members_stay, by_step);
  judge(Property::no_refusal, by_step);
}

void Sentry::see(const State& s, const semantics::Derived& derived) {
  const auto in_state = [&](Property p) { return semantics::broken_in(world_, s, derived, p).has_value(); };
  judge(Property::no_split, in_state);
  judge(Property::no_clash, in_state);
  if (!kept_led_) kept_led_ = semantics::a_kept_device_leads(world_, s);
}

void Sentry::foresee(const State& s, const semantics::Derived& derived, const semantics::PassPlan& plan) {
  const auto by_plan = [&](Property p) { return semantics::broken_by(world_, s, plan, p).has_value(); };
  judge(Property::primary_stays, by_plan);
  judge(Property::members_stay, by_plan);
  ties_.foresee(s, derived, plan);
}

}  // namespace cairn::explore

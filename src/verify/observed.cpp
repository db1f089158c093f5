#include "verify/observed.hpp"

#include <algorithm>

#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/state.hpp"
#include "semantics/steps.hpp"

namespace cairn::verify {

namespace {

bool sets_a_side(Verb verb) {
  return verb == Verb::set_side || verb == Verb::clear_side;
}

// Equal but for what is done and for what is left of the budget.
bool same_world(const State& a, const State& b) {
  return a.devices == b.devices && a.ports == b.ports && a.cables == b.cables && a.halted == b.halted;
}

}  // namespace

StepObserver::StepObserver(const semantics::World& world) : world_(world), steps_(world.steps().size()) {}

void StepObserver::open(const State& s, const semantics::Derived& derived, const std::vector<Event>&) {
  // The first state that an exploration opens is the initial one.
  if (!seen_any_ && world_.model().procedure.goal) {
    goal_from_the_start_ = !semantics::goal_missed(world_, s, derived).has_value();
  }
  seen_any_ = true;
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    const StepId id(i);
    const Step& step = world_.model()[id];
    if (s.is_done(id)) {
      steps_[i].was_done = true;
      if (sets_a_side(step.verb) && s[step.port].operational_side == step.side) steps_[i].came_into_force = true;
    } else if (semantics::has_turn(world_, s, id)) {
      note_turn(s, derived, id);
    }
  }
}

void StepObserver::note_turn(const State& s, const semantics::Derived& derived, StepId id) {
  const Step& step = world_.model()[id];
  StepHistory& history = steps_[id.value];
  history.had_turn = true;
  if (!history.lost_console) history.lost_console = lost_console(s, derived, step);
  if (step.verb == Verb::set_number && !history.same_number) history.same_number = same_number(s, step);
}

// Semantics 5.h: the console is `via`, or each device's own.
DeviceId StepObserver::lost_console(const State& s, const semantics::Derived& derived, const Step& step) const {
  const auto lost = [&](DeviceId v) { return !semantics::running(s, v); };
  if (step.via) return lost(step.via) ? step.via : DeviceId();
  if (step.verb != Verb::apply && step.verb != Verb::save) return {};
  const std::vector<DeviceId> devices = semantics::handled(derived, step);
  const auto first = std::find_if(devices.begin(), devices.end(), lost);
  return first == devices.end() ? DeviceId() : *first;
}

bool StepObserver::takes_part(const State& s, DeviceId d) const {
  if (s[d].power != Power::off) return true;
  const std::vector<Step>& steps = world_.steps();
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (steps[i].verb == Verb::power_on && steps[i].device == d && !s.is_done(StepId(i))) return true;
  }
  return false;
}

DeviceId StepObserver::same_number(const State& s, const Step& step) const {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId d(i);
    if (d == step.device || (s[d].number != step.value && s[d].next_number != step.value)) continue;
    if (takes_part(s, d)) return d;
  }
  return {};
}

void StepObserver::taken(const State& before, const Event& event, Refusal refusal, const State& after) {
  if (event.kind != Event::Kind::step) return;
  StepHistory& history = steps_[event.place];
  if (refusal != Refusal::none) {
    history.was_refused = true;
    return;
  }
  history.was_taken = true;
  if (!history.changed) history.changed = !same_world(before, after);
}

}  // namespace cairn::verify

#include "semantics/events.hpp"

#include <algorithm>

#include "semantics/conditions.hpp"
#include "semantics/state.hpp"
#include "semantics/steps.hpp"

namespace cairn::semantics {

bool has_turn(const World& world, const State& s, StepId step) {
  if (!pending(s, step)) return false;
  const std::vector<StepId>& after = world.model()[step].after;
  return std::all_of(after.begin(), after.end(), [&](StepId before) { return s.is_done(before); });
}

bool ready(const World& world, const State& s, const Derived& derived, StepId step) {
  if (!has_turn(world, s, step)) return false;
  const Step& what = world.model()[step];
  return what.verb != Verb::await || holds(world, s, derived, what.condition);
}

namespace {

using Kind = Event::Kind;

void steps_in(const World& world, const State& s, const Derived& derived, std::vector<Event>& out) {
  for (std::uint32_t i = 0; i < world.steps().size(); ++i) {
    if (ready(world, s, derived, StepId(i))) out.push_back({Kind::step, i});
  }
}

void devices_in(const State& s, Power power, Kind kind, std::vector<Event>& out) {
  for (std::uint32_t i = 0; i < s.devices.size(); ++i) {
    if (s.devices[i].power == power) out.push_back({kind, i});
  }
}

void breaks_in(const State& s, std::vector<Event>& out) {
  for (std::uint32_t i = 0; i < s.cables.size(); ++i) {
    if (s.cables[i].plugged && !s.cables[i].broken) out.push_back({Kind::broke, i});
  }
}

void mends_in(const State& s, std::vector<Event>& out) {
  for (std::uint32_t i = 0; i < s.cables.size(); ++i) {
    if (s.cables[i].broken) out.push_back({Kind::mended, i});
  }
}

void omissions_in(const World& world, std::size_t ready_steps, std::vector<Event>& out) {
  for (std::size_t i = 0; i < ready_steps; ++i) {
    const Event step = out[i];
    const Verb verb = world.model()[step.step()].verb;
    if (verb != Verb::await && verb != Verb::check) out.push_back({Kind::omitted, step.place});
  }
}

// 5.b, 5.c.5
void complete_start(const World& world, State& s, DeviceId d, bool late) {
  come_up(world, s, d);
  s[d].leader = late ? d : DeviceId();
  become_junior(s, d);
}

}  // namespace

void events_in(const World& world, const State& s, const Derived& derived, std::vector<Event>& out) {
  out.clear();
  steps_in(world, s, derived, out);  // 5.a
  const std::size_t ready_steps = out.size();
  devices_in(s, Power::starting, Kind::started, out);                                   // 5.b
  if (s.left.cable_breaks > 0) breaks_in(s, out);                                       // 5.c.1
  if (s.left.mends) mends_in(s, out);                                                   // 5.c.3
  if (s.left.crashes > 0) devices_in(s, Power::up, Kind::crashed, out);                 // 5.c.2, 4.3.c
  if (s.left.omissions > 0) omissions_in(world, ready_steps, out);                      // 5.c.4
  if (s.left.late_starts > 0) devices_in(s, Power::starting, Kind::started_late, out);  // 5.c.5
}

Refusal take(const World& world, State& s, const Derived& derived, const Event& event) {
  switch (event.kind) {
    case Kind::step: {
      const Refusal refusal = refusal_of(world, s, derived, event.step());
      if (refusal == Refusal::none) take_effect(world, s, derived, event.step());
      s.done[event.place] = 1;  // 5.d: a step that happens becomes done, refused or not
      return refusal;
    }
    case Kind::started:
      complete_start(world, s, event.device(), false);
      break;
    case Kind::broke:
      --s.left.cable_breaks;
      s[event.cable()].broken = true;
      break;
    case Kind::mended:
      s[event.cable()].broken = false;
      break;
    case Kind::crashed:
      --s.left.crashes;
      go_down(s, event.device(), Power::starting);
      break;
    case Kind::omitted:
      --s.left.omissions;
      s.done[event.place] = 1;
      break;
    case Kind::started_late:
      --s.left.late_starts;
      complete_start(world, s, event.device(), true);
      break;
    case Kind::cold_start:
      break;
  }
  return Refusal::none;
}

void come_up(const World& world, State& s, DeviceId d) {
  DeviceState& device = s[d];
  if (world.platform().settings_follow == SettingsFollow::number && !world.equal(device.number, device.next_number)) {
    reset_startup(world, s, d);  // 5.f
  }
  device.power = Power::up;
  device.number = device.next_number;
  device.priority = device.startup_priority;
  for (const PortId p : world.model()[d].ports) {
    s[p].enabled = s[p].startup_enabled;
    s[p].side = s[p].startup_side;
    s[p].operational_side = s[p].startup_side;
  }
}

bool complete(const State& s) {
  return !s.halted && std::all_of(s.done.begin(), s.done.end(), [](std::uint8_t done) { return done != 0; });
}

bool at_rest(const State& s, const std::vector<Event>& events) {
  const bool step_ready = !events.empty() && events.front().kind == Kind::step;
  return !step_ready && std::none_of(s.devices.begin(), s.devices.end(),
                                     [](const DeviceState& d) { return d.power == Power::starting; });
}

}  // namespace cairn::semantics

#include "semantics/steps.hpp"

#include <algorithm>

#include "semantics/conditions.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"

namespace cairn::semantics {

std::vector<DeviceId> handled(const Derived& derived, const Step& step) {
  if (!step.stack_of) return step.devices;
  std::vector<DeviceId> devices{step.stack_of};
  for (std::size_t i = 0; i < derived.class_of.size(); ++i) {
    const DeviceId d(i);
    if (d != step.stack_of && derived.together(d, step.stack_of)) devices.push_back(d);
  }
  return devices;
}

bool reachable(const State& s, const Derived& derived, DeviceId d, DeviceId v) {
  return running(s, v) && (d == v || derived.together(d, v));
}

namespace {

// 5.g: "If one of them cannot be reached, the whole step is refused." Without `via`, each is reached on its own
// console.
bool all_reachable(const State& s, const Derived& derived, const Step& step) {
  const std::vector<DeviceId> devices = handled(derived, step);
  return std::all_of(devices.begin(), devices.end(),
                     [&](DeviceId d) { return reachable(s, derived, d, step.via ? step.via : d); });
}

Refusal refused_unless(bool fine, Refusal why) {
  return fine ? Refusal::none : why;
}

// 5.7, 5.8
Refusal refusal_of_side(const World& world, const State& s, const Step& step) {
  const bool locked = world.platform().side_needs_disabled && s[step.port].enabled;
  return refused_unless(!locked, Refusal::port_enabled);
}

// 5.11
Refusal refusal_of_plug(const World& world, const State& s, CableId c) {
  if (s[c].plugged) return Refusal::already_plugged;
  const Cable& cable = world.model()[c];
  for (const PortId end : {cable.a, cable.b}) {
    const std::vector<CableId>& others = world.cables_at(end);
    if (std::any_of(others.begin(), others.end(), [&](CableId other) { return s[other].plugged; })) {
      return Refusal::port_occupied;
    }
  }
  return Refusal::none;
}

// 5.f: "Where number-takes: at-once changes number, the same happens at once in startup, running and operational."
void reset_at_once(const World& world, State& s, DeviceId d) {
  reset_startup(world, s, d);
  s[d].priority = s[d].startup_priority;
  for (const PortId p : world.model()[d].ports) {
    s[p].enabled = s[p].startup_enabled;
    s[p].side = s[p].startup_side;
    s[p].operational_side = s[p].startup_side;
  }
}

// 5.4; durable as soon as it is set (5.e)
void set_number(const World& world, State& s, DeviceId d, Quantity n) {
  s[d].next_number = n;
  if (world.platform().number_takes != Takes::at_once || world.equal(s[d].number, n)) return;
  s[d].number = n;
  if (world.platform().settings_follow == SettingsFollow::number) reset_at_once(world, s, d);
}

// 5.7, 5.8
void set_side(const World& world, State& s, PortId p, Side side) {
  s[p].side = side;
  if (world.platform().side_takes == SideTakes::at_once) s[p].operational_side = side;
}

// 5.9
void apply(const World& world, State& s, DeviceId d) {
  for (const PortId p : world.model()[d].ports) s[p].operational_side = s[p].side;
}

// 5.10
void save(const World& world, State& s, DeviceId d) {
  for (const PortId p : world.model()[d].ports) {
    s[p].startup_enabled = s[p].enabled;
    s[p].startup_side = s[p].side;
  }
  if (world.platform().priority_takes == Takes::at_once) s[d].startup_priority = s[d].priority;
}

}  // namespace

void reset_startup(const World& world, State& s, DeviceId d) {
  const Factory& factory = world.platform().factory;
  s[d].startup_priority = factory.priority;
  for (const PortId p : world.model()[d].ports) {
    s[p].startup_enabled = factory.enabled;
    s[p].startup_side = factory.side;
  }
}

Refusal refusal_of(const World& world, const State& s, const Derived& derived, StepId id) {
  const Step& step = world.model()[id];
  const DeviceId d = step.device;
  switch (step.verb) {
    case Verb::power_on:
      return refused_unless(s[d].power == Power::off, Refusal::not_off);  // 5.1
    case Verb::power_off:
      return refused_unless(s[d].power != Power::off, Refusal::already_off);  // 5.2
    case Verb::plug:
      return refusal_of_plug(world, s, step.cable);  // 5.11
    case Verb::unplug:
      return refused_unless(s[step.cable].plugged, Refusal::not_plugged);  // 5.12
    case Verb::await:                                                      // 5.13
    case Verb::check:
      return Refusal::none;  // 5.14
    case Verb::apply:        // 5.9
    case Verb::save:
      return refused_unless(all_reachable(s, derived, step), Refusal::not_reachable);  // 5.10
    default:
      break;
  }
  // 5.3 to 5.8: one device, handled through one console (5.h).
  if (!reachable(s, derived, d, step.via)) return Refusal::not_reachable;
  const Platform& platform = world.platform();
  switch (step.verb) {
    case Verb::set_number:
      return refused_unless(world.is_in(platform.numbers, step.value), Refusal::out_of_range);  // 5.4
    case Verb::set_priority:
      return refused_unless(world.is_in(platform.priorities, step.value), Refusal::out_of_range);  // 5.5
    case Verb::set_side:
    case Verb::clear_side:
      return refusal_of_side(world, s, step);  // 5.7, 5.8
    default:
      return Refusal::none;  // 5.3, 5.6
  }
}

void take_effect(const World& world, State& s, const Derived& derived, StepId id) {
  const Step& step = world.model()[id];
  const DeviceId d = step.device;
  switch (step.verb) {
    case Verb::power_on:  // 5.1
    case Verb::restart:
      return go_down(s, d, Power::starting);  // 5.3
    case Verb::power_off:
      return go_down(s, d, Power::off);  // 5.2
    case Verb::set_number:
      return set_number(world, s, d, step.value);
    case Verb::set_priority:  // 5.5
      if (world.platform().priority_takes == Takes::at_restart) {
        s[d].startup_priority = step.value;
      } else {
        s[d].priority = step.value;
      }
      return;
    case Verb::enable:
      s[step.port].enabled = true;
      return;  // 5.6
    case Verb::disable:
      s[step.port].enabled = false;
      return;  // 5.6
    case Verb::set_side:
    case Verb::clear_side:
      return set_side(world, s, step.port, step.side);
    case Verb::apply:
      for (const DeviceId e : handled(derived, step)) apply(world, s, e);
      return;
    case Verb::save:
      for (const DeviceId e : handled(derived, step)) save(world, s, e);
      return;
    case Verb::plug:
      s[step.cable].plugged = true;
      return;  // 5.11
    case Verb::unplug:
      s[step.cable].plugged = false;
      return;  // 5.12
    case Verb::await:
      return;          // 5.13
    case Verb::check:  // 5.14, 5.i
      if (!holds(world, s, derived, step.condition)) s.halted = true;
      return;
  }
}

}  // namespace cairn::semantics

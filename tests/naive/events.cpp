#include "naive/events.hpp"

#include <algorithm>

#include "naive/derived.hpp"

namespace cairn::naive {

namespace {

bool runs(const World& world, DeviceId d) {
  return world[d].power == Power::up || world[d].power == Power::held;
}

/// 5.g: the devices that an `apply` or `save` means.
std::set<DeviceId> meant(const Model& model, const World& world, const Step& step) {
  if (!step.stack_of) return {step.devices.begin(), step.devices.end()};
  std::set<DeviceId> devices = class_of(model, world, step.stack_of);
  devices.insert(step.stack_of);
  return devices;
}

/// 5.h: the console of a step for one of its devices.
DeviceId console(const Step& step, DeviceId d) {
  return step.via ? step.via : d;
}

bool port_taken(const Model& model, const World& world, CableId c, PortId p) {
  for (const CableId other : all_cables(model)) {
    const bool same_port = model[other].a == p || model[other].b == p;
    if (other != c && same_port && world[other].plugged) return true;
  }
  return false;
}

/// 5.d, the right column.
bool refused(const Model& model, const World& world, const Step& step) {
  const auto out_of_reach = [&](DeviceId d) { return !reachable(model, world, d, console(step, d)); };
  switch (step.verb) {
    case Verb::power_on:
      return world[step.device].power != Power::off;  // 5.1
    case Verb::power_off:
      return world[step.device].power == Power::off;  // 5.2
    case Verb::restart:
      return out_of_reach(step.device);  // 5.3
    case Verb::set_number:               // 5.4
      return out_of_reach(step.device) || !model.platform.numbers.contains(step.value);
    case Verb::set_priority:  // 5.5
      return out_of_reach(step.device) || !model.platform.priorities.contains(step.value);
    case Verb::enable:
    case Verb::disable:
      return out_of_reach(model[step.port].device);  // 5.6
    case Verb::set_side:
    case Verb::clear_side:  // 5.7, 5.8
      return out_of_reach(model[step.port].device) || (model.platform.side_needs_disabled && world[step.port].enabled);
    case Verb::apply:
    case Verb::save: {  // 5.9, 5.10, 5.g
      const std::set<DeviceId> devices = meant(model, world, step);
      return std::any_of(devices.begin(), devices.end(), out_of_reach);
    }
    case Verb::plug:  // 5.11
      return world[step.cable].plugged || port_taken(model, world, step.cable, model[step.cable].a) ||
             port_taken(model, world, step.cable, model[step.cable].b);
    case Verb::unplug:
      return !world[step.cable].plugged;  // 5.12
    case Verb::await:
    case Verb::check:
      return false;  // 5.13, 5.14
  }
  return false;
}

/// 5.f: a number comes into force that differs from the one before.
bool settings_are_lost(const Model& model, std::int64_t before, std::int64_t after) {
  return model.platform.settings_follow == SettingsFollow::number && before != after;
}

/// 5.f, first half: the factory's values in startup.
void reset_startup(const Model& model, World& world, DeviceId d) {
  const Factory& factory = model.platform.factory;
  world[d].startup_priority = factory.priority;
  for (const PortId p : model[d].ports) {
    world[p].startup_enabled = factory.enabled;
    world[p].startup_side = factory.side;
  }
}

/// The part of 5.b that copies startup, 5.b: running := startup, operational := startup.
void copy_startup(const Model& model, World& world, DeviceId d) {
  world[d].priority = world[d].startup_priority;
  for (const PortId p : model[d].ports) {
    world[p].enabled = world[p].startup_enabled;
    world[p].side = world[p].startup_side;
    world[p].operational_side = world[p].startup_side;
  }
}

/// 5.b without seniority.
void complete_start(const Model& model, World& world, DeviceId d) {
  if (settings_are_lost(model, world[d].number, world[d].next_number)) reset_startup(model, world, d);
  world[d].power = Power::up;
  world[d].number = world[d].next_number;
  copy_startup(model, world, d);
  world[d].leader = DeviceId();
}

void become_junior(const Model& model, World& world, DeviceId d) {
  for (const DeviceId e : all_devices(model)) {
    if (e != d && runs(world, e)) world.senior.insert({e, d});
  }
}

void start(World& world, DeviceId d) {
  world[d].power = Power::starting;
  world[d].leader = DeviceId();
  forget_seniority(world, d);
}

/// 5.d, the middle column, of a step that is not refused.
void take_effect(const Model& model, World& world, const Step& step) {
  const Platform& rules = model.platform;
  switch (step.verb) {
    case Verb::power_on:
      world[step.device].power = Power::starting;
      break;
    case Verb::power_off:
      world[step.device].power = Power::off;
      world[step.device].leader = DeviceId();
      forget_seniority(world, step.device);
      break;
    case Verb::restart:
      start(world, step.device);
      break;
    case Verb::set_number: {
      Switch& device = world[step.device];
      device.next_number = step.value;
      if (rules.number_takes == Takes::at_once) {
        const bool lost = settings_are_lost(model, device.number, step.value);
        device.number = step.value;
        if (lost) {
          reset_startup(model, world, step.device);
          copy_startup(model, world, step.device);
        }
      }
      break;
    }
    case Verb::set_priority:
      if (rules.priority_takes == Takes::at_restart) {
        world[step.device].startup_priority = step.value;
      } else {
        world[step.device].priority = step.value;
      }
      break;
    case Verb::enable:
      world[step.port].enabled = true;
      break;
    case Verb::disable:
      world[step.port].enabled = false;
      break;
    case Verb::set_side:
    case Verb::clear_side:
      world[step.port].side = step.verb == Verb::clear_side ? Side::none : step.side;
      if (rules.side_takes == SideTakes::at_once) world[step.port].operational_side = world[step.port].side;
      break;
    case Verb::apply:
      for (const DeviceId d : meant(model, world, step)) {
        for (const PortId p : model[d].ports) world[p].operational_side = world[p].side;
      }
      break;
    case Verb::save:
      for (const DeviceId d : meant(model, world, step)) {
        for (const PortId p : model[d].ports) {
          world[p].startup_enabled = world[p].enabled;
          world[p].startup_side = world[p].side;
        }
        if (rules.priority_takes == Takes::at_once) world[d].startup_priority = world[d].priority;
      }
      break;
    case Verb::plug:
      world[step.cable].plugged = true;
      break;
    case Verb::unplug:
      world[step.cable].plugged = false;
      break;
    case Verb::await:
      break;
    case Verb::check:
      if (!holds(model, world, step.condition)) world.halted = true;
      break;
  }
}

void take_step(const Model& model, const World& before, StepId s, Happening& happening) {
  const Step& step = model[s];
  happening.refused = refused(model, before, step);
  if (!happening.refused) {
    const bool takes_down = step.verb == Verb::restart || step.verb == Verb::power_off;
    if (takes_down && runs(before, step.device)) {
      happening.taken_down = step.device;
      happening.led_itself = before[step.device].leader == step.device;
    }
    World after = before;
    take_effect(model, after, step);
    happening.left = after;
  }
  happening.left.done.insert(s);
}

}  // namespace

bool ready(const Model& model, const World& world, StepId s) {
  const Step& step = model[s];
  if (world.halted || world.done.contains(s)) return false;
  for (const StepId other : step.after) {
    if (!world.done.contains(other)) return false;
  }
  return step.verb != Verb::await || holds(model, world, step.condition);
}

std::vector<Event> events(const Model& model, const World& world) {
  std::vector<Event> all;
  const auto add = [&](Event::Kind kind, std::uint32_t place) { all.push_back({kind, place}); };
  for (const StepId s : all_steps(model)) {
    if (!ready(model, world, s)) continue;
    add(Event::Kind::step, s.value);  // 5.a
    const Verb verb = model[s].verb;
    if (world.left.omissions > 0 && verb != Verb::await && verb != Verb::check) {
      add(Event::Kind::omitted, s.value);  // 5.c.4
    }
  }
  for (const DeviceId d : all_devices(model)) {
    if (world[d].power == Power::starting) {
      add(Event::Kind::started, d.value);                                       // 5.b
      if (world.left.late_starts > 0) add(Event::Kind::started_late, d.value);  // 5.c.5
    }
    if (world[d].power == Power::up && world.left.crashes > 0) add(Event::Kind::crashed, d.value);  // 5.c.2
  }
  for (const CableId c : all_cables(model)) {
    if (world[c].plugged && !world[c].broken && world.left.cable_breaks > 0) {
      add(Event::Kind::broke, c.value);  // 5.c.1
    }
    if (world[c].broken && world.left.mends) add(Event::Kind::mended, c.value);  // 5.c.3
  }
  std::sort(all.begin(), all.end());
  return all;
}

Happening begin(const Model& model, const FaultBudget& budget) {
  Happening happening;
  happening.left = initial(model, budget);
  happening.passes = settle(model, happening.left);
  return happening;
}

Happening happen(const Model& model, const World& world, const Event& event) {
  Happening happening;
  happening.left = world;
  World& left = happening.left;
  switch (event.kind) {
    case Event::Kind::step:
      take_step(model, world, event.step(), happening);
      break;
    case Event::Kind::omitted:
      left.done.insert(event.step());
      left.left.omissions -= 1;
      break;
    case Event::Kind::started:
    case Event::Kind::started_late:
      complete_start(model, left, event.device());
      become_junior(model, left, event.device());
      if (event.kind == Event::Kind::started_late) {
        left[event.device()].leader = event.device();
        left.left.late_starts -= 1;
      }
      break;
    case Event::Kind::broke:
      left[event.cable()].broken = true;
      left.left.cable_breaks -= 1;
      break;
    case Event::Kind::mended:
      left[event.cable()].broken = false;
      break;
    case Event::Kind::crashed:
      start(left, event.device());
      left.left.crashes -= 1;
      break;
    case Event::Kind::cold_start:
      return cold_start(model, world);
  }
  happening.passes = settle(model, left);
  return happening;
}

Happening cold_start(const Model& model, const World& world) {
  Happening happening;
  happening.left = world;
  happening.left.senior.clear();
  for (const DeviceId d : all_devices(model)) {
    if (world[d].power != Power::off) complete_start(model, happening.left, d);
  }
  happening.passes = settle(model, happening.left);
  return happening;
}

bool complete(const Model& model, const World& world) {
  return !world.halted && world.done.size() == model.procedure.steps.size();
}

bool at_rest(const Model& model, const World& world) {
  for (const StepId s : all_steps(model)) {
    if (ready(model, world, s)) return false;
  }
  for (const DeviceId d : all_devices(model)) {
    if (world[d].power == Power::starting) return false;
  }
  return true;
}

}  // namespace cairn::naive

#include "naive/world.hpp"

namespace cairn::naive {

namespace {

template <class Id>
std::vector<Id> first(std::size_t count) {
  std::vector<Id> ids;
  for (std::size_t i = 0; i < count; ++i) ids.emplace_back(i);
  return ids;
}

DeviceId initial_leader(const Model& model, DeviceId d) {
  if (!model[d].on) return DeviceId();
  if (model.site.stack) {
    for (const DeviceId member : model.site.stack->members) {
      if (member == d) return model.site.stack->primary;
    }
  }
  return d;
}

}  // namespace

std::vector<DeviceId> all_devices(const Model& model) {
  return first<DeviceId>(model.site.devices.size());
}
std::vector<CableId> all_cables(const Model& model) {
  return first<CableId>(model.site.cables.size());
}
std::vector<StepId> all_steps(const Model& model) {
  return first<StepId>(model.procedure.steps.size());
}

World initial(const Model& model, const FaultBudget& budget) {
  World world;
  for (const DeviceId d : all_devices(model)) {
    const Device& device = model[d];
    world.switches.push_back({.power = device.on ? Power::up : Power::off,  // 2.g
                              .leader = initial_leader(model, d),           // 2.h
                              .number = device.number,
                              .next_number = device.next_number,  // 2.i
                              .priority = device.priority,
                              .startup_priority = device.startup_priority});
    for (const DeviceId e : all_devices(model)) {  // 2.j
      if (device.on && model[e].on && device.tenure > model[e].tenure) world.senior.insert({d, e});
    }
  }
  for (const Port& port : model.site.ports) {
    world.sockets.push_back({port.enabled, port.startup_enabled, port.side, port.startup_side, port.operational_side});
  }
  for (const Cable& cable : model.site.cables) world.wires.push_back({cable.plugged, false});  // 2.l
  world.left = {budget.cable_breaks, budget.crashes, budget.omissions, budget.late_starts, budget.mends};
  return world;
}

void forget_seniority(World& world, DeviceId d) {
  std::erase_if(world.senior, [d](const auto& pair) { return pair.first == d || pair.second == d; });
}

State as_state(const Model& model, const World& world) {
  State state;
  for (const DeviceId d : all_devices(model)) {
    const Switch& s = world[d];
    // How many levels stand above d: the longest line of devices, each senior to the next, that ends at d.
    const auto level = [&](const auto& self, DeviceId at) -> std::uint32_t {
      std::uint32_t above = 0;
      for (const auto& [elder, younger] : world.senior) {
        if (younger == at) above = std::max(above, self(self, elder));
      }
      return above + 1;
    };
    const bool runs = s.power == Power::up || s.power == Power::held;
    state.devices.push_back(
        {s.power, s.leader, runs ? level(level, d) : 0, s.number, s.next_number, s.priority, s.startup_priority});
  }
  for (const Socket& s : world.sockets) {
    state.ports.push_back({s.enabled, s.startup_enabled, s.side, s.startup_side, s.operational_side});
  }
  for (const Wire& w : world.wires) state.cables.push_back({w.plugged, w.broken});
  for (const StepId s : all_steps(model)) state.done.push_back(world.done.contains(s) ? 1 : 0);
  state.left = {world.left.cable_breaks, world.left.crashes, world.left.omissions, world.left.late_starts,
                world.left.mends};
  state.halted = world.halted;
  return state;
}

}  // namespace cairn::naive

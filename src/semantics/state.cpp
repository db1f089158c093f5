#include "semantics/state.hpp"

#include <algorithm>
#include <functional>
#include <utility>
#include <vector>

namespace cairn::semantics {

namespace {

// 2.j: senior(d, e) holds between devices that are on when the file gives d the larger tenure.
void order_by_tenure(const World& world, State& s) {
  const std::vector<Device>& devices = world.site().devices;
  std::vector<Quantity> tenures;  // those that differ, the largest first
  for (std::size_t i = 0; i < devices.size(); ++i) {
    if (!devices[i].on) continue;
    const Quantity tenure = devices[i].tenure;
    const auto place = std::ranges::find_if(tenures, [&](Quantity other) { return !world.less(tenure, other); });
    if (place == tenures.end() || !world.equal(tenure, *place)) tenures.insert(place, tenure);
  }
  for (std::size_t i = 0; i < devices.size(); ++i) {
    if (!devices[i].on) continue;
    const auto level =
        std::ranges::find_if(tenures, [&](Quantity other) { return world.equal(devices[i].tenure, other); });
    s.devices[i].seniority = static_cast<std::uint32_t>(level - tenures.begin()) + 1;
  }
}

}  // namespace

State initial_state(const World& world, const FaultBudget& budget) {
  const Site& site = world.site();
  State s;
  // 2.g, 2.i, 2.k: what the file gives is what stands, of devices that are off too.
  for (std::size_t i = 0; i < site.devices.size(); ++i) {
    const Device& device = site.devices[i];
    DeviceState d;
    d.power = device.on ? Power::up : Power::off;
    if (device.on) d.leader = DeviceId(i);  // 2.h: of no stack, it leads itself
    d.number = device.number;
    d.next_number = device.next_number;
    d.priority = device.priority;
    d.startup_priority = device.startup_priority;
    s.devices.push_back(d);
  }
  if (site.stack) {  // 2.h
    for (const DeviceId d : site.stack->members) s[d].leader = site.stack->primary;
  }
  order_by_tenure(world, s);
  for (const Port& port : site.ports) {
    s.ports.push_back({port.enabled, port.startup_enabled, port.side, port.startup_side, port.operational_side});
  }
  for (const Cable& cable : site.cables) s.cables.push_back({cable.plugged, false});  // 2.l
  s.done.assign(world.steps().size(), 0);
  s.left = budget;
  return s;
}

void become_junior(State& s, DeviceId d) {
  std::uint32_t most_junior = 0;
  for (const DeviceState& e : s.devices) most_junior = std::max(most_junior, e.seniority);
  s[d].seniority = most_junior + 1;
}

void go_down(State& s, DeviceId d, Power power) {
  s[d].power = power;
  s[d].leader = DeviceId();
  const std::uint32_t level = std::exchange(s[d].seniority, 0);
  if (level == 0) return;
  const bool shared =
      std::any_of(s.devices.begin(), s.devices.end(), [level](const DeviceState& e) { return e.seniority == level; });
  if (shared) return;
  // Close the gap, so that equal orders are equal states.
  for (DeviceState& e : s.devices) {
    if (e.seniority > level) --e.seniority;
  }
}

}  // namespace cairn::semantics

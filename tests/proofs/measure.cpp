#include "proofs/measure.hpp"

#include <algorithm>
#include <tuple>

#include "semantics/settle.hpp"
#include "semantics/state.hpp"

namespace cairn::test {

namespace {

std::int64_t still_to_do(const State& s) {
  const auto steps = std::count(s.done.begin(), s.done.end(), std::uint8_t{0});
  return steps + s.left.cable_breaks + s.left.crashes + s.left.omissions + s.left.late_starts;
}

/// A start changes nothing about it but its power, leader and seniority (5.b, 5.f).
bool plain(const semantics::World& world, const State& s, DeviceId d) {
  const std::vector<PortId>& ports = world.model()[d].ports;
  return s[d].number == s[d].next_number && s[d].priority == s[d].startup_priority &&
         std::all_of(ports.begin(), ports.end(), [&](PortId p) {
           return s[p].enabled == s[p].startup_enabled && s[p].side == s[p].startup_side &&
                  s[p].operational_side == s[p].startup_side;
         });
}

/// The keys before tenure, larger is better; where tenure is no key, all of them with the address.
std::vector<std::int64_t> prefix_of(const semantics::World& world, const State& s, DeviceId d) {
  std::vector<std::int64_t> prefix;
  for (const ElectionKey key : world.platform().election) {
    if (key == ElectionKey::tenure) return prefix;
    prefix.push_back(key == ElectionKey::priority ? s[d].priority : -s[d].number);
  }
  prefix.push_back(-static_cast<std::int64_t>(world.model()[d].address));
  return prefix;
}

}  // namespace

Measure measure_of(const semantics::World& world, const State& s) {
  Measure m;
  m.to_come[0] = still_to_do(s);
  m.to_come[1] = std::count_if(s.cables.begin(), s.cables.end(), [](const CableState& c) { return c.broken; });
  std::vector<DeviceId> leaders;
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId d(i);
    if (!plain(world, s, d)) ++m.to_come[2];
    if (s[d].power == Power::held) ++m.held;
    if (semantics::leads(s, d)) leaders.push_back(d);
  }
  std::sort(leaders.begin(), leaders.end(),
            [&](DeviceId d, DeviceId e) { return semantics::outranks(world, s, d, e); });
  for (const DeviceId leader : leaders) {
    const auto size = std::count_if(s.devices.begin(), s.devices.end(),
                                    [leader](const DeviceState& d) { return d.leader == leader; });
    m.stacks.push_back({prefix_of(world, s, leader), size});
  }
  return m;
}

bool falls(const Measure& before, const Measure& after) {
  if (before.to_come != after.to_come) return after.to_come < before.to_come;
  return std::tie(before.held, before.stacks) < std::tie(after.held, after.stacks);
}

}  // namespace cairn::test

#include "explore/domains.hpp"

#include <algorithm>

namespace cairn::explore {

namespace {

template <class T>
void sort_unique(std::vector<Values<T>>& all) {
  for (Values<T>& values : all) {
    std::sort(values.begin(), values.end());
    values.erase(std::unique(values.begin(), values.end()), values.end());
  }
}

Domains initial_values(const Site& site) {
  Domains domains;
  for (const Device& device : site.devices) {
    domains.numbers.push_back({device.number, device.next_number});
    domains.priorities.push_back({device.priority, device.startup_priority});
  }
  for (const Port& port : site.ports) {
    domains.enabled.push_back({port.enabled, port.startup_enabled});
    domains.sides.push_back({port.side, port.startup_side, port.operational_side});
  }
  domains.replugged.assign(site.cables.size(), 0);
  return domains;
}

bool may_be_in(const Range& range, Quantity q) {
  return !is_known(q) || range.contains(q);
}

void add_step(const Platform& platform, const Step& step, Domains& domains) {
  switch (step.verb) {
    case Verb::set_number:  // 5.4: out of range is refused
      if (may_be_in(platform.numbers, step.value)) domains.numbers[step.device.value].push_back(step.value);
      return;
    case Verb::set_priority:  // 5.5
      if (may_be_in(platform.priorities, step.value)) domains.priorities[step.device.value].push_back(step.value);
      return;
    case Verb::enable:
    case Verb::disable:
      domains.enabled[step.port.value].push_back(step.verb == Verb::enable);
      return;
    case Verb::set_side:
    case Verb::clear_side:
      domains.sides[step.port.value].push_back(step.side);
      return;
    case Verb::plug:
    case Verb::unplug:
      domains.replugged[step.cable.value] = 1;
      return;
    case Verb::check:
      domains.checks = true;
      return;
    default:
      return;
  }
}

// 5.f: where settings follow the number, a change of the number brings factory values.
void add_resets(const Platform& platform, const Site& site, Domains& domains) {
  if (platform.settings_follow != SettingsFollow::number) return;
  for (std::size_t i = 0; i < site.devices.size(); ++i) {
    if (domains.numbers[i].size() == 1) continue;
    domains.priorities[i].push_back(platform.factory.priority);
    for (const PortId p : site.devices[i].ports) {
      domains.enabled[p.value].push_back(platform.factory.enabled);
      domains.sides[p.value].push_back(platform.factory.side);
    }
  }
}

}  // namespace

Domains domains_of(const semantics::World& world) {
  Domains domains = initial_values(world.site());
  for (const Step& step : world.steps()) add_step(world.platform(), step, domains);
  sort_unique(domains.numbers);
  add_resets(world.platform(), world.site(), domains);
  sort_unique(domains.priorities);
  sort_unique(domains.enabled);
  sort_unique(domains.sides);
  return domains;
}

}  // namespace cairn::explore

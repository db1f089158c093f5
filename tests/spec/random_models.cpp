#include "spec/random_models.hpp"

#include <algorithm>
#include <string>

namespace cairn::test {

namespace {

bool coin(Random& random) {
  return below(random, 2) == 0;
}

Side random_side(Random& random) {
  return below(random, 8) == 0 ? Side::none : coin(random) ? Side::east : Side::west;
}

void draw_rules(Random& random, Platform& platform) {
  platform.factory = {1, static_cast<std::int64_t>(below(random, 3)), coin(random), random_side(random)};
  platform.number_takes = coin(random) ? Takes::at_once : Takes::at_restart;
  platform.priority_takes = coin(random) ? Takes::at_once : Takes::at_restart;
  platform.settings_follow = coin(random) ? SettingsFollow::number : SettingsFollow::device;
  platform.side_takes = coin(random) ? SideTakes::at_once : SideTakes::on_apply;
  platform.side_needs_disabled = below(random, 4) == 0;
  platform.facing = below(random, 3) == 0 ? Facing::opposite : Facing::any;
  platform.side_leads_to = coin(random) ? SideLeadsTo::any : SideLeadsTo::one_neighbour;
  platform.orphans = coin(random) ? Orphans::restart : Orphans::carry_on;
  platform.election.clear();
  for (const ElectionKey key : {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number}) {
    if (coin(random)) platform.election.push_back(key);
  }
  if (platform.election.size() > 1 && coin(random)) std::swap(platform.election.front(), platform.election.back());
}

PortIs random_port(Random& random, std::string name) {
  PortIs port{.name = std::move(name), .side = random_side(random), .enabled = below(random, 6) != 0};
  if (below(random, 4) == 0) port.startup_side = random_side(random);
  if (below(random, 4) == 0) port.startup_enabled = coin(random);
  return port;
}

void draw_devices(Random& random, ModelBuilder& b, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) {
    DeviceIs is;
    is.on = below(random, 4) != 0;
    is.number = 1 + static_cast<std::int64_t>(below(random, 2 * count));
    if (below(random, 4) == 0) is.next_number = 1 + static_cast<std::int64_t>(below(random, 2 * count));
    is.priority = static_cast<std::int64_t>(below(random, 3));
    if (below(random, 3) == 0) is.startup_priority = static_cast<std::int64_t>(below(random, 3));
    is.tenure = static_cast<std::int64_t>(below(random, 3));
    is.ports.clear();
    for (const char* name : {"p", "q", "r"}) is.ports.push_back(random_port(random, name));
    b.device("d" + std::to_string(i), std::move(is));
  }
}

std::size_t draw_cables(Random& random, ModelBuilder& b, std::size_t devices) {
  std::vector<bool> occupied(devices * 3, false);
  const std::size_t count = devices + below(random, devices);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t x = below(random, devices);
    const std::size_t y = (x + 1 + below(random, devices - 1)) % devices;
    const std::size_t p = 3 * x + below(random, 3);
    const std::size_t q = 3 * y + below(random, 3);
    const bool plugged = !occupied[p] && !occupied[q] && below(random, 4) != 0;
    b.cable(PortId(p), PortId(q), plugged);
    if (plugged) occupied[p] = occupied[q] = true;
  }
  return count;
}

void draw_stack(Random& random, ModelBuilder& b) {
  const Model model = b.model();
  std::vector<DeviceId> members;
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
    if (model.site.devices[i].on && below(random, 3) != 0) members.emplace_back(i);
  }
  if (!members.empty()) b.stack(members[below(random, members.size())], members);
}

void draw_step(Random& random, ModelBuilder& b, std::size_t devices, std::size_t cables) {
  const DeviceId d(below(random, devices));
  const PortId p(3 * d.value + below(random, 3));
  const CableId c(below(random, cables));
  const auto n = static_cast<std::int64_t>(1 + below(random, 2 * devices));
  switch (below(random, 12)) {
    case 0:
      b.power_on(d);
      return;
    case 1:
      b.power_off(d);
      return;
    case 2:
      b.restart(d);
      return;
    case 3:
      b.set_number(d, n);
      return;
    case 4:
      b.set_priority(d, n % 3);
      return;
    case 5:
      b.enable(p);
      return;
    case 6:
      b.disable(p);
      return;
    case 7:
      b.set_side(p, random_side(random));
      return;
    case 8:
      b.apply_stack_of(d);
      return;
    case 9:
      b.save({d});
      return;
    case 10:
      b.plug(c);
      return;
    default:
      b.unplug(c);
      return;
  }
}

}  // namespace

std::size_t below(Random& random, std::size_t n) {
  return static_cast<std::size_t>(random() % n);
}

Model random_model(Random& random, const RandomModelIs& is) {
  ModelBuilder b;
  draw_rules(random, b.platform());
  const std::size_t devices = 2 + below(random, is.most_devices - 1);
  draw_devices(random, b, devices);
  const std::size_t cables = draw_cables(random, b, devices);
  draw_stack(random, b);
  b.unordered();
  const std::size_t steps = below(random, is.most_steps + 1);
  for (std::size_t i = 0; i < steps; ++i) draw_step(random, b, devices, cables);
  b.faults(is.faults);
  return b.model();
}

}  // namespace cairn::test

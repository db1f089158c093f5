#include "naive/derived.hpp"

#include <algorithm>

namespace cairn::naive {

namespace {

bool runs(const World& world, DeviceId d) {
  return world[d].power == Power::up || world[d].power == Power::held;
}

/// 3.b: one east and one west, or neither of them none.
bool sides_face(const Model& model, Side a, Side b) {
  if (model.platform.facing == Facing::any) return a != Side::none && b != Side::none;
  return (a == Side::east && b == Side::west) || (a == Side::west && b == Side::east);
}

/// 3.b: another cable is up that joins a third device to a port of `end`'s device on the side of `end`.
bool leads_elsewhere(const Model& model, const World& world, CableId c, PortId end, DeviceId neighbour) {
  const DeviceId device = model[end].device;
  for (const CableId other : all_cables(model)) {
    if (other == c || !cable_up(model, world, other)) continue;
    for (const auto& [near, far] :
         {std::pair(model[other].a, model[other].b), std::pair(model[other].b, model[other].a)}) {
      if (model[near].device == device && model[far].device != neighbour &&
          world[near].operational_side == world[end].operational_side) {
        return true;
      }
    }
  }
  return false;
}

/// Adds everything that formed links lead to from d.
void spread(const Model& model, const std::set<CableId>& links, DeviceId d, std::set<DeviceId>& reached) {
  if (!reached.insert(d).second) return;
  for (const CableId c : links) {
    const DeviceId a = model[model[c].a].device;
    const DeviceId b = model[model[c].b].device;
    if (a == d) spread(model, links, b, reached);
    if (b == d) spread(model, links, a, reached);
  }
}

std::set<CableId> formed_links(const Model& model, const World& world) {
  std::set<CableId> links;
  for (const CableId c : all_cables(model)) {
    if (linked(model, world, c)) links.insert(c);
  }
  return links;
}

bool compare(std::int64_t a, Sign sign, std::int64_t b) {
  switch (sign) {
    case Sign::equal:
      return a == b;
    case Sign::not_equal:
      return a != b;
    case Sign::less:
      return a < b;
    case Sign::less_or_equal:
      return a <= b;
    case Sign::greater:
      return a > b;
    case Sign::greater_or_equal:
      return a >= b;
  }
  return false;
}

}  // namespace

bool cable_up(const Model& model, const World& world, CableId c) {
  const Cable& cable = model[c];
  return world[c].plugged && !world[c].broken && runs(world, model[cable.a].device) &&
         runs(world, model[cable.b].device) && world[cable.a].enabled && world[cable.b].enabled;
}

bool linked(const Model& model, const World& world, CableId c) {
  const Cable& cable = model[c];
  const DeviceId a = model[cable.a].device;
  const DeviceId b = model[cable.b].device;
  if (!cable_up(model, world, c)) return false;
  if (world[a].power != Power::up || world[b].power != Power::up) return false;
  if (!sides_face(model, world[cable.a].operational_side, world[cable.b].operational_side)) return false;
  if (model.platform.software == Software::must_match && model[a].software != model[b].software) return false;
  if (model.platform.side_leads_to == SideLeadsTo::one_neighbour) {
    if (leads_elsewhere(model, world, c, cable.a, b) || leads_elsewhere(model, world, c, cable.b, a)) return false;
  }
  return true;
}

std::set<DeviceId> class_of(const Model& model, const World& world, DeviceId d) {
  std::set<DeviceId> reached;
  if (world[d].power == Power::up) spread(model, formed_links(model, world), d, reached);
  return reached;
}

bool together(const Model& model, const World& world, const std::vector<DeviceId>& devices) {
  const std::set<DeviceId> reached = class_of(model, world, devices.front());
  return std::all_of(devices.begin(), devices.end(), [&](DeviceId d) { return reached.contains(d); });
}

std::set<std::set<DeviceId>> classes(const Model& model, const World& world) {
  const std::set<CableId> links = formed_links(model, world);
  std::set<std::set<DeviceId>> all;
  for (const DeviceId d : all_devices(model)) {
    if (world[d].power != Power::up) continue;
    std::set<DeviceId> reached;
    spread(model, links, d, reached);
    all.insert(reached);
  }
  return all;
}

bool saved(const Model& model, const World& world, DeviceId d) {
  const Switch& s = world[d];
  if (s.startup_priority != s.priority || s.next_number != s.number) return false;
  for (const PortId p : model[d].ports) {
    const Socket& port = world[p];
    if (port.startup_enabled != port.enabled || port.startup_side != port.side || port.side != port.operational_side) {
      return false;
    }
  }
  return true;
}

bool reachable(const Model& model, const World& world, DeviceId d, DeviceId v) {
  return runs(world, v) && (d == v || together(model, world, {d, v}));
}

bool holds(const Model& model, const World& world, const Condition& condition) {
  const auto part_holds = [&](const Condition& part) { return holds(model, world, part); };
  const auto& parts = condition.parts;
  switch (condition.kind) {
    case Condition::Kind::up:
      return world[condition.devices[0]].power == Power::up;
    case Condition::Kind::held:
      return world[condition.devices[0]].power == Power::held;
    case Condition::Kind::starting:
      return world[condition.devices[0]].power == Power::starting;
    case Condition::Kind::off:
      return world[condition.devices[0]].power == Power::off;
    case Condition::Kind::linked:
      return linked(model, world, condition.cable);
    case Condition::Kind::cable_up:
      return cable_up(model, world, condition.cable);
    case Condition::Kind::together:
      return together(model, world, condition.devices);
    case Condition::Kind::primary: {
      const DeviceId d = condition.devices[0];
      return world[d].power == Power::up && world[d].leader == d;
    }
    case Condition::Kind::follower: {
      const DeviceId d = condition.devices[0];
      return world[d].power == Power::up && world[d].leader && world[d].leader != d;
    }
    case Condition::Kind::number:
      return compare(world[condition.devices[0]].number, condition.sign, condition.value);
    case Condition::Kind::priority:
      return compare(world[condition.devices[0]].priority, condition.sign, condition.value);
    case Condition::Kind::saved:
      return saved(model, world, condition.devices[0]);
    case Condition::Kind::enabled:
      return world[condition.port].enabled;
    case Condition::Kind::side: {
      const bool equal = world[condition.port].operational_side == condition.side;
      return condition.sign == Sign::not_equal ? !equal : equal;
    }
    case Condition::Kind::done:
      return world.done.contains(condition.step);
    case Condition::Kind::negation:
      return !part_holds(parts[0]);
    case Condition::Kind::all:
      return std::all_of(parts.begin(), parts.end(), part_holds);
    case Condition::Kind::any:
      return std::any_of(parts.begin(), parts.end(), part_holds);
    case Condition::Kind::implies:
      return !part_holds(parts[0]) || part_holds(parts[1]);
  }
  return false;
}

}  // namespace cairn::naive

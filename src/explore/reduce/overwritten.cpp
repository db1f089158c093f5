#include "explore/reduce/overwritten.hpp"

#include <algorithm>

#include "semantics/events.hpp"

namespace cairn::explore {

namespace {

/// Devices whose settings in force the condition reads (semantics 8).
void add_devices_read(const Model& model, const Condition& condition, std::vector<DeviceId>& devices) {
  using Kind = Condition::Kind;
  switch (condition.kind) {
    case Kind::number:
    case Kind::priority:
    case Kind::saved:
      devices.push_back(condition.devices.front());
      break;
    case Kind::enabled:
    case Kind::side:
      devices.push_back(model[condition.port].device);
      break;
    default:
      break;
  }
  for (const Condition& part : condition.parts) add_devices_read(model, part, devices);
}

}  // namespace

Overwritten::Overwritten(const semantics::World& world)
    : world_(world),
      number_unread_(world.platform().settings_follow == SettingsFollow::device),
      readers_(world.device_count()) {
  std::vector<DeviceId> devices;
  for (std::size_t i = 0; i < world.steps().size(); ++i) {
    devices.clear();
    add_devices_read(world.model(), world.steps()[i].condition, devices);
    for (const DeviceId d : devices) readers_[d.value].steps.emplace_back(i);
  }
  // `saved` of the goal asks devices that are together (6.b).
  const std::optional<Goal>& goal = world.model().procedure.goal;
  devices.clear();
  if (goal && goal->where) add_devices_read(world.model(), *goal->where, devices);
  for (const DeviceId d : devices) readers_[d.value].goal = true;
}

bool Overwritten::unread(const State& s, DeviceId d) const {
  if (s[d].power != Power::off && s[d].power != Power::starting) return false;
  const Readers& readers = readers_[d.value];
  return !readers.goal && std::none_of(readers.steps.begin(), readers.steps.end(),
                                       [&](StepId step) { return semantics::pending(s, step); });
}

std::vector<DeviceId> Overwritten::unread(const State& s) const {
  std::vector<DeviceId> devices;
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    if (unread(s, DeviceId(i))) devices.emplace_back(i);
  }
  return devices;
}

// 5.b. A start that brings factory values (5.f) overwrites these as well.
bool Overwritten::replace(State& s) const {
  bool changed = false;
  const auto overwrite = [&changed](auto& value, const auto& by) {
    changed = changed || value != by;
    value = by;
  };
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId d(i);
    if (!unread(s, d)) continue;
    if (number_unread_) overwrite(s[d].number, s[d].next_number);
    overwrite(s[d].priority, s[d].startup_priority);
    for (const PortId p : world_.model()[d].ports) {
      overwrite(s[p].enabled, s[p].startup_enabled);
      overwrite(s[p].side, s[p].startup_side);
      overwrite(s[p].operational_side, s[p].startup_side);
    }
  }
  return changed;
}

}  // namespace cairn::explore

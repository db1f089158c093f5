#include "explore/reduce/components.hpp"

#include <algorithm>

namespace cairn::explore {

Components::Components(const semantics::World& world) : world_(&world), heads_(world.device_count()) {}

void Components::join(DeviceId d, DeviceId e) {
  const DeviceId head = std::min(of(d), of(e));
  const DeviceId other = std::max(of(d), of(e));
  if (head != other) std::replace(heads_.begin(), heads_.end(), other, head);
}

void Components::look_at(const State& s) {
  for (std::size_t i = 0; i < heads_.size(); ++i) heads_[i] = DeviceId(i);
  for (std::size_t i = 0; i < s.cables.size(); ++i) {
    const CableId c(i);
    if (s[c].plugged) join(world_->device_a(c), world_->device_b(c));
  }
  const std::vector<DeviceId>& keep = world_->model().procedure.keep;
  for (const DeviceId d : keep) join(d, keep.front());
}

namespace {

using Devices = std::vector<DeviceId>;

void add_port(const Model& model, PortId p, Devices& devices) {
  if (p) devices.push_back(model[p].device);
}

void add_cable(const Model& model, CableId c, Devices& devices) {
  if (!c) return;
  add_port(model, model[c].a, devices);
  add_port(model, model[c].b, devices);
}

void add_condition(const Model& model, const Condition& condition, Devices& devices, std::vector<StepId>& steps) {
  devices.insert(devices.end(), condition.devices.begin(), condition.devices.end());
  add_port(model, condition.port, devices);
  add_cable(model, condition.cable, devices);
  if (condition.step) steps.push_back(condition.step);
  for (const Condition& part : condition.parts) add_condition(model, part, devices, steps);
}

void tidy(Devices& devices) {
  std::sort(devices.begin(), devices.end());
  devices.erase(std::unique(devices.begin(), devices.end()), devices.end());
}

void add_those_of_steps_read(const std::vector<std::vector<StepId>>& read, std::vector<Devices>& all) {
  for (bool grows = true; grows;) {
    grows = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
      const std::size_t before = all[i].size();
      for (const StepId other : read[i]) {
        const Devices theirs = all[other.value];
        all[i].insert(all[i].end(), theirs.begin(), theirs.end());
      }
      tidy(all[i]);
      grows = grows || all[i].size() > before;
    }
  }
}

}  // namespace

std::vector<Devices> devices_of_steps(const Model& model) {
  const std::vector<Step>& steps = model.procedure.steps;
  std::vector<Devices> all(steps.size());
  std::vector<std::vector<StepId>> read(steps.size());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const Step& step = steps[i];
    Devices& devices = all[i];
    for (const DeviceId d : {step.device, step.via, step.stack_of}) {
      if (d) devices.push_back(d);
    }
    devices.insert(devices.end(), step.devices.begin(), step.devices.end());
    add_port(model, step.port, devices);
    add_cable(model, step.cable, devices);
    add_condition(model, step.condition, devices, read[i]);
    tidy(devices);
  }
  add_those_of_steps_read(read, all);
  // An await that reads nothing but which steps are done stands beside all devices, not beside none.
  for (Devices& devices : all) {
    if (!devices.empty()) continue;
    for (std::size_t i = 0; i < model.site.devices.size(); ++i) devices.emplace_back(i);
  }
  add_those_of_steps_read(read, all);
  return all;
}

}  // namespace cairn::explore

#include "support/model_builder.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace cairn::test {

std::vector<PortIs> ring_ports() {
  return {{.name = "w", .side = Side::west}, {.name = "e", .side = Side::east}};
}

ModelBuilder::ModelBuilder() {
  Platform& platform = model_.platform;
  platform.title = "test";
  platform.numbers = {1, 99};
  platform.priorities = {0, 99};
  platform.factory = {1, 7, false, Side::none};
  platform.number_takes = Takes::at_once;
  platform.priority_takes = Takes::at_once;
  platform.settings_follow = SettingsFollow::device;
  platform.side_takes = SideTakes::at_once;
  platform.facing = Facing::any;
  platform.side_leads_to = SideLeadsTo::any;
  platform.software = Software::any;
  platform.election = {ElectionKey::priority};
  platform.max_members = 99;
}

DeviceId ModelBuilder::device(std::string name, DeviceIs is) {
  const DeviceId id(model_.site.devices.size());
  Device d;
  d.name = std::move(name);
  d.on = is.on;
  d.address = is.address.value_or(id.value + 1);
  d.number = is.number.value_or(id.value + 1);
  d.next_number = is.next_number.value_or(d.number);
  d.priority = is.priority;
  d.startup_priority = is.startup_priority.value_or(is.priority);
  d.tenure = is.tenure;
  d.software = std::move(is.software);
  for (const PortIs& port : is.ports) {
    d.ports.emplace_back(model_.site.ports.size());
    Port p;
    p.name = d.name + "/" + port.name;
    p.device = id;
    p.enabled = port.enabled;
    p.startup_enabled = port.startup_enabled.value_or(port.enabled);
    p.side = port.side;
    p.startup_side = port.startup_side.value_or(port.side);
    p.operational_side = port.operational_side.value_or(port.side);
    model_.site.ports.push_back(std::move(p));
  }
  model_.site.devices.push_back(std::move(d));
  return id;
}

std::vector<DeviceId> ModelBuilder::devices(std::initializer_list<std::string_view> names) {
  std::vector<DeviceId> ids;
  for (const std::string_view name : names) ids.push_back(device(std::string(name)));
  return ids;
}

PortId ModelBuilder::port(DeviceId d, std::string_view name) const {
  const std::string full = model_[d].name + "/" + std::string(name);
  for (const PortId p : model_[d].ports) {
    if (model_[p].name == full) return p;
  }
  throw std::invalid_argument("the test names no port " + full);
}

CableId ModelBuilder::cable(PortId a, PortId b, bool plugged) {
  const std::string ends = model_[a].name + "--" + model_[b].name;
  model_.site.cables.push_back({ends, ends, a, b, plugged});
  return CableId(model_.site.cables.size() - 1);
}

std::vector<CableId> ModelBuilder::chain(const std::vector<DeviceId>& devices) {
  std::vector<CableId> cables;
  for (std::size_t i = 0; i + 1 < devices.size(); ++i) cables.push_back(cable(east(devices[i]), west(devices[i + 1])));
  return cables;
}

std::vector<CableId> ModelBuilder::ring(const std::vector<DeviceId>& devices) {
  std::vector<CableId> cables = chain(devices);
  cables.push_back(cable(east(devices.back()), west(devices.front())));
  return cables;
}

void ModelBuilder::stack(DeviceId primary, std::vector<DeviceId> members) {
  model_.site.stack = RunningStack{primary, std::move(members)};
}

void ModelBuilder::keep(std::vector<DeviceId> devices) {
  model_.procedure.keep = std::move(devices);
  model_.procedure.keep_stated = true;
}

StepId ModelBuilder::add(Step step, const StepIs& is) {
  const StepId id(model_.procedure.steps.size());
  step.id = "s" + std::to_string(id.value + 1);
  if (is.via) step.via = is.via;
  step.after = is.after;
  if (ordered_ && id.value > 0) step.after.emplace_back(id.value - 1);
  model_.procedure.steps.push_back(std::move(step));
  return id;
}

StepId ModelBuilder::step(Verb verb, DeviceId d, const StepIs& is) {
  Step step;
  step.verb = verb;
  step.device = d;
  const bool by_hand = verb == Verb::power_on || verb == Verb::power_off;
  if (!by_hand) step.via = d;
  return add(std::move(step), is);
}

StepId ModelBuilder::set_number(DeviceId d, std::int64_t to, StepIs is) {
  const StepId id = step(Verb::set_number, d, is);
  model_.procedure.steps.back().value = to;
  return id;
}

StepId ModelBuilder::set_priority(DeviceId d, std::int64_t to, StepIs is) {
  const StepId id = step(Verb::set_priority, d, is);
  model_.procedure.steps.back().value = to;
  return id;
}

StepId ModelBuilder::port_step(Verb verb, PortId p, Side side, const StepIs& is) {
  Step step;
  step.verb = verb;
  step.device = step.via = model_[p].device;
  step.port = p;
  step.side = side;
  return add(std::move(step), is);
}

StepId ModelBuilder::group_step(Verb verb, std::vector<DeviceId> devices, DeviceId stack_of, const StepIs& is) {
  Step step;
  step.verb = verb;
  step.devices = std::move(devices);
  step.stack_of = stack_of;
  return add(std::move(step), is);
}

StepId ModelBuilder::cable_step(Verb verb, CableId c, const StepIs& is) {
  Step step;
  step.verb = verb;
  step.cable = c;
  return add(std::move(step), is);
}

StepId ModelBuilder::waiting_step(Verb verb, Condition condition, const StepIs& is) {
  Step step;
  step.verb = verb;
  step.condition = std::move(condition);
  return add(std::move(step), is);
}

Model ModelBuilder::model() const {
  Model model = model_;
  if (model.procedure.keep_stated) {
    std::sort(model.procedure.keep.begin(), model.procedure.keep.end());
    return model;
  }
  if (model.site.stack) {
    model.procedure.keep = model.site.stack->members;
    std::sort(model.procedure.keep.begin(), model.procedure.keep.end());
  } else {
    for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
      if (model.site.devices[i].on) model.procedure.keep.emplace_back(i);
    }
  }
  return model;
}

Goal goal_of(std::vector<DeviceId> stack, DeviceId primary) {
  Goal goal;
  goal.stack = std::move(stack);
  goal.primary = primary;
  return goal;
}

namespace when {

namespace {

using Kind = Condition::Kind;

Condition of_device(Kind kind, DeviceId d) {
  Condition condition;
  condition.kind = kind;
  condition.devices = {d};
  return condition;
}

Condition of_cable(Kind kind, CableId c) {
  Condition condition;
  condition.kind = kind;
  condition.cable = c;
  return condition;
}

Condition comparison(Kind kind, DeviceId d, Sign sign, std::int64_t n) {
  Condition condition = of_device(kind, d);
  condition.sign = sign;
  condition.value = n;
  return condition;
}

Condition combined(Kind kind, std::vector<Condition> parts) {
  Condition condition;
  condition.kind = kind;
  condition.parts = std::move(parts);
  return condition;
}

}  // namespace

Condition up(DeviceId d) {
  return of_device(Kind::up, d);
}
Condition held(DeviceId d) {
  return of_device(Kind::held, d);
}
Condition starting(DeviceId d) {
  return of_device(Kind::starting, d);
}
Condition off(DeviceId d) {
  return of_device(Kind::off, d);
}
Condition primary(DeviceId d) {
  return of_device(Kind::primary, d);
}
Condition follower(DeviceId d) {
  return of_device(Kind::follower, d);
}
Condition saved(DeviceId d) {
  return of_device(Kind::saved, d);
}
Condition linked(CableId c) {
  return of_cable(Kind::linked, c);
}
Condition cable_up(CableId c) {
  return of_cable(Kind::cable_up, c);
}

Condition together(std::vector<DeviceId> devices) {
  Condition condition;
  condition.kind = Kind::together;
  condition.devices = std::move(devices);
  return condition;
}

Condition number(DeviceId d, Sign sign, std::int64_t n) {
  return comparison(Kind::number, d, sign, n);
}
Condition priority(DeviceId d, Sign sign, std::int64_t n) {
  return comparison(Kind::priority, d, sign, n);
}

Condition enabled(PortId p) {
  Condition condition;
  condition.kind = Kind::enabled;
  condition.port = p;
  return condition;
}

Condition side(PortId p, Sign sign, Side side) {
  Condition condition;
  condition.kind = Kind::side;
  condition.port = p;
  condition.sign = sign;
  condition.side = side;
  return condition;
}

Condition done(StepId s) {
  Condition condition;
  condition.kind = Kind::done;
  condition.step = s;
  return condition;
}

Condition no(Condition a) {
  return combined(Kind::negation, {std::move(a)});
}
Condition all(std::vector<Condition> parts) {
  return combined(Kind::all, std::move(parts));
}
Condition any(std::vector<Condition> parts) {
  return combined(Kind::any, std::move(parts));
}
Condition implies(Condition a, Condition b) {
  return combined(Kind::implies, {std::move(a), std::move(b)});
}
Condition always() {
  return combined(Kind::all, {});
}
Condition never() {
  return combined(Kind::any, {});
}

}  // namespace when

}  // namespace cairn::test

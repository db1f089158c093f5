#include "metamorphic/changes.hpp"

#include <fmt/format.h>

namespace cairn::metamorphic {

using differential::CableDraft;
using differential::ConditionDraft;
using differential::DeviceDraft;
using differential::Draft;
using differential::PortDraft;
using differential::Random;
using differential::StepDraft;

namespace {

using Names = std::map<std::string, std::string>;

/// A device, a port or a cable by its ends; anything else keeps its name.
std::string renamed(const std::string& name, const Names& names) {
  if (const auto dashes = name.find("--"); dashes != std::string::npos) {
    return renamed(name.substr(0, dashes), names) + "--" + renamed(name.substr(dashes + 2), names);
  }
  const auto slash = name.find('/');
  const auto place = names.find(name.substr(0, slash));
  if (place == names.end()) return name;
  return slash == std::string::npos ? place->second : place->second + name.substr(slash);
}

void rename_all(std::vector<std::string>& list, const Names& names) {
  for (std::string& name : list) name = renamed(name, names);
}

void rename_site(Draft& draft, const Names& names) {
  for (DeviceDraft& device : draft.devices) {
    device.name = renamed(device.name, names);
    for (PortDraft& port : device.ports) port.name = renamed(port.name, names);
  }
  for (CableDraft& cable : draft.cables) {
    cable.a = renamed(cable.a, names);
    cable.b = renamed(cable.b, names);
  }
  if (draft.stack) {
    draft.stack->primary = renamed(draft.stack->primary, names);
    rename_all(draft.stack->members, names);
  }
}

void rename_procedure(Draft& draft, const Names& names) {
  if (draft.keep) rename_all(*draft.keep, names);
  for (StepDraft* step : all_steps(draft.steps)) {
    step->subject = renamed(step->subject, names);
    rename_all(step->devices, names);
    if (step->via) step->via = renamed(*step->via, names);
  }
  for (ConditionDraft* condition : all_conditions(draft)) {
    if (condition->word != "done") rename_all(condition->names, names);
  }
  if (!draft.goal) return;
  rename_all(draft.goal->stack, names);
  if (draft.goal->primary) draft.goal->primary = renamed(*draft.goal->primary, names);
}

Side opposite(Side side) {
  if (side == Side::none) return side;
  return side == Side::east ? Side::west : Side::east;
}

}  // namespace

bool rename_devices(Random& random, Draft& draft) {
  std::vector<std::string> fresh = {"yard-2", "yard-10", "gate.7", "9", "Quay_B", "a-a"};
  random.shuffle(fresh);
  Names names;
  for (const DeviceDraft& device : draft.devices) {
    names[device.name] = fresh.back();
    fresh.pop_back();
  }
  rename_site(draft, names);
  rename_procedure(draft, names);
  return true;
}

bool write_defaults(Draft& draft) {
  const Factory& factory = draft.platform.factory;
  int without_address = 0;
  for (DeviceDraft& d : draft.devices) {
    if (!d.address) d.address = fmt::format("02:00:{:02x}:00:00:00", ++without_address);
    if (!d.on) d.on = true;
    if (!d.number) d.number = factory.number;
    if (!d.next_number) d.next_number = d.number;
    if (!d.priority) d.priority = factory.priority;
    if (!d.startup_priority) d.startup_priority = d.priority;
    if (!d.tenure) d.tenure = 0;
    if (!d.software) d.software = "1";
    for (PortDraft& p : d.ports) {
      if (!p.enabled) p.enabled = factory.enabled;
      if (!p.startup_enabled) p.startup_enabled = p.enabled;
      if (!p.side) p.side = factory.side;
      if (!p.startup_side) p.startup_side = p.side;
      if (!p.operational) p.operational = p.side;
    }
  }
  for (CableDraft& cable : draft.cables) {
    if (!cable.plugged) cable.plugged = true;
  }
  if (!draft.max_members_stated) {
    draft.platform.max_members = draft.platform.numbers.high - draft.platform.numbers.low + 1;
    draft.max_members_stated = true;
  }
  if (!draft.keep) {
    draft.keep.emplace();
    for (const DeviceDraft& d : draft.devices) {
      if (!draft.stack && *d.on) draft.keep->push_back(d.name);
    }
    if (draft.stack) draft.keep = draft.stack->members;
    if (draft.keep->empty()) draft.keep.reset();
  }
  if (draft.goal && !draft.goal->saved) draft.goal->saved = false;
  return true;
}

bool write_consoles(Draft& draft) {
  bool any = false;
  for (StepDraft* step : all_steps(draft.steps)) {
    if (step->via || step->verb < Verb::restart || step->verb > Verb::save) continue;
    const bool of_devices = step->verb == Verb::apply || step->verb == Verb::save;
    if (of_devices && (step->stack_of || step->devices.size() != 1)) continue;
    step->via = of_devices ? step->devices.front() : differential::device_of(step->subject);
    any = true;
  }
  return any;
}

bool exchange_sides(Draft& draft) {
  const auto exchange = [](std::optional<Side>& side) {
    if (side) side = opposite(*side);
  };
  draft.platform.factory.side = opposite(draft.platform.factory.side);
  for (DeviceDraft& device : draft.devices) {
    for (PortDraft& port : device.ports) {
      exchange(port.side);
      exchange(port.startup_side);
      exchange(port.operational);
    }
  }
  for (StepDraft* step : all_steps(draft.steps)) step->side = opposite(step->side);
  for (ConditionDraft* condition : all_conditions(draft)) {
    if (condition->word != "side" || condition->value == "none") continue;
    condition->value = condition->value == "east" ? "west" : "east";
  }
  return true;
}

bool move_numbers(Draft& draft, std::int64_t distance) {
  Platform& p = draft.platform;
  for (std::int64_t* number : {&p.numbers.low, &p.numbers.high, &p.factory.number}) *number += distance;
  for (DeviceDraft& device : draft.devices) {
    for (auto* number : {&device.number, &device.next_number}) {
      if (*number) **number += distance;
    }
  }
  for (StepDraft* step : all_steps(draft.steps)) {
    if (step->verb == Verb::set_number) step->to += distance;
  }
  for (ConditionDraft* condition : all_conditions(draft)) {
    if (condition->word == "number") condition->value = std::to_string(std::stoll(condition->value) + distance);
  }
  return true;
}

bool turn_cables(Draft& draft) {
  for (CableDraft& cable : draft.cables) std::swap(cable.a, cable.b);
  return !draft.cables.empty();
}

}  // namespace cairn::metamorphic

#include "report/why.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/words.hpp"
#include "semantics/conditions.hpp"
#include "semantics/state.hpp"

namespace cairn::report {

namespace {

using semantics::Derived;
using semantics::World;

// Why the end p of a cable has no side in force.
std::string sideless(const Model& model, const State& s, PortId p) {
  if (s[p].side == Side::none) return fmt::format("port {} has no side", model[p].name);
  return fmt::format("side {} of port {} is set but not applied", name_of(s[p].side), model[p].name);
}

// 3.a
void explain_cable(const Model& model, const State& s, CableId c, std::vector<std::string>& reasons) {
  const Cable& cable = model[c];
  if (!s[c].plugged) return reasons.push_back(fmt::format("cable {} is not plugged in", cable.name));
  if (s[c].broken) reasons.push_back(fmt::format("cable {} is broken", cable.name));
  for (const PortId p : {cable.a, cable.b}) {
    const DeviceId d = model[p].device;
    if (s[d].power != Power::up) {
      reasons.push_back(standing(model, s, d));
    } else if (!s[p].enabled) {
      reasons.push_back(fmt::format("port {} is disabled", model[p].name));
    }
  }
}

// 3.b, facing
void explain_sides(const Model& model, const State& s, const Cable& cable, std::vector<std::string>& reasons) {
  const Side a = s[cable.a].operational_side;
  const Side b = s[cable.b].operational_side;
  if (a == Side::none) reasons.push_back(sideless(model, s, cable.a));
  if (b == Side::none) reasons.push_back(sideless(model, s, cable.b));
  if (a != Side::none && a == b && model.platform.facing == Facing::opposite) {
    reasons.push_back(
        fmt::format("ports {} and {} both have side {}", model[cable.a].name, model[cable.b].name, name_of(a)));
  }
}

// 3.b, side-leads-to: the neighbours that a side of d leads to, where there are two or more.
void explain_two_neighbours(const World& world, const State& s, const Derived& derived, CableId c,
                            std::vector<std::string>& reasons) {
  const Model& model = world.model();
  for (const PortId p : {model[c].a, model[c].b}) {
    const DeviceId d = model[p].device;
    std::vector<std::string> neighbours;
    for (const auto& end : world.ends_at(d)) {
      if (derived.cable_up[end.cable.value] == 0) continue;
      if (s[end.here].operational_side != s[p].operational_side) continue;
      const std::string& name = model[end.other].name;
      if (std::find(neighbours.begin(), neighbours.end(), name) == neighbours.end()) neighbours.push_back(name);
    }
    if (neighbours.size() < 2) continue;
    reasons.push_back(fmt::format("side {} of {} leads to {} at once", name_of(s[p].operational_side), model[d].name,
                                  listed(neighbours)));
  }
}

// A number or a priority, and the one that waits for the next start.
std::string value_told(std::string_view what, const std::string& device, std::int64_t now, std::int64_t next) {
  return fmt::format("the {} of {} is {}{}", what, device, now,
                     next == now ? "" : fmt::format(" until its next start, then {}", next));
}

// A device that leads alone was to follow: which cables ought to link it.
std::string why_alone(const World& world, const State& s, const Derived& derived, DeviceId d) {
  const Model& model = world.model();
  std::vector<std::string> cables;
  for (const auto& end : world.ends_at(d)) {
    if (derived.linked[end.cable.value] != 0) return standing(model, s, d);
    if (!s[end.cable].plugged) continue;
    cables.push_back(fmt::format("cable {} forms no link ({})", model[end.cable].name,
                                 listed(why_no_link(world, s, derived, end.cable))));
  }
  return fmt::format("{}: {}", standing(model, s, d), cables.empty() ? "no cable is plugged into it" : listed(cables));
}

// What an atom speaks of, as it is in `s`, whether the atom holds or not.
std::string fact_of(const World& world, const State& s, const Derived& derived, const Condition& atom) {
  const Model& model = world.model();
  const auto device = [&] { return atom.devices.front(); };
  const bool it_holds = semantics::holds(world, s, derived, atom);
  switch (atom.kind) {
    case Condition::Kind::linked:
      return it_holds ? fmt::format("cable {} is linked", model[atom.cable].name)
                      : fmt::format("cable {} forms no link ({})", model[atom.cable].name,
                                    listed(why_no_link(world, s, derived, atom.cable)));
    case Condition::Kind::cable_up:
      return it_holds ? fmt::format("cable {} is up", model[atom.cable].name)
                      : fmt::format("cable {} is not up ({})", model[atom.cable].name,
                                    listed(why_no_link(world, s, derived, atom.cable)));
    case Condition::Kind::together:
      return fmt::format("{} are {}together", listed(names_of(model, atom.devices)),
                         it_holds                  ? ""
                         : atom.devices.size() > 2 ? "not all "
                                                   : "not ");
    case Condition::Kind::number:
      return value_told("number", model[device()].name, s[device()].number, s[device()].next_number);
    case Condition::Kind::priority:
      return value_told(
          "priority", model[device()].name, s[device()].priority,
          model.platform.priority_takes == Takes::at_restart ? s[device()].startup_priority : s[device()].priority);
    case Condition::Kind::saved:
      return it_holds ? fmt::format("all of {} is saved", model[device()].name)
                      : fmt::format("not saved on {}: {}", model[device()].name, listed(unsaved(model, s, device())));
    case Condition::Kind::enabled:
      return fmt::format("port {} is {}", model[atom.port].name, it_holds ? "enabled" : "disabled");
    case Condition::Kind::side:
      if (s[atom.port].operational_side == Side::none) return sideless(model, s, atom.port);
      return fmt::format("port {} has side {}", model[atom.port].name, name_of(s[atom.port].operational_side));
    case Condition::Kind::done:
      return fmt::format("{} is {}done", model[atom.step].id, it_holds ? "" : "not ");
    case Condition::Kind::follower:
      return !it_holds && s[device()].leader == device() ? why_alone(world, s, derived, device())
                                                         : standing(model, s, device());
    default:
      return standing(model, s, device());
  }
}

// The facts for which `condition` differs from `wanted`; none where it does not.
void explain(const World& world, const State& s, const Derived& derived, const Condition& condition, bool wanted,
             std::vector<std::string>& facts) {
  if (semantics::holds(world, s, derived, condition) == wanted) return;
  switch (condition.kind) {
    case Condition::Kind::negation:
      return explain(world, s, derived, condition.parts[0], !wanted, facts);
    case Condition::Kind::implies:
      explain(world, s, derived, condition.parts[0], !wanted, facts);
      return explain(world, s, derived, condition.parts[1], wanted, facts);
    case Condition::Kind::all:
    case Condition::Kind::any:
      for (const auto& part : condition.parts) explain(world, s, derived, part, wanted, facts);
      return;
    default:
      break;
  }
  std::string fact = fact_of(world, s, derived, condition);
  if (std::find(facts.begin(), facts.end(), fact) == facts.end()) facts.push_back(std::move(fact));
}

}  // namespace

std::optional<ElectionKey> deciding_key(const Model& model, const State& s, DeviceId winner, DeviceId loser) {
  for (const ElectionKey key : model.platform.election) {
    switch (key) {
      case ElectionKey::priority:
        if (s[winner].priority != s[loser].priority) return key;
        break;
      case ElectionKey::tenure:
        if (semantics::senior(s, winner, loser)) return key;
        break;
      case ElectionKey::number:
        if (s[winner].number != s[loser].number) return key;
        break;
    }
  }
  return {};
}

std::string why_outranks(const Model& model, const State& s, DeviceId winner, DeviceId loser) {
  const auto key = deciding_key(model, s, winner, loser);
  if (key == ElectionKey::priority) {
    return fmt::format("its higher priority ({} against {})", s[winner].priority, s[loser].priority);
  }
  if (key == ElectionKey::number) {
    return fmt::format("its lower number ({} against {})", s[winner].number, s[loser].number);
  }
  return key == ElectionKey::tenure ? "its longer time up" : "its lower address";
}

std::string why_outranks_all(const Model& model, const State& s, DeviceId winner, const std::vector<DeviceId>& losers) {
  if (losers.size() == 1) return why_outranks(model, s, winner, losers.front());
  const auto key = deciding_key(model, s, winner, losers.front());
  for (const DeviceId loser : losers) {
    if (deciding_key(model, s, winner, loser) != key) return {};
  }
  const std::string reason = why_outranks(model, s, winner, losers.front());
  return reason.substr(0, reason.find(" ("));
}

std::vector<std::string> why_no_link(const World& world, const State& s, const Derived& derived, CableId c) {
  const Model& model = world.model();
  std::vector<std::string> reasons;
  explain_cable(model, s, c, reasons);
  if (!reasons.empty()) return reasons;
  const Cable& cable = model[c];
  explain_sides(model, s, cable, reasons);
  const Device& d = model[model[cable.a].device];
  const Device& e = model[model[cable.b].device];
  if (model.platform.software == Software::must_match && d.software != e.software) {
    reasons.push_back(fmt::format("{} runs software {}, {} runs {}", d.name, d.software, e.name, e.software));
  }
  if (reasons.empty()) explain_two_neighbours(world, s, derived, c, reasons);
  return reasons;
}

std::vector<std::string> unsaved(const Model& model, const State& s, DeviceId d) {
  std::vector<std::string> items;
  if (s[d].next_number != s[d].number) {
    items.push_back(fmt::format("number {} (due at the next start)", s[d].next_number));
  }
  if (s[d].startup_priority != s[d].priority) {
    items.push_back(model.platform.priority_takes == Takes::at_restart
                        ? fmt::format("priority {} (due at the next start)", s[d].startup_priority)
                        : fmt::format("priority {}", s[d].priority));
  }
  for (const PortId p : model[d].ports) {
    const PortState& port = s[p];
    const std::string& name = model[p].name;
    if (port.enabled != port.startup_enabled) {
      items.push_back(fmt::format("port {} {}", name, port.enabled ? "enabled" : "disabled"));
    }
    if (port.side != port.startup_side || port.side != port.operational_side) {
      items.push_back(fmt::format("side {} of {}{}", name_of(port.side), name,
                                  port.side != port.operational_side ? " (not applied)" : ""));
    }
  }
  return items;
}

std::string why_false(const World& world, const State& s, const Derived& derived, const Condition& condition) {
  std::vector<std::string> facts;
  explain(world, s, derived, condition, true, facts);
  return fmt::format("{}", fmt::join(facts, "; "));
}

std::string standing(const Model& model, const State& s, DeviceId d) {
  const std::string& name = model[d].name;
  switch (s[d].power) {
    case Power::off:
      return name + " is off";
    case Power::starting:
      return name + " is still starting";
    case Power::held:
      return name + " is held";
    case Power::up:
      break;
  }
  if (!s[d].leader) return name + " has no leader yet";
  if (s[d].leader == d) return name + " leads itself";
  return fmt::format("{} follows {}", name, model[s[d].leader].name);
}

DeviceId clashes_with(const Derived& derived, const State& s, DeviceId d) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId e(i);
    if (e != d && derived.together(d, e) && s[e].number == s[d].number) return e;
  }
  return {};
}

std::vector<CableId> open_cables(const World& world, const State& s, const Derived& derived, DeviceId a, DeviceId b) {
  const Model& model = world.model();
  std::vector<CableId> open;
  for (std::size_t i = 0; i < s.cables.size(); ++i) {
    const CableId c(i);
    if (!s[c].plugged || derived.linked[i] != 0) continue;
    const DeviceId d = device_a(model, c);
    const DeviceId e = device_b(model, c);
    const auto near = [&](DeviceId one, DeviceId of) { return one == of || derived.together(one, of); };
    if ((near(d, a) || near(e, a) || near(d, b) || near(e, b)) && !derived.together(d, e)) open.push_back(c);
  }
  return open;
}

}  // namespace cairn::report

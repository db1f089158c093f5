#include "explore/reduce/cuts.hpp"

#include <algorithm>

#include "explore/domains.hpp"
#include "semantics/events.hpp"
#include "semantics/precedence.hpp"

namespace cairn::explore {

namespace {

std::vector<CableId> cables_of(const semantics::World& world, DeviceId d) {
  std::vector<CableId> cables;
  for (const semantics::CableEnd& end : world.ends_at(d)) cables.push_back(end.cable);
  return cables;
}

// 3.b: "no other cable that is cable_up joins a third device to a port of either device whose operational side equals
// that of the same device's end of c"
}  // namespace

bool may_be_crowded(const semantics::World& world) {
  if (world.platform().side_leads_to != SideLeadsTo::one_neighbour) return false;
  const Domains domains = domains_of(world);
  for (std::size_t i = 0; i < world.device_count(); ++i) {
    const std::vector<semantics::CableEnd>& ends = world.ends_at(DeviceId(i));
    for (const semantics::CableEnd& a : ends) {
      for (const semantics::CableEnd& b : ends) {
        if (a.other == b.other || a.here == b.here) continue;
        const Values<Side>& sides = domains.sides[a.here.value];
        const Values<Side>& others = domains.sides[b.here.value];
        const auto is_of_both = [&](Side side) {
          return side != Side::none && std::find(others.begin(), others.end(), side) != others.end();
        };
        if (std::any_of(sides.begin(), sides.end(), is_of_both)) return true;
      }
    }
  }
  return false;
}

namespace {

unsigned bit(Side side) {
  return 1U << static_cast<unsigned>(side);
}

}  // namespace

Cuts::Cuts(const semantics::World& world)
    : world_(world), crowded_(may_be_crowded(world)), settings_(world.site().ports.size()) {
  const semantics::Precedence precedence(world.model().procedure);
  for (std::size_t i = 0; i < world.steps().size(); ++i) add_step(StepId(i), precedence);
}

void Cuts::add_step(StepId id, const semantics::Precedence& precedence) {
  const Step& step = world_.model()[id];
  const Platform& platform = world_.platform();
  switch (step.verb) {
    case Verb::power_off:
    case Verb::restart:
      return add(id, {}, cables_of(world_, step.device), precedence);
    case Verb::disable:
      return add(id, {}, world_.cables_at(step.port), precedence);
    case Verb::unplug:
      return add(id, {}, {step.cable}, precedence);
    case Verb::set_number:  // 5.f: settings that are reset at once
      if (platform.number_takes == Takes::at_once && platform.settings_follow == SettingsFollow::number) {
        add(id, {}, cables_of(world_, step.device), precedence);
      }
      return;
    case Verb::set_side:
    case Verb::clear_side:
      settings_[step.port.value].push_back({id, step.side});
      if (platform.side_takes == SideTakes::at_once) add(id, step.port, world_.cables_at(step.port), precedence);
      return;
    case Verb::apply:
      for (const DeviceId d : step.devices) add_sides(id, d, precedence);
      if (!step.stack_of) return;
      for (std::size_t i = 0; i < world_.device_count(); ++i) add_sides(id, DeviceId(i), precedence);
      return;
    default:  // what adds links, or touches none
      return;
  }
}

void Cuts::add_sides(StepId id, DeviceId d, const semantics::Precedence& precedence) {
  for (const PortId p : world_.model()[d].ports) add(id, p, world_.cables_at(p), precedence);
}

void Cuts::add(StepId id, PortId port, const std::vector<CableId>& cables, const semantics::Precedence& precedence) {
  Cutter cutter{id, port, {}};
  for (const CableId c : cables) {
    Way way{c, {}};
    for (std::size_t i = 0; i < world_.steps().size(); ++i) {
      const Step& step = world_.steps()[i];
      if (step.verb == Verb::plug && step.cable == c && !precedence.before(id, StepId(i))) way.plugs.emplace_back(i);
    }
    cutter.ways.push_back(std::move(way));
  }
  if (!cutter.ways.empty()) cutters_.push_back(std::move(cutter));
}

bool Cuts::may_be_plugged(const State& s, const Way& way) const {
  const CableState& cable = s[way.cable];
  if (cable.plugged && (!cable.broken || s.left.mends)) return true;
  return std::any_of(way.plugs.begin(), way.plugs.end(), [&](StepId plug) { return semantics::pending(s, plug); });
}

// From a side that is not none to another. What an operational side may be until then: what it is, or what a start, a
// step or a reset (5.f) makes of it.
bool Cuts::may_change_side(const State& s, PortId p) const {
  const PortState& port = s[p];
  if (port.operational_side != Side::none && port.side != port.operational_side) return true;
  unsigned before = bit(port.operational_side) | bit(port.side) | bit(port.startup_side);
  if (world_.platform().settings_follow == SettingsFollow::number) before |= bit(world_.platform().factory.side);
  unsigned after = 0;
  for (const Setting& setting : settings_[p.value]) {
    if (semantics::pending(s, setting.step)) after |= bit(setting.side);
  }
  before = (before | after) & ~bit(Side::none);
  for (const Side side : {Side::none, Side::east, Side::west}) {
    if ((after & bit(side)) != 0 && (before & ~bit(side)) != 0) return true;
  }
  return false;
}

bool Cuts::may_follow(const State& s) const {
  if (crowded_ || s.left.crashes > 0 || s.left.cable_breaks > 0) return true;
  return std::any_of(cutters_.begin(), cutters_.end(), [&](const Cutter& cutter) {
    if (!semantics::pending(s, cutter.step)) return false;
    if (cutter.port && !may_change_side(s, cutter.port)) return false;
    return std::any_of(cutter.ways.begin(), cutter.ways.end(), [&](const Way& way) { return may_be_plugged(s, way); });
  });
}

}  // namespace cairn::explore

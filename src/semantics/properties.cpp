#include "semantics/properties.hpp"

#include <algorithm>

#include "semantics/conditions.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"

namespace cairn::semantics {

namespace {

using Cause = Breach::Cause;
using GoalPart = Breach::GoalPart;

Breach breach(Cause cause, DeviceId a = {}, DeviceId b = {}) {
  return {cause, GoalPart::none, a, b, {}};
}
Breach missed(GoalPart part, DeviceId a = {}, DeviceId b = {}) {
  return {Cause::goal_missed, part, a, b, {}};
}

bool admitted(const State& s, DeviceId d) {
  return s[d].power == Power::up && !fresh(s, d);
}

// 6.1
std::optional<Breach> split_in(const World& world, const State& s, const Derived& derived) {
  DeviceId first;  // the first device of keep that is up and admitted
  for (const DeviceId d : world.model().procedure.keep) {
    if (s[d].power == Power::held) return breach(Cause::kept_device_held, d);
    if (!admitted(s, d)) continue;
    if (!first) first = d;
    if (s[d].leader != s[first].leader) return breach(Cause::two_leaders, first, d);
  }
  if (!first) return {};
  // All of keep follow one leader, so that its followers are together with each of keep when they are with the first.
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId e(i);
    if (admitted(s, e) && s[e].leader == s[first].leader && !derived.together(first, e)) {
      return breach(Cause::cut_apart, first, e);
    }
  }
  return {};
}

// 6.4
std::optional<Breach> clash_in(const World& world, const State& s, const Derived& derived) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId d(i);
    if (s[d].power == Power::held) return breach(Cause::held, d);
    if (!admitted(s, d)) continue;
    for (DeviceId e = derived.next_in_class[i]; e; e = derived.next_in_class[e.value]) {
      if (e > d && admitted(s, e) && world.equal(s[e].number, s[d].number)) return breach(Cause::same_number, d, e);
    }
  }
  return {};
}

}  // namespace

std::optional<Breach> broken_in(const World& world, const State& s, const Derived& derived, Property property) {
  switch (property) {
    case Property::no_split:
      return split_in(world, s, derived);
    case Property::no_clash:
      return clash_in(world, s, derived);
    default:
      return {};
  }
}

std::optional<Breach> broken_by(const World& world, const State& s, const PassPlan& plan, Property property) {
  if (property != Property::primary_stays && property != Property::members_stay) return {};
  const auto counts = [&](DeviceId d) { return world.keeps(d) && (property == Property::members_stay || leads(s, d)); };
  for (const DeviceId d : plan.restarted) {
    if (counts(d)) return breach(Cause::settled_down, d);
  }
  for (const DeviceId d : plan.held) {
    if (counts(d)) return breach(Cause::settled_held, d);
  }
  return {};
}

std::optional<Breach> broken_by(const World& world, const State& s, const Event& event, Refusal refusal,
                                Property property) {
  if (event.kind != Event::Kind::step) return {};  // 6.c: a crash is the fault's doing; 6.d: so is an omission
  Breach by_step = breach(Cause::taken_down);
  by_step.step = event.step();
  if (property == Property::no_refusal) {
    by_step.cause = Cause::refused;
    return refusal == Refusal::none ? std::nullopt : std::optional(by_step);
  }
  if (property != Property::primary_stays && property != Property::members_stay) return {};
  const Step& step = world.model()[event.step()];
  if (refusal != Refusal::none || (step.verb != Verb::restart && step.verb != Verb::power_off)) return {};
  if (!world.keeps(step.device)) return {};
  const bool took_down = property == Property::members_stay ? running(s, step.device) : leads(s, step.device);
  if (!took_down) return {};
  by_step.a = step.device;
  return by_step;
}

std::optional<Breach> goal_stack_apart(const World& world, const Derived& derived) {
  const std::vector<DeviceId>& stack = world.model().procedure.goal->stack;
  for (const DeviceId d : stack) {
    if (!derived.together(stack.front(), d)) return breach(Cause::loss_cuts, stack.front(), d);
  }
  return {};
}

std::optional<Breach> goal_missed(const World& world, const State& s, const Derived& derived) {
  const Goal& goal = *world.model().procedure.goal;
  if (const auto apart = goal_stack_apart(world, derived)) return missed(GoalPart::together, apart->a, apart->b);
  const DeviceId leader = s[goal.stack.front()].leader;
  for (const DeviceId d : goal.stack) {
    if (!leader || s[d].leader != leader) return missed(GoalPart::one_leader, goal.stack.front(), d);
  }
  if (goal.primary && leader != goal.primary) return missed(GoalPart::primary, leader, goal.primary);
  if (goal.saved) {
    for (const DeviceId d : goal.stack) {
      if (!saved(world, s, d)) return missed(GoalPart::saved, d);
    }
  }
  if (goal.where && !holds(world, s, derived, *goal.where)) return missed(GoalPart::where);
  return {};
}

std::optional<Breach> broken_at_rest(const World& world, const State& s, const Derived& derived) {
  if (!complete(s)) return breach(Cause::not_complete);
  if (auto miss = goal_missed(world, s, derived)) return miss;
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    if (!derived.heads_class(DeviceId(i))) continue;
    std::int64_t members = 0;
    for (DeviceId d(i); d; d = derived.next_in_class[d.value]) ++members;
    if (members > world.platform().max_members) return breach(Cause::too_many_members, DeviceId(i));
  }
  return {};
}

void cold_start(const World& world, State& s) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId d(i);
    if (s[d].power == Power::off) continue;
    come_up(world, s, d);
    s[d].leader = DeviceId();
    s[d].seniority = 1;  // no one senior to another
  }
}

std::optional<Breach> broken_by_cold_start(const World& world, State& s, Scratch& scratch, Watcher& watcher) {
  cold_start(world, s);
  settle(world, s, scratch, watcher);
  return goal_missed(world, s, scratch.derived);
}

std::vector<CableId> breakable(const State& s) {
  std::vector<CableId> cables;
  for (std::size_t i = 0; i < s.cables.size(); ++i) {
    if (s.cables[i].plugged && !s.cables[i].broken) cables.emplace_back(i);
  }
  return cables;
}

bool a_kept_device_leads(const World& world, const State& s) {
  const std::vector<DeviceId>& keep = world.model().procedure.keep;
  return std::any_of(keep.begin(), keep.end(), [&](DeviceId d) { return leads(s, d); });
}

}  // namespace cairn::semantics

#include "naive/properties.hpp"

#include <algorithm>

#include "naive/derived.hpp"

namespace cairn::naive {

namespace {

bool admitted(const World& world, DeviceId d) {
  return world[d].power == Power::up && world[d].leader;
}

std::set<DeviceId> kept(const Model& model) {
  return {model.procedure.keep.begin(), model.procedure.keep.end()};
}

/// 6.1
bool split(const Model& model, const World& world) {
  const std::set<DeviceId> keep = kept(model);
  for (const DeviceId d : keep) {
    if (world[d].power == Power::held) return true;
    if (!admitted(world, d)) continue;
    const std::set<DeviceId> with_d = class_of(model, world, d);
    for (const DeviceId e : all_devices(model)) {
      if (!admitted(world, e)) continue;
      if (keep.contains(e) && world[e].leader != world[d].leader) return true;
      if (world[e].leader == world[d].leader && !with_d.contains(e)) return true;
    }
  }
  return false;
}

/// 6.4
bool clash(const Model& model, const World& world) {
  for (const DeviceId d : all_devices(model)) {
    if (world[d].power == Power::held) return true;
  }
  for (const auto& members : classes(model, world)) {
    std::set<std::int64_t> numbers;
    for (const DeviceId d : members) {
      if (admitted(world, d) && !numbers.insert(world[d].number).second) return true;
    }
  }
  return false;
}

/// 6.2 with `leading_only`, 6.3 without.
bool disturbs(const Model& model, const Happening& happening, bool leading_only) {
  const std::set<DeviceId> keep = kept(model);
  if (happening.taken_down && keep.contains(happening.taken_down) && (happening.led_itself || !leading_only)) {
    return true;
  }
  for (const Pass& pass : happening.passes) {
    for (const DeviceId d : keep) {
      const bool goes_down = pass.restarted.contains(d) || pass.held.contains(d);
      if (goes_down && (pass.before[d].leader == d || !leading_only)) return true;
    }
  }
  return false;
}

/// 6.6 of a settled state.
bool misses_goal(const Model& model, const World& settled) {
  if (!at_rest(model, settled)) return false;
  if (!complete(model, settled) || !goal_holds(model, settled)) return true;
  for (const auto& members : classes(model, settled)) {
    if (static_cast<std::int64_t>(members.size()) > model.platform.max_members) return true;
  }
  return false;
}

template <class Test>
bool in_some_state(const Happening& happening, Test test) {
  if (test(happening.left)) return true;
  return std::any_of(happening.passes.begin(), happening.passes.end(),
                     [&](const Pass& pass) { return test(pass.after); });
}

void choose(const std::vector<CableId>& cables, std::size_t from, std::size_t wanted, std::vector<CableId>& chosen,
            std::vector<std::vector<CableId>>& all) {
  if (wanted == 0) {
    all.push_back(chosen);
    return;
  }
  for (std::size_t i = from; i < cables.size(); ++i) {
    chosen.push_back(cables[i]);
    choose(cables, i + 1, wanted - 1, chosen, all);
    chosen.pop_back();
  }
}

}  // namespace

bool breaks(const Model& model, Property property, const Happening& happening) {
  switch (property) {
    case Property::no_split:
      return in_some_state(happening, [&](const World& w) { return split(model, w); });
    case Property::primary_stays:
      return disturbs(model, happening, true);
    case Property::members_stay:
      return disturbs(model, happening, false);
    case Property::no_clash:
      return in_some_state(happening, [&](const World& w) { return clash(model, w); });
    case Property::no_refusal:
      return happening.refused;
    case Property::reaches_goal:
      return misses_goal(model, happening.settled());
    case Property::survives_cold_start:
    case Property::tolerates_loss:
      return false;  // asked of complete states at rest, below
  }
  return false;
}

bool goal_holds(const Model& model, const World& world) {
  const Goal& goal = *model.procedure.goal;
  if (!together(model, world, goal.stack)) return false;
  const DeviceId leader = world[goal.stack.front()].leader;
  if (!leader || (goal.primary && leader != goal.primary)) return false;
  for (const DeviceId d : goal.stack) {
    if (world[d].leader != leader) return false;
    if (goal.saved && !saved(model, world, d)) return false;
  }
  return !goal.where || holds(model, world, *goal.where);
}

bool dies_of_cold_start(const Model& model, const World& at_rest) {
  return !goal_holds(model, cold_start(model, at_rest).settled());
}

std::vector<std::vector<CableId>> losses(const Model& model, const World& at_rest, std::int64_t k) {
  std::vector<CableId> whole;
  for (const CableId c : all_cables(model)) {
    if (at_rest[c].plugged && !at_rest[c].broken) whole.push_back(c);
  }
  std::vector<CableId> chosen;
  std::vector<std::vector<CableId>> all;
  choose(whole, 0, std::min(static_cast<std::size_t>(k), whole.size()), chosen, all);
  return all;
}

bool loss_cuts(const Model& model, const World& at_rest, const std::vector<CableId>& loss) {
  World after = at_rest;
  for (const CableId c : loss) after[c].broken = true;
  return !together(model, after, model.procedure.goal->stack);
}

}  // namespace cairn::naive

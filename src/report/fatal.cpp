#include "report/fatal.hpp"

#include <algorithm>

#include "semantics/properties.hpp"

namespace cairn::report {

namespace {

bool names(const std::vector<DeviceId>& devices, DeviceId d) {
  return std::find(devices.begin(), devices.end(), d) != devices.end();
}

// The property of 6.1 or 6.4 that a state breaks by this cause, if it is one of them.
std::optional<Property> broken_in_a_state(Breach::Cause cause) {
  switch (cause) {
    case Breach::Cause::two_leaders:
    case Breach::Cause::cut_apart:
    case Breach::Cause::kept_device_held:
      return Property::no_split;
    case Breach::Cause::held:
    case Breach::Cause::same_number:
      return Property::no_clash;
    default:
      return {};
  }
}

}  // namespace

const State& fatal_state(const semantics::World& world, const Walk& walk, const Breach& breach) {
  const bool at_start = walk.moments.empty();
  const State* state = at_start ? &walk.initial : &walk.moments.back().left;
  const std::vector<Pass>& passes = at_start ? walk.initial_passes : walk.moments.back().passes;
  const auto property = broken_in_a_state(breach.cause);
  const auto breaks = [&](const State& s) {
    return property && semantics::broken_in(world, s, semantics::derive(world, s), *property).has_value();
  };
  const bool of_settling = breach.cause == Breach::Cause::settled_down || breach.cause == Breach::Cause::settled_held;
  for (const Pass& pass : passes) {
    if (breaks(*state)) return *state;
    // A device that is held was told apart in the state before.
    const bool takes_it = names(pass.held, breach.a) || names(pass.restarted, breach.a);
    if (takes_it && (of_settling || (property && breaks(pass.after)))) return *state;
    state = &pass.after;
  }
  return *state;
}

DeviceId winner_over(const semantics::World& world, const State& s, DeviceId loser) {
  const semantics::Derived derived = derive(world, s);
  DeviceId winner;
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId d(i);
    if (s[d].leader != d || !derived.together(d, loser)) continue;
    if (!winner || semantics::outranks(world, s, d, winner)) winner = d;
  }
  return winner;
}

const State& state_before_end(const Walk& walk, const Breach& breach) {
  std::size_t first = walk.moments.size() - 1;
  if (breach.cause == Breach::Cause::loss_cuts) {
    while (first > 0 && walk.moments[first - 1].event.kind == Event::Kind::broke) --first;
  }
  return walk.moments[first].before;
}

}  // namespace cairn::report

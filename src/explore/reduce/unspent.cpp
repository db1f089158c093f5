#include "explore/reduce/unspent.hpp"

#include <algorithm>

#include "semantics/events.hpp"

namespace cairn::explore {

using semantics::any_pending;

Unspent::Unspent(const semantics::World& world)
    : breaks_start_(world.platform().orphans == Orphans::restart ||
                    world.platform().side_leads_to == SideLeadsTo::one_neighbour) {
  for (std::size_t i = 0; i < world.steps().size(); ++i) {
    const Verb verb = world.steps()[i].verb;
    all_steps_.emplace_back(i);
    if (verb != Verb::await && verb != Verb::check) steps_.emplace_back(i);
  }
}

// 5.c.4
bool Unspent::may_omit(const State& s) const {
  return any_pending(s, steps_);
}

// 5.c.5. A device that is up starts again where it crashes, where a step or what follows it takes it down, where it is
// orphaned and restarts (4.2.a), and where it loses a contest (4.2.d), which takes a link that forms: by a step, by a
// cable that mends, or, where a side leads to one neighbour (3.b), by a break of the other cable; if not by a start.
bool Unspent::may_start(const State& s) const {
  const bool starting =
      std::any_of(s.devices.begin(), s.devices.end(), [](const DeviceState& d) { return d.power == Power::starting; });
  const bool broken = std::any_of(s.cables.begin(), s.cables.end(), [](const CableState& c) { return c.broken; });
  const bool mends = s.left.mends && (broken || s.left.cable_breaks > 0);
  const bool breaks = breaks_start_ && s.left.cable_breaks > 0;
  return starting || s.left.crashes > 0 || mends || breaks || any_pending(s, all_steps_);
}

bool Unspent::strike_off(State& s) const {
  const FaultBudget before = s.left;
  if (s.left.omissions > 0 && !may_omit(s)) s.left.omissions = 0;
  if (s.left.late_starts > 0 && !may_start(s)) s.left.late_starts = 0;
  return s.left != before;
}

}  // namespace cairn::explore

#include "explore/reduce/meetings.hpp"

#include <algorithm>

#include "semantics/events.hpp"
#include "semantics/precedence.hpp"

namespace cairn::explore {

using semantics::any_pending;
using semantics::CableEnd;

namespace {

/// What a condition demands in any case: its conjuncts.
template <class Visit>
void for_each_demand(const Condition& condition, Visit visit) {
  if (condition.kind != Condition::Kind::all) return visit(condition);
  for (const Condition& part : condition.parts) for_each_demand(part, visit);
}

}  // namespace

Meetings::Meetings(const semantics::World& world)
    : world_(world),
      plugs_(world.cable_count()),
      changes_(world.device_count()),
      followings_(world.device_count()),
      open_(world.cable_count()),
      branches_(world.device_count()) {
  const semantics::Precedence precedence(world.model().procedure);
  for (std::size_t i = 0; i < world.steps().size(); ++i) {
    const Step& step = world.steps()[i];
    switch (step.verb) {
      case Verb::plug:
        plugs_[step.cable.value].emplace_back(i);
        break;
      case Verb::restart:
      case Verb::power_off:
      case Verb::set_number:
      case Verb::set_priority:
        changes_[step.device.value].emplace_back(i);
        break;
      default:
        break;
    }
  }
  for (std::size_t i = 0; i < world.steps().size(); ++i) {
    const Step& step = world.steps()[i];
    if (step.verb != Verb::await) continue;
    for_each_demand(step.condition, [&](const Condition& demand) {
      if (demand.kind != Condition::Kind::follower) return;
      Following following{StepId(i), plugs_};
      for (std::vector<StepId>& plugs : following.plugs) {
        std::erase_if(plugs, [&](StepId plug) { return precedence.before(following.step, plug); });
      }
      followings_[demand.devices.front().value].push_back(std::move(following));
    });
  }
}

void Meetings::look_at(const State& s) {
  s_ = &s;
  for (std::size_t i = 0; i < open_.size(); ++i) {
    const bool whole = !s.cables[i].broken || s.left.mends;
    open_[i] = whole && (s.cables[i].plugged || any_pending(s, plugs_[i])) ? 1 : 0;
  }
  for (std::size_t i = 0; i < branches_.size(); ++i) {
    DeviceId one;
    DeviceId two;
    branches_[i] = 0;
    for (const CableEnd& end : world_.ends_at(DeviceId(i))) {
      if (open_[end.cable.value] == 0 || end.other == one || end.other == two) continue;
      if (two) branches_[i] = 1;
      (one ? two : one) = end.other;
    }
  }
}

bool Meetings::may_change(DeviceId d) const {
  return any_pending(*s_, changes_[d.value]);
}

std::size_t Meetings::distance(DeviceId d, DeviceId e) {
  const std::size_t far = world_.device_count();
  distances_.assign(far, far);
  reached_.assign(1, d);
  distances_[d.value] = 0;
  for (std::size_t i = 0; i < reached_.size() && reached_[i] != e; ++i) {
    const DeviceId here = reached_[i];
    for (const CableEnd& end : world_.ends_at(here)) {
      if (open_[end.cable.value] == 0 || distances_[end.other.value] != far) continue;
      distances_[end.other.value] = distances_[here.value] + 1;
      reached_.push_back(end.other);
    }
  }
  return distances_[e.value];
}

// Along devices of two neighbours each, from d on. Whoever leads on the way and outranks one of the two, say d, leads
// there until a stronger one does; d meets it first, and loses. Where it loses to e, e outranks d all the same. That
// holds as long as nobody on the way comes to another rank: who is the strongest now could give way to d later.
bool Meetings::is_open_way(DeviceId d, DeviceId e, const CableEnd& first, const Outranks& outranks) const {
  bool somebody_stands = false;
  bool ranks_stay = !may_change(d) && !may_change(e);
  DeviceId before = d;
  DeviceId here = first.other;
  while (here != e) {
    if (here == d) return false;
    if (branches_[here.value] != 0) return true;
    ranks_stay = ranks_stay && !may_change(here);
    const DeviceId leader = (*s_)[here].leader;  // on the way itself, since neither d nor e follows it
    if (leader && leader != d && leader != e && (outranks(leader, d) || outranks(leader, e))) somebody_stands = true;
    DeviceId next;
    for (const CableEnd& end : world_.ends_at(here)) {
      if (open_[end.cable.value] != 0 && end.other != before) next = end.other;
    }
    if (!next) return false;
    before = here;
    here = next;
  }
  return !somebody_stands || !ranks_stay;
}

// An await that d follows comes before every step that would let d and e meet; and who follows, follows (Cuts).
bool Meetings::follows_before(DeviceId d, DeviceId e) const {
  return std::any_of(followings_[d.value].begin(), followings_[d.value].end(), [&](const Following& following) {
    if (!semantics::pending(*s_, following.step)) return false;
    std::vector<DeviceId> reached{d};
    for (std::size_t i = 0; i < reached.size(); ++i) {
      for (const CableEnd& end : world_.ends_at(reached[i])) {
        const bool plugged = (*s_)[end.cable].plugged || any_pending(*s_, following.plugs[end.cable.value]);
        if (!plugged || std::find(reached.begin(), reached.end(), end.other) != reached.end()) continue;
        if (end.other == e) return false;
        reached.push_back(end.other);
      }
    }
    return true;
  });
}

bool Meetings::may_contest(DeviceId d, DeviceId e, const Outranks& outranks) const {
  if (follows_before(d, e) || follows_before(e, d)) return false;
  if (branches_[d.value] != 0 || branches_[e.value] != 0) return true;
  const std::vector<CableEnd>& ends = world_.ends_at(d);
  return std::any_of(ends.begin(), ends.end(), [&](const CableEnd& end) {
    return open_[end.cable.value] != 0 && is_open_way(d, e, end, outranks);
  });
}

}  // namespace cairn::explore

#include "explore/reduce/alone.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "semantics/conditions.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"

namespace cairn::explore {

Alone::Alone(const semantics::World& world, const FaultBudget& budget, const std::vector<AskedProperty>& asked,
             const std::vector<std::vector<DeviceId>>& devices, AskLimits ask)
    : world_(world),
      devices_of_steps_(devices),
      precedence_(world.model().procedure),
      ask_(std::move(ask)),
      off_(semantics::initial_state(world, {})),
      scene_(off_),
      inside_(world.device_count()),
      layout_(world, budget),
      forgetter_(world, Reductions()),
      store_(layout_.words()),
      put_off_(world.device_count()),
      sentry_(world),
      packed_(layout_.words()) {
  for (const AskedProperty& a : asked) {
    if (speaks_of_goal(a.property)) continue;
    asked_.push_back(a.property);
    sentry_.watch(a.property);
  }
  for (std::size_t i = 0; i < world.device_count(); ++i) semantics::go_down(off_, DeviceId(i), Power::off);
}

// Steps of others count as done, so that two scenes differ only by what is inside.
void Alone::set_scene(const State& s, const Components& parts, DeviceId head) {
  scene_ = s;
  scene_.left = {};
  for (std::size_t i = 0; i < inside_.size(); ++i) {
    const DeviceId d(i);
    inside_[i] = parts.of(d) == head ? 1 : 0;
    if (inside_[i] != 0) continue;
    semantics::go_down(scene_, d, Power::off);  // closes the gap in the order of seniority
    scene_[d] = off_[d];
    for (const PortId p : world_.model()[d].ports) scene_[p] = off_[p];
  }
  for (std::size_t i = 0; i < s.cables.size(); ++i) {
    if (inside_[world_.device_a(CableId(i)).value] == 0 && inside_[world_.device_b(CableId(i)).value] == 0) {
      scene_.cables[i] = {};
    }
  }
  own_.clear();
  for (std::size_t i = 0; i < s.done.size(); ++i) {
    const std::vector<DeviceId>& devices = devices_of_steps_[i];
    const bool is_own = !devices.empty() &&
                        std::all_of(devices.begin(), devices.end(), [&](DeviceId d) { return inside_[d.value] != 0; });
    if (is_own) {
      own_.emplace_back(i);
    } else {
      scene_.done[i] = 1;
    }
  }
  forgetter_.forget(scene_);
}

StateIndex Alone::insert(const State& s) {
  layout_.pack(s, packed_.data());
  const StateIndex index = store_.insert(packed_.data()).index;
  if (index == answers_.size()) answers_.push_back(Answer::unknown);
  return index;
}

bool Alone::has_turn(const State& s, StepId step) const {
  return semantics::pending(s, step) && std::all_of(own_.begin(), own_.end(), [&](StepId before) {
           return s.is_done(before) || !precedence_.before(before, step);
         });
}

void Alone::collect_events(const State& s, const semantics::Derived& derived) {
  events_.clear();
  for (const StepId step : own_) {
    const Step& what = world_.model()[step];
    if (!has_turn(s, step)) continue;
    if (what.verb == Verb::await && !semantics::holds(world_, s, derived, what.condition)) continue;
    events_.push_back({Event::Kind::step, step.value});
  }
  for (std::uint32_t i = 0; i < s.devices.size(); ++i) {
    if (s.devices[i].power == Power::starting) events_.push_back({Event::Kind::started, i});
  }
}

// Every state is expanded once: harmful are those that break something, and those from which one of them is reached.
// False where that would take more than half of what is left of the allowance: what broke nothing so far is left open
// then, and others get their turn.
bool Alone::explore(StateIndex from) {
  const std::uint64_t most = store_.size() + (allowance_ - std::min(allowance_, std::uint64_t{store_.size()})) / 2;
  std::vector<StateIndex> reached{from};
  std::vector<Arc> arcs;
  answers_[from] = Answer::reached;
  State here = scene_;
  bool complete = true;
  for (std::size_t i = 0; i < reached.size() && complete; ++i) {
    if (i % 64 == 0) {
      if (const auto met = ask_()) throw Stopped{*met};
    }
    layout_.unpack(store_[reached[i]], here);
    semantics::derive(world_, here, derived_);
    collect_events(here, derived_);
    for (const Event& event : events_) {
      State next = here;
      sentry_.reset();
      const Refusal refusal = semantics::take(world_, next, derived_, event);
      semantics::settle(world_, next, scratch_, sentry_);
      sentry_.note(here, event, refusal);
      if (sentry_.alarmed()) answers_[reached[i]] = Answer::harmful;
      forgetter_.forget(next);
      const StateIndex index = insert(next);
      arcs.push_back({index, reached[i]});
      if (answers_[index] != Answer::unknown) continue;
      answers_[index] = Answer::reached;
      reached.push_back(index);
    }
    complete = store_.size() <= most;
  }
  spread_harm(arcs);
  for (const StateIndex index : reached) {
    if (answers_[index] == Answer::reached) answers_[index] = complete ? Answer::harmless : Answer::unknown;
  }
  return complete;
}

void Alone::spread_harm(std::vector<Arc>& arcs) {
  std::sort(arcs.begin(), arcs.end());
  std::vector<StateIndex> harmful;
  for (const Arc& arc : arcs) {
    for (const StateIndex index : {arc.to, arc.from}) {
      if (answers_[index] == Answer::harmful) harmful.push_back(index);
    }
  }
  while (!harmful.empty()) {
    const StateIndex here = harmful.back();
    harmful.pop_back();
    for (auto arc = std::lower_bound(arcs.begin(), arcs.end(), Arc{here, 0}); arc != arcs.end() && arc->to == here;
         ++arc) {
      if (answers_[arc->from] == Answer::harmful) continue;
      answers_[arc->from] = Answer::harmful;
      harmful.push_back(arc->from);
    }
  }
}

bool Alone::is_own(StepId step, const Components& parts, DeviceId head) const {
  const std::vector<DeviceId>& devices = devices_of_steps_[step.value];
  return std::all_of(devices.begin(), devices.end(), [&](DeviceId d) { return parts.of(d) == head; });
}

// The numbers that a device has, now and after a start, or that a step to come gives it (5.4).
std::vector<std::int64_t> Alone::numbers_to_come(const State& s, DeviceId d) const {
  std::vector<std::int64_t> numbers{s[d].number, s[d].next_number};
  for (std::size_t i = 0; i < s.done.size(); ++i) {
    const Step& step = world_.steps()[i];
    if (step.verb == Verb::set_number && step.device == d && semantics::pending(s, StepId(i))) {
      numbers.push_back(step.value);
    }
  }
  return numbers;
}

bool Alone::may_share_a_number(const State& s, const Components& parts, DeviceId head) const {
  std::vector<std::int64_t> taken;
  for (std::size_t i = 0; i < inside_.size(); ++i) {
    if (parts.of(DeviceId(i)) != head) continue;
    const std::vector<std::int64_t> numbers = numbers_to_come(s, DeviceId(i));
    for (const std::int64_t n : numbers) {
      if (std::find(taken.begin(), taken.end(), n) != taken.end()) return true;
    }
    taken.insert(taken.end(), numbers.begin(), numbers.end());
  }
  return false;
}

// What is plain without looking: 6.1 to 6.3 speak of devices to be kept, 6.4 of two with one number, 6.5 of steps.
bool Alone::may_break(Property property, const State& s, const Components& parts, DeviceId head) const {
  if (property == Property::no_clash) return may_share_a_number(s, parts, head);
  if (property == Property::no_refusal) {
    for (std::size_t i = 0; i < s.done.size(); ++i) {
      if (semantics::pending(s, StepId(i)) && is_own(StepId(i), parts, head)) return true;
    }
    return false;
  }
  const std::vector<DeviceId>& keep = world_.model().procedure.keep;
  return std::any_of(keep.begin(), keep.end(), [&](DeviceId d) { return parts.of(d) == head; });
}

bool Alone::may_break(const State& s, const Components& parts, DeviceId head) const {
  return std::any_of(asked_.begin(), asked_.end(),
                     [&](Property property) { return may_break(property, s, parts, head); });
}

bool Alone::breaks_nothing(const State& s, const Components& parts, DeviceId head) {
  if (!may_break(s, parts, head)) return true;
  set_scene(s, parts, head);
  layout_.pack(scene_, packed_.data());
  std::optional<StateIndex> index = store_.find(packed_.data());
  if (!index || answers_[*index] == Answer::unknown) {
    if (allowance_ <= store_.size() || allowance_ < put_off_[head.value]) return false;
    index = insert(scene_);
    // The next attempt begins afresh: what all of them cost is within twice the last.
    if (!explore(*index)) put_off_[head.value] = 2 * allowance_;
  }
  return answers_[*index] == Answer::harmless;
}

}  // namespace cairn::explore

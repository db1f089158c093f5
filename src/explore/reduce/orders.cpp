#include "explore/reduce/orders.hpp"

#include <algorithm>
#include <utility>

#include "semantics/events.hpp"
#include "semantics/state.hpp"

namespace cairn::explore {

using semantics::pending;

Orders::Orders(const semantics::World& world, const FaultBudget& budget, const std::vector<AskedProperty>& asked,
               AskLimits ask)
    : world_(world),
      crowded_(may_be_crowded(world)),
      devices_of_steps_(devices_of_steps(world.model())),
      parts_(world),
      everyone_(world),
      seniority_(world),
      alone_(world, budget, asked, devices_of_steps_, std::move(ask)),
      part_in_(world.device_count()),
      step_in_(world.steps().size()) {
  everyone_.look_at(semantics::initial_state(world, budget));
  for (std::size_t i = 0; i < world.device_count(); ++i) everyone_.join(DeviceId(i), DeviceId(0));
  for (const AskedProperty& a : asked) (speaks_of_goal(a.property) ? at_rest_ : on_the_way_) = true;
  at_rest_ = at_rest_ || asked.empty();
  for (std::size_t i = 0; i < world.steps().size(); ++i) {
    if (world.steps()[i].verb == Verb::check) checks_.emplace_back(i);
  }
}

// A budget is shared by all faults of a kind, and a check that fails ends every step (5.i).
bool Orders::may_choose(const State& s) const {
  const bool mends =
      s.left.mends && std::any_of(s.cables.begin(), s.cables.end(), [](const CableState& c) { return c.broken; });
  return !crowded_ && s.left.none() && !mends &&
         std::none_of(checks_.begin(), checks_.end(), [&](StepId check) { return pending(s, check); });
}

void Orders::clear() {
  std::fill(part_in_.begin(), part_in_.end(), std::uint8_t{0});
  std::fill(step_in_.begin(), step_in_.end(), std::uint8_t{0});
}

bool Orders::is_joint(StepId step) const {
  const std::vector<DeviceId>& devices = devices_of_steps_[step.value];
  return std::any_of(devices.begin(), devices.end(),
                     [&](DeviceId d) { return parts_.of(d) != parts_.of(devices.front()); });
}

void Orders::take_in(StepId step) {
  if (std::exchange(step_in_[step.value], std::uint8_t{1}) == 0) steps_to_close_.push_back(step);
}

void Orders::take_in_part(DeviceId head) {
  if (std::exchange(part_in_[head.value], std::uint8_t{1}) == 0) parts_to_close_.push_back(head);
}

void Orders::take_in_devices(const std::vector<DeviceId>& devices) {
  for (const DeviceId d : devices) take_in_part(parts_.of(d));
}

// Every run to a breach has an event of a part that can break something by itself, or a step by which parts meet that
// can break something when they have met.
void Orders::add_landmarks(const State& s) {
  for (std::size_t i = 0; i < part_in_.size(); ++i) {
    const DeviceId head(i);
    if (parts_.is_head(head) && !alone_.breaks_nothing(s, parts_, head)) take_in_part(head);
  }
  Components met = parts_;
  std::vector<StepId> joint;
  for (std::size_t i = 0; i < step_in_.size(); ++i) {
    const StepId step(i);
    if (world_.steps()[i].verb == Verb::await || !pending(s, step) || !is_joint(step)) continue;
    joint.push_back(step);
    const std::vector<DeviceId>& devices = devices_of_steps_[i];
    for (const DeviceId d : devices) met.join(d, devices.front());
  }
  for (const StepId step : joint) {
    if (alone_.may_break(s, met, met.of(devices_of_steps_[step.value].front()))) take_in(step);
  }
  close();
}

void Orders::close() {
  while (!steps_to_close_.empty() || !parts_to_close_.empty()) {
    if (!parts_to_close_.empty()) {
      const DeviceId head = parts_to_close_.back();
      parts_to_close_.pop_back();
      close_part(head);
      continue;
    }
    const StepId step = steps_to_close_.back();
    steps_to_close_.pop_back();
    close_step(step);
  }
}

// Whatever has to do with a part may disturb the events of it that are in the set; and two devices that start disturb
// one another where it may be asked who came first.
void Orders::close_part(DeviceId head) {
  for (std::size_t i = 0; i < step_in_.size(); ++i) {
    const std::vector<DeviceId>& devices = devices_of_steps_[i];
    const bool touches = std::any_of(devices.begin(), devices.end(), [&](DeviceId d) { return parts_.of(d) == head; });
    if (touches && pending(*s_, StepId(i))) take_in(StepId(i));
  }
  for (std::size_t i = 0; i < part_in_.size(); ++i) {
    const DeviceId d(i);
    if (parts_.of(d) != head || (*s_)[d].power != Power::starting) continue;
    for (std::size_t j = 0; j < part_in_.size(); ++j) {
      const DeviceId e(j);
      if (parts_.of(e) != head && seniority_.may_matter(*s_, d, e)) take_in_part(parts_.of(e));
    }
  }
}

// A step that may happen is disturbed by what has to do with its parts. One that may not happen yet waits for something
// that has to happen first: a step before it, or whatever makes its condition true.
void Orders::close_step(StepId step) {
  if (semantics::ready(world_, *s_, *derived_, step)) return take_in_devices(devices_of_steps_[step.value]);
  const std::vector<StepId>& after = world_.model()[step].after;
  StepId before;
  for (const StepId candidate : after) {
    if (!pending(*s_, candidate)) continue;
    if (!before) before = candidate;
    if (step_in_[candidate.value] != 0) return;
  }
  if (before) return take_in(before);
  take_in_devices(devices_of_steps_[step.value]);
}

bool Orders::is_in(const Event& event) const {
  if (event.kind == Event::Kind::step) return step_in_[event.place] != 0;
  return part_in_[parts_.of(event.device()).value] != 0;
}

std::size_t Orders::count(const std::vector<Event>& events) const {
  return static_cast<std::size_t>(
      std::count_if(events.begin(), events.end(), [this](const Event& event) { return is_in(event); }));
}

// The event with whose set the fewest are taken; of several the first.
void Orders::add_some_event(const std::vector<Event>& events) {
  std::size_t fewest = events.size() + 1;
  const Event* best = nullptr;
  const auto try_event = [&](const Event& event) {
    clear();
    if (event.kind == Event::Kind::step) {
      take_in(event.step());
    } else {
      take_in_part(parts_.of(event.device()));
    }
    close();
    return count(events);
  };
  for (const Event& event : events) {
    const std::size_t taken = try_event(event);
    if (taken < fewest) best = &event;
    fewest = std::min(fewest, taken);
    if (fewest <= 1) return;  // it is the set at hand
  }
  if (best != nullptr) try_event(*best);
}

void Orders::choose(const State& s, const semantics::Derived& derived, std::vector<Event>& events) {
  // Whatever happens, faults among it, is an event of all devices taken together.
  if (!crowded_ && !at_rest_ && !alone_.may_break(s, everyone_, DeviceId(0))) return events.clear();
  if (!may_choose(s)) return;
  s_ = &s;
  derived_ = &derived;
  parts_.look_at(s);
  clear();
  if (on_the_way_) add_landmarks(s);
  if (at_rest_ && count(events) == 0) add_some_event(events);
  std::erase_if(events, [this](const Event& event) { return !is_in(event); });
}

}  // namespace cairn::explore

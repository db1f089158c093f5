#include "differential/author.hpp"

#include <algorithm>

#include "differential/conditions.hpp"

namespace cairn::differential {

Draft Author::write() {
  choose_platform();
  using Recipe = void (Author::*)();
  static const std::vector<Recipe> recipes = {
      &Author::append,   &Author::append, &Author::insert, &Author::close, &Author::renumber, &Author::hand_over,
      &Author::take_out, &Author::swap,   &Author::merge,  &Author::merge, &Author::wander,   &Author::intrude};
  (this->*random_.pick(recipes))();
  shuffle_site();
  return draft_;
}

// ---- the site

void Author::choose_platform() {
  Platform& p = draft_.platform;
  p.numbers.low = random_.between(0, 1);
  p.numbers.high = p.numbers.low + random_.between(4, 8);
  p.priorities.low = random_.between(0, 1);
  p.priorities.high = p.priorities.low + random_.between(3, 9);
  p.factory = {.number = random_.between(p.numbers.low, p.numbers.high),
               .priority = random_.between(p.priorities.low, p.priorities.high),
               .enabled = random_.coin(),
               .side = random_.chance(75) ? Side::none : (random_.coin() ? Side::east : Side::west)};
  p.number_takes = random_.coin() ? Takes::at_once : Takes::at_restart;
  p.priority_takes = random_.coin() ? Takes::at_once : Takes::at_restart;
  p.settings_follow = random_.coin() ? SettingsFollow::device : SettingsFollow::number;
  p.side_takes = random_.coin() ? SideTakes::on_apply : SideTakes::at_once;
  p.side_needs_disabled = random_.coin();
  p.facing = random_.coin() ? Facing::opposite : Facing::any;
  p.side_leads_to = random_.coin() ? SideLeadsTo::one_neighbour : SideLeadsTo::any;
  p.orphans = random_.coin() ? Orphans::carry_on : Orphans::restart;
  p.software = random_.coin() ? Software::must_match : Software::any;
  p.election = {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number};
  random_.shuffle(p.election);
  p.election.resize(random_.chance(60) ? 3 : random_.below(4));
  draft_.max_members_stated = random_.chance(30);
  p.max_members = random_.between(2, 5);
  for (std::int64_t n = p.numbers.low; n <= p.numbers.high; ++n) numbers_.push_back(n);
  random_.shuffle(numbers_);
}

std::int64_t Author::free_number() {
  const std::int64_t number = numbers_.back();
  if (numbers_.size() > 1) numbers_.pop_back();
  return number;
}

/// The mistake that no-clash is for is made here, or it would be too rare.
std::int64_t Author::taken_or_free_number() {
  if (!random_.chance(60)) return free_number();
  return *find_device(draft_, random_.pick(members_))->number;
}

DeviceDraft& Author::add_device(bool on) {
  const std::string name(1, static_cast<char>('a' + draft_.devices.size()));
  DeviceDraft device;
  device.name = name;
  if (!on || random_.chance(10)) device.on = on;
  if (random_.chance(20)) device.software = "1";
  device.ports = {factory_port(name + "/t1"), factory_port(name + "/t2")};
  draft_.devices.push_back(device);
  return draft_.devices.back();
}

void Author::add_members(std::size_t count, bool ring) {
  const Range& priorities = draft_.platform.priorities;
  for (std::size_t i = 0; i < count; ++i) {
    DeviceDraft& device = add_device(true);
    device.number = free_number();
    // The first leads, and is mostly the one that would be elected.
    if (i == 0 ? random_.chance(90) : random_.chance(70)) {
      device.priority =
          i == 0 && random_.chance(80) ? priorities.high : random_.between(priorities.low, priorities.high - 1);
    }
    if (i == 0 ? random_.chance(80) : random_.chance(30)) device.tenure = i == 0 ? 5 : random_.between(1, 4);
    members_.push_back(device.name);
  }
  for (std::size_t i = 0; i + 1 < count; ++i) {
    state_port(east(members_[i]), Side::east);
    state_port(west(members_[i + 1]), Side::west);
    link(east(members_[i]), west(members_[i + 1]), true);
  }
  if (ring && count > 2) {
    state_port(east(members_.back()), Side::east);
    state_port(west(members_.front()), Side::west);
    link(east(members_.back()), west(members_.front()), true);
  }
  if (count > 1 || random_.coin()) draft_.stack = StackDraft{members_.front(), members_};
}

DeviceDraft& Author::add_newcomer(bool on) {
  DeviceDraft& device = add_device(on);
  const Range& priorities = draft_.platform.priorities;
  if (random_.chance(70)) device.number = taken_or_free_number();
  if (random_.chance(60)) device.priority = random_.between(priorities.low, priorities.high - 1);
  return device;
}

void Author::link(const std::string& a, const std::string& b, bool plugged) {
  CableDraft cable{.a = a, .b = b, .plugged = {}, .id = {}};
  if (random_.coin()) std::swap(cable.a, cable.b);
  if (!plugged || random_.chance(10)) cable.plugged = plugged;
  if (random_.chance(30)) cable.id = "link" + std::to_string(draft_.cables.size() + 1);
  draft_.cables.push_back(cable);
}

void Author::state_port(const std::string& port, Side side) {
  PortDraft& draft = *find_port(draft_, port);
  draft.side = side;
  draft.enabled = true;
}

void Author::shuffle_site() {
  if (random_.chance(50)) random_.shuffle(draft_.devices);
  if (random_.chance(30)) random_.shuffle(draft_.cables);
  if (random_.chance(80)) return;
  std::vector<std::string> addresses = {"02:00:00:00:00:0A", "02:00:00:00:00:0b", "00:00:00:00:00:01",
                                        "fe:ff:ff:ff:ff:ff"};
  random_.shuffle(addresses);
  for (std::size_t i = 0; i < draft_.devices.size(); ++i) draft_.devices[i].address = addresses[i];
}

// ---- steps

void Author::step(Verb verb, const std::string& subject) {
  Item item;
  item.step.verb = verb;
  item.step.subject = subject;
  item.step.as_mapping = random_.chance(10);
  draft_.steps.push_back(item);
}

/// A configuring step, now and then from another console of the stack.
void Author::step_via(Verb verb, const std::string& subject, const std::string& device) {
  step(verb, subject);
  const bool member = std::find(members_.begin(), members_.end(), device) != members_.end();
  if (member && random_.chance(30)) draft_.steps.back().step.via = random_.pick(members_);
}

void Author::save_or_apply(Verb verb, const std::string& device) {
  step_via(verb, "", device);
  draft_.steps.back().step.devices = {device};
}

void Author::await(const ConditionDraft& condition) {
  step(Verb::await, "");
  draft_.steps.back().step.condition = condition;
}

void Author::restart_and_wait(const std::string& device) {
  step_via(Verb::restart, device, device);
  await(atom("up", {device}));
}

void Author::set_number(const std::string& device, std::int64_t number) {
  step_via(Verb::set_number, device, device);
  draft_.steps.back().step.to = number;
}

void Author::configure_port(const std::string& port, Side side) {
  const Platform& p = draft_.platform;
  const std::string device = device_of(port);
  const bool enable_first = !p.side_needs_disabled && random_.coin();
  if (p.side_needs_disabled || random_.chance(10)) step_via(Verb::disable, port, device);
  if (enable_first) step_via(Verb::enable, port, device);
  step_via(side == Side::none ? Verb::clear_side : Verb::set_side, port, device);
  draft_.steps.back().step.side = side;
  if (!enable_first) step_via(Verb::enable, port, device);
  if (p.side_takes == SideTakes::on_apply) save_or_apply(Verb::apply, device);
}

/// Brings a device that stands alone to its number, priority and sides, and saves them.
void Author::prepare(const std::string& device, const std::vector<std::pair<std::string, Side>>& ports) {
  const Platform& p = draft_.platform;
  DeviceDraft& draft = *find_device(draft_, device);
  if (draft.on && !*draft.on) {
    step(Verb::power_on, device);
    await(atom("up", {device}));
  }
  bool restart_later = false;
  if (!draft.number || random_.chance(60)) {
    set_number(device, taken_or_free_number());
    if (p.number_takes == Takes::at_restart) {
      if (p.settings_follow == SettingsFollow::number) {
        restart_and_wait(device);
      } else {
        restart_later = true;
      }
    }
  }
  if (random_.chance(50)) {
    step_via(Verb::set_priority, device, device);
    draft_.steps.back().step.to = random_.between(p.priorities.low, p.priorities.high - 1);
    restart_later = restart_later || p.priority_takes == Takes::at_restart;
  }
  for (const auto& [port, side] : ports) configure_port(port, side);
  save_or_apply(Verb::save, device);
  if (restart_later) restart_and_wait(device);
}

void Author::plug(std::size_t cable) {
  if (!draft_.cables[cable].plugged || *draft_.cables[cable].plugged) return;
  step(Verb::plug, draft_.cables[cable].name());
}

void Author::save_all() {
  save_or_apply(Verb::save, members_.front());
  StepDraft& save = draft_.steps.back().step;
  if (random_.coin()) {
    save.stack_of = true;
  } else {
    save.devices = draft_.goal->stack;
  }
}

/// Lets two neighbouring stretches of what was written since `from` happen in any order.
void Author::branch_out(std::size_t from) {
  const std::size_t count = draft_.steps.size() - from;
  if (count < 2) return;
  const std::size_t length = 2 + random_.below(std::min<std::size_t>(count - 1, 5));
  const std::size_t start = from + random_.below(count - length + 1);
  const std::size_t middle = start + 1 + random_.below(length - 1);
  const auto at = [&](std::size_t i) { return draft_.steps.begin() + static_cast<std::ptrdiff_t>(i); };
  Item fork;
  fork.branches.emplace_back(at(start), at(middle));
  fork.branches.emplace_back(at(middle), at(start + length));
  draft_.steps.erase(at(start), at(start + length));
  draft_.steps.insert(at(start), fork);
}

void Author::aim(const std::vector<std::string>& stack, bool with_primary) {
  GoalDraft goal;
  goal.stack = stack;
  if (with_primary) goal.primary = members_.front();
  if (random_.chance(50)) goal.saved = random_.chance(90);
  draft_.goal = goal;
}

}  // namespace cairn::differential

#include "differential/spoil.hpp"

#include <algorithm>
#include <type_traits>

#include "differential/conditions.hpp"

namespace cairn::differential {

namespace {

std::int64_t random_number(Random& random, const Draft& draft) {
  // Often one that somebody has; sometimes one that no device takes.
  std::vector<std::int64_t> taken = {draft.platform.factory.number};
  for (const DeviceDraft& device : draft.devices) {
    if (device.number) taken.push_back(*device.number);
  }
  if (random.chance(50)) return random.pick(taken);
  return random.between(std::max<std::int64_t>(0, draft.platform.numbers.low - 1), draft.platform.numbers.high + 1);
}

std::int64_t random_priority(Random& random, const Draft& draft) {
  return random.between(std::max<std::int64_t>(0, draft.platform.priorities.low - 1),
                        draft.platform.priorities.high + 1);
}

Side random_side(Random& random) {
  return random.coin() ? Side::east : Side::west;
}

std::vector<Item>& random_list(Random& random, Draft& draft) {
  return *random.pick(all_lists(draft.steps));
}

void insert_at_random(Random& random, Draft& draft, const Item& item) {
  std::vector<Item>& list = random_list(random, draft);
  list.insert(list.begin() + static_cast<std::ptrdiff_t>(random.below(list.size() + 1)), item);
}

/// Takes an item out of the procedure, if there is one.
std::optional<Item> take_item(Random& random, Draft& draft) {
  std::vector<Item>& list = random_list(random, draft);
  if (list.empty()) return std::nullopt;
  const auto place = list.begin() + static_cast<std::ptrdiff_t>(random.below(list.size()));
  const Item item = *place;
  list.erase(place);
  drop_empty(draft.steps);
  return item;
}

void change_step(Random& random, Draft& draft) {
  const auto steps = all_steps(draft.steps);
  if (steps.empty()) return;
  StepDraft& step = *random.pick(steps);
  switch (step.verb) {
    case Verb::set_number:
      step.to = random_number(random, draft);
      break;
    case Verb::set_priority:
      step.to = random_priority(random, draft);
      break;
    case Verb::set_side:
      if (random.coin()) {
        step.side = step.side == Side::east ? Side::west : Side::east;
        break;
      }
      [[fallthrough]];
    case Verb::enable:
    case Verb::disable:
    case Verb::clear_side:
      step.subject = random.pick(port_names(draft));
      break;
    case Verb::await:
      if (random.coin()) {
        step.verb = Verb::check;
        break;
      }
      [[fallthrough]];
    case Verb::check:
      step.condition = random_condition(random, draft, 2);
      break;
    case Verb::plug:
    case Verb::unplug:
      step.verb = step.verb == Verb::plug ? Verb::unplug : Verb::plug;
      break;
    case Verb::apply:
    case Verb::save:
      step.devices = {random.pick(draft.devices).name};
      step.stack_of = random.chance(30);
      break;
    default:
      step.subject = random.pick(draft.devices).name;
      break;
  }
}

/// A condition of any kind, somewhere: it may hold, and then nothing is spoiled.
void add_condition(Random& random, Draft& draft) {
  Item item;
  item.step.verb = random.coin() ? Verb::await : Verb::check;
  item.step.condition = random_condition(random, draft, 3);
  insert_at_random(random, draft, item);
}

void change_console(Random& random, Draft& draft) {
  const auto steps = all_steps(draft.steps);
  if (steps.empty()) return;
  StepDraft& step = *random.pick(steps);
  if (step.verb >= Verb::restart && step.verb <= Verb::save) step.via = random.pick(draft.devices).name;
}

/// `after`: one step waits for another, whose id it needs.
void add_after(Random& random, Draft& draft) {
  const auto steps = all_steps(draft.steps);
  if (steps.size() < 2) return;
  const std::size_t later = 1 + random.below(steps.size() - 1);
  const std::size_t earlier = random.below(later);
  if (!steps[earlier]->id) steps[earlier]->id = "mark-" + std::to_string(random.below(10'000));
  const std::string& id = *steps[earlier]->id;
  auto& after = steps[later]->after;
  if (std::find(after.begin(), after.end(), id) == after.end()) after.push_back(id);
}

/// Two neighbours in one list may now happen in any order.
void fork(Random& random, Draft& draft) {
  std::vector<Item>& list = random_list(random, draft);
  if (list.size() < 2) return;
  const std::size_t first = random.below(list.size() - 1);
  Item both;
  both.branches = {{list[first]}, {list[first + 1]}};
  if (first + 2 < list.size() && random.coin()) both.branches[random.below(2)].push_back(list[first + 2]);
  const std::size_t taken = both.branches[0].size() + both.branches[1].size();
  const auto at = list.begin() + static_cast<std::ptrdiff_t>(first);
  list.erase(at, at + static_cast<std::ptrdiff_t>(taken));
  list.insert(list.begin() + static_cast<std::ptrdiff_t>(first), both);
}

void change_device(Random& random, Draft& draft) {
  DeviceDraft& device = random.pick(draft.devices);
  const Platform& p = draft.platform;
  switch (random.below(8)) {
    case 0:
      device.number = random.between(p.numbers.low, p.numbers.high);
      break;
    case 1:
      device.next_number = random.between(p.numbers.low, p.numbers.high);
      break;
    case 2:
      device.priority = random.between(p.priorities.low, p.priorities.high);
      break;
    case 3:
      device.startup_priority = random.between(p.priorities.low, p.priorities.high);
      break;
    case 4:
      device.tenure = random.between(0, 6);
      break;
    case 5:
      device.software = random.coin() ? "2" : "1";
      break;
    case 6:
      device.on = device.on && !*device.on;
      break;
    default:
      device.priority.reset();
      break;
  }
}

void change_port(Random& random, Draft& draft) {
  const auto ports = port_names(draft);
  PortDraft& port = *find_port(draft, random.pick(ports));
  switch (random.below(5)) {
    case 0:
      port.enabled = random.coin();
      break;
    case 1:
      port.startup_enabled = random.coin();
      break;
    case 2:
      port.side = random.chance(20) ? Side::none : random_side(random);
      break;
    case 3:
      port.startup_side = random.chance(30) ? Side::none : random_side(random);
      break;
    default:
      port.operational = random.chance(30) ? Side::none : random_side(random);
      break;
  }
}

void change_cabling(Random& random, Draft& draft) {
  if (!draft.cables.empty() && random.coin()) {
    CableDraft& cable = random.pick(draft.cables);
    cable.plugged = cable.plugged && !*cable.plugged;
    return;
  }
  if (draft.cables.size() >= 5) return;
  if (random.chance(30)) {  // a third port for somebody
    DeviceDraft& device = random.pick(draft.devices);
    device.ports.push_back(factory_port(device.name + "/t" + std::to_string(device.ports.size() + 1)));
  }
  const auto ports = port_names(draft);
  const std::string a = random.pick(ports);
  const std::string b = random.pick(ports);
  if (device_of(a) != device_of(b)) draft.cables.push_back({.a = a, .b = b, .plugged = random.coin(), .id = {}});
}

void change_goal(Random& random, Draft& draft) {
  if (!draft.goal) return;
  switch (random.below(4)) {
    case 0:
      draft.goal->where = random_condition(random, draft, 2);
      break;
    case 1:
      draft.goal->primary = random.pick(draft.goal->stack);
      break;
    case 2:
      draft.goal->saved = true;
      break;
    default:
      if (draft.goal->stack.size() > 1) draft.goal->stack.pop_back();
      draft.goal->primary.reset();
      break;
  }
}

}  // namespace

void change_rule(Random& random, Platform& p) {
  const auto flip = [](auto& rule) {
    using Rule = std::remove_reference_t<decltype(rule)>;
    rule = static_cast<Rule>(1 - static_cast<int>(rule));
  };
  switch (random.below(12)) {
    case 0:
      flip(p.number_takes);
      break;
    case 1:
      flip(p.priority_takes);
      break;
    case 2:
      flip(p.settings_follow);
      break;
    case 3:
      flip(p.side_takes);
      break;
    case 4:
      p.side_needs_disabled = !p.side_needs_disabled;
      break;
    case 5:
      flip(p.facing);
      break;
    case 6:
      flip(p.side_leads_to);
      break;
    case 7:
      flip(p.orphans);
      break;
    case 8:
      flip(p.software);
      break;
    case 9:
      random.shuffle(p.election);
      break;
    case 10:
      if (!p.election.empty()) p.election.pop_back();
      break;
    default:
      p.factory.enabled = !p.factory.enabled;
      break;
  }
}

StepDraft random_step(Random& random, Draft& draft) {
  StepDraft step;
  step.verb = static_cast<Verb>(random.below(15));
  step.as_mapping = random.chance(10);
  const std::string device = random.pick(draft.devices).name;
  switch (step.verb) {
    case Verb::enable:
    case Verb::disable:
    case Verb::clear_side:
    case Verb::set_side:
      step.subject = random.pick(port_names(draft));
      step.side = step.verb == Verb::set_side ? random_side(random) : Side::none;
      break;
    case Verb::plug:
    case Verb::unplug:
      if (draft.cables.empty()) {
        step.verb = Verb::restart;
        step.subject = device;
      } else {
        step.subject = random.pick(draft.cables).name();
      }
      break;
    case Verb::apply:
    case Verb::save:
      step.devices = {device};
      step.stack_of = random.chance(40);
      break;
    case Verb::await:
    case Verb::check:
      step.condition = random_condition(random, draft, 2);
      break;
    default:
      step.subject = device;
      break;
  }
  if (step.verb == Verb::set_number) step.to = random_number(random, draft);
  if (step.verb == Verb::set_priority) step.to = random_priority(random, draft);
  return step;
}

void spoil(Random& random, Draft& draft) {
  switch (random.below(18)) {
    case 0:
    case 1:
      take_item(random, draft);
      break;
    case 2: {
      const auto item = take_item(random, draft);
      if (item) insert_at_random(random, draft, *item);
      break;
    }
    case 3: {
      const auto& list = random_list(random, draft);
      if (list.empty()) break;
      Item again = random.pick(list);
      again.step.id.reset();  // an id stands once
      insert_at_random(random, draft, again);
      break;
    }
    case 4:
    case 5:
    case 6:
      change_step(random, draft);
      break;
    case 7: {
      Item item;
      item.step = random_step(random, draft);
      insert_at_random(random, draft, item);
      break;
    }
    case 8:
      change_console(random, draft);
      break;
    case 9:
      add_after(random, draft);
      break;
    case 10:
      fork(random, draft);
      break;
    case 11:
      change_rule(random, draft.platform);
      break;
    case 12:
      change_device(random, draft);
      break;
    case 13:
      change_port(random, draft);
      break;
    case 14:
      change_cabling(random, draft);
      break;
    case 15:
    case 16:
      add_condition(random, draft);
      break;
    default:
      change_goal(random, draft);
      break;
  }
}

}  // namespace cairn::differential

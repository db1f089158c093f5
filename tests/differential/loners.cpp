#include "differential/loners.hpp"

#include "differential/conditions.hpp"
#include "differential/random.hpp"

namespace cairn::differential {

namespace {

class Loners {
 public:
  explicit Loners(std::uint64_t seed) : random_(seed) {}

  Draft write() {
    choose_platform();
    add_devices();
    add_cables();
    for (std::size_t count = 3 + random_.below(4); count > 0; --count) add_step();
    fork();
    ask();
    return draft_;
  }

 private:
  void choose_platform() {
    using Key = ElectionKey;
    Platform& p = draft_.platform;
    p.numbers = {1, 9};
    p.priorities = {1, 9};
    p.factory = {1, 5, random_.coin(), Side::none};
    p.number_takes = random_.coin() ? Takes::at_once : Takes::at_restart;
    p.priority_takes = random_.chance(85) ? Takes::at_once : Takes::at_restart;
    p.settings_follow = random_.chance(80) ? SettingsFollow::device : SettingsFollow::number;
    p.side_takes = SideTakes::at_once;
    p.side_needs_disabled = false;
    p.facing = random_.chance(70) ? Facing::any : Facing::opposite;
    p.side_leads_to = random_.chance(75) ? SideLeadsTo::any : SideLeadsTo::one_neighbour;
    p.orphans = random_.coin() ? Orphans::carry_on : Orphans::restart;
    p.software = Software::any;
    const std::vector<std::vector<Key>> elections = {{Key::priority, Key::tenure},
                                                     {Key::priority, Key::tenure, Key::number},
                                                     {Key::tenure},
                                                     {Key::number, Key::tenure}};
    p.election = random_.coin() ? elections.front() : random_.pick(elections);
    p.max_members = 9;
  }

  void add_devices() {
    const std::vector<std::int64_t> priorities = {5, 5, 5, 3, 7};
    const std::vector<std::int64_t> startup = {1, 5, 9};
    const std::size_t count = 3 + random_.below(3);
    for (std::size_t i = 0; i < count; ++i) {
      DeviceDraft device;
      device.name = std::string(1, static_cast<char>('a' + i));
      device.on = random_.chance(90);
      device.number = static_cast<std::int64_t>(i) + 1;
      device.priority = random_.pick(priorities);
      if (random_.chance(40)) device.startup_priority = random_.pick(startup);
      if (*device.on) device.tenure = random_.between(0, 3);
      device.ports = {port(device.name + "/t1", Side::west), port(device.name + "/t2", Side::east),
                      port(device.name + "/t3", random_.coin() ? Side::east : Side::west)};
      draft_.devices.push_back(device);
    }
  }

  PortDraft port(const std::string& name, Side side) {
    PortDraft port = factory_port(name);
    port.enabled = random_.chance(95);
    port.side = side;
    return port;
  }

  void add_cables() {
    const std::size_t count = draft_.devices.size();
    for (std::size_t i = 0; i + 1 < count; ++i) link(name(i) + "/t2", name(i + 1) + "/t1");
    if (random_.chance(30)) link(name(count - 1) + "/t2", name(0) + "/t1");
    const std::size_t one = random_.below(count);
    const std::size_t other = random_.below(count);
    if (one != other && random_.coin()) link(name(one) + "/t3", name(other) + "/t3");
  }

  void link(const std::string& a, const std::string& b) {
    draft_.cables.push_back({a, b, random_.chance(30), {}});
    if (!*draft_.cables.back().plugged) unplugged_.push_back(draft_.cables.back().ends());
  }

  void add_step() {
    StepDraft step;
    step.subject = random_device();
    const std::size_t lot = random_.below(100);
    if (lot < 45 && !unplugged_.empty()) {
      step.verb = Verb::plug;
      random_.shuffle(unplugged_);
      step.subject = unplugged_.back();
      unplugged_.pop_back();
    } else if (lot < 65) {
      step.verb = Verb::set_priority;
      step.to = random_.between(3, 9);
    } else if (lot < 70) {
      step.verb = Verb::set_number;
      step.to = random_.between(1, 9);
    } else if (lot < 85) {
      step.verb = random_.chance(80) ? Verb::await : Verb::check;
      step.condition = random_.coin() ? atom("follower", {step.subject}) : random_condition(random_, draft_, 1);
      step.subject.clear();
    } else if (lot < 90) {
      step.verb = Verb::save;
      step.devices = {step.subject};
      step.subject.clear();
    } else if (lot < 94) {
      step.verb = Verb::power_on;
    } else if (lot < 97) {
      step.verb = Verb::restart;
    } else {
      step.verb = Verb::unplug;
      step.subject = random_.pick(draft_.cables).ends();
    }
    draft_.steps.push_back({step, {}});
  }

  /// Lets the first steps and the last happen in any order, now and then.
  void fork() {
    if (random_.chance(60)) return;
    const auto middle = draft_.steps.begin() + 1 + static_cast<std::ptrdiff_t>(random_.below(draft_.steps.size() - 1));
    Item fork;
    fork.branches.emplace_back(draft_.steps.begin(), middle);
    fork.branches.emplace_back(middle, draft_.steps.end());
    draft_.steps = {fork};
  }

  void ask() {
    const std::string kept = random_device();
    draft_.keep = {kept};
    GoalDraft goal;
    goal.stack = {random_device()};
    if (random_.coin()) goal.primary = goal.stack.front();
    draft_.goal = goal;
    for (int i = 0; i < property_count; ++i) {
      const auto property = static_cast<Property>(i);
      draft_.properties.push_back({property, property == Property::tolerates_loss ? 1 : 0});
    }
    if (random_.coin()) return;
    draft_.faults.late_starts = random_.between(0, 1);
    draft_.faults.omissions = random_.chance(25) ? 1 : 0;
    draft_.faults.cable_breaks = random_.chance(30) ? 1 : 0;
    draft_.faults.crashes = random_.chance(15) ? 1 : 0;
    draft_.faults.mends = random_.coin();
  }

  [[nodiscard]] const std::string& name(std::size_t device) const { return draft_.devices[device].name; }
  std::string random_device() { return random_.pick(draft_.devices).name; }

  Random random_;
  Draft draft_;
  std::vector<std::string> unplugged_;
};

}  // namespace

Draft generate_loners(std::uint64_t seed) {
  return Loners(seed).write();
}

}  // namespace cairn::differential

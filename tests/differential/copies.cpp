#include "differential/copies.hpp"

#include <fmt/format.h>

#include <functional>

#include "differential/conditions.hpp"
#include "differential/random.hpp"

namespace cairn::differential {

namespace {

class Copies {
 public:
  explicit Copies(std::uint64_t seed) : random_(seed) {}

  Draft write() {
    choose_platform();
    size_ = random_.chance(60) ? 1 : 2;
    copies_ = size_ == 1 && random_.coin() ? 3 : 2;
    with_hub_ = random_.chance(55);
    add_devices();
    add_cables();
    add_steps();
    ask();
    if (random_.chance(30)) tell_apart();
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
    p.priority_takes = random_.chance(70) ? Takes::at_once : Takes::at_restart;
    p.settings_follow = random_.chance(80) ? SettingsFollow::device : SettingsFollow::number;
    p.side_takes = SideTakes::at_once;
    p.side_needs_disabled = false;
    p.facing = Facing::any;
    p.side_leads_to = random_.chance(75) ? SideLeadsTo::any : SideLeadsTo::one_neighbour;
    p.orphans = random_.coin() ? Orphans::carry_on : Orphans::restart;
    p.software = Software::any;
    const std::vector<std::vector<Key>> elections = {
        {Key::priority}, {Key::tenure}, {Key::priority, Key::tenure}, {Key::tenure, Key::number}, {Key::number}};
    p.election = random_.pick(elections);
    p.max_members = 9;
  }

  [[nodiscard]] static std::string name(std::size_t place, std::size_t copy) {
    return fmt::format("{}{}", static_cast<char>('a' + place), copy + 1);
  }

  DeviceDraft device(const std::string& name, std::size_t ports) {
    DeviceDraft device;
    device.name = name;
    for (std::size_t i = 0; i < ports; ++i) {
      PortDraft port = factory_port(fmt::format("{}/t{}", name, i + 1));
      port.enabled = true;
      port.side = i == 0 ? Side::west : Side::east;
      device.ports.push_back(port);
    }
    return device;
  }

  // Copy by copy, or place by place.
  void add_devices() {
    struct Place {
      bool on;
      std::int64_t number, priority, tenure;
    };
    std::vector<Place> places;
    for (std::size_t i = 0; i < size_; ++i) {
      places.push_back(
          {random_.chance(35), static_cast<std::int64_t>(i) + 1, random_.between(4, 6), random_.between(0, 2)});
    }
    const bool own_numbers = random_.coin();
    const auto add = [&](std::size_t place, std::size_t copy) {
      const Place& is = places[place];
      DeviceDraft d = device(name(place, copy), 2);
      d.on = is.on;
      d.number = is.number + (own_numbers ? static_cast<std::int64_t>(copy * size_) : 0);
      d.priority = is.priority;
      if (is.on) d.tenure = is.tenure;
      draft_.devices.push_back(d);
    };
    const bool copy_by_copy = random_.coin();
    for (std::size_t i = 0; i < size_ * copies_; ++i) {
      copy_by_copy ? add(i % size_, i / size_) : add(i / copies_, i % copies_);
    }
    if (with_hub_) {
      DeviceDraft hub = device("hub", copies_);
      hub.number = 9;
      hub.priority = random_.coin() ? 9 : 5;
      hub.tenure = random_.between(0, 3);
      draft_.devices.push_back(hub);
    }
    if (random_.coin()) state_addresses();
  }

  void state_addresses() {
    std::vector<int> order;
    for (std::size_t i = 0; i < draft_.devices.size(); ++i) order.push_back(static_cast<int>(i) + 1);
    if (random_.coin()) random_.shuffle(order);
    for (std::size_t i = 0; i < order.size(); ++i)
      draft_.devices[i].address = fmt::format("02:00:00:00:00:{:02x}", order[i]);
  }

  void add_cables() {
    if (size_ == 2) inner_plugged_ = random_.coin();
    hub_plugged_ = random_.chance(35);
    for (std::size_t copy = 0; copy < copies_; ++copy) {
      if (size_ == 2) draft_.cables.push_back({name(0, copy) + "/t2", name(1, copy) + "/t1", inner_plugged_, {}});
      if (with_hub_)
        draft_.cables.push_back({name(0, copy) + "/t1", fmt::format("hub/t{}", copy + 1), hub_plugged_, {}});
    }
    between_ = !with_hub_ && copies_ == 2 && random_.coin();
    if (between_) draft_.cables.push_back({name(0, 0) + "/t1", name(0, 1) + "/t1", random_.coin(), {}});
  }

  /// A step of each copy.
  using Make = std::function<StepDraft(std::size_t copy)>;

  Make random_make() {
    const std::size_t place = random_.below(size_);
    const std::size_t lot = random_.below(100);
    const auto of_device = [place](Verb verb, std::int64_t to, std::int64_t by_copy) -> Make {
      return [=](std::size_t copy) {
        StepDraft step;
        step.verb = verb;
        step.subject = name(place, copy);
        step.to = to + by_copy * static_cast<std::int64_t>(copy);
        return step;
      };
    };
    if (lot < 25) return of_device(Verb::power_on, 0, 0);
    if (lot < 33) return of_device(Verb::restart, 0, 0);
    if (lot < 43) return of_device(Verb::set_priority, random_.between(4, 7), 0);
    if (lot < 55) return of_device(Verb::set_number, random_.between(1, 7), random_.coin() ? 1 : 0);
    if (lot < 75) return plug();
    if (lot < 80) return of_port(place);
    if (lot < 85) return save(place);
    return wait(place);
  }

  Make plug() {
    const bool inner = size_ == 2 && (!with_hub_ || random_.coin());
    if (!inner && !with_hub_) return save(0);
    const Verb verb = (inner ? inner_plugged_ : hub_plugged_) ? Verb::unplug : Verb::plug;
    return [inner, verb](std::size_t copy) {
      StepDraft step;
      step.verb = verb;
      step.subject = inner ? name(0, copy) + "/t2--" + name(1, copy) + "/t1"
                           : fmt::format("{}/t1--hub/t{}", name(0, copy), copy + 1);
      return step;
    };
  }

  Make of_port(std::size_t place) {
    const std::string port = random_.coin() ? "/t1" : "/t2";
    return [place, port](std::size_t copy) {
      StepDraft step;
      step.verb = Verb::disable;
      step.subject = name(place, copy) + port;
      return step;
    };
  }

  Make save(std::size_t place) {
    return [place](std::size_t copy) {
      StepDraft step;
      step.verb = Verb::save;
      step.devices = {name(place, copy)};
      return step;
    };
  }

  Make wait(std::size_t place) {
    const Verb verb = random_.chance(75) ? Verb::await : Verb::check;
    const std::vector<std::string> words = {"up", "up", "follower", "primary", "starting", "number", "hub"};
    const std::string word = random_.pick(words);
    const std::string number = fmt::format("{}", random_.between(1, 4));
    const std::string sign = random_.coin() ? "=" : "<=";
    return [=, this](std::size_t copy) {
      StepDraft step;
      step.verb = verb;
      step.condition = word == "number"             ? atom(word, {name(place, copy)}, sign, number)
                       : word == "hub" && with_hub_ ? atom("up", {"hub"})
                                                    : atom(word == "hub" ? "off" : word, {name(place, copy)});
      return step;
    };
  }

  void add_steps() {
    std::vector<Make> makes;
    for (std::size_t count = 1 + random_.below(size_ == 1 && copies_ == 2 ? 4 : 3); count > 0; --count) {
      makes.push_back(random_make());
    }
    if (with_hub_ && random_.chance(15)) draft_.steps.push_back({save_hub(), {}});
    Item lanes;
    for (std::size_t copy = 0; copy < copies_; ++copy) {
      std::vector<Item> lane;
      for (const Make& make : makes) lane.push_back({make(copy), {}});
      lanes.branches.push_back(lane);
    }
    draft_.steps.push_back(lanes);
    if (with_hub_ && random_.chance(15)) draft_.steps.push_back({save_hub(), {}});
    if (between_ && !*draft_.cables.back().plugged) {
      StepDraft step;
      step.verb = Verb::plug;
      step.subject = draft_.cables.back().ends();
      draft_.steps.push_back({step, {}});
    }
  }

  static StepDraft save_hub() {
    StepDraft step;
    step.verb = Verb::save;
    step.devices = {"hub"};
    return step;
  }

  void ask() {
    const std::vector<std::string> all = device_names(draft_);
    draft_.keep = with_hub_ && random_.coin() ? std::vector<std::string>{"hub"} : all;
    GoalDraft goal;
    goal.stack = with_hub_ && random_.coin() ? std::vector<std::string>{"hub"} : all;
    if (with_hub_ && random_.coin() && goal.stack.back() == "hub") goal.primary = "hub";
    draft_.goal = goal;
    for (int i = 0; i < property_count; ++i) {
      const auto property = static_cast<Property>(i);
      // Where a cold start is asked, fewer are alike.
      if (random_.chance(property == Property::survives_cold_start ? 65 : 15)) continue;
      draft_.properties.push_back({property, property == Property::tolerates_loss ? 1 : 0});
    }
    if (draft_.properties.empty()) draft_.properties.push_back({Property::no_clash, 0});
    if (random_.chance(60)) return;
    draft_.faults.late_starts = random_.chance(40) ? 1 : 0;
    draft_.faults.omissions = random_.chance(25) ? 1 : 0;
    draft_.faults.cable_breaks = random_.chance(30) ? 1 : 0;
    draft_.faults.crashes = random_.chance(30) ? 1 : 0;
    draft_.faults.mends = random_.coin();
  }

  /// One of the copies differs in one thing.
  void tell_apart() {
    const std::string one = name(random_.below(size_), random_.below(copies_));
    DeviceDraft& device = *find_device(draft_, one);
    switch (random_.below(10)) {
      case 0:
        device.priority = 5;
        break;
      case 1:
        device.number = random_.between(1, 5);
        break;
      case 2:
        if (*device.on) device.tenure = 1;
        break;
      case 3:
        device.ports.front().startup_enabled = false;
        break;
      case 4:
        draft_.keep = {one};
        break;
      case 5:
        draft_.goal->primary = one;
        draft_.goal->stack = {one};
        break;
      case 6:
        draft_.goal->where = atom("up", {one});
        break;
      case 7: {
        StepDraft step;
        step.verb = Verb::check;
        step.condition = random_atom(random_, draft_);
        draft_.steps.push_back({step, {}});
        break;
      }
      case 8:
        if (std::vector<Item>* lane = all_lists(draft_.steps).back(); lane->size() > 1)
          std::swap(lane->front(), lane->back());
        break;
      default:
        if (std::vector<Item>* lane = all_lists(draft_.steps).back(); lane->size() > 1) lane->pop_back();
        break;
    }
  }

  Random random_;
  Draft draft_;
  std::size_t size_ = 1;  ///< devices of a copy
  std::size_t copies_ = 2;
  bool with_hub_ = false;  ///< a device that all copies are cabled to
  bool between_ = false;   ///< a cable joins two copies
  bool inner_plugged_ = true;
  bool hub_plugged_ = false;
};

}  // namespace

Draft generate_copies(std::uint64_t seed) {
  return Copies(seed).write();
}

}  // namespace cairn::differential

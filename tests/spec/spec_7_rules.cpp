// Semantics 7, Platform rules: each value of each rule makes the difference that it should, seen from outside. (What a
// rule changes in one step is tested with the step.)
#include <functional>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// The number and priority in force at once, and after a restart.
struct Settings {
  std::int64_t number, priority, number_later, priority_later;

  explicit Settings(const std::function<void(Platform&)>& rule) {
    ModelBuilder b;
    rule(b.platform());
    const DeviceId a = b.device("a", {.number = 2, .priority = 5});
    b.set_number(a, 3);
    b.set_priority(a, 6);
    b.restart(a);
    Run run(b);
    run.settle();
    run.take(step(StepId(0)));
    run.take(step(StepId(1)));
    number = run.state()[a].number;
    priority = run.state()[a].priority;
    run.take(step(StepId(2)));
    run.take(started(a));
    number_later = run.state()[a].number;
    priority_later = run.state()[a].priority;
  }
};

}  // namespace

TEST_CASE("Semantics 7 number-takes") {
  const Settings at_once([](Platform& p) { p.number_takes = Takes::at_once; });
  CHECK(at_once.number == 3);
  CHECK(at_once.number_later == 3);
  const Settings at_restart([](Platform& p) { p.number_takes = Takes::at_restart; });
  CHECK(at_restart.number == 2);
  CHECK(at_restart.number_later == 3);
}

TEST_CASE("Semantics 7 priority-takes: at-once is in force and lost at a restart, at-restart the other way round") {
  const Settings at_once([](Platform& p) { p.priority_takes = Takes::at_once; });
  CHECK(at_once.priority == 6);
  CHECK(at_once.priority_later == 5);
  const Settings at_restart([](Platform& p) { p.priority_takes = Takes::at_restart; });
  CHECK(at_restart.priority == 5);
  CHECK(at_restart.priority_later == 6);
}

TEST_CASE("Semantics 7 settings-follow: a priority set before a new number takes is lost where it follows the number") {
  const auto rule = [](SettingsFollow follow) {
    return [follow](Platform& p) {
      p.number_takes = p.priority_takes = Takes::at_restart;
      p.settings_follow = follow;
    };
  };
  CHECK(Settings(rule(SettingsFollow::device)).priority_later == 6);
  CHECK(Settings(rule(SettingsFollow::number)).priority_later == 7);  // the factory's
}

namespace {

/// Whether x and y, whose ports are configured step by step, are linked in the end. (Nothing settles on the way: the
/// loser of the contest would restart at the moment that the link forms.)
bool linked_after(const std::function<void(ModelBuilder&, PortId)>& steps) {
  ModelBuilder b;
  const DeviceId x = b.device("x");
  const DeviceId y = b.device("y", {.ports = {{.name = "p", .side = Side::none}}});
  const CableId c = b.cable(b.east(x), b.port(y, "p"));
  steps(b, b.port(y, "p"));
  Run run(b);
  for (std::size_t i = 0; i < run.world().steps().size(); ++i) run.leave(step(StepId(i)));
  return run.linked(c);
}

}  // namespace

TEST_CASE("Semantics 7 side-takes") {
  for (const SideTakes takes : {SideTakes::at_once, SideTakes::on_apply}) {
    for (const bool apply : {true, false}) {
      const bool linked = linked_after([&](ModelBuilder& b, PortId p) {
        b.platform().side_takes = takes;
        b.set_side(p, Side::west);
        if (apply) b.apply({DeviceId(1)});
      });
      CHECK(linked == (apply || takes == SideTakes::at_once));
    }
  }
}

TEST_CASE("Semantics 7 side-needs-disabled") {
  for (const bool needs : {true, false}) {
    for (const bool disable : {true, false}) {
      const bool linked = linked_after([&](ModelBuilder& b, PortId p) {
        b.platform().side_needs_disabled = needs;
        if (disable) b.disable(p);
        b.set_side(p, Side::west);
        b.enable(p);
      });
      CHECK(linked == (disable || !needs));
    }
  }
}

TEST_CASE("Semantics 7 facing") {
  for (const Side side : {Side::east, Side::west}) {
    for (const Facing facing : {Facing::opposite, Facing::any}) {
      const bool linked = linked_after([&](ModelBuilder& b, PortId p) {
        b.platform().facing = facing;
        b.set_side(p, side);
      });
      CHECK(linked == (facing == Facing::any || side == Side::west));
    }
  }
}

namespace {

/// A newcomer on the east side of a running pair's second device; what the pair and the newcomer are like in the end.
struct Joined {
  Power newcomer;
  bool pair_together;
  DeviceId leader_of_newcomer;

  explicit Joined(const std::function<void(ModelBuilder&)>& rule, std::string software = "1") {
    ModelBuilder b;
    rule(b);
    auto two_easts = ring_ports();
    two_easts.push_back({.name = "x", .side = Side::west});
    const DeviceId x = b.device("x");
    const DeviceId y = b.device("y", {.ports = two_easts});
    const DeviceId z = b.device("z", {.on = false, .software = std::move(software)});
    b.cable(b.east(x), b.west(y));
    b.cable(b.port(y, "x"), b.east(z));  // y's west side now leads to x and z
    b.stack(x, {x, y});
    b.power_on(z);
    Run run(b);
    run.settle();
    run.take(step(StepId(0)));
    run.take(started(z));
    newcomer = run.power(z);
    pair_together = run.together(x, y);
    leader_of_newcomer = run.leader(z);
  }
};

}  // namespace

TEST_CASE("Semantics 7 side-leads-to: a second neighbour takes the link to the first apart, or joins") {
  const Joined one([](ModelBuilder& b) { b.platform().side_leads_to = SideLeadsTo::one_neighbour; });
  CHECK_FALSE(one.pair_together);
  CHECK(one.leader_of_newcomer == DeviceId(2));
  const Joined any([](ModelBuilder& b) { b.platform().side_leads_to = SideLeadsTo::any; });
  CHECK(any.pair_together);
  CHECK(any.leader_of_newcomer == DeviceId(0));
}

TEST_CASE("Semantics 7 software") {
  const Joined match([](ModelBuilder& b) { b.platform().software = Software::must_match; }, "2");
  CHECK(match.leader_of_newcomer == DeviceId(2));
  const Joined any([](ModelBuilder& b) { b.platform().software = Software::any; }, "2");
  CHECK(any.leader_of_newcomer == DeviceId(0));
}

TEST_CASE("Semantics 7 orphans: carry on under a leader of their own, or restart") {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    ModelBuilder b;
    b.platform().orphans = orphans;
    const auto d = b.devices({"a", "b", "c"});
    b.chain(d);
    b.stack(d[0], d);
    b.faults({.crashes = 1});
    Run run(b);
    run.settle();
    run.take(crashed(d[0]));
    const bool carry_on = orphans == Orphans::carry_on;
    CHECK(run.power(d[1]) == (carry_on ? Power::up : Power::starting));
    CHECK(run.leader(d[2]) == (carry_on ? d[1] : DeviceId()));
  }
}

TEST_CASE("Semantics 7 election decides who leads when all start at once") {
  ModelBuilder b;
  const DeviceId strong = b.device("strong", {.number = 9, .priority = 9, .address = 9});
  const DeviceId low = b.device("low", {.number = 1, .priority = 1, .address = 8});
  const DeviceId first = b.device("first", {.number = 5, .priority = 5, .address = 7});
  b.chain({strong, low, first});
  const auto leader = [&](std::vector<ElectionKey> election) {
    b.platform().election = std::move(election);
    Run run(b);
    run.settle();
    return run.cold_start().leader(low);
  };
  CHECK(leader({ElectionKey::priority, ElectionKey::number}) == strong);
  CHECK(leader({ElectionKey::number, ElectionKey::priority}) == low);
  CHECK(leader({}) == first);
  CHECK(leader({ElectionKey::tenure}) == first);  // no one is senior after a cold start
}

TEST_CASE("Semantics 7 numbers and priorities bound what a device accepts") {
  ModelBuilder b;
  b.platform().numbers = {4, 4};
  b.platform().priorities = {6, 6};
  const DeviceId a = b.device("a", {.number = 4, .priority = 6});
  b.unordered();
  for (const std::int64_t n : {3, 4, 5}) b.set_number(a, n);
  for (const std::int64_t n : {5, 6, 7}) b.set_priority(a, n);
  Run run(b);
  run.settle();
  for (std::size_t i = 0; i < 6; ++i) {
    CHECK(run.take(step(StepId(i))) == (i == 1 || i == 4 ? Refusal::none : Refusal::out_of_range));
  }
}

// docs/reductions.md, Settings and Budgets: for the subtle points a small model on which forgetting a little more gives
// another answer.
#include <doctest/doctest.h>

#include <algorithm>

#include "explore/other_answer.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("2.k, 5.f settings of a device that is off are read before they are overwritten") {
  ModelBuilder b;
  const DeviceId on = b.device("yard-1");
  const DeviceId off = b.device("gate-1", {.on = false, .number = 8, .next_number = 2, .startup_priority = 9});
  b.goal(goal_of({on}));
  SUBCASE("by an await") {
    b.await(when::priority(off, Sign::equal, 5));
  }
  SUBCASE("by a check") {
    b.check(when::number(off, Sign::equal, 8));
  }
  SUBCASE("by the goal") {
    Goal goal = goal_of({on});
    goal.where = when::number(off, Sign::equal, 8);
    b.goal(goal);
  }
  SUBCASE("by its start, which resets what was filed under another number") {
    b.platform().settings_follow = SettingsFollow::number;
    b.power_on(off);
    b.await(when::up(off));
    b.check(when::priority(off, Sign::equal, b.platform().factory.priority));
  }
  expect_other_answer(b, Property::reaches_goal, [](State& s) {
    for (DeviceState& d : s.devices) {
      if (d.power != Power::off) continue;
      d.number = d.next_number;
      d.priority = d.startup_priority;
    }
  });
}

TEST_CASE("5.c.5 a late start may follow although nobody is starting yet") {
  // yard-2 comes back with a higher priority. Where it starts late it takes yard-1 down.
  ModelBuilder b;
  const DeviceId d = b.device("yard-1");
  const DeviceId e = b.device("yard-2", {.priority = 3, .startup_priority = 9});
  b.keep({d});
  b.platform().orphans = Orphans::carry_on;
  const auto joined = [&] {
    b.cable(b.east(d), b.west(e));
    b.stack(d, {d, e});
  };
  SUBCASE("after a crash") {
    joined();
    b.faults({.crashes = 1, .late_starts = 1});
  }
  SUBCASE("after a step") {
    joined();
    b.restart(e);
    b.faults({.late_starts = 1});
  }
  SUBCASE("5.c.3 after a cable has mended") {
    joined();
    b.faults({.cable_breaks = 1, .late_starts = 1, .mends = true});
  }
  SUBCASE("3.b after another cable has broken, and a link formed in its place") {
    b.platform().side_leads_to = SideLeadsTo::one_neighbour;
    const DeviceId f = b.device("yard-3", {.priority = 1});
    const DeviceId both = b.device("hub-1", {.priority = 5, .ports = {{"w", Side::west}, {"s", Side::west}}});
    b.cable(b.west(both), b.east(e));
    b.cable(b.port(both, "s"), b.east(f));
    b.keep({both});
    b.faults({.cable_breaks = 1, .late_starts = 1});
  }
  expect_other_answer(b, Property::primary_stays, [](State& s) {
    const auto starting = [](const DeviceState& device) { return device.power == Power::starting; };
    if (std::none_of(s.devices.begin(), s.devices.end(), starting)) s.left.late_starts = 0;
  });
}

TEST_CASE("5.c.5 a late start may follow after orphans have restarted") {
  // When the cable to yard-1 breaks yard-3 comes up first and leads; yard-2 comes up late, and gives way to it.
  ModelBuilder b;
  const auto d = b.devices({"yard-1", "yard-2", "yard-3"});
  b.chain(d);
  b.stack(d[0], d);
  b.platform().election = {ElectionKey::tenure};
  b.platform().orphans = Orphans::restart;
  b.keep({d[1]});
  b.faults({.cable_breaks = 1, .late_starts = 1});
  expect_other_answer(b, Property::primary_stays, [](State& s) {
    if (s.left.cable_breaks > 0) s.left.late_starts = 0;
  });
}

TEST_CASE("5.c.4 a step that is not ready yet may be omitted later") {
  ModelBuilder b;
  const auto d = b.devices({"yard-1", "yard-2"});
  b.keep({d[1]});
  b.await(when::up(d[0]));
  b.set_priority(d[1], 7);
  b.plug(b.cable(b.east(d[0]), b.west(d[1]), false));
  b.faults({.omissions = 1});
  expect_other_answer(b, Property::primary_stays, [](State& s) {
    if (!s.is_done(StepId(0))) s.left.omissions = 0;
  });
}

// docs/reductions.md, Seniority: when nobody can be orphaned any more.
#include "explore/reduce/cuts.hpp"

#include <doctest/doctest.h>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

bool may_follow(const Run& run) {
  return explore::Cuts(run.world()).may_follow(run.state());
}

/// yard-1 leads yard-2, east to west.
struct Yard {
  ModelBuilder b;
  std::vector<DeviceId> d = b.devices({"yard-1", "yard-2"});
  CableId cable = b.cable(b.east(d[0]), b.west(d[1]));

  Yard() { b.stack(d[0], d); }
};

/// May cut until its last step is done, and no longer.
void expect_cut_until_done(const ModelBuilder& b) {
  Run run(b);
  run.settle();
  for (std::size_t i = 0; i < run.world().steps().size(); ++i) {
    CAPTURE(i);
    CHECK(may_follow(run));
    run.take(step(StepId(i)));
  }
  CHECK_FALSE(may_follow(run));
}

void expect_no_cut(const ModelBuilder& b) {
  Run run(b);
  run.settle();
  CHECK_FALSE(may_follow(run));
}

}  // namespace

TEST_CASE("a crash and a break may cut off while the budget lasts") {
  Yard y;
  SUBCASE("a crash") {
    y.b.faults({.crashes = 1});
    Run run(y.b);
    CHECK(may_follow(run.settle()));
    run.take(crashed(y.d[1]));
    CHECK_FALSE(may_follow(run));
  }
  SUBCASE("a break") {
    y.b.faults({.cable_breaks = 1});
    Run run(y.b);
    CHECK(may_follow(run.settle()));
    run.take(broke(y.cable));
    CHECK_FALSE(may_follow(run));
  }
  SUBCASE("other faults cut nobody off") {
    y.b.faults({.omissions = 1, .late_starts = 1, .mends = true});
    expect_no_cut(y.b);
  }
}

TEST_CASE("a step that takes a device or a link away may cut off until it is done") {
  Yard y;
  SUBCASE("restart") {
    y.b.restart(y.d[1]);
  }
  SUBCASE("power-off") {
    y.b.power_off(y.d[0]);
  }
  SUBCASE("disable") {
    y.b.disable(y.b.east(y.d[0]));
  }
  SUBCASE("unplug") {
    y.b.unplug(y.cable);
  }
  expect_cut_until_done(y.b);
}

TEST_CASE("a step that has happened in vain cuts nobody off any more") {
  Yard y;
  y.b.check(when::never());
  y.b.power_off(y.d[0]);
  Run run(y.b);
  CHECK(may_follow(run.settle()));
  run.take(step(StepId(0)));  // halts: 5.i
  CHECK_FALSE(may_follow(run));
}

TEST_CASE("a step that takes nothing away cuts nobody off") {
  Yard y;
  const DeviceId spare = y.b.device("spare", {.on = false});
  y.b.power_on(spare);
  y.b.set_number(y.d[1], 7);
  y.b.set_priority(y.d[1], 7);
  y.b.enable(y.b.west(y.d[1]));
  y.b.plug(y.b.cable(y.b.east(y.d[1]), y.b.west(spare), false));
  y.b.save_stack_of(y.d[0]);
  y.b.apply_stack_of(y.d[0]);
  y.b.await(when::up(spare));
  expect_no_cut(y.b);
}

TEST_CASE("what has no cable is cut off from nobody") {
  Yard y;
  const DeviceId alone = y.b.device("alone");
  y.b.restart(alone);
  y.b.disable(y.b.east(alone));
  expect_no_cut(y.b);
}

TEST_CASE("a step cuts a cable only where the cable may be plugged at that time") {
  Yard y;
  const DeviceId more = y.b.device("yard-3");
  const CableId spare = y.b.cable(y.b.east(y.d[1]), y.b.west(more), false);
  SUBCASE("nobody plugs it") {
    y.b.disable(y.b.west(more));
    expect_no_cut(y.b);
  }
  SUBCASE("a step plugs it before") {
    y.b.plug(spare);
    y.b.disable(y.b.west(more));
    expect_cut_until_done(y.b);
  }
  SUBCASE("a step may plug it before or after") {
    y.b.unordered();
    y.b.disable(y.b.west(more));
    y.b.plug(spare);
    Run run(y.b);
    CHECK(may_follow(run.settle()));
  }
  SUBCASE("a step plugs it after") {
    y.b.disable(y.b.west(more));
    y.b.plug(spare);
    expect_no_cut(y.b);
  }
  SUBCASE("it is unplugged before, and was all that the step would cut") {
    y.b.unplug(y.cable);
    y.b.disable(y.b.east(y.d[0]));
    Run run(y.b);
    CHECK(may_follow(run.settle()));
    run.take(step(StepId(0)));
    CHECK_FALSE(may_follow(run));
  }
}

TEST_CASE("a broken cable may be cut where it may mend before") {
  Yard y;
  y.b.disable(y.b.east(y.d[0]));
  y.b.faults({.cable_breaks = 1});
  SUBCASE("it does not mend") {
    Run run(y.b);
    run.settle().take(broke(y.cable));
    CHECK_FALSE(may_follow(run));
  }
  SUBCASE("it mends") {
    y.b.faults({.cable_breaks = 1, .mends = true});
    Run run(y.b);
    run.settle().take(broke(y.cable));
    CHECK(may_follow(run));
  }
}

TEST_CASE("5.f a number that takes at once resets the ports of its device, where settings follow it") {
  Yard y;
  y.b.platform().settings_follow = SettingsFollow::number;
  y.b.set_number(y.d[1], 7);
  SUBCASE("at once") {
    expect_cut_until_done(y.b);
  }
  SUBCASE("at the next start") {
    y.b.platform().number_takes = Takes::at_restart;
    expect_no_cut(y.b);
  }
}

TEST_CASE("3.b where a side leads to one neighbour, a cable that comes up may cut others off") {
  Yard y;
  y.b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  const auto yard_4_of = [&](Side side) {
    return y.b.device("yard-4", {.ports = {{.name = "w", .side = Side::west}, {.name = "s", .side = side}}});
  };
  const DeviceId third = y.b.device("yard-3");
  const DeviceId other = y.b.device("yard-5", {.ports = {{.name = "f", .side = Side::west}}});
  SUBCASE("two ports of one side lead to two devices") {
    const DeviceId d = yard_4_of(Side::west);
    y.b.cable(y.b.east(third), y.b.west(d));
    y.b.cable(y.b.port(d, "s"), y.b.port(other, "f"));
    Run run(y.b);
    CHECK(may_follow(run.settle()));
    y.b.platform().side_leads_to = SideLeadsTo::any;
    expect_no_cut(y.b);
  }
  SUBCASE("of two sides") {
    const DeviceId d = yard_4_of(Side::east);
    y.b.cable(y.b.east(third), y.b.west(d));
    y.b.cable(y.b.port(d, "s"), y.b.port(other, "f"));
    expect_no_cut(y.b);
  }
  SUBCASE("of sides that a step may make one") {
    const DeviceId d = yard_4_of(Side::none);
    y.b.cable(y.b.east(third), y.b.west(d));
    y.b.cable(y.b.port(d, "s"), y.b.port(other, "f"));
    expect_no_cut(y.b);
    y.b.set_side(y.b.port(d, "s"), Side::west);
    Run run(y.b);
    CHECK(may_follow(run.settle()));
    run.take(step(StepId(0)));
    CHECK(may_follow(run));
  }
  SUBCASE("to one device") {
    const DeviceId d = yard_4_of(Side::west);
    y.b.cable(y.b.east(third), y.b.west(d));
    y.b.cable(y.b.port(d, "s"), y.b.west(third));
    expect_no_cut(y.b);
  }
  SUBCASE("over one port, which has one plug at a time") {
    const DeviceId d = yard_4_of(Side::east);
    y.b.cable(y.b.east(third), y.b.west(d));
    y.b.cable(y.b.port(other, "f"), y.b.west(d), false);
    expect_no_cut(y.b);
  }
  SUBCASE("of no side") {
    const DeviceId d = y.b.device("yard-4", {.ports = {{.name = "w"}, {.name = "s"}}});
    y.b.cable(y.b.east(third), y.b.west(d));
    y.b.cable(y.b.port(d, "s"), y.b.port(other, "f"));
    expect_no_cut(y.b);
  }
}

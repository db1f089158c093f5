// docs/reductions.md, Budgets: how long an omission and a late start may still strike.
#include "explore/reduce/unspent.hpp"

#include <doctest/doctest.h>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

struct Yard {
  ModelBuilder b;
  std::vector<DeviceId> d = b.devices({"yard-1", "yard-2"});
  CableId cable = b.cable(b.east(d[0]), b.west(d[1]));

  Yard() {
    b.stack(d[0], d);
    b.platform().orphans = Orphans::carry_on;
  }
};

FaultBudget left(const Run& run) {
  State s = run.state();
  explore::Unspent(run.world()).strike_off(s);
  return s.left;
}

FaultBudget left(const ModelBuilder& b) {
  Run run(b);
  return left(run.settle());
}

}  // namespace

TEST_CASE("5.c.4 omissions are kept as long as a step may be omitted") {
  Yard y;
  y.b.faults({.omissions = 2});
  CHECK(left(y.b).omissions == 0);
  SUBCASE("until the last is done") {
    y.b.set_priority(y.d[0], 7);
    y.b.set_priority(y.d[1], 7);
    Run run(y.b);
    CHECK(left(run.settle()).omissions == 2);
    run.take(step(StepId(0)));
    CHECK(left(run).omissions == 2);
    run.take(omitted(StepId(1)));
    CHECK(left(run).omissions == 0);
  }
  SUBCASE("an await and a check are never omitted") {
    y.b.await(when::always());
    y.b.check(when::always());
    CHECK(left(y.b).omissions == 0);
  }
  SUBCASE("a step waits for an await") {
    y.b.await(when::never());
    y.b.set_priority(y.d[0], 7);
    CHECK(left(y.b).omissions == 2);
  }
  SUBCASE("5.i not after a check that fails") {
    y.b.check(when::never());
    y.b.set_priority(y.d[0], 7);
    Run run(y.b);
    run.settle().take(step(StepId(0)));
    CHECK(left(run).omissions == 0);
  }
}

TEST_CASE("5.c.5 late starts are kept as long as somebody may start") {
  Yard y;
  y.b.faults({.late_starts = 2});
  CHECK(left(y.b).late_starts == 0);
  SUBCASE("somebody is starting") {
    y.b.restart(y.d[1]);
    Run run(y.b);
    run.settle().take(step(StepId(0)));
    CHECK(left(run).late_starts == 2);
    run.take(started(y.d[1]));
    CHECK(left(run).late_starts == 0);
  }
  SUBCASE("a step is to come") {
    y.b.power_off(y.d[1]);
    Run run(y.b);
    CHECK(left(run.settle()).late_starts == 2);
    run.take(step(StepId(0)));
    CHECK(left(run).late_starts == 0);
  }
  SUBCASE("a device may crash") {
    y.b.faults({.crashes = 1, .late_starts = 2});
    CHECK(left(y.b).late_starts == 2);
  }
}

TEST_CASE("5.c.5 a break takes nobody down but in two cases") {
  Yard y;
  y.b.faults({.cable_breaks = 1, .late_starts = 2});
  CHECK(left(y.b).late_starts == 0);
  SUBCASE("4.2.a orphans restart") {
    y.b.platform().orphans = Orphans::restart;
  }
  SUBCASE("3.b another link forms instead") {
    y.b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  }
  if (y.b.platform().orphans == Orphans::restart || y.b.platform().side_leads_to == SideLeadsTo::one_neighbour) {
    CHECK(left(y.b).late_starts == 2);
    y.b.faults({.late_starts = 2});
    CHECK(left(y.b).late_starts == 0);
  }
}

TEST_CASE("5.c.3 a cable that mends may take somebody down") {
  Yard y;
  y.b.faults({.cable_breaks = 1, .late_starts = 2, .mends = true});
  Run run(y.b);
  CHECK(left(run.settle()).late_starts == 2);
  run.take(broke(y.cable));
  CHECK(left(run).late_starts == 2);
  run.state()[y.cable].broken = false;
  CHECK(left(run).late_starts == 0);
}

TEST_CASE("what may strike is left as it is") {
  Yard y;
  y.b.faults({.cable_breaks = 1, .crashes = 1, .omissions = 1, .late_starts = 1, .mends = true});
  y.b.power_off(y.d[0]);
  CHECK(left(y.b) == FaultBudget{1, 1, 1, 1, true});
}

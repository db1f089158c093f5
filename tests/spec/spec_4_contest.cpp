// Semantics 4.2, Contest, and 4.3, what becomes of those who yield or lose.
#include "spec/class_of_devices.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// d0 - d1 - d2, of which d0 and d2 follow a device elsewhere and d1 is fresh.
struct Bereaved : Class {
  explicit Bereaved(Orphans orphans)
      : Class({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 3, .priority = 4}}) {
    b.device("elsewhere");
    b.platform().orphans = orphans;
  }
};

}  // namespace

TEST_CASE("4.2.a carry-on: the best-ranked orphan becomes the leader of all, fresh ones too") {
  const Bereaved k(Orphans::carry_on);
  const auto plan = k.plan({3, -1, 3, 3});
  CHECK_FALSE(plan.unsettled());
  CHECK(plan.admitted == Admitted{{k.d[0], k.d[2]}, {k.d[1], k.d[2]}, {k.d[2], k.d[2]}});
}

TEST_CASE("4.2.a restart: every orphan restarts and the fresh ones wait for the next pass") {
  const Bereaved k(Orphans::restart);
  const auto plan = k.plan({3, -1, 3, 3});
  CHECK(plan.restarted == Ids{k.d[0], k.d[2]});
  CHECK(plan.held.empty());
  CHECK(plan.admitted.empty());
}

TEST_CASE("4.2.a an orphan leads although the primary that it followed is only cut off, not gone") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c"});
  const auto cables = b.chain(d);
  b.stack(d[0], d);
  b.faults({.cable_breaks = 1});
  b.platform().orphans = Orphans::carry_on;
  Run run(b);
  run.settle();
  run.take(broke(cables[0]));
  CHECK(run.leader(d[0]) == d[0]);
  CHECK(run.leader(d[1]) == d[1]);
  CHECK(run.leader(d[2]) == d[1]);
}

TEST_CASE("4.2.b all fresh: the best-ranked becomes the leader of all that do not yield") {
  const Class k({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 2, .priority = 4}});
  const auto plan = k.plan({-1, -1, -1});
  CHECK(plan.held == Ids{k.d[2]});
  CHECK(plan.admitted == Admitted{{k.d[0], k.d[1]}, {k.d[1], k.d[1]}});
}

TEST_CASE("4.2.b a fresh device alone leads itself") {
  const Class k({DeviceIs{.number = 1}});
  CHECK(k.plan({-1}).admitted == Admitted{{k.d[0], k.d[0]}});
}

TEST_CASE("4.2.c the best-ranked leader present wins, fresh devices follow it") {
  const Class k({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 3, .priority = 4}});
  const auto plan = k.plan({0, -1, 2});
  CHECK(plan.admitted == Admitted{{k.d[1], k.d[2]}});
  CHECK(plan.restarted == Ids{k.d[0]});
}

TEST_CASE("4.2.c followers are no candidates, whatever their rank") {
  const Class k({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 3, .priority = 4}});
  CHECK(k.plan({0, 0, 2}).restarted == Ids{k.d[0], k.d[1]});
}

TEST_CASE("4.2.d the loser's whole stack restarts as far as it is in the class, and orphans with it") {
  Class k({{.number = 1, .priority = 9},
           {.number = 2},
           {.number = 3, .priority = 1},
           {.number = 4},
           {.number = 5},
           {.number = 6}});
  const DeviceId elsewhere = k.b.device("elsewhere");
  const auto e = static_cast<int>(elsewhere.value);
  // d2 leads d3 and the device elsewhere, d4 is an orphan, d5 is fresh. What the device elsewhere does, it does as an
  // orphan of its own class.
  const auto plan = k.plan({0, 0, 2, 2, e, -1, 2});
  CHECK(plan.restarted == Ids{k.d[2], k.d[3], k.d[4]});
  CHECK(plan.admitted == Admitted{{k.d[5], k.d[0]}, {elsewhere, elsewhere}});
  k.b.platform().orphans = Orphans::restart;
  CHECK(k.plan({0, 0, 2, 2, e, -1, 2}).restarted == Ids{k.d[2], k.d[3], k.d[4], elsewhere});
}

TEST_CASE("4.2.d a loser that yields is held and does not restart") {
  const Class k({{.number = 1, .priority = 9}, {.number = 1, .priority = 3}, {.number = 2}});
  const auto plan = k.plan({0, 1, 1});
  CHECK(plan.held == Ids{k.d[1]});
  CHECK(plan.restarted == Ids{k.d[2]});
}

TEST_CASE("4.a a pass looks at all classes at once, and is computed from the state as it is") {
  // Two classes, in each a contest.
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c", "d"});
  b.chain({d[0], d[1]});
  b.chain({d[2], d[3]});
  const Run run(b);
  CHECK(run.plan().restarted == Ids{d[1], d[3]});
}

TEST_CASE("4.a before each event the stack settles") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const CableId c = b.cable(b.east(d[0]), b.west(d[1]), false);
  const StepId plug = b.plug(c);
  Run run(b);
  run.settle();
  run.leave(step(plug));
  CHECK(run.leader(d[1]) == d[1]);
  run.settle();
  CHECK(run.plan().changes_nothing());
  CHECK(run.power(d[1]) == Power::starting);
}

// 4.3

TEST_CASE("4.3.a a device that yields becomes held and has no leader") {
  const Class k({{.number = 3}, {.number = 3}});
  Run run(k.b);
  run.pass();
  CHECK(run.power(k.d[1]) == Power::held);
  CHECK_FALSE(run.leader(k.d[1]));
  // It stays in the order of those that have been up longer.
  CHECK(run.state()[k.d[1]].seniority == 1);
}

TEST_CASE("4.3.b a device that restarts becomes starting and has no leader") {
  const Class k({{.number = 3}, {.number = 4}});
  Run run(k.b);
  run.pass();
  CHECK(run.power(k.d[1]) == Power::starting);
  CHECK_FALSE(run.leader(k.d[1]));
  CHECK(run.state()[k.d[1]].seniority == 0);
}

namespace {

/// `d` is held beside `leading`.
struct Held {
  ModelBuilder b;
  DeviceId leading, d;
  CableId c;

  Held() {
    leading = b.device("leading", {.number = 3});
    d = b.device("d", {.number = 3});
    c = b.chain({leading, d})[0];
    b.faults({.crashes = 1});
    b.unordered();
  }
};

}  // namespace

TEST_CASE("4.3.c a held device stays held though it is renumbered at once or unplugged, and it does not crash") {
  Held h;
  const StepId renumber = h.b.set_number(h.d, 4);
  const StepId unplug = h.b.unplug(h.c);
  Run run(h.b);
  run.settle();
  REQUIRE(run.power(h.d) == Power::held);
  CHECK_FALSE(run.can(crashed(h.d)));
  CHECK(run.can(crashed(h.leading)));
  run.take(step(renumber));
  CHECK(run.state()[h.d].number == 4);
  CHECK(run.power(h.d) == Power::held);
  run.take(step(unplug));
  CHECK(run.power(h.d) == Power::held);
}

TEST_CASE("4.3.c a restart, a power-off or a cold start releases a held device") {
  Held h;
  const StepId renumber = h.b.set_number(h.d, 4);
  const StepId restart = h.b.restart(h.d, {.after = {renumber}});
  const StepId off = h.b.power_off(h.d, {.after = {renumber}});
  Run run(h.b);
  run.settle();
  run.take(step(renumber));
  SUBCASE("restart") {
    run.take(step(restart));
    CHECK(run.power(h.d) == Power::starting);
    run.take(started(h.d));
    CHECK(run.leader(h.d) == h.leading);
  }
  SUBCASE("power-off") {
    run.take(step(off));
    CHECK(run.power(h.d) == Power::off);
  }
  SUBCASE("cold start") {
    run.cold_start();
    CHECK(run.power(h.d) == Power::up);
  }
}

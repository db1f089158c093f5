// Semantics 5, Events: 5.a to 5.c and 5.i to 5.k.
#include <algorithm>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::senior;

TEST_CASE("5 exactly one event at a time, steps in file order, then starts, then faults kind by kind") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const DeviceId s = b.device("s", {.on = false});
  const auto cables = b.chain(d);
  b.unordered();
  const StepId on = b.power_on(s);
  const StepId x = b.save({d[0]});
  const StepId y = b.save({d[1]});
  b.stack(d[0], d);
  b.faults({1, 1, 1, 1, true});
  Run run(b);
  run.settle();
  run.take(step(on));
  const std::vector<Event> all = {step(x),       step(y),    started(s), broke(cables[0]), crashed(d[0]),
                                  crashed(d[1]), omitted(x), omitted(y), started_late(s)};
  CHECK(run.events() == all);
  CHECK(std::is_sorted(all.begin(), all.end()));
}

TEST_CASE("5.a a step is ready when it is not done and everything it must follow is done") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  b.unordered();
  const StepId x = b.save({a});
  const StepId y = b.save({a});
  const StepId last = b.save({a}, {.after = {x, y}});
  Run run(b);
  run.settle();
  CHECK(run.events() == std::vector<Event>{step(x), step(y)});
  run.take(step(y));
  CHECK(run.events() == std::vector<Event>{step(x)});
  run.take(step(x));
  CHECK(run.events() == std::vector<Event>{step(last)});
  run.take(step(last));
  CHECK(run.events().empty());
}

TEST_CASE("5.a an await is ready when its condition is true, other steps whatever the state") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  const DeviceId s = b.device("s", {.on = false});
  b.unordered();
  const StepId on = b.power_on(s);
  const StepId await = b.await(when::up(s));
  const StepId check = b.check(when::up(s));
  const StepId refused = b.save({s});
  Run run(b);
  run.settle();
  CHECK_FALSE(run.can(step(await)));
  CHECK(run.can(step(check)));
  CHECK(run.can(step(refused)));
  run.take(step(on));
  CHECK_FALSE(run.can(step(await)));
  run.take(started(s));
  CHECK(run.can(step(await)));
  CHECK(run.power(a) == Power::up);
}

TEST_CASE("5.a conditions are evaluated in the state before the step: it is not done there") {
  ModelBuilder b;
  b.device("a");
  b.unordered();
  const StepId await = b.await(when::done(StepId(0)));
  const StepId check = b.check(when::done(StepId(1)));
  Run run(b);
  run.settle();
  CHECK_FALSE(run.can(step(await)));
  run.take(step(check));
  CHECK(run.state().halted);
  CHECK(run.holds(when::done(check)));
}

TEST_CASE("5.b a start completes: numbers, running and operational from startup, no leader, junior to all") {
  ModelBuilder b;
  const DeviceId other = b.device("other", {.number = 50});
  const DeviceId held = b.device("held", {.number = 50});
  const DeviceId s = b.device("s", {.on = false,
                                    .number = 3,
                                    .next_number = 4,
                                    .priority = 5,
                                    .startup_priority = 6,
                                    .ports = {{.name = "p",
                                               .side = Side::none,
                                               .enabled = false,
                                               .startup_enabled = true,
                                               .startup_side = Side::west,
                                               .operational_side = Side::east}}});
  b.chain({other, held});
  const StepId on = b.power_on(s);
  Run run(b);
  run.settle();
  REQUIRE(run.power(held) == Power::held);
  run.take(step(on));
  run.leave(started(s));
  const DeviceState& d = run.state()[s];
  CHECK(d.power == Power::up);
  CHECK(d.number == 4);
  CHECK(d.next_number == 4);
  CHECK(d.priority == 6);
  CHECK(d.startup_priority == 6);
  CHECK_FALSE(d.leader);
  const PortState& p = run.state()[b.port(s, "p")];
  CHECK(p == PortState{true, true, Side::west, Side::west, Side::west});
  for (const DeviceId senior_one : {other, held}) {
    CHECK(senior(run.state(), senior_one, s));
    CHECK_FALSE(senior(run.state(), s, senior_one));
  }
}

TEST_CASE("5.b starts complete at any time and in any order; the first is senior to the second") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.on = false});
  const DeviceId y = b.device("y", {.on = false});
  const StepId on_x = b.power_on(x);
  const StepId on_y = b.power_on(y);
  Run run(b);
  run.settle();
  run.take(step(on_x));
  CHECK(run.can(step(on_y)));
  CHECK(run.can(started(x)));
  run.take(step(on_y));
  CHECK(run.can(started(x)));
  run.take(started(y));
  run.take(started(x));
  CHECK(senior(run.state(), y, x));
  CHECK_FALSE(senior(run.state(), x, y));
  CHECK_FALSE(run.can(started(x)));
}

TEST_CASE("5.b starts complete with no step left, and after a halt (5.i)") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.on = false});
  b.power_on(x);
  b.check(when::never());
  Run run(b);
  run.settle();
  run.take(step(StepId(0)));
  run.take(step(StepId(1)));
  CHECK(run.events() == std::vector<Event>{started(x)});
}

namespace {

/// A running pair, one cable plugged, one not, and every kind of fault allowed once.
struct Faulty {
  ModelBuilder b;
  DeviceId a, d, off;
  CableId plugged, loose;

  explicit Faulty(FaultBudget budget) {
    a = b.device("a");
    d = b.device("d");
    off = b.device("off", {.on = false});
    plugged = b.cable(b.east(a), b.west(d));
    loose = b.cable(b.west(a), b.east(d), false);
    b.stack(a, {a, d});
    b.faults(budget);
  }
};

}  // namespace

TEST_CASE("5.c no fault strikes without a budget") {
  Faulty f({});
  f.b.save({f.a});
  Run run(f.b);
  run.settle();
  CHECK(run.events() == std::vector<Event>{step(StepId(0))});
}

TEST_CASE("5.c a fault strikes while its budget lasts, each kind on its own account") {
  Faulty f({.cable_breaks = 1, .crashes = 2});
  Run run(f.b);
  run.settle();
  run.take(broke(f.plugged));
  CHECK(run.state().left == FaultBudget{.cable_breaks = 0, .crashes = 2});
  CHECK_FALSE(run.can(broke(f.plugged)));
  run.take(crashed(f.a));
  CHECK(run.state().left.crashes == 1);
  run.take(crashed(f.d));
  CHECK(run.state().left.crashes == 0);
  run.take(started(f.a));
  CHECK_FALSE(run.can(crashed(f.a)));
}

TEST_CASE("5.c.1 a plugged, unbroken cable breaks, idle or not") {
  Faulty f({.cable_breaks = 2});
  const CableId idle = f.b.cable(f.b.west(f.off), f.b.east(f.d));
  Run run(f.b);
  run.settle();
  CHECK(run.can(broke(f.plugged)));
  CHECK(run.can(broke(idle)));
  CHECK_FALSE(run.can(broke(f.loose)));
  run.take(broke(f.plugged));
  CHECK(run.state()[f.plugged].broken);
  CHECK(run.state()[f.plugged].plugged);
  CHECK_FALSE(run.can(broke(f.plugged)));
  CHECK(run.can(broke(idle)));
}

TEST_CASE("5.c.2 a device that is up crashes: it starts and has no leader") {
  Faulty f({.crashes = 2});
  Run run(f.b);
  run.settle();
  CHECK_FALSE(run.can(crashed(f.off)));
  const DeviceState before = run.state()[f.d];
  run.leave(crashed(f.d));
  CHECK(run.power(f.d) == Power::starting);
  CHECK_FALSE(run.leader(f.d));
  CHECK(run.state()[f.d].number == before.number);
  CHECK(run.state()[f.d].seniority == 0);
  run.settle();
  CHECK_FALSE(run.can(crashed(f.d)));
}

TEST_CASE("5.c.3 where mends is on, a broken cable mends, plugged or not, at no cost") {
  Faulty f({.cable_breaks = 1, .mends = true});
  const StepId unplug = f.b.unplug(f.plugged);
  Run run(f.b);
  run.settle();
  CHECK_FALSE(run.can(mended(f.plugged)));
  run.take(broke(f.plugged));
  CHECK(run.can(mended(f.plugged)));
  CHECK_FALSE(run.can(mended(f.loose)));
  SUBCASE("plugged") {
    run.take(mended(f.plugged));
    CHECK_FALSE(run.state()[f.plugged].broken);
    CHECK(run.state().left == FaultBudget{.mends = true});
    CHECK_FALSE(run.can(mended(f.plugged)));
  }
  SUBCASE("unplugged") {
    run.take(step(unplug));
    CHECK(run.can(mended(f.plugged)));
    run.take(mended(f.plugged));
    CHECK_FALSE(run.state()[f.plugged].broken);
    CHECK_FALSE(run.state()[f.plugged].plugged);
  }
}

TEST_CASE("5.c.3 without mends nothing mends; unplugging mends nothing, and a broken cable can be plugged") {
  Faulty f({.cable_breaks = 1});
  const StepId unplug = f.b.unplug(f.plugged);
  const StepId plug = f.b.plug(f.plugged);
  Run run(f.b);
  run.settle();
  run.take(broke(f.plugged));
  CHECK_FALSE(run.can(mended(f.plugged)));
  CHECK(run.take(step(unplug)) == Refusal::none);
  CHECK(run.state()[f.plugged].broken);
  CHECK(run.take(step(plug)) == Refusal::none);
  CHECK(run.state()[f.plugged].plugged);
  CHECK(run.state()[f.plugged].broken);
  CHECK_FALSE(run.cable_up(f.plugged));
}

TEST_CASE("5.c.4 an omitted step becomes done, changes nothing, and is not refused") {
  Faulty f({.omissions = 3});
  f.b.unordered();
  const StepId off = f.b.power_off(f.d);
  const StepId refused = f.b.power_on(f.a);
  const StepId await = f.b.await(when::up(f.a));
  const StepId check = f.b.check(when::up(f.a));
  const StepId later = f.b.save({f.a}, {.after = {off}});
  Run run(f.b);
  run.settle();
  CHECK(run.can(omitted(off)));
  CHECK(run.can(omitted(refused)));
  CHECK_FALSE(run.can(omitted(await)));
  CHECK_FALSE(run.can(omitted(check)));
  CHECK_FALSE(run.can(omitted(later)));
  State expected = run.state();
  expected.done[off.value] = 1;
  expected.left.omissions = 2;
  CHECK(run.take(omitted(off)) == Refusal::none);
  CHECK(run.state() == expected);
  CHECK(run.can(omitted(later)));
  CHECK_FALSE(run.can(omitted(off)));
  run.take(omitted(refused));
  CHECK_FALSE(run.broken(Property::no_refusal));
}

TEST_CASE("5.c.5 a start that completes late leads itself, and is a party to the contest") {
  ModelBuilder b;
  const DeviceId leading = b.device("leading", {.priority = 1});
  const DeviceId s = b.device("s", {.on = false, .next_number = 7, .priority = 9});
  b.chain({leading, s});
  const StepId on = b.power_on(s);
  b.faults({.late_starts = 1});
  Run run(b);
  run.settle();
  run.take(step(on));
  CHECK(run.can(started(s)));
  run.leave(started_late(s));
  CHECK(run.leader(s) == s);
  CHECK(run.power(s) == Power::up);
  CHECK(run.state()[s].number == 7);
  CHECK(senior(run.state(), leading, s));
  CHECK(run.state().left.late_starts == 0);
  run.settle();
  CHECK(run.power(leading) == Power::starting);
  CHECK(run.leader(s) == s);
  CHECK_FALSE(run.can(started_late(leading)));
  CHECK(run.can(started(leading)));
}

TEST_CASE("5.i halted ends the procedure: no further step is ready, faults still strike") {
  Faulty f({.cable_breaks = 1, .omissions = 1});
  f.b.unordered();
  const StepId check = f.b.check(when::never());
  const StepId other = f.b.save({f.a});
  Run run(f.b);
  run.settle();
  CHECK(run.can(step(other)));
  run.take(step(check));
  CHECK(run.state().halted);
  CHECK_FALSE(run.can(step(other)));
  CHECK_FALSE(run.can(omitted(other)));
  CHECK(run.can(broke(f.plugged)));
}

TEST_CASE("5.j complete: every step done and not halted") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  b.save({a});
  SUBCASE("every step done") {
    Run run(b);
    run.settle();
    CHECK_FALSE(semantics::complete(run.state()));
    run.take(step(StepId(0)));
    CHECK(semantics::complete(run.state()));
  }
  SUBCASE("halted at the last step") {
    b.check(when::never());
    Run run(b);
    run.settle();
    run.take(step(StepId(0)));
    run.take(step(StepId(1)));
    CHECK_FALSE(semantics::complete(run.state()));
    CHECK(run.at_rest());
  }
  SUBCASE("a procedure without steps is complete from the start") {
    CHECK(semantics::complete(Run(ModelBuilder()).state()));
  }
}

TEST_CASE("5.j at rest: no step ready and no device starting; a fault that may still strike does not matter") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  const DeviceId s = b.device("s", {.on = false});
  b.power_on(s);
  b.await(when::held(a));
  b.faults({.crashes = 1});
  Run run(b);
  run.settle();
  CHECK_FALSE(run.at_rest());
  run.take(step(StepId(0)));
  CHECK_FALSE(run.at_rest());  // s is starting
  run.take(started(s));
  CHECK(run.at_rest());  // the await waits for ever
  CHECK(run.can(crashed(a)));
  CHECK_FALSE(semantics::complete(run.state()));
  // A start that may only complete late would be a start all the same.
  run.take(crashed(a));
  CHECK_FALSE(run.at_rest());
}

// Semantics 2, State.
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::senior;

TEST_CASE("2.a a starting device has no leader, and none until it is admitted") {
  ModelBuilder b;
  const DeviceId leading = b.device("leading");
  const DeviceId newcomer = b.device("newcomer", {.on = false});
  b.chain({leading, newcomer});
  const StepId on = b.power_on(newcomer);
  Run run(b);
  run.settle();
  CHECK_FALSE(run.leader(newcomer));
  run.take(step(on));
  CHECK(run.power(newcomer) == Power::starting);
  CHECK_FALSE(run.leader(newcomer));
  run.leave(started(newcomer));
  CHECK(run.power(newcomer) == Power::up);
  CHECK_FALSE(run.leader(newcomer));
  run.settle();
  CHECK(run.leader(newcomer) == leading);
}

TEST_CASE("2.a senior stays a strict weak order among the devices that are up or held") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.tenure = 3});
  const DeviceId y = b.device("y", {.tenure = 2});
  const DeviceId z = b.device("z", {.tenure = 2});
  const DeviceId w = b.device("w", {.tenure = 1});
  b.unordered();
  const StepId off = b.power_off(y);
  Run run(b);
  run.settle();
  CHECK(senior(run.state(), x, y));
  CHECK(senior(run.state(), y, w));
  CHECK_FALSE(senior(run.state(), y, z));
  CHECK_FALSE(senior(run.state(), z, y));
  run.take(step(off));
  // z stays where y was beside it; x and w keep their places.
  CHECK(senior(run.state(), x, z));
  CHECK(senior(run.state(), z, w));
  for (const DeviceId d : {x, z, w}) {
    CHECK_FALSE(senior(run.state(), d, y));
    CHECK_FALSE(senior(run.state(), y, d));
  }
}

TEST_CASE("2.a equal orders of seniority are equal states, whoever left the order") {
  ModelBuilder b;
  b.device("x", {.tenure = 3});
  const DeviceId y = b.device("y", {.tenure = 2});
  const DeviceId z = b.device("z", {.tenure = 1});
  const StepId off = b.power_off(y);
  Run run(b);
  run.settle();
  run.take(step(off));
  CHECK(run.state()[z].seniority == 2);
  CHECK(run.state()[y].seniority == 0);
}

TEST_CASE("2.b ports have enabled in running and startup, a side in running, startup and operational") {
  ModelBuilder b;
  const DeviceId a = b.device("a", {.ports = {{.name = "p",
                                               .side = Side::east,
                                               .enabled = true,
                                               .startup_enabled = false,
                                               .startup_side = Side::west,
                                               .operational_side = Side::none}}});
  const Run run(b);
  const PortState& p = run.state()[b.port(a, "p")];
  CHECK(p.enabled);
  CHECK_FALSE(p.startup_enabled);
  CHECK(p.side == Side::east);
  CHECK(p.startup_side == Side::west);
  CHECK(p.operational_side == Side::none);
}

TEST_CASE("2.c 2.l cables are plugged as the file says, and none is broken") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const CableId plugged = b.cable(b.east(d[0]), b.west(d[1]));
  const CableId loose = b.cable(b.west(d[0]), b.east(d[1]), false);
  const Run run(b);
  CHECK(run.state()[plugged].plugged);
  CHECK_FALSE(run.state()[loose].plugged);
  CHECK_FALSE(run.state()[plugged].broken);
  CHECK_FALSE(run.state()[loose].broken);
}

TEST_CASE("2.d 2.e 2.f no step is done, the whole budget is left, nothing has halted") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  b.restart(a);
  b.save({a});
  b.faults({.cable_breaks = 1, .crashes = 2, .omissions = 3, .late_starts = 4, .mends = true});
  const Run run(b);
  CHECK(run.state().done == std::vector<std::uint8_t>{0, 0});
  CHECK(run.state().left == FaultBudget{1, 2, 3, 4, true});
  CHECK_FALSE(run.state().halted);
}

TEST_CASE("2.g devices that are on are up") {
  ModelBuilder b;
  const DeviceId on = b.device("on");
  const DeviceId off = b.device("off", {.on = false});
  const Run run(b);
  CHECK(run.power(on) == Power::up);
  CHECK(run.power(off) == Power::off);
}

TEST_CASE("2.h stack members follow the primary, others that are on lead themselves, those that are off have none") {
  ModelBuilder b;
  const DeviceId member = b.device("member");
  const DeviceId primary = b.device("primary");
  const DeviceId lone = b.device("lone");
  const DeviceId off = b.device("off", {.on = false});
  b.stack(primary, {primary, member});
  const Run run(b);
  CHECK(run.leader(primary) == primary);
  CHECK(run.leader(member) == primary);
  CHECK(run.leader(lone) == lone);
  CHECK_FALSE(run.leader(off));
}

TEST_CASE("2.i startup and next number are what the file says") {
  ModelBuilder b;
  const DeviceId plain = b.device("plain", {.number = 4, .priority = 6});
  const DeviceId other = b.device("other", {.number = 5, .next_number = 8, .priority = 6, .startup_priority = 2});
  const Run run(b);
  CHECK(run.state()[plain].next_number == 4);
  CHECK(run.state()[plain].startup_priority == 6);
  CHECK(run.state()[other].number == 5);
  CHECK(run.state()[other].next_number == 8);
  CHECK(run.state()[other].priority == 6);
  CHECK(run.state()[other].startup_priority == 2);
}

TEST_CASE("2.j the larger tenure is senior; a device that is off is senior to none, none to it") {
  ModelBuilder b;
  const DeviceId young = b.device("young", {.tenure = 1});
  const DeviceId old = b.device("old", {.tenure = 10});
  const DeviceId unstated = b.device("unstated");
  const DeviceId off = b.device("off", {.on = false, .tenure = 99});
  const Run run(b);
  CHECK(senior(run.state(), old, young));
  CHECK(senior(run.state(), young, unstated));
  CHECK(senior(run.state(), old, unstated));
  CHECK_FALSE(senior(run.state(), young, old));
  for (const DeviceId d : {young, old, unstated}) {
    CHECK_FALSE(senior(run.state(), off, d));
    CHECK_FALSE(senior(run.state(), d, off));
  }
}

TEST_CASE("2.j the places in the order leave none out, whatever devices are off") {
  ModelBuilder b;
  const DeviceId old = b.device("old", {.tenure = 10});
  b.device("off", {.on = false, .tenure = 5});
  const DeviceId young = b.device("young", {.tenure = 1});
  const Run run(b);
  CHECK(run.state()[old].seniority == 1);
  CHECK(run.state()[young].seniority == 2);
}

TEST_CASE("2.j devices of equal tenure are senior to none of each other") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const Run run(b);
  CHECK_FALSE(senior(run.state(), d[0], d[1]));
  CHECK_FALSE(senior(run.state(), d[1], d[0]));
}

TEST_CASE("2.k a device that is off or starting keeps its variables, and conditions read them") {
  ModelBuilder b;
  b.platform().priority_takes = Takes::at_restart;
  const DeviceId a = b.device("a", {.number = 4, .next_number = 6, .priority = 3, .startup_priority = 8});
  b.power_off(a);
  b.power_on(a);
  Run run(b);
  run.settle();
  const auto as_before = [&] {
    return run.holds(when::number(a, Sign::equal, 4)) && run.holds(when::priority(a, Sign::equal, 3)) &&
           run.holds(when::enabled(b.east(a))) && run.holds(when::side(b.east(a), Sign::equal, Side::east));
  };
  run.take(step(StepId(0)));
  CHECK(run.power(a) == Power::off);
  CHECK(as_before());
  run.take(step(StepId(1)));
  CHECK(run.power(a) == Power::starting);
  CHECK(as_before());
  run.take(started(a));
  CHECK(run.holds(when::number(a, Sign::equal, 6)));
  CHECK(run.holds(when::priority(a, Sign::equal, 8)));
}

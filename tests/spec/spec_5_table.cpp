// Semantics 5.d, the table of steps: their effect, and when they are refused.
#include "spec/yard.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("5.d a refused step becomes done, what follows it becomes ready, and no-refusal is broken at it") {
  Yard yard;
  const StepId first = yard.b.power_on(yard.a);
  const StepId second = yard.b.save({yard.a}, {.after = {first}});
  YardRun run(yard);
  refused(run, first, Refusal::not_off);
  CHECK(run.broken(Property::no_refusal)->step == first);
  CHECK(run.can(step(second)));
}

TEST_CASE("5.1 power-on: a device that is off starts; any other refuses") {
  Yard yard;
  const StepId on = yard.b.power_on(yard.off);
  std::vector<StepId> others;
  for (const DeviceId d : {yard.a, yard.d, yard.held, yard.starting}) others.push_back(yard.b.power_on(d));
  YardRun run(yard);
  taken(run, on);
  CHECK(run.power(yard.off) == Power::starting);
  CHECK_FALSE(run.leader(yard.off));
  for (const StepId other : others) refused(run, other, Refusal::not_off);
}

TEST_CASE("5.2 power-off: off and without leader, whether up, held or starting; refused of one that is off") {
  Yard yard;
  std::vector<StepId> offs;
  for (const DeviceId d : {yard.a, yard.held, yard.starting}) offs.push_back(yard.b.power_off(d));
  const StepId again = yard.b.power_off(yard.off);
  YardRun run(yard);
  for (const StepId off : offs) taken(run, off);
  for (const DeviceId d : {yard.a, yard.held, yard.starting}) {
    CHECK(run.power(d) == Power::off);
    CHECK_FALSE(run.leader(d));
    CHECK(run.state()[d].seniority == 0);
  }
  refused(run, again, Refusal::already_off);
}

TEST_CASE("5.3 restart: starting and without leader, up or held; refused where not reachable") {
  Yard yard;
  const StepId up = yard.b.restart(yard.d);
  const StepId held = yard.b.restart(yard.held);
  const StepId off = yard.b.restart(yard.off);
  const StepId starting = yard.b.restart(yard.starting);
  YardRun run(yard);
  taken(run, up);
  taken(run, held);
  for (const DeviceId d : {yard.d, yard.held}) {
    CHECK(run.power(d) == Power::starting);
    CHECK_FALSE(run.leader(d));
    CHECK(run.state()[d].seniority == 0);
  }
  refused(run, off, Refusal::not_reachable);
  refused(run, starting, Refusal::not_reachable);
}

TEST_CASE("5.4 set-number: the next number; the number in force only where number-takes: at-once") {
  for (const Takes takes : {Takes::at_restart, Takes::at_once}) {
    Yard yard;
    yard.b.platform().number_takes = takes;
    const StepId set = yard.b.set_number(yard.d, 9);
    YardRun run(yard);
    taken(run, set);
    CHECK(run.state()[yard.d].next_number == 9);
    CHECK(run.state()[yard.d].number == (takes == Takes::at_once ? 9 : 2));
  }
}

TEST_CASE("5.4 set-number is refused when not reachable, or out of the range, whose ends are in it") {
  Yard yard;
  yard.b.platform().numbers = {1, 9};
  const StepId off = yard.b.set_number(yard.off, 4);
  const StepId starting = yard.b.set_number(yard.starting, 4);
  const StepId below = yard.b.set_number(yard.d, 0);
  const StepId above = yard.b.set_number(yard.d, 10);
  const StepId negative = yard.b.set_number(yard.d, -1);
  const StepId lowest = yard.b.set_number(yard.d, 1);
  const StepId highest = yard.b.set_number(yard.d, 9);
  const StepId held = yard.b.set_number(yard.held, 6);
  SUBCASE("taken") {
    YardRun run(yard);
    for (const StepId id : {lowest, highest, held}) taken(run, id);
    CHECK(run.state()[yard.d].number == 9);
  }
  SUBCASE("refused") {
    YardRun run(yard);
    refused(run, off, Refusal::not_reachable);
    refused(run, starting, Refusal::not_reachable);
    for (const StepId id : {below, above, negative}) refused(run, id, Refusal::out_of_range);
  }
}

TEST_CASE("5.5 set-priority: running; where priority-takes: at-restart, startup instead") {
  for (const Takes takes : {Takes::at_restart, Takes::at_once}) {
    Yard yard;
    yard.b.platform().priority_takes = takes;
    const StepId set = yard.b.set_priority(yard.d, 8);
    YardRun run(yard);
    taken(run, set);
    CHECK(run.state()[yard.d].priority == (takes == Takes::at_once ? 8 : 5));
    CHECK(run.state()[yard.d].startup_priority == (takes == Takes::at_once ? 5 : 8));
  }
}

TEST_CASE("5.5 set-priority is refused when not reachable, or out of the range, whose ends are in it") {
  Yard yard;
  yard.b.platform().priorities = {3, 9};
  const StepId off = yard.b.set_priority(yard.off, 4);
  const StepId below = yard.b.set_priority(yard.d, 2);
  const StepId above = yard.b.set_priority(yard.d, 10);
  const StepId lowest = yard.b.set_priority(yard.d, 3);
  const StepId highest = yard.b.set_priority(yard.d, 9);
  SUBCASE("taken") {
    YardRun run(yard);
    taken(run, lowest);
    CHECK(run.state()[yard.d].priority == 3);
    taken(run, highest);
    CHECK(run.state()[yard.d].priority == 9);
  }
  SUBCASE("refused") {
    YardRun run(yard);
    refused(run, off, Refusal::not_reachable);
    refused(run, below, Refusal::out_of_range);
    refused(run, above, Refusal::out_of_range);
  }
}

TEST_CASE("5.6 enable and disable: running, not startup; refused when not reachable") {
  Yard yard;
  const PortId p = yard.b.east(yard.d);
  const StepId disable = yard.b.disable(p);
  const StepId enable = yard.b.enable(p);
  const StepId enable_off = yard.b.enable(yard.b.east(yard.off));
  const StepId disable_off = yard.b.disable(yard.b.east(yard.off));
  YardRun run(yard);
  taken(run, disable);
  CHECK_FALSE(run.state()[p].enabled);
  CHECK(run.state()[p].startup_enabled);
  CHECK(run.state()[yard.b.west(yard.d)].enabled);
  taken(run, enable);
  CHECK(run.state()[p].enabled);
  refused(run, enable_off, Refusal::not_reachable);
  refused(run, disable_off, Refusal::not_reachable);
}

TEST_CASE("5.7 set-side: running, and operational where side-takes: at-once; never startup") {
  for (const SideTakes takes : {SideTakes::on_apply, SideTakes::at_once}) {
    Yard yard;
    yard.b.platform().side_takes = takes;
    const PortId p = yard.b.east(yard.d);
    const StepId set = yard.b.set_side(p, Side::west);
    YardRun run(yard);
    taken(run, set);
    CHECK(run.state()[p].side == Side::west);
    CHECK(run.state()[p].operational_side == (takes == SideTakes::at_once ? Side::west : Side::east));
    CHECK(run.state()[p].startup_side == Side::east);
    CHECK(run.state()[yard.b.west(yard.d)].side == Side::west);
  }
}

TEST_CASE("5.7 5.8 a side is refused when not reachable, or, where side-needs-disabled, while enabled in running") {
  for (const bool needs_disabled : {true, false}) {
    Yard yard;
    yard.b.platform().side_needs_disabled = needs_disabled;
    const PortId p = yard.b.east(yard.d);
    const StepId set = yard.b.set_side(p, Side::west);
    const StepId clear = yard.b.clear_side(p);
    const StepId disable = yard.b.disable(p);
    const StepId set_then = yard.b.set_side(p, Side::west);
    const StepId clear_then = yard.b.clear_side(p);
    const StepId set_off = yard.b.set_side(yard.b.east(yard.off), Side::west);
    const StepId clear_off = yard.b.clear_side(yard.b.east(yard.off));
    YardRun run(yard);
    if (needs_disabled) {
      refused(run, set, Refusal::port_enabled);
      refused(run, clear, Refusal::port_enabled);
    } else {
      taken(run, set);
      taken(run, clear);
    }
    CHECK(run.take(step(disable)) == Refusal::none);
    CHECK(run.take(step(set_then)) == Refusal::none);
    CHECK(run.take(step(clear_then)) == Refusal::none);
    refused(run, set_off, Refusal::not_reachable);
    refused(run, clear_off, Refusal::not_reachable);
  }
}

TEST_CASE("5.7 what counts is enabled in running, not in startup") {
  ModelBuilder b;
  b.platform().side_needs_disabled = true;
  const DeviceId a = b.device("a", {.ports = {{.name = "p", .enabled = false, .startup_enabled = true},
                                              {.name = "q", .startup_enabled = false}}});
  b.unordered();
  const StepId fine = b.set_side(b.port(a, "p"), Side::east);
  const StepId locked = b.set_side(b.port(a, "q"), Side::east);
  Run run(b);
  run.settle();
  taken(run, fine);
  refused(run, locked, Refusal::port_enabled);
}

TEST_CASE("5.8 clear-side: as set-side, to none") {
  for (const SideTakes takes : {SideTakes::on_apply, SideTakes::at_once}) {
    Yard yard;
    yard.b.platform().side_takes = takes;
    const PortId p = yard.b.east(yard.d);
    const StepId clear = yard.b.clear_side(p);
    YardRun run(yard);
    taken(run, clear);
    CHECK(run.state()[p].side == Side::none);
    CHECK(run.state()[p].operational_side == (takes == SideTakes::at_once ? Side::none : Side::east));
    CHECK(run.state()[p].startup_side == Side::east);
  }
}

TEST_CASE("5.9 apply: the operational sides become the running sides, of this device alone") {
  Yard yard;
  yard.b.platform().side_takes = SideTakes::on_apply;
  const StepId apply = yard.b.apply({yard.d});
  const StepId off = yard.b.apply({yard.off});
  YardRun run(yard);
  for (const DeviceId d : {yard.a, yard.d}) run.state()[yard.b.west(d)].side = Side::none;
  run.state()[yard.b.east(yard.d)].side = Side::west;
  taken(run, apply);
  CHECK(run.state()[yard.b.west(yard.d)].operational_side == Side::none);
  CHECK(run.state()[yard.b.east(yard.d)].operational_side == Side::west);
  CHECK(run.state()[yard.b.east(yard.d)].startup_side == Side::east);
  CHECK(run.state()[yard.b.west(yard.a)].operational_side == Side::west);
  refused(run, off, Refusal::not_reachable);
}

TEST_CASE("5.10 save: startup becomes running: enabled, sides, and, where priority-takes: at-once, priority") {
  for (const Takes takes : {Takes::at_restart, Takes::at_once}) {
    Yard yard;
    yard.b.platform().priority_takes = takes;
    const StepId save = yard.b.save({yard.d});
    const StepId off = yard.b.save({yard.off});
    YardRun run(yard);
    PortState& p = run.state()[yard.b.east(yard.d)];
    p = {false, true, Side::west, Side::east, Side::none};
    run.state()[yard.d].priority = 8;
    run.state()[yard.a].priority = 9;
    taken(run, save);
    CHECK(p == PortState{false, false, Side::west, Side::west, Side::none});
    CHECK(run.state()[yard.d].startup_priority == (takes == Takes::at_once ? 8 : 5));
    CHECK(run.state()[yard.d].priority == 8);
    CHECK(run.state()[yard.a].startup_priority == 5);
    refused(run, off, Refusal::not_reachable);
  }
}

TEST_CASE("5.11 plug; refused when plugged, or another cable is plugged into either of its ports") {
  Yard yard;
  const CableId at_near_port = yard.b.cable(yard.b.west(yard.d), yard.b.east(yard.off), false);
  const CableId at_far_port = yard.b.cable(yard.b.east(yard.held), yard.b.west(yard.d), false);
  const StepId plug = yard.b.plug(yard.spare);
  const StepId again = yard.b.plug(yard.joining);
  const StepId near = yard.b.plug(at_near_port);
  const StepId far = yard.b.plug(at_far_port);
  YardRun run(yard);
  taken(run, plug);
  CHECK(run.state()[yard.spare].plugged);
  refused(run, again, Refusal::already_plugged);
  refused(run, near, Refusal::port_occupied);
  refused(run, far, Refusal::port_occupied);
}

TEST_CASE("5.11 a port is free as soon as the other cable is unplugged") {
  Yard yard;
  const CableId other = yard.b.cable(yard.b.west(yard.d), yard.b.east(yard.off), false);
  const StepId unplug = yard.b.unplug(yard.joining);
  const StepId plug = yard.b.plug(other);
  YardRun run(yard);
  taken(run, unplug);
  taken(run, plug);
  CHECK(run.state()[other].plugged);
}

TEST_CASE("5.12 unplug; refused when not plugged") {
  Yard yard;
  const StepId unplug = yard.b.unplug(yard.joining);
  const StepId loose = yard.b.unplug(yard.spare);
  YardRun run(yard);
  taken(run, unplug);
  CHECK_FALSE(run.state()[yard.joining].plugged);
  refused(run, loose, Refusal::not_plugged);
}

TEST_CASE("5.13 await changes nothing and is never refused") {
  Yard yard;
  const StepId await = yard.b.await(when::held(yard.held));
  YardRun run(yard);
  State expected = run.state();
  expected.done[await.value] = 1;
  taken(run, await);
  CHECK(run.state() == expected);
}

TEST_CASE("5.14 check changes nothing when its condition holds, else halts; it is never refused") {
  Yard yard;
  const StepId fine = yard.b.check(when::up(yard.a));
  const StepId fails = yard.b.check(when::off(yard.a));
  YardRun run(yard);
  State expected = run.state();
  expected.done[fine.value] = 1;
  taken(run, fine);
  CHECK(run.state() == expected);
  expected.done[fails.value] = 1;
  expected.halted = true;
  taken(run, fails);
  CHECK(run.state() == expected);
}

// Semantics 5.d, the table of steps; 5.e to 5.h.
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// a - b, led by a; c is off; h is held, beside a too but by a cable at a third port; s is starting.
/// Steps are added by the test before `run` and may be taken in any order.
struct Yard {
  ModelBuilder b;
  DeviceId a, d, off, held, starting;
  CableId joining, spare;

  Yard() {
    auto three = ring_ports();
    three.push_back({.name = "x", .side = Side::east});
    a = b.device("a", {.number = 1, .ports = three});
    d = b.device("d", {.number = 2});
    off = b.device("off", {.on = false, .number = 3});
    held = b.device("held", {.number = 1});
    starting = b.device("starting", {.number = 5});
    joining = b.cable(b.east(a), b.west(d));
    b.cable(b.port(a, "x"), b.west(held));
    spare = b.cable(b.east(d), b.west(off), false);
    b.stack(a, {a, d});
    b.platform().factory = {50, 40, false, Side::none};
    b.unordered();
  }
};

/// Settles the yard and lets its last device start anew.
struct YardRun : Run {
  explicit YardRun(const Yard& yard) : Run(yard.b) {
    settle();
    semantics::go_down(state(), yard.starting, Power::starting);
    REQUIRE(power(yard.held) == Power::held);
  }
};

/// Takes the step, which must be refused, and sees that it became done, changed nothing else and broke no-refusal.
void refused(Run& run, StepId id, Refusal why) {
  CAPTURE(id);
  State expected = run.state();
  expected.done[id.value] = 1;
  CHECK(run.take(step(id)) == why);
  CHECK(run.state() == expected);
  REQUIRE(run.broken(Property::no_refusal));
  CHECK(run.broken(Property::no_refusal)->cause == Breach::Cause::refused);
}

/// Takes the step, which must not be refused; what else changed than `done` is up to the test.
void taken(Run& run, StepId id) {
  CAPTURE(id);
  CHECK(run.take(step(id)) == Refusal::none);
  CHECK(run.state().is_done(id));
  CHECK_FALSE(run.broken(Property::no_refusal));
}

}  // namespace

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

namespace {

/// A device alone that is configured, perhaps saved, and restarted, all in order.
struct Restarted {
  ModelBuilder b;
  DeviceId a;

  Restarted() { a = b.device("a", {.number = 2}); }

  /// Takes all steps and completes the start.
  [[nodiscard]] State end() const {
    Run run(b);
    run.settle();
    for (std::size_t i = 0; i < run.world().steps().size(); ++i) CHECK(run.take(step(StepId(i))) == Refusal::none);
    run.take(started(a));
    return run.state();
  }
};

}  // namespace

TEST_CASE("5.e a member number is durable as soon as it is set") {
  for (const Takes takes : {Takes::at_restart, Takes::at_once}) {
    Restarted r;
    r.b.platform().number_takes = takes;
    r.b.set_number(r.a, 6);
    r.b.restart(r.a);
    CHECK(r.end()[r.a].number == 6);
  }
}

TEST_CASE("5.e a priority that takes at restart is durable, one that takes at once is lost unless it is saved") {
  for (const bool saved : {true, false}) {
    for (const Takes takes : {Takes::at_restart, Takes::at_once}) {
      Restarted r;
      r.b.platform().priority_takes = takes;
      r.b.set_priority(r.a, 8);
      if (saved) r.b.save({r.a});
      r.b.restart(r.a);
      CHECK(r.end()[r.a].priority == (saved || takes == Takes::at_restart ? 8 : 5));
    }
  }
}

TEST_CASE("5.e enabled and sides that are not saved are lost at a start, those that are saved become operational") {
  for (const bool saved : {true, false}) {
    Restarted r;
    r.b.platform().side_takes = SideTakes::on_apply;
    const PortId p = r.b.east(r.a);
    r.b.disable(p);
    r.b.set_side(p, Side::west);
    if (saved) r.b.save({r.a});
    r.b.restart(r.a);
    const State end = r.end();
    CHECK(end[p].enabled == !saved);
    CHECK(end[p].side == (saved ? Side::west : Side::east));
    CHECK(end[p].operational_side == (saved ? Side::west : Side::east));
  }
}

namespace {

/// A device whose every setting differs from factory, on a platform that files settings under the number or not.
struct Filed : Restarted {
  explicit Filed(SettingsFollow follow, Takes number_takes = Takes::at_restart) {
    b.platform().factory = {50, 40, false, Side::none};
    b.platform().settings_follow = follow;
    b.platform().number_takes = number_takes;
  }

  [[nodiscard]] PortId p() const { return b.east(a); }
};

constexpr PortState factory_port{false, false, Side::none, Side::none, Side::none};
constexpr PortState own_port{true, true, Side::east, Side::east, Side::east};

}  // namespace

TEST_CASE("5.f a start that brings another number into force resets what is filed under the number") {
  for (const SettingsFollow follow : {SettingsFollow::number, SettingsFollow::device}) {
    Filed f(follow);
    f.b.set_number(f.a, 6);
    f.b.restart(f.a);
    const State end = f.end();
    const bool reset = follow == SettingsFollow::number;
    CHECK(end[f.a].number == 6);
    CHECK(end[f.a].priority == (reset ? 40 : 5));
    CHECK(end[f.a].startup_priority == (reset ? 40 : 5));
    CHECK(end[f.p()] == (reset ? factory_port : own_port));
    CHECK(end[f.b.west(f.a)].side == (reset ? Side::none : Side::west));
  }
}

TEST_CASE("5.f factory values are the platform's, ports that are enabled and have a side among them") {
  Filed f(SettingsFollow::number);
  f.b.platform().factory = {50, 41, true, Side::west};
  f.b.set_number(f.a, 6);
  f.b.restart(f.a);
  const State end = f.end();
  CHECK(end[f.a].priority == 41);
  CHECK(end[f.p()] == PortState{true, true, Side::west, Side::west, Side::west});
}

TEST_CASE("5.f a start with the number as before resets nothing") {
  Filed f(SettingsFollow::number);
  f.b.set_number(f.a, 6);
  f.b.set_number(f.a, 2);
  f.b.restart(f.a);
  const State end = f.end();
  CHECK(end[f.a].priority == 5);
  CHECK(end[f.p()] == own_port);
}

TEST_CASE("5.f nothing is reset before the start completes") {
  Filed f(SettingsFollow::number);
  const StepId set = f.b.set_number(f.a, 6);
  const StepId restart = f.b.restart(f.a);
  Run run(f.b);
  run.settle();
  run.take(step(set));
  run.take(step(restart));
  CHECK(run.state()[f.a].startup_priority == 5);
  CHECK(run.state()[f.p()] == own_port);
}

TEST_CASE("5.f of a device off since the beginning the number of its entry is the one before") {
  for (const std::int64_t entry : {2, 6}) {
    ModelBuilder b;
    b.platform().settings_follow = SettingsFollow::number;
    b.platform().factory = {50, 40, false, Side::none};
    const DeviceId a = b.device("a", {.on = false, .number = entry, .next_number = 6});
    const StepId on = b.power_on(a);
    Run run(b);
    run.settle();
    run.take(step(on));
    run.take(started(a));
    CHECK(run.state()[a].number == 6);
    CHECK(run.state()[a].priority == (entry == 6 ? 5 : 40));
  }
}

TEST_CASE("5.f where number-takes: at-once changes the number, startup, running and operational are reset at once") {
  for (const SettingsFollow follow : {SettingsFollow::number, SettingsFollow::device}) {
    Filed f(follow, Takes::at_once);
    const StepId set = f.b.set_number(f.a, 6);
    Run run(f.b);
    run.settle();
    run.take(step(set));
    const bool reset = follow == SettingsFollow::number;
    CHECK(run.state()[f.a].number == 6);
    CHECK(run.state()[f.a].priority == (reset ? 40 : 5));
    CHECK(run.state()[f.a].startup_priority == (reset ? 40 : 5));
    CHECK(run.state()[f.p()] == (reset ? factory_port : own_port));
  }
}

TEST_CASE("5.f setting the number in force resets nothing, and the next number is set all the same") {
  ModelBuilder b;
  b.platform().settings_follow = SettingsFollow::number;
  b.platform().number_takes = Takes::at_once;
  b.platform().factory = {50, 40, false, Side::none};
  const DeviceId a = b.device("a", {.number = 2, .next_number = 6});
  const StepId set = b.set_number(a, 2);
  Run run(b);
  run.settle();
  run.take(step(set));
  CHECK(run.state()[a].next_number == 2);
  CHECK(run.state()[a].priority == 5);
  CHECK(run.state()[b.east(a)] == own_port);
}

TEST_CASE("5.g apply and save may name several devices") {
  Yard yard;
  const StepId save = yard.b.save({yard.d, yard.held});
  const StepId apply = yard.b.apply({yard.d, yard.held});
  YardRun run(yard);
  for (const DeviceId d : {yard.a, yard.d, yard.held}) run.state()[yard.b.east(d)].side = Side::none;
  taken(run, save);
  for (const DeviceId d : {yard.d, yard.held}) CHECK(run.state()[yard.b.east(d)].startup_side == Side::none);
  CHECK(run.state()[yard.b.east(yard.a)].startup_side == Side::east);
  taken(run, apply);
  for (const DeviceId d : {yard.d, yard.held}) CHECK(run.state()[yard.b.east(d)].operational_side == Side::none);
}

TEST_CASE("5.g stack-of d: d itself and all devices together with it") {
  Yard yard;
  const StepId of_stack = yard.b.save_stack_of(yard.d);
  const StepId of_held = yard.b.apply_stack_of(yard.held);
  YardRun run(yard);
  for (const DeviceId d : {yard.a, yard.d, yard.held}) run.state()[yard.b.east(d)].startup_enabled = false;
  taken(run, of_stack);
  CHECK(run.state()[yard.b.east(yard.a)].startup_enabled);
  CHECK(run.state()[yard.b.east(yard.d)].startup_enabled);
  CHECK_FALSE(run.state()[yard.b.east(yard.held)].startup_enabled);
  // A held device is together with none, and is a stack of one here.
  run.state()[yard.b.east(yard.held)].side = Side::none;
  run.state()[yard.b.east(yard.a)].side = Side::none;
  taken(run, of_held);
  CHECK(run.state()[yard.b.east(yard.held)].operational_side == Side::none);
  CHECK(run.state()[yard.b.east(yard.a)].operational_side == Side::east);
}

TEST_CASE("5.g if one device cannot be reached, the whole step is refused") {
  Yard yard;
  const StepId save = yard.b.save({yard.d, yard.off});
  const StepId apply = yard.b.apply({yard.starting, yard.d});
  const StepId via = yard.b.save({yard.d, yard.held}, {.via = yard.a});
  const StepId of_off = yard.b.save_stack_of(yard.off);
  YardRun run(yard);
  run.state()[yard.b.east(yard.d)].startup_enabled = false;
  run.state()[yard.b.east(yard.d)].side = Side::west;
  refused(run, save, Refusal::not_reachable);
  refused(run, apply, Refusal::not_reachable);
  refused(run, via, Refusal::not_reachable);
  refused(run, of_off, Refusal::not_reachable);
}

TEST_CASE("5.h reachable via v: v up or held, and d = v, or d and v together") {
  Yard yard;
  YardRun run(yard);
  const auto reachable = [&](DeviceId d, DeviceId v) { return semantics::reachable(run.state(), run.derived(), d, v); };
  CHECK(reachable(yard.d, yard.d));
  CHECK(reachable(yard.d, yard.a));
  CHECK(reachable(yard.a, yard.d));
  CHECK(reachable(yard.held, yard.held));
  CHECK_FALSE(reachable(yard.held, yard.a));
  CHECK_FALSE(reachable(yard.a, yard.held));
  for (const DeviceId down : {yard.off, yard.starting}) {
    CHECK_FALSE(reachable(down, down));
    CHECK_FALSE(reachable(down, yard.a));
    CHECK_FALSE(reachable(yard.a, down));
  }
}

TEST_CASE("5.h every configuring step goes by its console") {
  Yard yard;
  auto& b = yard.b;
  const PortId p = b.east(yard.d);
  const StepIs by_stack{.via = yard.a};
  const StepIs by_stranger{.via = yard.held};
  std::vector<StepId> fine;
  std::vector<StepId> not_fine;
  for (const auto& [is, steps] : {std::pair{by_stack, &fine}, std::pair{by_stranger, &not_fine}}) {
    *steps = {b.set_number(yard.d, 9, is),   b.set_priority(yard.d, 4, is), b.disable(p, is),      b.enable(p, is),
              b.set_side(p, Side::east, is), b.clear_side(p, is),           b.apply({yard.d}, is), b.save({yard.d}, is),
              b.restart(yard.d, is)};
  }
  SUBCASE("reachable") {
    YardRun run(yard);
    for (const StepId id : fine) taken(run, id);
  }
  SUBCASE("not reachable") {
    YardRun run(yard);
    for (const StepId id : not_fine) refused(run, id, Refusal::not_reachable);
  }
}

TEST_CASE("5.h apply and save of several devices go by one console where it is given, else by each device's own") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "lone"});
  b.chain({d[0], d[1]});
  b.stack(d[0], {d[0], d[1]});
  b.unordered();
  const StepId own = b.save(d);
  const StepId via_a = b.save(d, {.via = d[0]});
  const StepId stack_via_b = b.apply_stack_of(d[0], {.via = d[1]});
  Run run(b);
  run.settle();
  taken(run, own);
  taken(run, stack_via_b);
  refused(run, via_a, Refusal::not_reachable);
}

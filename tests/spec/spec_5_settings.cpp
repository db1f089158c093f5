// Semantics 5.e, what is lost at a start, and 5.f, what is filed under the number.
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

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

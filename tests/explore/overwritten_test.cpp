// docs/reductions.md, Settings: of whom nobody reads the settings, and what stands for them.
#include "explore/reduce/overwritten.hpp"

#include <doctest/doctest.h>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// yard-1 is on. gate-1 is off, and everything about it will be another after its next start.
struct Yard {
  ModelBuilder b;
  DeviceId on = b.device("yard-1");
  DeviceId off = b.device("gate-1", {.on = false,
                                     .number = 8,
                                     .next_number = 2,
                                     .priority = 5,
                                     .startup_priority = 9,
                                     .ports = {{.name = "w",
                                                .side = Side::none,
                                                .enabled = false,
                                                .startup_enabled = true,
                                                .startup_side = Side::west,
                                                .operational_side = Side::east}}});
  PortId port = b.west(off);

  [[nodiscard]] bool unread() const {
    Run run(b);
    run.settle();
    return explore::Overwritten(run.world()).unread(run.state(), off);
  }
  /// What stands for the initial state, where gate-1 is down in this way.
  [[nodiscard]] State replaced(Power power = Power::off) const {
    Run run(b);
    run.settle();
    run.state()[off].power = power;
    explore::Overwritten(run.world()).replace(run.state());
    return run.state();
  }
};

/// What the step that asks `condition` reads is kept until it is done.
void expect_read(const Condition& condition) {
  Yard y;
  y.b.await(condition);
  CHECK_FALSE(y.unread());
  Yard z;
  z.b.check(condition);
  Run run(z.b);
  run.settle();
  const explore::Overwritten overwritten(run.world());
  CHECK_FALSE(overwritten.unread(run.state(), z.off));
  run.take(step(StepId(0)));
  CHECK(overwritten.unread(run.state(), z.off));
}

void expect_unread(const Condition& condition) {
  Yard y;
  y.b.await(condition);
  CHECK(y.unread());
}

}  // namespace

TEST_CASE("5.b a device that is off or starting gets the settings of its next start") {
  const Yard y;
  for (const Power power : {Power::off, Power::starting}) {
    const State s = y.replaced(power);
    CHECK(s[y.off].number == 2);
    CHECK(s[y.off].priority == 9);
    CHECK(s[y.port].enabled);
    CHECK(s[y.port].side == Side::west);
    CHECK(s[y.port].operational_side == Side::west);
  }
}

TEST_CASE("a device that is up or held keeps its settings") {
  const Yard y;
  for (const Power power : {Power::up, Power::held}) {
    const State s = y.replaced(power);
    CHECK(s[y.off].number == 8);
    CHECK(s[y.off].priority == 5);
    CHECK_FALSE(s[y.port].enabled);
    CHECK(s[y.port].side == Side::none);
    CHECK(s[y.port].operational_side == Side::east);
  }
}

TEST_CASE("5.f the number is kept where a start compares it with the next one") {
  Yard y;
  y.b.platform().settings_follow = SettingsFollow::number;
  const State s = y.replaced();
  CHECK(s[y.off].number == 8);
  CHECK(s[y.off].priority == 9);
}

TEST_CASE("8 settings are kept as long as a condition to come reads them") {
  const Yard y;
  expect_read(when::number(y.off, Sign::equal, 2));
  expect_read(when::priority(y.off, Sign::equal, 9));
  expect_read(when::saved(y.off));
  expect_read(when::enabled(y.port));
  expect_read(when::side(y.port, Sign::equal, Side::west));
}

TEST_CASE("8 what a part of a condition reads, the condition reads") {
  const Yard y;
  const Condition reads = when::priority(y.off, Sign::equal, 9);
  const Condition other = when::up(y.on);
  expect_read(when::no(reads));
  expect_read(when::all({other, reads}));
  expect_read(when::any({other, reads}));
  expect_read(when::implies(other, reads));
  expect_read(when::implies(when::no(when::all({other, reads})), other));
}

TEST_CASE("8 other conditions read no settings of a device that is down") {
  Yard y;
  const CableId cable = y.b.cable(y.port, y.b.east(y.on));
  expect_unread(when::priority(y.on, Sign::equal, 9));
  expect_unread(when::enabled(y.b.west(y.on)));
  expect_unread(when::all({when::up(y.off), when::off(y.off), when::follower(y.off), when::together({y.on, y.off})}));
  y.b.await(when::any({when::linked(cable), when::cable_up(cable)}));
  CHECK(y.unread());
}

TEST_CASE("6.b settings are kept to the end where the goal reads them") {
  Yard y;
  Goal goal = goal_of({y.on}, y.on);
  goal.saved = true;
  y.b.goal(goal);
  CHECK(y.unread());  // saved asks those that are together
  goal.where = when::any({when::enabled(y.port)});
  y.b.goal(goal);
  CHECK_FALSE(y.unread());
}

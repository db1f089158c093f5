// Semantics 6.6, reaches-goal, 6.7, survives-cold-start, and 6.a and 6.b.
#include "spec/trio.hpp"

using namespace cairn;
using namespace cairn::test;
using Cause = Breach::Cause;
using GoalPart = Breach::GoalPart;

namespace {

std::optional<Breach> missed_at_rest(const Trio& t) {
  Run run(t.b);
  run.settle();
  return run.missed();
}

bool missed_by(const std::optional<Breach>& breach, GoalPart part) {
  return breach && breach->cause == Cause::goal_missed && breach->missed == part;
}

}  // namespace

TEST_CASE("6.6 a state at rest must be complete") {
  Trio t;
  t.b.goal(goal_of(t.d));
  CHECK_FALSE(missed_at_rest(t));
  t.b.await(when::never());
  REQUIRE(missed_at_rest(t));
  CHECK(missed_at_rest(t)->cause == Cause::not_complete);
}

TEST_CASE("6.6 no class is larger than max-members, of the goal or not") {
  Trio t;
  t.b.goal(goal_of({t.d[0]}));
  t.b.platform().max_members = 3;
  CHECK_FALSE(missed_at_rest(t));
  t.b.platform().max_members = 2;
  REQUIRE(missed_at_rest(t));
  CHECK(missed_at_rest(t)->cause == Cause::too_many_members);
  // Two classes of two and one are no class of three.
  Trio apart;
  apart.b.goal(goal_of({apart.d[0]}));
  apart.b.platform().max_members = 2;
  Run run(apart.b);
  run.settle();
  run.take(broke(apart.cables[1]));
  CHECK_FALSE(run.missed());
}

TEST_CASE("6.b the devices of goal.stack are together") {
  Trio t;
  t.b.goal(goal_of({t.d[2], t.d[0]}));
  Run run(t.b);
  run.settle();
  CHECK_FALSE(run.missed());
  run.take(broke(t.cables[1]));
  CHECK(missed_by(run.missed(), GoalPart::together));
}

TEST_CASE("6.b a goal of one device wants it up") {
  ModelBuilder b;
  const DeviceId off = b.device("off", {.on = false});
  b.goal(goal_of({off}));
  CHECK(missed_by(Run(b).missed(), GoalPart::together));
}

TEST_CASE("6.b the devices of goal.stack follow one leader, who may be another") {
  Trio t;
  t.b.goal(goal_of({t.d[1], t.d[2]}));
  Run run(t.b);
  run.settle();
  CHECK_FALSE(run.missed());
  run.state()[t.d[2]].leader = t.d[2];
  CHECK(missed_by(run.missed(), GoalPart::one_leader));
  run.state()[t.d[1]].leader = run.state()[t.d[2]].leader = DeviceId();
  CHECK(missed_by(run.missed(), GoalPart::one_leader));
}

TEST_CASE("6.b that leader is goal.primary, if given") {
  Trio t;
  t.b.goal(goal_of(t.d, t.d[0]));
  CHECK_FALSE(missed_at_rest(t));
  t.b.goal(goal_of(t.d, t.d[1]));
  CHECK(missed_by(missed_at_rest(t), GoalPart::primary));
}

TEST_CASE("6.b each device of goal.stack is saved, if goal.saved is true") {
  for (const bool wanted : {true, false}) {
    Trio t;
    Goal goal = goal_of({t.d[0], t.d[1]});
    goal.saved = wanted;
    t.b.goal(goal);
    Run run(t.b);
    run.settle();
    CHECK_FALSE(run.missed());
    run.state()[t.d[2]].startup_priority = 9;  // not of the goal
    CHECK_FALSE(run.missed());
    run.state()[t.d[1]].startup_priority = 9;
    CHECK(missed_by(run.missed(), GoalPart::saved) == wanted);
    CHECK(run.missed().has_value() == wanted);
  }
}

TEST_CASE("6.b goal.where, if given, is true") {
  Trio t;
  Goal goal = goal_of(t.d);
  goal.where = when::number(t.d[2], Sign::equal, 3);
  t.b.goal(goal);
  CHECK_FALSE(missed_at_rest(t));
  goal.where = when::number(t.d[2], Sign::equal, 4);
  t.b.goal(goal);
  CHECK(missed_by(missed_at_rest(t), GoalPart::where));
}

// 6.7 survives-cold-start

TEST_CASE("6.a a cold start: every device that is not off starts, and all starts complete in the same moment") {
  ModelBuilder b;
  b.platform().settings_follow = SettingsFollow::number;
  b.platform().number_takes = Takes::at_restart;
  b.platform().factory = {50, 40, false, Side::none};
  const DeviceId plain = b.device("plain", {.number = 1, .priority = 5, .startup_priority = 6, .tenure = 4});
  const DeviceId renumbered = b.device("renumbered", {.number = 2, .next_number = 7, .tenure = 3});
  const DeviceId held = b.device("held", {.number = 1, .next_number = 3, .tenure = 2});
  const DeviceId off = b.device("off", {.on = false, .number = 8, .next_number = 9});
  b.chain({plain, held});
  Run run(b);
  run.settle();
  REQUIRE(run.power(held) == Power::held);
  const DeviceState off_before = run.state()[off];
  semantics::cold_start(run.world(), run.state());
  const State& s = run.state();
  for (const DeviceId d : {plain, renumbered, held}) {
    CHECK(s[d].power == Power::up);
    CHECK_FALSE(s[d].leader);
  }
  CHECK(s[plain].priority == 6);               // 5.b
  CHECK(s[renumbered].number == 7);            // 5.b
  CHECK(s[renumbered].priority == 40);         // 5.f
  CHECK_FALSE(s[b.east(renumbered)].enabled);  // 5.f
  CHECK(s[b.east(plain)].operational_side == Side::east);
  CHECK(s[off] == off_before);
  for (const DeviceId d : {plain, renumbered, held, off}) {
    for (const DeviceId e : {plain, renumbered, held, off}) CHECK_FALSE(semantics::senior(s, d, e));
  }
}

TEST_CASE("6.7 a cold start must lead to a state that satisfies the goal, compared as written") {
  // b outranks a, which led because it was there first.
  ModelBuilder b;
  const DeviceId x = b.device("x", {.priority = 5});
  const DeviceId y = b.device("y", {.priority = 9});
  b.chain({x, y});
  b.stack(x, {x, y});
  for (const bool named : {true, false}) {
    b.goal(goal_of({x, y}, named ? x : DeviceId()));
    Run run(b);
    run.settle();
    CHECK_FALSE(run.missed());
    run.cold_start();
    CHECK(run.leader(x) == y);
    CHECK(missed_by(run.missed(), GoalPart::primary) == named);
    CHECK(run.missed().has_value() == named);
  }
}

TEST_CASE("6.7 what is not saved does not survive") {
  ModelBuilder b;
  const DeviceId x = b.device("x");
  const DeviceId y = b.device("y", {.ports = {{.name = "w", .side = Side::west, .startup_side = Side::none}}});
  b.cable(b.east(x), b.west(y));
  b.stack(x, {x, y});
  b.goal(goal_of({x, y}));
  Run run(b);
  run.settle();
  CHECK_FALSE(run.missed());
  const Run& after = run.cold_start();
  CHECK(missed_by(after.missed(), GoalPart::together));
}

TEST_CASE("6.7 broken_by_cold_start takes the state through the cold start and its settling") {
  struct Blind final : semantics::Watcher {
    void see(const State&, const semantics::Derived&) override {}
    void foresee(const State&, const semantics::Derived&, const semantics::PassPlan&) override {}
  };
  ModelBuilder b;
  const DeviceId x = b.device("x", {.number = 4, .priority = 5});
  const DeviceId y = b.device("y", {.number = 5, .next_number = 4, .priority = 9});
  b.chain({x, y});
  b.stack(x, {x, y});
  b.goal(goal_of({x, y}));
  Run run(b);
  run.settle();
  State s = run.state();
  semantics::Scratch scratch;
  Blind blind;
  // After the cold start both have number 4: x, outranked, is held.
  CHECK(missed_by(semantics::broken_by_cold_start(run.world(), s, scratch, blind), GoalPart::together));
  CHECK(s[x].power == Power::held);
  CHECK(s[y].leader == y);
}

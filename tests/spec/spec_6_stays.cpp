// Semantics 6.2, primary-stays, 6.3, members-stay, and 6.c to 6.e.
#include "spec/trio.hpp"

using namespace cairn;
using namespace cairn::test;
using Cause = Breach::Cause;

namespace {

/// A stack of two and a lone switch that meet when a cable is plugged.
struct Meeting {
  ModelBuilder b;
  DeviceId primary, member, lone;
  StepId plug;

  /// The lone switch has this priority, the primary 5, and this number, the primary 1 and the member 2.
  explicit Meeting(std::int64_t priority, std::int64_t number = 9) {
    primary = b.device("primary");
    member = b.device("member");
    lone = b.device("lone", {.number = number, .priority = priority});
    b.chain({primary, member});
    const CableId c = b.cable(b.east(member), b.west(lone), false);
    b.stack(primary, {primary, member});
    b.unordered();
    plug = b.plug(c);
  }
};

}  // namespace

TEST_CASE("6.2 6.3 settling that restarts a device of keep") {
  Meeting m(9);
  Run run(m.b);
  run.settle();
  run.take(step(m.plug));
  REQUIRE(run.broken(Property::primary_stays));
  CHECK(run.broken(Property::primary_stays)->cause == Cause::settled_down);
  CHECK(run.broken(Property::primary_stays)->a == m.primary);
  CHECK(broke_by(run, Property::members_stay, Cause::settled_down));
}

TEST_CASE("6.2 6.3 settling that holds a device of keep") {
  Meeting m(9, 1);
  Run run(m.b);
  run.settle();
  run.take(step(m.plug));
  CHECK(broke_by(run, Property::primary_stays, Cause::settled_held));
  REQUIRE(run.broken(Property::members_stay));
  // The restart of the member is told first, the primary is held in the same pass.
  CHECK(run.power(m.primary) == Power::held);
}

TEST_CASE("6.3 a follower that settling holds breaks members-stay, not primary-stays") {
  Meeting m(9, 2);
  m.b.keep({m.member});
  Run run(m.b);
  run.settle();
  run.take(step(m.plug));
  REQUIRE(run.power(m.member) == Power::held);
  CHECK_FALSE(run.broken(Property::primary_stays));
  CHECK(broke_by(run, Property::members_stay, Cause::settled_held));
}

TEST_CASE("6.2 a follower that settling restarts breaks members-stay, not primary-stays") {
  Meeting m(9);
  m.b.keep({m.member});
  Run run(m.b);
  run.settle();
  run.take(step(m.plug));
  REQUIRE(run.power(m.member) == Power::starting);
  CHECK_FALSE(run.broken(Property::primary_stays));
  CHECK(broke_by(run, Property::members_stay, Cause::settled_down));
}

TEST_CASE("6.2 6.3 a device outside keep may be restarted or held") {
  for (const std::int64_t number : {9, 1}) {
    Meeting m(1, number);
    Run run(m.b);
    run.settle();
    run.take(step(m.plug));
    CHECK(run.power(m.lone) == (number == 9 ? Power::starting : Power::held));
    CHECK_FALSE(run.broken(Property::primary_stays));
    CHECK_FALSE(run.broken(Property::members_stay));
  }
}

TEST_CASE("6.2 also the leader of a part that was cut off") {
  // a - b - c: c is cut off, leads itself, loses when it meets the others again.
  Trio t;
  t.b.faults({.cable_breaks = 1, .mends = true});
  Run run(t.b);
  run.settle();
  run.take(broke(t.cables[1]));
  CHECK(run.leader(t.d[2]) == t.d[2]);
  CHECK_FALSE(run.broken(Property::primary_stays));
  run.take(mended(t.cables[1]));
  REQUIRE(run.broken(Property::primary_stays));
  CHECK(run.broken(Property::primary_stays)->a == t.d[2]);
}

TEST_CASE("6.2 6.3 a restart or power-off step that takes a device of keep down") {
  for (const bool off : {true, false}) {
    for (const std::size_t who : {0u, 1u}) {
      Trio t;
      const StepId down = off ? t.b.power_off(t.d[who]) : t.b.restart(t.d[who]);
      Run run(t.b);
      run.settle();
      run.leave(step(down));
      REQUIRE(run.broken(Property::members_stay));
      CHECK(run.broken(Property::members_stay)->cause == Cause::taken_down);
      CHECK(run.broken(Property::members_stay)->a == t.d[who]);
      CHECK(run.broken(Property::members_stay)->step == down);
      CHECK(broke_by(run, Property::primary_stays, Cause::taken_down) == (who == 0));
    }
  }
}

TEST_CASE("6.2 6.3 taking down a device outside keep, or one that is down already, breaks nothing") {
  Trio t;
  t.b.keep({t.d[0]});
  const StepId outside = t.b.power_off(t.d[2]);
  Run run(t.b);
  run.settle();
  run.take(step(outside));
  CHECK_FALSE(run.broken(Property::members_stay));
  CHECK_FALSE(run.broken(Property::primary_stays));

  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.keep(d);
  b.faults({.crashes = 1});
  const StepId off = b.power_off(d[0]);
  Run crashed_one(b);
  crashed_one.settle();
  crashed_one.take(crashed(d[0]));
  crashed_one.take(step(off));  // it was starting
  CHECK(crashed_one.power(d[0]) == Power::off);
  CHECK_FALSE(crashed_one.broken(Property::members_stay));
  CHECK_FALSE(crashed_one.broken(Property::primary_stays));
}

TEST_CASE("6.3 a step that takes down a held device of keep breaks members-stay, not primary-stays") {
  ModelBuilder b;
  const DeviceId a = b.device("a", {.number = 4});
  const DeviceId d = b.device("d", {.number = 4});
  b.chain({a, d});
  b.keep({d});
  b.restart(d);
  Run run(b);
  run.settle();  // d is held from the start, which breaks the property first
  const Event restart = step(StepId(0));
  for (const Property property : {Property::members_stay, Property::primary_stays}) {
    const auto breach = semantics::broken_by(run.world(), run.state(), restart, Refusal::none, property);
    CHECK(breach.has_value() == (property == Property::members_stay));
  }
}

TEST_CASE("6.c a crash does not itself break 6.2 or 6.3, what settling does in consequence can") {
  // a - b - c with b crashed: c restarts as an orphan where the platform says so.
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    Trio t;
    t.b.platform().orphans = orphans;
    Run run(t.b);
    run.settle();
    run.leave(crashed(t.d[1]));
    CHECK_FALSE(run.broken(Property::members_stay));
    run.settle();
    CHECK(broke_by(run, Property::members_stay, Cause::settled_down) == (orphans == Orphans::restart));
    CHECK_FALSE(run.broken(Property::primary_stays));
  }
  Trio t;
  Run run(t.b);
  run.settle();
  run.take(crashed(t.d[0]));
  CHECK_FALSE(run.broken(Property::primary_stays));
  CHECK_FALSE(run.broken(Property::members_stay));
}

TEST_CASE("6.d a refused or omitted step takes nothing down") {
  Trio t;
  const DeviceId lone = t.b.device("lone");
  const StepId refused = t.b.restart(t.d[0], {.via = lone});
  const StepId omitted_step = t.b.power_off(t.d[0]);
  t.b.faults({.omissions = 1});
  Run run(t.b);
  run.settle();
  CHECK(run.take(step(refused)) == Refusal::not_reachable);
  run.take(omitted(omitted_step));
  CHECK(run.power(t.d[0]) == Power::up);
  CHECK_FALSE(run.broken(Property::primary_stays));
  CHECK_FALSE(run.broken(Property::members_stay));
}

TEST_CASE("6.d a device that leads itself goes on leading unless it is restarted or held") {
  Meeting m(1);
  Run run(m.b);
  run.settle();
  run.take(step(m.plug));
  for (const State& s : run.seen()) {
    CHECK(s[m.primary].leader == m.primary);
    CHECK((s[m.lone].leader == m.lone || s[m.lone].power == Power::starting));
  }
}

TEST_CASE("6.e whether a device of keep leads") {
  Trio t;
  Run run(t.b);
  CHECK(semantics::a_kept_device_leads(run.world(), run.state()));
  t.b.keep({t.d[1], t.d[2]});
  Run followers(t.b);
  CHECK_FALSE(semantics::a_kept_device_leads(followers.world(), followers.state()));
}

// Semantics 6, Properties: what breaks each, and what does not.
#include "semantics/loss.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;
using Cause = Breach::Cause;
using GoalPart = Breach::GoalPart;

namespace {

/// a - b - c, led by a, all of it to keep unless a test says otherwise; one break and one crash may happen.
struct Trio {
  ModelBuilder b;
  std::vector<DeviceId> d;
  std::vector<CableId> cables;

  Trio() {
    d = b.devices({"a", "b", "c"});
    cables = b.chain(d);
    b.stack(d[0], d);
    b.faults({.cable_breaks = 1, .crashes = 1});
    b.unordered();
  }
};

/// True when the property broke for this cause.
bool broke_by(const Run& run, Property property, Cause cause) {
  return run.broken(property) && run.broken(property)->cause == cause;
}

}  // namespace

TEST_CASE("6 the budget of the first four properties only, and keep of the first three") {
  for (int i = 0; i < property_count; ++i) {
    const auto property = static_cast<Property>(i);
    CHECK(asked_with_faults(property) == (i < 4));
    CHECK(speaks_of_keep(property) == (i < 3));
    CHECK(speaks_of_goal(property) == (i >= 5));
  }
}

// 6.1 no-split

TEST_CASE("6.1 an undisturbed stack is not split, and 6.2 to 6.5 hold of it as well") {
  const Trio t;
  Run run(t.b);
  run.settle();
  for (int i = 0; i < 5; ++i) CHECK_FALSE(run.broken(static_cast<Property>(i)));
}

TEST_CASE("6.1 a device of keep cut off from its stack, even before any pass") {
  const Trio t;
  Run run(t.b);
  run.settle();
  run.leave(broke(t.cables[1]));
  CHECK(run.leader(t.d[2]) == t.d[0]);
  run.settle();
  CHECK(broke_by(run, Property::no_split, Cause::cut_apart));
}

TEST_CASE("6.1 two of keep that follow different leaders") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.keep(d);
  Run run(b);
  run.settle();
  CHECK(broke_by(run, Property::no_split, Cause::two_leaders));
}

TEST_CASE("6.1 newcomers too: a device of keep is together with every device that follows the same leader") {
  Trio t;
  t.b.keep({t.d[0], t.d[1]});  // c is no device of keep, and follows a
  Run run(t.b);
  run.settle();
  run.take(broke(t.cables[1]));
  CHECK(broke_by(run, Property::no_split, Cause::cut_apart));
}

TEST_CASE("6.1 a device outside keep that follows another leader is no split") {
  Trio t;
  t.b.keep({t.d[0], t.d[1]});
  const DeviceId lone = t.b.device("lone");
  Run run(t.b);
  run.settle();
  CHECK(run.leader(lone) == lone);
  CHECK_FALSE(run.broken(Property::no_split));
}

TEST_CASE("6.1 the leader itself may be outside keep") {
  Trio t;
  t.b.keep({t.d[1], t.d[2]});
  Run run(t.b);
  run.settle();
  CHECK_FALSE(run.broken(Property::no_split));
  run.take(broke(t.cables[0]));
  // b and c are still together, but a, which both followed, is not with them.
  CHECK(broke_by(run, Property::no_split, Cause::cut_apart));
}

TEST_CASE("6.1 speaks of devices that are up and admitted: one that is off, starting or fresh splits nothing") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.chain(d);
  b.stack(d[0], d);
  b.unordered();
  const StepId off = b.power_off(d[1]);
  const StepId on = b.power_on(d[1], {.after = {off}});
  Run run(b);
  run.settle();
  run.take(step(off));
  run.take(step(on));
  run.leave(started(d[1]));
  CHECK_FALSE(run.leader(d[1]));
  run.settle();
  CHECK_FALSE(run.broken(Property::no_split));
  CHECK(run.leader(d[1]) == d[0]);
}

TEST_CASE("6.1 none of keep is held, newcomers may be") {
  for (const bool kept : {true, false}) {
    ModelBuilder b;
    const DeviceId a = b.device("a", {.number = 4});
    const DeviceId d = b.device("d", {.number = 4});
    const CableId c = b.cable(b.east(a), b.west(d), false);
    const StepId plug = b.plug(c);
    // Where both are kept they are split to begin with: keep the one that will be held, or the other.
    b.keep({kept ? d : a});
    Run run(b);
    run.settle();
    run.take(step(plug));
    REQUIRE(run.power(d) == Power::held);
    CHECK(broke_by(run, Property::no_split, Cause::kept_device_held) == kept);
    CHECK(run.broken(Property::no_split).has_value() == kept);
  }
}

// 6.2 primary-stays, 6.3 members-stay

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

// 6.4 no-clash

TEST_CASE("6.4 no device is ever held, of keep or not") {
  ModelBuilder b;
  const DeviceId a = b.device("a", {.number = 4});
  const DeviceId d = b.device("d", {.on = false, .number = 4});
  b.chain({a, d});
  const StepId on = b.power_on(d);
  Run run(b);
  run.settle();
  run.take(step(on));
  run.leave(started(d));
  CHECK_FALSE(run.broken(Property::no_clash));  // it is fresh, not admitted
  run.settle();
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Cause::held);
  CHECK(run.broken(Property::no_clash)->a == d);
}

TEST_CASE("6.4 a fresh device clashes with nobody before it is admitted, wherever it stands in the file") {
  ModelBuilder b;
  const DeviceId d = b.device("d", {.on = false, .number = 4});
  const DeviceId a = b.device("a", {.number = 4});
  b.chain({a, d});
  const StepId on = b.power_on(d);
  Run run(b);
  run.settle();
  run.take(step(on));
  run.take(started(d));
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Cause::held);
}

TEST_CASE("6.4 no two admitted devices that are together have the same number") {
  Trio t;
  const StepId set = t.b.set_number(t.d[2], 1);
  Run run(t.b);
  run.settle();
  run.take(step(set));
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Cause::same_number);
  CHECK(run.broken(Property::no_clash)->a == t.d[0]);
  CHECK(run.broken(Property::no_clash)->b == t.d[2]);
  // They follow the same leader, so that none yields (4.1.e).
  CHECK(run.power(t.d[2]) == Power::up);
}

TEST_CASE("6.4 the same number apart is no clash, nor is a next number") {
  ModelBuilder b;
  b.device("a", {.number = 4});
  b.device("d", {.number = 4});
  Run run(b);
  run.settle();
  CHECK_FALSE(run.broken(Property::no_clash));
  Trio t;
  t.b.platform().number_takes = Takes::at_restart;
  const StepId set = t.b.set_number(t.d[2], 1);
  Run later(t.b);
  later.settle();
  later.take(step(set));
  CHECK_FALSE(later.broken(Property::no_clash));
}

// 6.5 no-refusal

TEST_CASE("6.5 no step is refused; a failed check is no refusal") {
  Trio t;
  const StepId check = t.b.check(when::never());
  Run run(t.b);
  run.settle();
  run.take(step(check));
  CHECK_FALSE(run.broken(Property::no_refusal));
  Trio other;
  const StepId on = other.b.power_on(other.d[0]);
  Run refusing(other.b);
  refusing.settle();
  refusing.take(step(on));
  REQUIRE(refusing.broken(Property::no_refusal));
  CHECK(refusing.broken(Property::no_refusal)->step == on);
  for (int i = 0; i < 4; ++i) CHECK_FALSE(refusing.broken(static_cast<Property>(i)));
}

// 6.6 reaches-goal and 6.b, the goal

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
  t.b.goal({.stack = t.d, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  CHECK_FALSE(missed_at_rest(t));
  t.b.await(when::never());
  REQUIRE(missed_at_rest(t));
  CHECK(missed_at_rest(t)->cause == Cause::not_complete);
}

TEST_CASE("6.6 no class is larger than max-members, of the goal or not") {
  Trio t;
  t.b.goal({.stack = {t.d[0]}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  t.b.platform().max_members = 3;
  CHECK_FALSE(missed_at_rest(t));
  t.b.platform().max_members = 2;
  REQUIRE(missed_at_rest(t));
  CHECK(missed_at_rest(t)->cause == Cause::too_many_members);
  // Two classes of two and one are no class of three.
  Trio apart;
  apart.b.goal({.stack = {apart.d[0]}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  apart.b.platform().max_members = 2;
  Run run(apart.b);
  run.settle();
  run.take(broke(apart.cables[1]));
  CHECK_FALSE(run.missed());
}

TEST_CASE("6.b the devices of goal.stack are together") {
  Trio t;
  t.b.goal({.stack = {t.d[2], t.d[0]}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  Run run(t.b);
  run.settle();
  CHECK_FALSE(run.missed());
  run.take(broke(t.cables[1]));
  CHECK(missed_by(run.missed(), GoalPart::together));
}

TEST_CASE("6.b a goal of one device wants it up") {
  ModelBuilder b;
  const DeviceId off = b.device("off", {.on = false});
  b.goal({.stack = {off}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  CHECK(missed_by(Run(b).missed(), GoalPart::together));
}

TEST_CASE("6.b the devices of goal.stack follow one leader, who may be another") {
  Trio t;
  t.b.goal({.stack = {t.d[1], t.d[2]}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
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
  t.b.goal({.stack = t.d, .primary = t.d[0], .saved = false, .where = {}, .where_text = {}});
  CHECK_FALSE(missed_at_rest(t));
  t.b.goal({.stack = t.d, .primary = t.d[1], .saved = false, .where = {}, .where_text = {}});
  CHECK(missed_by(missed_at_rest(t), GoalPart::primary));
}

TEST_CASE("6.b each device of goal.stack is saved, if goal.saved is true") {
  for (const bool wanted : {true, false}) {
    Trio t;
    t.b.goal({.stack = {t.d[0], t.d[1]}, .primary = {}, .saved = wanted, .where = {}, .where_text = {}});
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
  t.b.goal(
      {.stack = t.d, .primary = {}, .saved = false, .where = when::number(t.d[2], Sign::equal, 3), .where_text = {}});
  CHECK_FALSE(missed_at_rest(t));
  t.b.goal(
      {.stack = t.d, .primary = {}, .saved = false, .where = when::number(t.d[2], Sign::equal, 4), .where_text = {}});
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
    b.goal({.stack = {x, y}, .primary = named ? x : DeviceId(), .saved = false, .where = {}, .where_text = {}});
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
  b.goal({.stack = {x, y}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
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
  b.goal({.stack = {x, y}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
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

// 6.8 tolerates-loss

namespace {

constexpr auto never_interrupted = [] { return false; };

semantics::Loss loss_of(const ModelBuilder& b, std::int64_t k) {
  Run run(b);
  run.settle();
  return semantics::find_fatal_loss(run.world(), run.state(), k, never_interrupted);
}

struct Ring {
  ModelBuilder b;
  std::vector<DeviceId> d;
  std::vector<CableId> cables;

  Ring() {
    d = b.devices({"a", "b", "c", "d"});
    cables = b.ring(d);
    b.stack(d[0], d);
    b.goal({.stack = d, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  }
};

}  // namespace

TEST_CASE("6.8 a ring tolerates the loss of any cable, not of any two; the first fatal set in the site's order") {
  const Ring ring;
  CHECK_FALSE(loss_of(ring.b, 1).fatal);
  const auto two = loss_of(ring.b, 2).fatal;
  REQUIRE(two);
  CHECK(*two == std::vector<CableId>{ring.cables[0], ring.cables[1]});
}

TEST_CASE("6.8 only the devices of goal.stack count") {
  Ring ring;
  ring.b.goal({.stack = {ring.d[0], ring.d[1]}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  const auto two = loss_of(ring.b, 2).fatal;
  REQUIRE(two);
  CHECK(*two == std::vector<CableId>{ring.cables[0], ring.cables[1]});
  // a and b stay together whichever two of the others break.
  CHECK(two->front() == ring.cables[0]);
  ring.b.goal({.stack = {ring.d[0]}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  CHECK_FALSE(loss_of(ring.b, 4).fatal);
}

TEST_CASE("6.8 all of the cables where there are fewer than k; none where none is plugged") {
  Trio t;
  t.b.goal({.stack = t.d, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  const auto all = loss_of(t.b, 9).fatal;
  REQUIRE(all);
  CHECK(*all == t.cables);
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.goal({.stack = d, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  const auto none = loss_of(b, 1).fatal;
  REQUIRE(none);
  CHECK(none->empty());
}

TEST_CASE("6.8 exactly k break: a loss of two may be survived where a loss of one is not") {
  // y and z have two cables each to x's east side; z is only in the way. One-neighbour: both links need the other gone.
  ModelBuilder b;
  b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  const DeviceId x = b.device("x", {.ports = {{.name = "p", .side = Side::east}, {.name = "q", .side = Side::east}}});
  const DeviceId y = b.device("y");
  const DeviceId z = b.device("z");
  b.cable(b.port(x, "p"), b.west(y));
  b.cable(b.port(x, "q"), b.west(z));
  b.cable(b.east(y), b.east(z));
  b.stack(x, {x, y});
  b.goal({.stack = {x, y}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  Run run(b);
  // Before any loss x leads to two neighbours, so that x and y are not together.
  CHECK_FALSE(run.together(x, y));
  // Each single loss: of x-y leaves x-z-y; of x-z leaves x-y; of y-z leaves neither.
  const auto one = semantics::find_fatal_loss(run.world(), run.state(), 1, never_interrupted).fatal;
  REQUIRE(one);
  CHECK(*one == std::vector<CableId>{CableId(2)});
}

TEST_CASE("6.8 every set of k is tried") {
  // Of four cables the middle two, a pair between a and b, are the only two whose loss matters.
  ModelBuilder b;
  const auto side = [](std::string name) { return PortIs{.name = std::move(name), .side = Side::east}; };
  const DeviceId x = b.device("a", {.ports = {side("p"), side("q")}});
  const DeviceId y = b.device("b", {.ports = {side("p"), side("q"), side("r"), side("s")}});
  const DeviceId z = b.device("c", {.ports = {side("r"), side("s")}});
  b.cable(b.port(y, "r"), b.port(z, "r"));
  const CableId first = b.cable(b.port(x, "p"), b.port(y, "p"));
  const CableId second = b.cable(b.port(x, "q"), b.port(y, "q"));
  b.cable(b.port(y, "s"), b.port(z, "s"));
  b.stack(x, {x, y, z});
  b.goal({.stack = {x, y}, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  const auto two = loss_of(b, 2).fatal;
  REQUIRE(two);
  CHECK(*two == std::vector<CableId>{first, second});
}

TEST_CASE("6.8 only cables that are plugged and unbroken break") {
  Ring ring;
  ring.b.cable(ring.b.east(ring.d[0]), ring.b.west(ring.d[2]), false);
  Run run(ring.b);
  run.settle();
  run.state()[ring.cables[0]].broken = true;
  CHECK(semantics::breakable(run.state()) == std::vector<CableId>(ring.cables.begin() + 1, ring.cables.end()));
  const auto one = semantics::find_fatal_loss(run.world(), run.state(), 1, never_interrupted).fatal;
  REQUIRE(one);
  CHECK(*one == std::vector<CableId>{ring.cables[1]});
}

TEST_CASE("6.8 right after, before any pass") {
  // Where orphans carry on, the parts would each be a stack again; they are apart all the same.
  Trio t;
  t.b.goal({.stack = t.d, .primary = {}, .saved = false, .where = {}, .where_text = {}});
  const auto one = loss_of(t.b, 1).fatal;
  REQUIRE(one);
  CHECK(*one == std::vector<CableId>{t.cables[0]});
}

TEST_CASE("6.8 a search that is interrupted tells so") {
  const Ring ring;
  Run run(ring.b);
  run.settle();
  int asked = 0;
  const auto loss = semantics::find_fatal_loss(run.world(), run.state(), 1, [&] { return ++asked > 2; });
  CHECK(loss.interrupted);
  CHECK_FALSE(loss.fatal);
}

// 6.e

TEST_CASE("6.e whether a device of keep leads") {
  Trio t;
  Run run(t.b);
  CHECK(semantics::a_kept_device_leads(run.world(), run.state()));
  t.b.keep({t.d[1], t.d[2]});
  Run followers(t.b);
  CHECK_FALSE(semantics::a_kept_device_leads(followers.world(), followers.state()));
}

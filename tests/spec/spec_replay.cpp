// Replaying a refutation (semantics 6.f): only what can happen, in order, up to the moment at which the property
// breaks, not before and not later. And the walk without faults.
#include <string>
#include <variant>

#include "support/run.hpp"
#include "support/second_neighbour.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// a - b, led by a, and c, stronger, that is plugged in; then d is powered on.
struct Terminal {
  ModelBuilder b;
  DeviceId a, member, strong, off;
  CableId joining, splice;
  StepId plug, on;

  Terminal() {
    a = b.device("a");
    member = b.device("b");
    strong = b.device("c", {.priority = 9});
    off = b.device("d", {.on = false});
    joining = b.cable(b.east(a), b.west(member));
    splice = b.cable(b.east(member), b.west(strong), false);
    b.stack(a, {a, member});
    b.goal(goal_of({a, member}, a));
    plug = b.plug(splice);
    on = b.power_on(off);
  }
};

constexpr FaultBudget no_faults{};

/// Empty when the events are a refutation, else why not.
std::string rejected(const ModelBuilder& b, const AskedProperty& asked, const Trace& events,
                     const FaultBudget& faults = no_faults) {
  const auto result = replay(b.model(), faults, asked, events);
  const auto* no = std::get_if<NotARefutation>(&result);
  return no == nullptr ? "" : no->why + " (" + std::to_string(no->event) + ")";
}

Event cold_start() {
  return {Event::Kind::cold_start, 0};
}

}  // namespace

TEST_CASE("6.f a refutation is walked from the initial state to the event that breaks the property") {
  const Terminal s;
  const auto result = replay(s.b.model(), no_faults, {Property::primary_stays}, {step(s.plug)});
  REQUIRE(std::holds_alternative<Walk>(result));
  const Walk& walk = std::get<Walk>(result);
  CHECK(walk.end == Walk::End::events);
  REQUIRE(walk.moments.size() == 1);
  REQUIRE(walk.breach);
  CHECK(walk.breach->cause == Breach::Cause::settled_down);
  CHECK(walk.breach->a == s.a);
  const Moment& moment = walk.moments[0];
  CHECK(moment.event == step(s.plug));
  CHECK_FALSE(moment.before[s.splice].plugged);
  CHECK(moment.left[s.splice].plugged);
  CHECK(moment.left[s.a].leader == s.a);
  REQUIRE(moment.passes.size() == 1);
  CHECK(moment.passes[0].restarted == std::vector<DeviceId>{s.a, s.member});
  REQUIRE(moment.passes[0].contests.size() == 1);
  CHECK(moment.passes[0].contests[0].winner == s.strong);
  CHECK(moment.passes[0].contests[0].losers == std::vector<DeviceId>{s.a});
  CHECK(moment.after()[s.a].power == Power::starting);
  CHECK(walk.last() == moment.after());
}

TEST_CASE("6.f what does not break, breaks before its end, or cannot happen, is no refutation") {
  const Terminal s;
  CHECK(rejected(s.b, {Property::primary_stays}, {step(s.plug)}) == "");
  CHECK(rejected(s.b, {Property::no_refusal}, {step(s.plug)}) == "the property is not broken at the end (1)");
  CHECK(rejected(s.b, {Property::primary_stays}, {step(s.plug), step(s.on)}) ==
        "the property is broken before this event (1)");
  CHECK(rejected(s.b, {Property::primary_stays}, {step(s.on), step(s.plug)}) == "this event cannot happen here (0)");
  CHECK(rejected(s.b, {Property::primary_stays}, {started(s.off)}) == "this event cannot happen here (0)");
  CHECK(rejected(s.b, {Property::primary_stays}, {}) == "the property is not broken at the end (0)");
}

TEST_CASE("6.f what breaks first is told") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.number = 3});
  const DeviceId y = b.device("y", {.number = 3});
  const CableId c = b.cable(b.east(x), b.west(y), false);
  const StepId plug = b.plug(c);
  const auto result = replay(b.model(), no_faults, {Property::no_clash}, {step(plug)});
  REQUIRE(std::holds_alternative<Walk>(result));
  // y is held in the pass that follows; the equal numbers were there before.
  CHECK(std::get<Walk>(result).last()[y].power == Power::held);
  CHECK(std::get<Walk>(result).breach->cause == Breach::Cause::same_number);
}

TEST_CASE("6.f depth zero may refute, and then no event belongs to the refutation") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.keep(d);
  const StepId on = b.power_off(d[0]);
  CHECK(rejected(b, {Property::no_split}, {}) == "");
  CHECK(rejected(b, {Property::no_split}, {step(on)}) == "the property is broken before this event (0)");
}

TEST_CASE("6.f faults are spent on 6.1 to 6.4 alone, and within the budget in force") {
  Terminal s;
  const FaultBudget one_break{.cable_breaks = 1};
  CHECK(rejected(s.b, {Property::no_split}, {broke(s.joining)}, one_break) == "");
  CHECK(rejected(s.b, {Property::no_split}, {broke(s.joining)}) == "this event cannot happen here (0)");
  s.b.faults(one_break);  // the procedure's own budget is not the one in force
  CHECK(rejected(s.b, {Property::no_split}, {broke(s.joining)}) == "this event cannot happen here (0)");
  CHECK(rejected(s.b, {Property::no_refusal}, {broke(s.joining)}, one_break) == "this event cannot happen here (0)");
  CHECK(rejected(s.b, {Property::reaches_goal}, {broke(s.joining)}, one_break) == "this event cannot happen here (0)");
}

TEST_CASE("6.f 6.5 a refused step refutes at once") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  const StepId on = b.power_on(a);
  CHECK(rejected(b, {Property::no_refusal}, {step(on)}) == "");
}

TEST_CASE("6.f 6.6 a refutation of reaches-goal ends at rest") {
  Terminal s;
  const Trace whole = {step(s.plug), started(s.member), started(s.a), step(s.on), started(s.off)};
  CHECK(rejected(s.b, {Property::reaches_goal}, whole) == "");  // c leads, not a
  CHECK(rejected(s.b, {Property::reaches_goal}, {step(s.plug)}) == "the run is not at rest here (1)");
  s.b.goal(goal_of({s.a, s.member}));
  CHECK(rejected(s.b, {Property::reaches_goal}, whole) == "the property is not broken at the end (5)");
  s.b.await(when::never());
  CHECK(rejected(s.b, {Property::reaches_goal}, whole) == "");  // not complete
}

TEST_CASE("6.f the goal properties need a goal") {
  ModelBuilder b;
  b.device("a");
  CHECK(rejected(b, {Property::reaches_goal}, {}) == "the procedure states no goal (0)");
}

TEST_CASE("6.f 6.7 a refutation of survives-cold-start ends with one, from a complete state at rest") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.priority = 5});
  const DeviceId y = b.device("y", {.priority = 9});
  b.chain({x, y});
  b.stack(x, {x, y});
  b.goal(goal_of({x, y}, x));
  const StepId save = b.save({x});
  const AskedProperty asked{Property::survives_cold_start};
  const auto result = replay(b.model(), no_faults, asked, {step(save), cold_start()});
  REQUIRE(std::holds_alternative<Walk>(result));
  const Walk& walk = std::get<Walk>(result);
  REQUIRE(walk.breach);
  CHECK(walk.breach->cause == Breach::Cause::goal_missed);
  CHECK(walk.breach->missed == Breach::GoalPart::primary);
  REQUIRE(walk.moments.size() == 2);
  CHECK(walk.moments[1].event == cold_start());
  CHECK_FALSE(walk.moments[1].left[x].leader);
  CHECK(walk.last()[x].leader == y);

  CHECK(rejected(b, asked, {cold_start()}) == "the run is not at rest here (0)");
  CHECK(rejected(b, asked, {step(save), step(save)}) == "the last event is no cold start (1)");
  CHECK(rejected(b, asked, {}) == "there are fewer events than the last ones it needs (0)");
  CHECK(rejected(b, asked, {cold_start(), cold_start()}) == "this event cannot happen here (0)");
  b.goal(goal_of({x, y}));
  CHECK(rejected(b, asked, {step(save), cold_start()}) == "the property is not broken at the end (2)");
  b.await(when::never());
  CHECK(rejected(b, asked, {step(save), cold_start()}) == "the procedure is not complete here (1)");
}

TEST_CASE("6.f 6.8 a refutation of tolerates-loss ends with exactly the breaks asked for") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c"});
  const auto cables = b.ring(d);
  b.stack(d[0], d);
  b.goal(goal_of(d));
  const StepId save = b.save({d[0]});
  const AskedProperty two{Property::tolerates_loss, 2};
  const auto result = replay(b.model(), no_faults, two, {step(save), broke(cables[0]), broke(cables[2])});
  REQUIRE(std::holds_alternative<Walk>(result));
  const Walk& walk = std::get<Walk>(result);
  REQUIRE(walk.breach);
  CHECK(walk.breach->cause == Breach::Cause::loss_cuts);
  REQUIRE(walk.moments.size() == 3);
  CHECK(walk.moments[2].passes.empty());  // right after, before any pass
  CHECK(walk.last()[cables[0]].broken);

  const std::string wrong_size = "the loss is not of as many cables as asked (1)";
  CHECK(rejected(b, two, {step(save), broke(cables[0])}) == wrong_size);
  CHECK(rejected(b, two, {step(save), broke(cables[0]), broke(cables[1]), broke(cables[2])}) == wrong_size);
  CHECK(rejected(b, {Property::tolerates_loss, 1}, {step(save), broke(cables[0])}) ==
        "the property is not broken at the end (2)");
  CHECK(rejected(b, two, {step(save), broke(cables[0]), broke(cables[0])}) == "this cable cannot break here (2)");
  CHECK(rejected(b, two, {broke(cables[0]), broke(cables[1])}) == "the run is not at rest here (0)");
  CHECK(rejected(b, {Property::tolerates_loss, 9},
                 {step(save), broke(cables[0]), broke(cables[1]), broke(cables[2])}) == "");
  CHECK(rejected(b, {Property::tolerates_loss, 9}, {step(save), broke(cables[0]), broke(cables[1])}) == wrong_size);
}

TEST_CASE("5.a 5.b the walk without faults takes steps in file order, and starts when the procedure waits for them") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.on = false});
  const DeviceId y = b.device("y", {.on = false});
  const StepId on_x = b.power_on(x);
  const StepId on_y = b.power_on(y);
  const StepId both = b.await(when::all({when::up(x), when::up(y)}));
  b.faults({1, 1, 1, 1, true});
  const Walk whole = walk(b.model());
  CHECK(whole.end == Walk::End::complete);
  CHECK(whole.waiting.empty());
  CHECK_FALSE(whole.breach);
  std::vector<Event> events;
  for (const Moment& moment : whole.moments) events.push_back(moment.event);
  CHECK(events == std::vector<Event>{step(on_x), step(on_y), started(x), started(y), step(both)});
  CHECK(whole.last()[y].power == Power::up);
}

TEST_CASE("5.j the walk ends complete with every start done, stuck at an await, or halted at a check") {
  ModelBuilder b;
  const DeviceId x = b.device("x", {.on = false});
  b.unordered();
  b.power_on(x);
  const Walk complete = walk(b.model());
  CHECK(complete.end == Walk::End::complete);
  CHECK(complete.last()[x].power == Power::up);

  const StepId waits = b.await(when::held(x));
  const StepId later = b.save({x}, {.after = {StepId(0)}});
  const Walk stuck = walk(b.model());
  CHECK(stuck.end == Walk::End::stuck);
  CHECK(stuck.waiting == std::vector<StepId>{waits});
  CHECK(stuck.last().is_done(later));  // what need not wait is done

  b.check(when::never());
  CHECK(walk(b.model()).end == Walk::End::halted);
}

// docs/semantics-questions.md, 2: e and f restart one another for ever.
TEST_CASE("5.k a walk that comes back to a state that it has left ends there") {
  const Walk whole = walk(SecondNeighbour(Orphans::restart).b.model());
  CHECK(whole.end == Walk::End::endless);
  CHECK(whole.waiting.empty());
  // The last state was left before, and only starts lead from there to here.
  std::size_t i = whole.moments.size();
  do {
    REQUIRE(i-- > 0);
    CHECK(whole.moments[i].event.kind == Event::Kind::started);
  } while (whole.moments[i].before != whole.last());
}

TEST_CASE("5.d the walk tells a refusal, and goes on") {
  ModelBuilder b;
  const DeviceId x = b.device("x");
  b.power_on(x);
  b.save({x});
  const Walk whole = walk(b.model());
  REQUIRE(whole.moments.size() == 2);
  CHECK(whole.moments[0].refusal == Refusal::not_off);
  CHECK(whole.moments[1].refusal == Refusal::none);
  CHECK(whole.end == Walk::End::complete);
}

TEST_CASE("4.6 a walk keeps the settling of the initial state, and what each pass did") {
  ModelBuilder b;
  const DeviceId a = b.device("a", {.number = 4});
  const DeviceId clash = b.device("clash", {.number = 4});
  const DeviceId loser = b.device("loser");
  b.chain({a, clash, loser});
  const Walk whole = walk(b.model());
  CHECK(whole.initial[clash].power == Power::up);
  REQUIRE(whole.initial_passes.size() == 1);
  CHECK(whole.initial_passes[0].held == std::vector<DeviceId>{clash});
  CHECK(whole.initial_passes[0].restarted == std::vector<DeviceId>{loser});
  CHECK(whole.initial_passes[0].admitted.empty());
  CHECK(whole.initial_passes[0].after[clash].power == Power::held);
  REQUIRE(whole.moments.size() == 1);
  CHECK(whole.moments[0].event == started(loser));
  REQUIRE(whole.moments[0].passes.size() == 1);
  CHECK(whole.moments[0].passes[0].admitted == std::vector<DeviceId>{loser});
  CHECK(whole.last()[loser].leader == loser);
}

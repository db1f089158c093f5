// What a verdict is empty of: for each kind of finding a model that is known to have it by reasoning, and the nearest
// one that has it not.
#include <doctest/doctest.h>

#include <algorithm>

#include "cairn/prove.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

ProveOptions asking(std::vector<AskedProperty> asked) {
  ProveOptions options;
  options.properties = std::move(asked);
  return options;
}

const AskedProperty no_clash{Property::no_clash, 0};

/// "never-waits s2", "never-strikes crashed", "no-contest"; "not every run" where there are none to tell.
std::vector<std::string> findings(const Model& model, const ProveOptions& options = asking({no_clash})) {
  const auto found = prove(model, options).value().findings;
  if (!found) return {"not every run"};
  std::vector<std::string> told;
  for (const Emptiness& finding : *found) {
    std::string line(name_of(finding.kind));
    if (finding.step) line += " " + model[finding.step].id;
    if (finding.kind == Emptiness::Kind::never_strikes) line += " " + std::string(name_of(finding.fault));
    told.push_back(line);
  }
  return told;
}

std::size_t count(const std::vector<std::string>& findings, const std::string& finding) {
  return static_cast<std::size_t>(std::count(findings.begin(), findings.end(), finding));
}

/// A stack of two in a chain.
struct Pair {
  Pair() {
    one = b.device("one", {.priority = 9});
    two = b.device("two");
    cable = b.cable(b.east(one), b.west(two));
    b.stack(one, {one, two});
    b.goal(goal_of({one, two}));
  }

  ModelBuilder b;
  DeviceId one;
  DeviceId two;
  CableId cable;
};

}  // namespace

TEST_CASE("an await never waits where its condition holds whenever its turn comes") {
  Pair holds;
  const StepId await = holds.b.await(when::up(holds.two));
  CHECK(count(findings(holds.b.model()), "never-waits " + holds.b.model()[await].id) == 1);

  Pair waits;
  waits.b.restart(waits.two);
  waits.b.await(when::up(waits.two));
  CHECK(count(findings(waits.b.model()), "never-waits s2") == 0);
}

TEST_CASE("an await that waits in some order alone waits") {
  Pair pair;
  pair.b.unordered();
  pair.b.restart(pair.two);
  pair.b.await(when::up(pair.two));
  CHECK(count(findings(pair.b.model()), "never-waits s2") == 0);
}

TEST_CASE("an await that only a fault makes wait waits where that fault is allowed, and not elsewhere") {
  Pair pair;
  pair.b.await(when::up(pair.two));
  CHECK(count(findings(pair.b.model()), "never-waits s1") == 1);
  pair.b.faults({.crashes = 1});
  CHECK(count(findings(pair.b.model()), "never-waits s1") == 0);
  // What is asked without faults sees none.
  CHECK(count(findings(pair.b.model(), asking({{Property::reaches_goal, 0}})), "never-waits s1") == 1);
}

TEST_CASE("of an await or a check that is never reached nothing is told") {
  Pair pair;
  pair.b.await(when::never());
  pair.b.await(when::always());
  pair.b.check(when::always());
  CHECK(findings(pair.b.model()) == std::vector<std::string>{"no-contest"});
}

TEST_CASE("a check cannot fail where it holds whenever its turn comes") {
  Pair holds;
  holds.b.check(when::linked(holds.cable));
  CHECK(count(findings(holds.b.model()), "cannot-fail s1") == 1);
  holds.b.faults({.cable_breaks = 1});
  CHECK(count(findings(holds.b.model()), "cannot-fail s1") == 0);

  Pair fails;
  fails.b.check(when::off(fails.two));
  CHECK(count(findings(fails.b.model()), "cannot-fail s1") == 0);
}

TEST_CASE("a fault never strikes where there is nothing for it to strike") {
  const auto with = [](FaultBudget faults, bool plugged = true) {
    ModelBuilder b;
    const DeviceId one = b.device("one");
    const DeviceId two = b.device("two", {.on = false});
    b.cable(b.east(one), b.west(two), plugged);
    b.await(when::always());
    b.faults(faults);
    return findings(b.model());
  };
  CHECK(count(with({.cable_breaks = 1}, false), "never-strikes broke") == 1);
  CHECK(count(with({.cable_breaks = 1}), "never-strikes broke") == 0);
  CHECK(count(with({.omissions = 1}), "never-strikes omitted") == 1);  // an await is not forgotten
  CHECK(count(with({.late_starts = 1}), "never-strikes started-late") == 1);
  CHECK(count(with({.crashes = 1, .late_starts = 1}), "never-strikes started-late") == 0);
  CHECK(count(with({.crashes = 1}), "never-strikes crashed") == 0);
  CHECK(count(with({.mends = true}), "never-strikes mended") == 1);
  CHECK(count(with({.cable_breaks = 1, .mends = true}), "never-strikes mended") == 0);
}

TEST_CASE("no device ever crashes where none is ever on") {
  ModelBuilder b;
  b.device("one", {.on = false});
  b.faults({.crashes = 1});
  CHECK(count(findings(b.model()), "never-strikes crashed") == 1);
}

TEST_CASE("whether faults strike is not told of properties asked without them") {
  Pair pair;
  pair.b.faults({.late_starts = 1});
  CHECK(count(findings(pair.b.model(), asking({{Property::reaches_goal, 0}})), "never-strikes started-late") == 0);
}

TEST_CASE(
    "a contest is seen where leaders meet, where a leader is chosen among several, and where a clash is decided") {
  Pair alone;
  CHECK(findings(alone.b.model()) == std::vector<std::string>{"no-contest"});

  ModelBuilder meet;
  const DeviceId one = meet.device("one");
  const DeviceId two = meet.device("two");
  meet.plug(meet.cable(meet.east(one), meet.west(two), false));
  CHECK(findings(meet.model()).empty());

  // The cold start of the pair chooses a leader.
  CHECK(findings(alone.b.model(), asking({{Property::survives_cold_start, 0}})).empty());

  // Both are fresh and have the same number: who yields is a matter of rank (4.1.b).
  ModelBuilder clash;
  const DeviceId a = clash.device("a", {.on = false, .number = 1});
  const DeviceId b = clash.device("b", {.on = false, .number = 1});
  const DeviceId c = clash.device("c", {.number = 2});
  clash.cable(clash.east(a), clash.west(b));
  clash.cable(clash.east(b), clash.west(c));
  CHECK(findings(clash.model(), asking({{Property::no_refusal, 0}})) == std::vector<std::string>{"no-contest"});
  clash.power_on(a);
  clash.power_on(b);
  CHECK(findings(clash.model(), asking({{Property::no_refusal, 0}})).empty());
}

TEST_CASE("a newcomer that meets a leader is no contest") {
  ModelBuilder b;
  const DeviceId one = b.device("one");
  const DeviceId two = b.device("two", {.on = false});
  b.cable(b.east(one), b.west(two));
  b.power_on(two);
  CHECK(findings(b.model()) == std::vector<std::string>{"no-contest"});
}

TEST_CASE("nothing is told where not every run was looked at") {
  Pair pair;
  pair.b.await(when::up(pair.two));
  pair.b.power_on(pair.one);  // refused: the only property asked is refuted, and the search ends
  CHECK(findings(pair.b.model(), asking({{Property::no_refusal, 0}})) == std::vector<std::string>{"not every run"});
  // With one that holds beside it, every run is looked at.
  CHECK(count(findings(pair.b.model(), asking({{Property::no_refusal, 0}, no_clash})), "never-waits s1") == 1);
  // One of two explorations ended early.
  pair.b.faults({.crashes = 1});
  CHECK(findings(pair.b.model(), asking({{Property::no_refusal, 0}, no_clash})) ==
        std::vector<std::string>{"not every run"});

  ProveOptions hasty = asking({no_clash});
  hasty.limits.seconds = 0;
  CHECK(findings(pair.b.model(), hasty) == std::vector<std::string>{"not every run"});
}

TEST_CASE("a refuted cold start leaves open whether a later one is a contest") {
  // Alone, a device holds no contest; its goal is missed after the cold start, since it was not saved.
  ModelBuilder b;
  const DeviceId one = b.device("one");
  b.set_priority(one, 7);
  Goal goal = goal_of({one});
  goal.where = when::priority(one, Sign::equal, 7);
  b.goal(goal);
  const auto asked = asking({{Property::survives_cold_start, 0}, no_clash});
  CHECK(prove(b.model(), asked).value().properties.front().verdict == Verdict::refuted);
  CHECK(count(findings(b.model(), asked), "no-contest") == 0);
  CHECK(count(findings(b.model()), "no-contest") == 1);
}

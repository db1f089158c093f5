// Which rules a verdict leans on, where it can be said by reasoning.
#include <doctest/doctest.h>

#include "support/model_builder.hpp"
#include "support/printing.hpp"
#include "verify/why_rules.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// The rules that turn the verdict on the first property: "orphans: restart refuted 1".
std::vector<std::string> turning(const Why& why) {
  std::vector<std::string> told;
  for (const OtherRule& other : why.rules) {
    for (const PropertyVerdict& p : other.turned) {
      if (p.asked != why.properties.front().asked) continue;
      std::string line = other.rule + ": " + other.value + " " + std::string(cairn::name_of(p.verdict));
      if (p.verdict == Verdict::refuted) line += " " + std::to_string(p.events.size());
      if (!p.vacuous.empty()) line += ", " + p.vacuous;
      told.push_back(line);
    }
  }
  return told;
}

using Told = std::vector<std::string>;

}  // namespace

TEST_CASE("every rule has its other values, one at a time") {
  Platform platform = ModelBuilder().platform();
  platform.election = {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number};
  Told told;
  for (const OtherRule& other : verify::other_rules(platform)) told.push_back(other.rule + ": " + other.value);
  CHECK(told == Told{"number-takes: at-restart", "priority-takes: at-restart", "settings-follow: number",
                     "side-takes: on-apply", "side-needs-disabled: true", "facing: opposite",
                     "side-leads-to: one-neighbour", "orphans: restart", "software: must-match",
                     "election: [tenure, number]", "election: [priority, number]", "election: [priority, tenure]"});
}

TEST_CASE("the other value of the other value is the rule itself") {
  const Platform platform = ModelBuilder().platform();
  for (const OtherRule& other : verify::other_rules(platform)) {
    if (other.rule == "election") continue;
    std::size_t back = 0;
    for (const OtherRule& again : verify::other_rules(other.platform)) {
      if (again.rule == other.rule) back += again.value != other.value;
    }
    CHECK(back == 1);
  }
}

TEST_CASE("that members stay when their primary crashes leans on orphans carrying on") {
  // A chain of two; the follower is alone when its primary starts anew, and what comes back follows it.
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  b.chain(yard);
  b.stack(yard[0], yard);
  b.faults({.crashes = 1});
  const Why answer = why(b.model(), asking(Property::members_stay)).value();
  CHECK(answer.report.verdict() == Verdict::proved);
  CHECK(turning(answer) == Told{"orphans: restart refuted 1"});
}

TEST_CASE("of two leaders that meet the first key that tells them apart decides") {
  // yard-1 has the higher priority, yard-2 the longer tenure; they meet when the cable goes in.
  ModelBuilder b;
  b.platform().election = {ElectionKey::priority, ElectionKey::tenure};
  const DeviceId one = b.device("yard-1", {.priority = 9, .tenure = 1});
  const DeviceId two = b.device("yard-2", {.priority = 5, .tenure = 2});
  const CableId cable = b.cable(b.east(one), b.west(two), false);
  b.keep({one});
  b.plug(cable);
  const Why answer = why(b.model(), asking(Property::primary_stays)).value();
  CHECK(answer.report.verdict() == Verdict::proved);
  CHECK(turning(answer) == Told{"election: [tenure] refuted 1"});
}

TEST_CASE("a refutation leans on rules too") {
  // Two east sides face each other only where any two may.
  ModelBuilder b;
  b.platform().facing = Facing::opposite;
  const DeviceId one = b.device("yard-1", {.ports = {{.name = "e", .side = Side::east}}});
  const DeviceId two = b.device("yard-2", {.ports = {{.name = "e", .side = Side::east}}});
  const CableId cable = b.cable(b.east(one), b.east(two), false);
  b.plug(cable);
  b.goal(goal_of({one, two}));
  const Why answer = why(b.model(), asking(Property::reaches_goal)).value();
  CHECK(answer.report.verdict() == Verdict::refuted);
  CHECK(turning(answer) == Told{"facing: any proved"});
}

TEST_CASE("a rule may leave a proof of nothing") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::survives_cold_start)).value();
  // Where a priority takes at a restart alone, yard-3 meets the stack with 190 and still leads it when s6 waits.
  const Told told = turning(answer);
  CHECK(std::count(told.begin(), told.end(), "priority-takes: at-restart proved, no run is complete") == 1);
}

#include "report/narrate.hpp"

#include <vector>

#include "report/changes.hpp"
#include "report/quay.hpp"
#include "semantics/world.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

std::vector<std::string> told(const Model& model) {
  std::vector<std::string> lines;
  for (const Moment& moment : walk(model).moments) lines.push_back(report::what_happens(model, moment));
  return lines;
}

// What changed in the moment with this number, from 1.
std::vector<std::string> changes_at(const Model& model, std::size_t number) {
  const semantics::World world(model);
  const Walk walked = walk(model);
  REQUIRE(walked.moments.size() >= number);
  return report::changes(world, walked.moments[number - 1]);
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("every verb in an operator's words") {
  const Model model = quay(
      "  - power-on: quay-3\n"
      "  - await: up(quay-3)\n"
      "  - set-number: {device: quay-3, to: 4}\n"
      "  - set-priority: {device: quay-2, to: 9, via: quay-1}\n"
      "  - disable: quay-1/w\n"
      "  - set-side: {port: quay-1/w, side: west}\n"
      "  - clear-side: quay-1/w\n"
      "  - enable: quay-1/w\n"
      "  - apply: {devices: [quay-1, quay-2]}\n"
      "  - apply: {devices: stack-of quay-1, via: quay-2}\n"
      "  - save: quay-1\n"
      "  - plug: run\n"
      "  - unplug: run\n"
      "  - await: up(quay-3)\n"
      "  - restart: quay-3\n"
      "  - power-off: quay-3\n"
      "  - check: {condition: off(quay-3), id: is-off}\n");
  CHECK(told(model) ==
        Lines{
            "switches on quay-3 (s1)",
            "quay-3 completes its start",
            "has waited for up(quay-3) (s2)",
            "sets the number of quay-3 to 4, at its console (s3)",
            "sets the priority of quay-2 to 9, at the console of quay-1 (s4)",
            "disables port quay-1/w, at its console (s5)",
            "sets the side of quay-1/w to west, at its console (s6)",
            "clears the side of quay-1/w, at its console (s7)",
            "enables port quay-1/w, at its console (s8)",
            "applies the sides of quay-1 and quay-2, at each one's own console (s9)",
            "applies the sides of quay-1 and all that is stacked with it, at the console of quay-2 (s10)",
            "saves the settings of quay-1, at its console (s11)",
            "plugs in cable run (quay-2/e--quay-3/w) (s12)",
            "unplugs cable run (quay-2/e--quay-3/w) (s13)",
            "quay-3 completes its start",
            "has waited for up(quay-3) (s14)",
            "restarts quay-3, at its console (s15)",
            "switches off quay-3 (s16)",
            "checks off(quay-3) (is-off): it holds",
        });
}

TEST_CASE("a refusal says why") {
  const auto refusal = [](const std::string& steps, const QuayRules& rules = {}) {
    const Lines lines = told(quay(steps, rules));
    return lines.back();
  };
  CHECK(refusal("  - power-on: quay-1\n") == "tries to switch on quay-1 (s1): refused, quay-1 is not off");
  CHECK(refusal("  - power-off: quay-3\n") == "tries to switch off quay-3 (s1): refused, quay-3 is off already");
  CHECK(refusal("  - save: quay-3\n") ==
        "tries to save the settings of quay-3, at its console (s1): refused, quay-3 is off");
  CHECK(
      refusal("  - power-on: quay-3\n  - await: up(quay-3)\n  - set-number: {device: quay-3, to: 4, via: quay-1}\n") ==
      "tries to set the number of quay-3 to 4, at the console of quay-1 (s3): refused, quay-3 cannot be reached from "
      "quay-1");
  CHECK(refusal("  - set-number: {device: quay-2, to: 10}\n") ==
        "tries to set the number of quay-2 to 10, at its console (s1): refused, this platform takes 1 to 9");
  CHECK(refusal("  - set-priority: {device: quay-2, to: 256}\n") ==
        "tries to set the priority of quay-2 to 256, at its console (s1): refused, this platform takes 1 to 255");
  CHECK(refusal("  - plug: span\n") ==
        "tries to plug in cable span (quay-1/e--quay-2/w) (s1): refused, it is plugged in already");
  CHECK(refusal("  - unplug: run\n") ==
        "tries to unplug cable run (quay-2/e--quay-3/w) (s1): refused, it is not plugged in");
  QuayRules rules;
  rules.side_needs_disabled = "true";
  CHECK(refusal("  - set-side: {port: quay-1/w, side: west}\n", rules) ==
        "tries to set the side of quay-1/w to west, at its console (s1): refused, quay-1/w is enabled");
}

TEST_CASE("faults and starts in words") {
  const Model model = quay("  - save: quay-1\n");
  const auto happens = [&](Event event) {
    Moment moment;
    moment.event = event;
    return report::as_clause(model, moment);
  };
  CHECK(happens({Event::Kind::broke, 0}) == "cable span (quay-1/e--quay-2/w) breaks");
  CHECK(happens({Event::Kind::mended, 1}) == "cable run (quay-2/e--quay-3/w) works again");
  CHECK(happens({Event::Kind::crashed, 1}) == "quay-2 crashes and starts again");
  CHECK(happens({Event::Kind::started_late, 2}) == "quay-3 completes its start late, and by then leads itself");
  CHECK(happens({Event::Kind::omitted, 0}) ==
        "the operator forgets to save the settings of quay-1, at its console (s1)");
  CHECK(happens({Event::Kind::cold_start, 0}) == "power fails and returns, for all devices at once");
}

TEST_CASE("only what changed is told: settings that wait, and settings that take") {
  CHECK(changes_at(quay("  - set-number: {device: quay-2, to: 5}\n"), 1) ==
        Lines{"in force at its next start; until then 2"});
  CHECK(changes_at(quay("  - set-priority: {device: quay-2, to: 5}\n"), 1) ==
        Lines{"in force at its next start; until then 150"});
  CHECK(changes_at(quay("  - set-side: {port: quay-1/w, side: west}\n"), 1) == Lines{"in force once it is applied"});
  CHECK(changes_at(quay("  - set-side: {port: quay-1/w, side: west}\n  - apply: quay-1\n"), 2) ==
        Lines{"in force now: quay-1/w has side west"});
  CHECK(changes_at(quay("  - save: quay-1\n"), 1) == Lines{"nothing changes"});
  CHECK(changes_at(quay("  - save: quay-3\n"), 1).empty());  // refused, which the event says

  QuayRules at_once;
  at_once.number_takes = "at-once";
  at_once.priority_takes = "at-once";
  at_once.side_takes = "at-once";
  CHECK(changes_at(quay("  - set-number: {device: quay-2, to: 5}\n", at_once), 1) ==
        Lines{"in force at once, no longer 2"});
  CHECK(changes_at(quay("  - set-priority: {device: quay-2, to: 5}\n", at_once), 1).empty());
  CHECK(changes_at(quay("  - set-side: {port: quay-1/w, side: west}\n", at_once), 1).empty());
}

TEST_CASE("a number that settings are filed under takes them along (semantics 5.f)") {
  QuayRules filed;
  filed.settings_follow = "number";
  filed.number_takes = "at-once";
  const Lines changed = changes_at(quay("  - set-number: {device: quay-2, to: 5}\n", filed), 1);
  REQUIRE(changed.size() >= 2);
  CHECK(changed[0] == "in force at once, no longer 2");
  CHECK(changed[1] == "with its number, quay-2 falls back to factory settings");
  CHECK(changed[2] == "link span is lost");

  filed.number_takes = "at-restart";
  const Lines started = changes_at(
      quay("  - set-number: {device: quay-2, to: 5}\n  - restart: quay-2\n  - await: up(quay-2)\n", filed), 3);
  REQUIRE(started.size() >= 3);
  CHECK(started[0] == "quay-2 now has number 5, no longer 2");
  CHECK(started[1] == "with its number, quay-2 falls back to factory settings");
  CHECK(started[2] == "quay-2 now has priority 100, no longer 150");
}

TEST_CASE("what is not saved is told as lost when a start loses it") {
  const Model model = quay(
      "  - set-side: {port: quay-2/e, side: west}\n"
      "  - disable: quay-2/e\n"
      "  - restart: quay-2\n"
      "  - await: up(quay-2)\n");
  const Lines changed = changes_at(model, 4);
  REQUIRE(changed.size() >= 1);
  CHECK(changed[0] == "unsaved settings are lost: port quay-2/e is enabled and quay-2/e has side east");
}

TEST_CASE("links, contests and roles") {
  const Model joins = quay("  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: run\n  - await: follower(quay-3)\n");
  CHECK(changes_at(joins, 2) == Lines{"quay-3, alone, leads itself"});
  CHECK(changes_at(joins, 4) ==
        Lines{"link run forms",
              "quay-1 and quay-3 meet as leaders: quay-1 wins by its higher priority (200 against 100)",
              "quay-3 restarts"});
  CHECK(changes_at(joins, 5) == Lines{"link run forms", "quay-3 follows quay-1"});

  const Model splits = quay("  - unplug: span\n");
  CHECK(changes_at(splits, 1) == Lines{"link span is lost", "quay-2, alone, leads itself"});
  QuayRules restarting;
  restarting.orphans = "restart";
  CHECK(changes_at(quay("  - unplug: span\n", restarting), 1) ==
        Lines{"link span is lost", "quay-2, cut off from its primary, restarts"});
}

TEST_CASE("an election among several says what decided, where it is one thing") {
  std::string text = quay_text("  - unplug: span\n  - restart: quay-1\n");
  const std::string cable = "id: run, plugged: false";
  text.replace(text.find(cable), cable.size(), "id: run");
  const std::string off = "quay-3: {power: off, ";
  text.replace(text.find(off), off.size(), "quay-3: {");
  const std::string members = "members: [quay-1, quay-2]";
  text.replace(text.find(members), members.size(), "members: [quay-1, quay-2, quay-3]");
  CHECK(changes_at(model_of(text), 1) ==
        Lines{"link span is lost", "quay-2 is elected before quay-3 by its higher priority (150 against 100)",
              "quay-2 becomes primary, quay-3 follows quay-2"});
}

TEST_CASE("a device is held for a number, and the other one is named") {
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-number: {device: quay-3, to: 2}\n  - restart: quay-3\n"
      "  - plug: run\n  - await: up(quay-3)\n");
  const Lines changed = changes_at(model, 7);
  REQUIRE(!changed.empty());
  CHECK(changed.back() == "quay-3 is held: it has number 2, and so has quay-2");
}

// What broke, in one sentence, and the way out: one case for each cause of a breach.
#include <algorithm>

#include "report/advice.hpp"
#include "report/quay.hpp"
#include "semantics/world.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

struct Told {
  std::string why;
  std::vector<std::string> ways;
};

Told told(const Model& model, const Walk& walk) {
  REQUIRE(walk.breach.has_value());
  const semantics::World world(model);
  return {explain(model, *walk.breach, walk), report::ways_out(world, walk, *walk.breach)};
}

Told told(const Model& model, Property property, FaultBudget faults = {}, std::int64_t k = 0) {
  return told(model, refuted(model, property, faults, k));
}

const std::string goal = "goal: {stack: [quay-1, quay-2, quay-3], primary: quay-1, saved: true}\n";
const std::string joins = "  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: run\n  - await: follower(quay-3)\n";

}  // namespace

TEST_CASE("a lost contest names the winner, what decided, and the priority to set") {
  QuayRules rules;
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 220}\n"
      "  - restart: quay-3\n  - await: up(quay-3)\n  - plug: run\n",
      rules);
  const Told t = told(model, Property::primary_stays);
  CHECK(t.why ==
        "When the operator plugs in cable run (quay-2/e--quay-3/w) (s6), quay-1, which leads, restarts: "
        "quay-3, which leads too, wins the contest by its higher priority (220 against 200).");
  REQUIRE(t.ways.size() == 2);
  CHECK(t.ways[0] == "Set the priority of quay-3 below 200 and restart it, before it is linked with quay-1.");
  CHECK(t.ways[1] ==
        "Or let quay-3 start with its link already up: a device that is new to the stack follows, whatever its rank.");
  rules.priority_takes = "at-once";
  const Model at_once =
      quay("  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 220}\n  - plug: run\n",
           rules);
  CHECK(told(at_once, Property::primary_stays).ways[0] ==
        "Set the priority of quay-3 below 200, before it is linked with quay-1.");
}

TEST_CASE("the election key that decides is named, whichever it is") {
  QuayRules rules;
  const auto why = [&](const std::string& steps, const std::string& election) {
    rules.election = election;
    return told(quay(steps, rules), Property::primary_stays);
  };
  const std::string number =
      "  - set-number: {device: quay-1, to: 5}\n  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: run\n";
  rules.number_takes = "at-once";
  const Told by_number = why(number, "[number]");
  CHECK(by_number.why.find("wins the contest by its lower number (3 against 5)") != std::string::npos);
  CHECK(by_number.ways[0] == "Give quay-3 a number above 5, before it is linked with quay-1.");
}

TEST_CASE("a follower goes down with its primary") {
  QuayRules rules;
  rules.priority_takes = "at-once";
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 220}\n  - plug: run\n"
      "keep: [quay-2]\n",
      rules);
  CHECK(told(model, Property::members_stay)
            .why.find("quay-2 restarts with its primary quay-1: quay-3, which leads too, wins the contest") !=
        std::string::npos);
}

TEST_CASE("a member that is cut off restarts, where the platform says so") {
  QuayRules rules;
  rules.orphans = "restart";
  const Model model = quay("  - unplug: span\n", rules);
  const Told t = told(model, Property::members_stay);
  CHECK(t.why ==
        "When the operator unplugs cable span (quay-1/e--quay-2/w) (s1), quay-2 restarts, because it is cut "
        "off from quay-1, its primary, and this platform restarts such devices.");
  CHECK(t.ways == std::vector<std::string>{"Do s1 only while another path links quay-2 and quay-1."});
  const Told crash = told(quay("", rules), Property::members_stay, {.crashes = 1});
  CHECK(crash.ways == std::vector<std::string>{"On this platform members restart whenever their primary goes down. "
                                               "Where that is meant, leave them out of keep."});
}

TEST_CASE("a cut names both sides, and asks for another path") {
  const Told by_step = told(quay("  - unplug: span\n"), Property::no_split);
  CHECK(by_step.why ==
        "When the operator unplugs cable span (quay-1/e--quay-2/w) (s1), quay-1 and quay-2, members of "
        "the stack of quay-1, are cut off from each other.");
  CHECK(by_step.ways == std::vector<std::string>{"Do s1 only while another path links quay-1 and quay-2."});
  const Told by_fault = told(quay(""), Property::no_split, {.cable_breaks = 1});
  CHECK(by_fault.why.starts_with("When cable span (quay-1/e--quay-2/w) breaks, quay-1 and quay-2"));
  REQUIRE(by_fault.ways.size() == 1);
  CHECK(by_fault.ways[0].starts_with("This fault is harmless only while another path links quay-1 and quay-2"));
}

TEST_CASE("two leaders are both named") {
  const Told t = told(quay("  - disable: quay-2/w\n  - restart: quay-2\n  - await: up(quay-2)\nkeep: [quay-1, quay-2]\n"
                           "faults: {late-starts: 1}\n"),
                      Property::no_split, {.late_starts = 1});
  CHECK(t.why.find("quay-1 and quay-2") != std::string::npos);
}

TEST_CASE("a clash names the other device, and the step that numbered it") {
  const std::string steps =
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-number: {device: quay-3, to: 2}\n  - restart: quay-3\n"
      "  - plug: run\n  - await: up(quay-3)\n";
  const Told t = told(quay(steps), Property::no_clash);
  CHECK(t.why ==
        "When quay-3 completes its start, quay-3 is held out of every stack, because quay-2 has number 2 too.");
  CHECK(t.ways == std::vector<std::string>{"Choose another number in s3: quay-2 has 2 too."});

  QuayRules at_once;
  at_once.number_takes = "at-once";
  const Told same = told(quay("  - set-number: {device: quay-2, to: 1}\n", at_once), Property::no_clash);
  CHECK(same.why ==
        "When the operator sets the number of quay-2 to 1, at its console (s1), quay-1 and quay-2 are "
        "members of one stack and both have number 1.");
}

TEST_CASE("a step that takes a kept device down") {
  const Told t = told(quay("  - restart: quay-1\n"), Property::primary_stays);
  CHECK(t.why == "Step s1 takes down quay-1, which is to be kept and leads.");
  CHECK(t.ways == std::vector<std::string>{"Where this is meant, leave quay-1 out of keep; else take step s1 out."});
}

TEST_CASE("a refusal, and what would make the device take the step") {
  const auto refusal = [](const std::string& steps, const QuayRules& rules = {}) {
    return told(quay(steps, rules), Property::no_refusal);
  };
  const Told early = refusal("  - power-on: quay-3\n  - save: quay-3\n");
  CHECK(early.why == "Step s2 (to save the settings of quay-3, at its console) is refused: quay-3 is still starting.");
  CHECK(early.ways == std::vector<std::string>{"Put `await: up(quay-3)` before s2."});
  CHECK(refusal("  - save: quay-3\n").ways == std::vector<std::string>{"Switch quay-3 on before s1."});
  CHECK(refusal("  - set-number: {device: quay-2, to: 12}\n").ways ==
        std::vector<std::string>{"Ask for a value from 1 to 9."});
  CHECK(refusal("  - power-on: quay-3\n  - await: up(quay-3)\n  - enable: {port: quay-3/e, via: quay-1}\n").ways ==
        std::vector<std::string>{"Use the console of quay-3 itself, or wait until `together(quay-3, quay-1)`."});
  CHECK(refusal("  - plug: span\n").ways == std::vector<std::string>{"Take s1 out, or do it at another place."});
  QuayRules locked;
  locked.side_needs_disabled = "true";
  CHECK(refusal("  - set-side: {port: quay-1/w, side: west}\n", locked).ways ==
        std::vector<std::string>{"Disable quay-1/w before s1, and enable it afterwards."});
}

TEST_CASE("a procedure that is stuck says what it waits for, what is false, and why no link forms") {
  const Told t = told(quay("  - clear-side: quay-2/e\n  - apply: quay-2\n" + joins + goal), Property::reaches_goal);
  CHECK(t.why ==
        "The procedure is stuck for ever: s6 waits for follower(quay-3), but quay-3 leads itself: cable run "
        "forms no link (port quay-2/e has no side).");
  CHECK(t.ways == std::vector<std::string>{"Set a side on quay-2/e and apply it."});

  const Told unapplied = told(
      quay("  - clear-side: quay-2/e\n  - apply: quay-2\n  - set-side: {port: quay-2/e, side: east}\n" + joins + goal),
      Property::reaches_goal);
  CHECK(unapplied.why.find("side east of port quay-2/e is set but not applied") != std::string::npos);
  CHECK(unapplied.ways == std::vector<std::string>{"Apply quay-2 after the side of quay-2/e is set."});

  const Told disabled = told(quay("  - disable: quay-2/e\n" + joins + goal), Property::reaches_goal);
  CHECK(disabled.why.find("(port quay-2/e is disabled)") != std::string::npos);
  CHECK(disabled.ways == std::vector<std::string>{"Enable quay-2/e."});

  QuayRules equal;
  equal.software = "must-match";
  CHECK(told(quay(joins + goal, equal), Property::reaches_goal).why.find("quay-2 runs software 1, quay-3 runs 2") !=
        std::string::npos);
}

TEST_CASE("settings lost at a start are to be saved before it") {
  const Told t = told(quay("  - power-on: quay-3\n  - await: up(quay-3)\n  - clear-side: quay-3/w\n  - save: quay-3\n"
                           "  - set-side: {port: quay-3/w, side: west}\n  - restart: quay-3\n  - await: up(quay-3)\n"
                           "  - plug: run\n  - await: follower(quay-3)\n" +
                           goal),
                      Property::reaches_goal);
  CHECK(t.ways == std::vector<std::string>{"Save quay-3 before event 8: its start loses what was set on quay-3/w."});
}

TEST_CASE("a number that waits for a start") {
  const Told t = told(quay("  - set-number: {device: quay-2, to: 7}\n  - await: number(quay-2) = 7\n"
                           "goal: {stack: [quay-1, quay-2]}\n"),
                      Property::reaches_goal);
  CHECK(t.why ==
        "The procedure is stuck for ever: s2 waits for number(quay-2) = 7, but the number of quay-2 is 2 until "
        "its next start, then 7.");
  CHECK(t.ways == std::vector<std::string>{"Restart quay-2: number 7 waits for its next start."});
}

TEST_CASE("a check that fails is the end of the procedure") {
  const Told t =
      told(quay("  - check: up(quay-3) or priority(quay-2) > 180\n  - save: quay-1\n" + goal), Property::reaches_goal);
  CHECK(t.why ==
        "Check s1 fails and the procedure stops there: up(quay-3) or priority(quay-2) > 180 does not hold: "
        "quay-3 is off; the priority of quay-2 is 150.");
}

TEST_CASE("a goal that is missed says which part") {
  const auto missed = [](const std::string& rest) { return told(quay(rest), Property::reaches_goal); };
  CHECK(missed("  - save: quay-1\n" + goal).why == "The procedure ends and its goal is missed: quay-3 is off.");
  const Told apart = missed("  - power-on: quay-3\n  - await: up(quay-3)\n" + goal);
  CHECK(apart.why ==
        "The procedure ends and its goal is missed: quay-1 and quay-3 are not together, since no cable "
        "between them is plugged in.");
  const Told wrong = missed("  - save: quay-1\ngoal: {stack: [quay-1, quay-2], primary: quay-2}\n");
  CHECK(wrong.why == "The procedure ends and its goal is missed: quay-1 leads, not quay-2.");
  const Told unsaved = missed("  - disable: quay-1/w\ngoal: {stack: [quay-1, quay-2], saved: true}\n");
  CHECK(unsaved.why == "The procedure ends and its goal is missed: not saved on quay-1: port quay-1/w disabled.");
  CHECK(unsaved.ways == std::vector<std::string>{"Add `save: quay-1` after the last change."});
  const Told pending =
      missed("  - set-number: {device: quay-2, to: 7}\ngoal: {stack: [quay-1, quay-2], saved: true}\n");
  CHECK(pending.why ==
        "The procedure ends and its goal is missed: not saved on quay-2: number 7 (due at the next start).");
  CHECK(pending.ways == std::vector<std::string>{"Restart quay-2: a setting waits for its next start."});
  const Told where = missed("  - save: quay-1\ngoal: {stack: [quay-1, quay-2], where: number(quay-2) = 5}\n");
  CHECK(where.why ==
        "The procedure ends and its goal is missed: number(quay-2) = 5 does not hold: the number of quay-2 is 2.");
}

TEST_CASE("a power cut, and what it loses") {
  const Told t = told(quay("  - clear-side: quay-2/e\n  - save: quay-2\n  - set-side: {port: quay-2/e, side: east}\n" +
                           joins + "goal: {stack: [quay-1, quay-2, quay-3]}\n"),
                      Property::survives_cold_start);
  CHECK(t.why ==
        "When power has failed and returned, the goal is missed: quay-1 and quay-3 are not together, since "
        "cable run forms no link (port quay-2/e has no side).");
  CHECK(t.ways == std::vector<std::string>{"Save quay-2 before event 10: its start loses what was set on quay-2/e."});
}

TEST_CASE("cables lost at the end are named") {
  const Told t = told(quay("  - save: quay-1\ngoal: {stack: [quay-1, quay-2]}\n"), Property::tolerates_loss, {}, 1);
  CHECK(t.why == "With span lost, quay-1 and quay-2 are not together.");
  REQUIRE(t.ways.size() == 1);
  CHECK(t.ways[0].starts_with("Give quay-1 and quay-2 one more path"));
}

TEST_CASE("a side that leads to two neighbours is told, with the cable to pull") {
  QuayRules rules;
  rules.side_leads_to = "one-neighbour";
  const std::string text = quay_text(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: run\n"
      "  - await: follower(quay-3)\n" +
          goal,
      rules);
  std::string two = text;
  const std::string cable = "    quay-2/e--quay-3/w: {id: run, plugged: false}\n";
  two.replace(two.find(cable), cable.size(), "    quay-1/e--quay-3/w: {id: run, plugged: false}\n");
  // quay-1's port e already holds span, so that a second port on its east side is needed.
  const std::string ports = "ports: {w: {}, e: {side: east}}}\n    quay-2";
  two.replace(two.find(ports), ports.size(), "ports: {w: {}, e: {side: east}, e2: {side: east}}}\n    quay-2");
  two.replace(two.find("quay-1/e--quay-3/w"), 18, "quay-1/e2--quay-3/w");
  const Model model = model_of(two);
  const Walk walked = refuted(model, Property::reaches_goal);
  CHECK(told(model, walked).why.find("side east of quay-1 leads to quay-2 and quay-3 at once") != std::string::npos);
  const auto ways = told(model, walked).ways;
  CHECK(std::any_of(ways.begin(), ways.end(), [](const std::string& way) {
    return way == "Unplug span before run is up: side east of quay-1 may lead to one neighbour.";
  }));
}

TEST_CASE("a stack that is too large") {
  std::string text = quay_text(joins + "goal: {stack: [quay-1, quay-2]}\n");
  text.insert(text.find("    factory:"), "    max-members: 2\n");
  const Model model = model_of(text);
  CHECK(told(model, Property::reaches_goal).why ==
        "The stack around quay-1 ends up with 3 members, and this platform allows 2.");
}

TEST_CASE("a forgotten step asks for a check") {
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 220}\n  - restart: quay-3\n"
      "  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 50}\n  - restart: quay-3\n  - await: up(quay-3)\n"
      "  - plug: run\n");
  const Told t = told(model, Property::primary_stays, {.omissions = 1});
  CHECK(std::any_of(t.ways.begin(), t.ways.end(),
                    [](const std::string& way) { return way.starts_with("Put a check behind step s"); }));
}

TEST_CASE("what breaks at the very start is told so") {
  std::string text = quay_text("  - save: quay-1\n");
  const std::string numbered = "quay-2: {number: 2";
  text.replace(text.find(numbered), numbered.size(), "quay-2: {number: 1");
  const std::string stack = "  stack: {primary: quay-1, members: [quay-1, quay-2]}\n";
  text.replace(text.find(stack), stack.size(), "");
  const Model model = model_of(text + "keep: [quay-1]\n");
  const Told t = told(model, Property::no_clash);
  CHECK(t.why == "At the start, before any event, quay-1 and quay-2 are members of one stack and both have number 1.");
}

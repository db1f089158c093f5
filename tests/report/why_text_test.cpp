// Why a verdict is what it is, for a person and for a program.
#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

#include "report/layout.hpp"
#include "report/quay.hpp"
#include "report/repairs.hpp"
#include "support/engines.hpp"

using namespace cairn;
using namespace cairn::test;
using Json = nlohmann::ordered_json;

namespace {

const std::string joins =
    "  - power-on: quay-3\n  - await: {condition: up(quay-3), id: once}\n  - await: {condition: up(quay-3), id: "
    "twice}\n"
    "  - set-number: {device: quay-3, to: 3}\n";

Model asking(const std::string& properties) {
  return quay(joins + "properties: [" + properties + "]\n");
}

std::string told(const Model& model, const Why& answer) {
  return flowing(render_why_text(model, answer));
}

// Without a proof by facts, so that what is idle is told from what is needed alone.
Why answered(const Model& model) {
  return why(model, test::exploring()).value();
}

StepId step(std::size_t place) {
  return StepId(place);
}

}  // namespace

TEST_CASE("it begins with the verdicts, and ends with what to be careful of") {
  const Model model = asking("no-refusal");
  const std::string text = render_why_text(model, answered(model));
  CHECK(text.starts_with("PROVED       At the quay\n\n  proved     no-refusal"));
  CHECK(flowing(text).ends_with("and follow your change control and safety rules."));
}

TEST_CASE("nothing is wider than the page") {
  for (const char* properties : {"no-refusal", "primary-stays, no-clash"}) {
    const Model model = asking(properties);
    std::istringstream lines(render_why_text(model, answered(model)));
    for (std::string line; std::getline(lines, line);) {
      CAPTURE(line);
      CHECK(report::width_of(line) <= report::page_width);
    }
  }
}

TEST_CASE("idle parts are listed, steps before orderings, and awaits of which one has to stay") {
  const Model model = asking("no-refusal");
  const std::string text = told(model, answered(model));
  CHECK(has(text, "Idle s1, once, twice, s4, s1 before once, once before twice, twice before s4."));
  CHECK(has(text,
            "One of once or twice has to stay. Without both: no-refusal is refuted by 2 events, no fault among "
            "them. Step s4 (to set the number of quay-3 to 3, at its console) is refused: quay-3 is still "
            "starting."));
}

TEST_CASE("facts come with what makes them true, and what the proof uses is told") {
  const Model model = asking("no-refusal");
  const Why why_proved = why(model).value();
  const std::string text = told(model, why_proved);
  CHECK(has(text, "The facts that the proofs stand on"));
  CHECK(has(text, "or needs beside the other facts."));
  CHECK(has(text, "no-refusal still holds, by another proof."));
  const Json json = Json::parse(render_why_json(model, why_proved));
  const Json& facts = json["properties"][0]["facts"];
  REQUIRE(facts.size() == why_proved.report.properties.front().settled.facts.size());
  const bool one_rests_on_s1 = std::any_of(facts.begin(), facts.end(), [](const Json& fact) {
    return std::any_of(fact["parts"].begin(), fact["parts"].end(), [](const Json& part) {
      return part == Json{{"part", "step"}, {"id", "s1"}};
    });
  });
  CHECK(one_rests_on_s1);
}

TEST_CASE("a needed step says what breaks without it, and its orderings what breaks before") {
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-number: {device: quay-3, to: 3}\nproperties: "
      "[no-refusal]\n");
  const std::string text = told(model, answered(model));
  CHECK(has(text, "s2 wait for up(quay-3) without it no-refusal is refuted by 2 events, no fault among them."));
  CHECK(has(text, "s3 set the number of quay-3 to 3, at its console before s2 no-refusal is refuted by 2 events"));
  CHECK(has(text, "Idle s1, s3, s1 before s2."));
}

TEST_CASE("of several properties the first is told in full, the others by name") {
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-side: {port: quay-3/w, side: west}\n  - plug: run\n"
      "  - await: follower(quay-3)\n"
      "goal: {stack: [quay-1, quay-2, quay-3]}\nproperties: [reaches-goal, survives-cold-start, no-refusal]\n");
  const std::string text = told(model, answered(model));
  CHECK(has(text, "s1 switch on quay-3 without it reaches-goal is refuted by"));
  CHECK(has(text, "survives-cold-start is proved of nothing: no run is complete."));
}

TEST_CASE("parts that a proof uses, and what is unknown") {
  const Model model = asking("no-refusal");
  Why answer = answered(model);
  answer.properties[0].one_of.clear();
  answer.properties[0].parts[0].standing = Standing::used;
  LeftOut& last = answer.properties[0].parts[1];
  last.standing = Standing::unknown;
  last.outcome.verdict = Verdict::undecided;
  last.outcome.reason = Reason::time;
  const std::string text = told(model, answer);
  CHECK(has(text, "s1 switch on quay-3 without it no-refusal still holds, by another proof."));
  CHECK(has(text, "Unknown once: the time limit was met first."));
}

TEST_CASE("rules that decide, and those that do not") {
  // A follower cut off from its primary goes on where orphans do.
  const Model model = quay("  - power-on: quay-3\nfaults: {crashes: 1}\nproperties: [members-stay]\n");
  const std::string text = told(model, answered(model));
  CHECK(has(text,
            "With orphans: restart members-stay is refuted by 1 event, a fault. When quay-1 crashes and starts "
            "again, quay-2 restarts, because it is cut off from quay-1"));
  CHECK(has(text, "No verdict would be another with number-takes: at-once;"));
}

TEST_CASE("what some properties leave unknown, and rules of which nothing is known") {
  const Model model = asking("no-refusal, no-clash");
  Why answer = answered(model);
  PropertyVerdict& unknown = answer.properties[1].parts[1].outcome;
  answer.properties[1].parts[1].standing = Standing::unknown;
  unknown.verdict = Verdict::undecided;
  unknown.reason = Reason::contradiction;
  unknown.contradiction = "a run need not end";
  answer.rules[0].turned = {unknown};
  answer.rules[1].turned = {unknown};
  answer.rules[1].turned[0].reason = Reason::memory;
  const std::string text = told(model, answer);
  CHECK(has(text, "without it no-clash is undecided: cairn contradicts itself: a run need not end."));
  CHECK(has(text, "With number-takes: at-once no-clash is undecided: cairn contradicts itself"));
  CHECK(has(text, "A limit was met before it was known for priority-takes: at-once."));
}

TEST_CASE("where no change avoids anything, that is all that is told") {
  // What breaks it are faults alone.
  const Model model = quay("  - power-on: quay-3\nfaults: {cable-breaks: 1}\nproperties: [no-split]\n");
  const std::string text = told(model, answered(model));
  CHECK(has(text, "No change of one step's place, presence or number avoids any of the refutations."));
  CHECK_FALSE(has(text, "put to the proof"));
}

TEST_CASE("changes in words") {
  const Model model = asking("no-refusal");
  const Change value{Change::Kind::value, step(3), 4, {}, false};
  const Change behind{Change::Kind::move, step(0), 0, step(3), true};
  const Change before{Change::Kind::move, step(3), 0, step(0), false};
  const Change remove{Change::Kind::remove, step(1), 0, {}, false};
  CHECK(report::changes_in_words(model, {value}) == "set s4 to 4");
  CHECK(report::changes_in_words(model, {behind, remove}) == "move s1 behind s4 and leave out once");
  CHECK(report::changes_in_words(model, {before}) == "move s4 before s1");
}

TEST_CASE("changes that prove everything stand by the step, values, places and its absence together") {
  const Model model = quay(
      "  - power-on: quay-3\n  - set-number: {device: quay-3, to: 3}\n  - await: up(quay-3)\n"
      "properties: [no-refusal]\n");
  const std::string text = told(model, answered(model));
  CHECK(has(text,
            "Everything asked is proved with any one of these changes: s2 set the number of quay-3 to 3, at its "
            "console Move it behind s3; leave it out."));
}

TEST_CASE("where nothing proves everything, what proves a part is told with its price") {
  const Model model = quay("  - unplug: span\n  - check: off(quay-1)\nproperties: [no-split, no-refusal, no-clash]\n");
  Why answer = answered(model);
  REQUIRE(answer.report.verdict() == Verdict::refuted);
  for (Repair& repair : answer.repairs.found) repair.all_proved = false;
  const std::string text = told(model, answer);
  CHECK(has(text, "No change of one step's place, presence or number proves everything asked, nor do two of them."));
  CHECK(has(text, "a part of it, at a price: - Move s1 behind s2: no-split is proved."));
}

TEST_CASE("pairs, and an effort that was used up") {
  const Model model = quay("  - unplug: span\nproperties: [no-split]\n");
  Why answer = answered(model);
  Repair pair = answer.repairs.found.front();
  pair.all_proved = true;
  pair.changes.push_back(pair.changes.front());
  answer.repairs.found = {pair};
  answer.repairs.all_tried = false;
  answer.repairs.tried = 7;
  const std::string text = told(model, answer);
  CHECK(has(text,
            "No change of one step proves everything asked. These two together do: - Leave out s1 and leave out "
            "s1."));
  CHECK(has(text, "7 changed procedures were put to the proof, not all that there are."));
}

TEST_CASE("the JSON has every part of every proved property, and the repairs where something is refuted") {
  const Model model = asking("no-refusal, no-clash");
  const std::string text = render_why_json(model, answered(model));
  CHECK(!has(text, "\n"));
  const Json json = Json::parse(text);
  CHECK(json["schema"] == "cairn/why/1");
  CHECK(json["verdict"] == "proved");
  REQUIRE(json["properties"].size() == 2);
  const Json& parts = json["properties"][0]["parts"];
  REQUIRE(parts.size() == 7);
  CHECK(parts[0] == Json::parse(R"({"part": "step", "id": "s1", "standing": "idle"})"));
  CHECK(parts[2] == Json::parse(R"({"part": "ordering", "first": "s1", "then": "once", "standing": "idle"})"));
  CHECK(json["properties"][0]["one-of"] == Json::parse(R"([{"awaits": ["once", "twice"], "standing": "needed",
                         "events": [{"event": "step", "id": "s1"}, {"event": "step", "id": "s4"}]}])"));
  CHECK(json["rules"].size() == 12);
  CHECK_FALSE(json.contains("repairs"));

  const Model wrong = quay("  - unplug: span\nproperties: [no-split]\n");
  const Json mended = Json::parse(render_why_json(wrong, answered(wrong)));
  CHECK(mended["repairs"]["found"] ==
        Json::parse(R"([{"changes": [{"change": "remove", "id": "s1"}], "all-proved": true,
                         "properties": [{"name": "no-split", "verdict": "proved"}]}])"));
  CHECK(mended["repairs"]["all-tried"] == true);
  CHECK_FALSE(mended["properties"][0].contains("parts"));
}

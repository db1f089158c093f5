// What idles and what protects, for a person and for a program.
#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

#include "report/layout.hpp"
#include "report/quay.hpp"
#include "support/engines.hpp"

using namespace cairn;
using namespace cairn::test;
using Json = nlohmann::ordered_json;

namespace {

// s2 protects s3, which a switch that is still starting would refuse; what comes after idles.
const std::string joins =
    "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-number: {device: quay-3, to: 3}\n  - await: up(quay-3)\n"
    "properties: [no-refusal, no-clash]\n";
const std::string two_refutations =
    "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 90}\n  - save: quay-3\n"
    "goal: {stack: [quay-1, quay-2], where: priority(quay-3) = 90}\nproperties: [no-refusal, reaches-goal]\n";

DropOne answered(const Model& model) {
  return drop_one(model, test::exploring()).value();
}

std::string told(const Model& model, const DropOne& answer) {
  return flowing(render_drop_one_text(model, answer));
}

void make_unknown(LeftOut& proof, Reason reason) {
  proof.standing = Standing::unknown;
  proof.outcome.verdict = Verdict::undecided;
  proof.outcome.events.clear();
  proof.outcome.reason = reason;
}

}  // namespace

TEST_CASE("the idle parts come first, each with its line and what it says, steps before orderings") {
  const Model model = quay(joins);
  const std::string text = told(model, answered(model));
  CHECK(has(text,
            "Left out one at a time: every await, check, save and ordering Each time all of the above is asked "
            "again. Of an ordering that is left out either step may come first. Lines are those of quay.yaml."));
  CHECK(has(text,
            "Idle: without any one of these, all that was asked again is still proved s4 line 31: wait for up(quay-3) "
            "s1 before s2 "
            "lines 28 and 29: switch on quay-3, and then wait for up(quay-3) s3 before s4"));
  CHECK(text.find("Idle: without") < text.find("Protecting: without"));
}

TEST_CASE("what protects comes with a shortest refutation, event by event and in words") {
  const Model model = quay(joins);
  CHECK(
      has(told(model, answered(model)),
          "s2 line 29: wait for up(quay-3) no-refusal is refuted by 2 events, no fault among them: s1, s3. Step s3 (to "
          "set the number of quay-3 to 3, at its console) is refused: quay-3 is still starting."));
  const Model both = quay(two_refutations, {.priority_takes = "at-once"});
  CHECK(has(told(both, answered(both)), "Also refuted: reaches-goal."));
}

TEST_CASE("faults and the power cut have their place in a run") {
  const Model model = quay(
      "  - check: up(quay-2)\n  - set-priority: {device: quay-1, to: 201}\n  - save: quay-1\n"
      "goal: {stack: [quay-1, quay-2], where: priority(quay-1) = 201}\nproperties: [survives-cold-start]\n",
      {.priority_takes = "at-once"});
  CHECK(has(told(model, answered(model)), "by a power cut after 2 events: s1, s2, the power cut."));
}

TEST_CASE("it ends with the count, the idle by name and line, and what idle does not mean") {
  const Model model = quay(joins);
  const std::string text = told(model, answered(model));
  CHECK(has(text,
            "In short Left out 5 parts: 2 awaits and 3 orderings. Idle 3: s4 (line 31), s1 before s2 (lines 28 and 29) "
            "and s3 before s4 (lines 30 and 31). Protecting 2."));
  CHECK(has(text, "two may stand in for each other. After taking one out, ask again."));
  CHECK(has(text, "under the faults allowed here (none)."));
  CHECK(text.ends_with("and follow your change control and safety rules."));
}

TEST_CASE("no line where the model was not read from a file") {
  Model model = quay(joins);
  model.files.clear();
  for (Step& step : model.procedure.steps) step.span.line = 0;
  const std::string text = told(model, answered(model));
  CHECK(has(text, "all that was asked again is still proved s4 wait for up(quay-3) s1 before s2 switch on quay-3"));
  CHECK_FALSE(has(text, "Lines are those"));
  CHECK(Json::parse(render_drop_one_json(model, answered(model)))["drop-one"][0]["lines"] == Json::array());
}

TEST_CASE("what is undecided alike is told together, with the reason, and is no idle part") {
  const Model model = quay(joins);
  DropOne answer = answered(model);
  for (const std::size_t i : {0, 1}) {
    for (LeftOut& proof : answer.dropped[i].proofs) make_unknown(proof, Reason::time);
  }
  const std::string text = told(model, answer);
  CHECK(has(text,
            "Undecided: whether something is lost without these is not known s2, s1 before s2 no-refusal and no-clash "
            "are undecided: the time limit was met first."));
  CHECK(has(text, "Idle 2: s4 (line 31) and s3 before s4 (lines 30 and 31). Protecting 1. Undecided 2: s2 (line 29)"));
}

TEST_CASE("where one property is lost, that another is undecided is told beside it") {
  const Model model = quay(joins);
  DropOne answer = answered(model);
  REQUIRE(answer.dropped.front().standing() == Standing::needed);
  make_unknown(answer.dropped.front().proofs.back(), Reason::memory);
  CHECK(has(told(model, answer), "no-clash is undecided: the memory limit was met first."));
}

TEST_CASE("nothing idle is said in so many words") {
  const Model model = quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-number: {device: quay-3, to: 3}\nproperties: "
      "[no-refusal]\n");
  DropOne answer = answered(model);
  std::erase_if(answer.dropped, [](const Dropped& dropped) { return dropped.standing() == Standing::idle; });
  const std::string text = told(model, answer);
  CHECK(has(text, "Left out 2 parts: 1 await and 1 ordering. Idle None. Protecting 2."));
  CHECK_FALSE(has(text, "two may stand in for each other"));
  make_unknown(answer.dropped.front().proofs.front(), Reason::interrupted);
  CHECK(has(told(model, answer), "Idle None known. Protecting 1. Undecided 1: s2 (line 29)."));
}

TEST_CASE("what is refuted in the procedure itself was not asked, and where all is, nothing was") {
  const Model some = quay("  - unplug: span\n  - await: up(quay-1)\nproperties: [no-split, no-clash]\n");
  const std::string text = told(some, answered(some));
  CHECK(has(text, "Each time no-clash is asked again."));
  CHECK(has(text, "no-split is refuted with every part in its place, and was not asked again."));
  CHECK(has(text, "under the faults allowed here (none). It says nothing of no-split."));
  const Model all = quay("  - unplug: span\n  - await: up(quay-1)\nproperties: [no-split]\n");
  CHECK(has(told(all, answered(all)), "Nothing was: no property is proved here"));
  CHECK_FALSE(has(told(all, answered(all)), "Left out 0"));
}

TEST_CASE("what holds of nothing anyway is told to be so") {
  const Model model = quay("  - await: off(quay-1)\ngoal: {stack: [quay-1]}\nproperties: [survives-cold-start]\n");
  CHECK(has(told(model, answered(model)), "survives-cold-start is proved of nothing with every part in its place."));
}

TEST_CASE("what is undecided in the procedure itself was not asked") {
  const Model model = quay(joins);
  ProveOptions options = test::exploring();
  options.limits.seconds = 0;
  const std::string text = told(model, drop_one(model, options).value());
  CHECK(has(text, "no-refusal and no-clash are undecided with every part in its place, and were not asked again."));
}

TEST_CASE("a procedure without protections") {
  const Model model = quay("  - power-on: quay-3\nproperties: [no-clash]\n");
  CHECK(has(told(model, answered(model)), "The procedure has none of them."));
}

TEST_CASE("of a contradiction nothing but the contradiction is told") {
  const Model model = quay(joins);
  DropOne answer = answered(model);
  PropertyVerdict& p = answer.report.properties.front();
  p.verdict = Verdict::undecided;
  p.reason = Reason::contradiction;
  p.contradiction = "a run need not end";
  CHECK_FALSE(has(told(model, answer), "Left out"));
}

TEST_CASE("nothing is wider than the page") {
  const Model model = quay(joins);
  std::istringstream lines(render_drop_one_text(model, answered(model)));
  for (std::string line; std::getline(lines, line);) {
    CAPTURE(line);
    CHECK(report::width_of(line) <= report::page_width);
  }
}

TEST_CASE("the JSON has one entry a part, and of each property that is proved what becomes of it") {
  const Model model = quay(two_refutations, {.priority_takes = "at-once"});
  const std::string text = render_drop_one_json(model, answered(model));
  CHECK(!has(text, "\n"));
  const Json json = Json::parse(text);
  CHECK(json["schema"] == "cairn/why/1");
  CHECK(json["verdict"] == "proved");
  CHECK(json["properties"].size() == 2);
  CHECK_FALSE(json["properties"][0].contains("parts"));
  CHECK_FALSE(json.contains("rules"));
  const Json& parts = json["drop-one"];
  REQUIRE(parts.size() == 5);
  CHECK(parts[0] == Json::parse(R"({"part": "await", "id": "s2", "lines": [29], "standing": "needed", "properties": [
      {"name": "no-refusal", "standing": "needed", "events": [{"event": "step", "id": "s1"}, {"event": "step", "id": "s3"}]},
      {"name": "reaches-goal", "standing": "needed", "events": [{"event": "step", "id": "s1"},
       {"event": "step", "id": "s3"}, {"event": "step", "id": "s4"}, {"event": "started", "device": "quay-3"}]}]})"));
  CHECK(parts[1] == Json::parse(R"({"part": "ordering", "first": "s1", "then": "s2", "lines": [28, 29],
      "standing": "idle", "properties": [{"name": "no-refusal", "standing": "idle"},
                                         {"name": "reaches-goal", "standing": "idle"}]})"));
  CHECK(parts[3]["part"] == "save");
}

TEST_CASE("the JSON of why has no such key, and says step of a save") {
  const Model model = quay(two_refutations, {.priority_takes = "at-once"});
  const Json json = Json::parse(render_why_json(model, why(model, test::exploring()).value()));
  CHECK_FALSE(json.contains("drop-one"));
  const Json& parts = json["properties"][0]["parts"];
  CHECK(std::ranges::find(parts, Json("save"), [](const Json& part) { return part["part"]; }) == parts.end());
}

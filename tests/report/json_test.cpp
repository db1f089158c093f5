// The verdict as JSON, against docs/format.md and a JSON library (RFC 8259).
#include <nlohmann/json.hpp>

#include "report/quay.hpp"

using namespace cairn;
using namespace cairn::test;
using Json = nlohmann::ordered_json;

namespace {

std::vector<std::string> keys(const Json& json) {
  std::vector<std::string> names;
  for (const auto& [key, value] : json.items()) names.push_back(key);
  return names;
}

using Keys = std::vector<std::string>;

Model outranked() {
  return quay(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 220, id: raise}\n"
      "  - restart: quay-3\n  - await: up(quay-3)\n  - plug: run\n"
      "goal: {stack: [quay-1, quay-2, quay-3]}\n"
      "properties: [tolerates-loss: 1, primary-stays, no-split]\n");
}

}  // namespace

TEST_CASE("one document on one line, keys in the order of the format") {
  const Model model = outranked();
  const std::string text = render_json(model, proved(model));
  CHECK(text.find('\n') == std::string::npos);
  const Json json = Json::parse(text);
  CHECK(keys(json) == Keys{"schema", "procedure", "verdict", "faults", "properties", "findings"});
  CHECK(json["schema"] == "cairn/verdict/1");
  CHECK(json["procedure"] == "At the quay");
  CHECK(json["verdict"] == "refuted");
  CHECK(keys(json["faults"]) == Keys{"cable-breaks", "crashes", "omissions", "late-starts", "mends"});
  REQUIRE(json["properties"].size() == 3);
  // In the order asked for; an entry of tolerates-loss also gives k.
  CHECK(json["properties"][0]["name"] == "tolerates-loss");
  CHECK(json["properties"][0]["k"] == 1);
  CHECK(json["properties"][1]["name"] == "primary-stays");
  CHECK(!json["properties"][1].contains("k"));
  CHECK(json["properties"][2]["verdict"] == "proved");
  CHECK(json["properties"][2]["settled"]["explored"].is_number_unsigned());
}

TEST_CASE("events are told by name, a step by its id where it has one") {
  const Model model = outranked();
  const Json events = Json::parse(render_json(model, proved(model)))["properties"][1]["events"];
  REQUIRE(events.size() == 8);
  CHECK(events[0] == Json{{"event", "step"}, {"id", "s1"}});
  CHECK(events[1] == Json{{"event", "started"}, {"device", "quay-3"}});
  CHECK(events[3] == Json{{"event", "step"}, {"id", "raise"}});
}

TEST_CASE("every kind of event has its name and its place") {
  const Model model = quay("  - save: quay-1\n");
  Report report;
  PropertyVerdict p;
  p.verdict = Verdict::refuted;
  p.events = {{Event::Kind::step, 0},         {Event::Kind::started, 2},   {Event::Kind::broke, 0},
              {Event::Kind::mended, 1},       {Event::Kind::crashed, 1},   {Event::Kind::omitted, 0},
              {Event::Kind::started_late, 2}, {Event::Kind::cold_start, 0}};
  report.properties = {p};
  const Json events = Json::parse(render_json(model, report))["properties"][0]["events"];
  CHECK(events.dump() ==
        R"([{"event":"step","id":"s1"},{"event":"started","device":"quay-3"},{"event":"broke","cable":"span"},)"
        R"({"event":"mended","cable":"run"},{"event":"crashed","device":"quay-2"},{"event":"omitted","id":"s1"},)"
        R"({"event":"started-late","device":"quay-3"},{"event":"cold-start"}])");
}

TEST_CASE("a proof of nothing, and a question left open, say why") {
  const Model model = quay("  - save: quay-1\n");
  Report report;
  report.properties.resize(2);
  report.properties[0].verdict = Verdict::proved;
  report.properties[0].vacuous = "no run is complete";
  report.properties[0].explored = 7;
  report.properties[1].reason = Reason::memory;
  const Json json = Json::parse(render_json(model, report));
  CHECK(json["verdict"] == "undecided");
  CHECK(
      json["properties"][0].dump() ==
      R"({"name":"no-split","verdict":"proved","vacuous":"no run is complete","settled":{"by":"states","explored":7,"confirmed":false}})");
  CHECK(json["properties"][1].dump() == R"({"name":"no-split","verdict":"undecided","reason":"memory"})");
}

TEST_CASE("a proof by states says whether they were reduced") {
  const Model model = quay("  - save: quay-1\n");
  Report report = proved(model, asking(Property::no_split));
  const auto settled = [&] { return Json::parse(render_json(model, report))["properties"][0]["settled"]; };
  report.properties[0].settled = {};
  CHECK_FALSE(settled().contains("reduced"));
  report.properties[0].settled.reduced = true;
  report.properties[0].settled.confirmed = true;
  CHECK(settled()["reduced"] == true);
  CHECK(settled()["confirmed"] == true);
}

TEST_CASE("times stand in the document only where they are asked for") {
  const Model model = quay("  - save: quay-1\n");
  Report report = proved(model, asking(Property::no_split));
  report.timing = {.exploring = 1, .replaying = 2, .solving = 3, .confirming = 4};
  CHECK(render_json(model, report) == render_json(model, report));
  CHECK(!Json::parse(render_json(model, report)).contains("timing"));
  CHECK(Json::parse(render_json(model, report, true))["timing"].dump() ==
        R"({"exploring":1.0,"replaying":2.0,"solving":3.0,"confirming":4.0})");
}

TEST_CASE("strings are escaped as RFC 8259, section 7 demands, and stay UTF-8") {
  Model model = quay("  - save: quay-1\n");
  model.procedure.title = "tab\t quote\" \\ \x1b quai \u00e0";
  CHECK(render_json(model, {}).find(R"(tab\t quote\" \\ \u001b quai à)") != std::string::npos);
  model.procedure.title = "no UTF-8: \xff";
  CHECK(Json::parse(render_json(model, {}))["procedure"] == "no UTF-8: \uFFFD");
}

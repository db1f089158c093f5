#include "report/quay.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

Model stuck() {
  return quay("  - unplug: span\n  - await: follower(quay-2)\ngoal: {stack: [quay-1, quay-2]}\n");
}

std::string problem(const std::string& text, const std::optional<Property>& property = {}) {
  const Model model = stuck();
  const auto read = read_refutation(model, text, "v.json", property);
  REQUIRE(!read);
  CHECK(read.problems().front().span.file == "v.json");
  return read.problems().front().message;
}

std::string verdict(const std::string& properties, const std::string& procedure = "At the quay") {
  return R"({"schema": "cairn/verdict/1", "procedure": ")" + procedure +
         R"(", "verdict": "refuted", "faults": {"cable-breaks": 0, "crashes": 1, "omissions": 0, "late-starts": 0, )" +
         R"("mends": false}, "properties": [)" + properties + "]}";
}

}  // namespace

TEST_CASE("what is written is read back") {
  const Model model = stuck();
  const Report report = proved(model);
  const std::string text = render_json(model, report);
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict != Verdict::refuted) continue;
    const auto read = read_refutation(model, text, "v.json", p.asked.property);
    REQUIRE(read);
    CHECK(read.value().asked == p.asked);
    CHECK(read.value().events == p.events);
    CHECK(read.value().faults == report.faults);
  }
}

TEST_CASE("the first refutation counts where none is asked for, and k is read") {
  const Model model = stuck();
  const auto read = read_refutation(model, verdict(R"({"name": "no-clash", "verdict": "proved"},
                 {"name": "tolerates-loss", "k": 2, "verdict": "refuted", "events": [{"event": "broke", "cable": "span"}]},
                 {"name": "no-split", "verdict": "refuted", "events": []})"),
                                    "v.json");
  REQUIRE(read);
  CHECK(read.value().asked == AskedProperty{Property::tolerates_loss, 2});
  CHECK(read.value().events == Trace{{Event::Kind::broke, 0}});
  CHECK(read.value().faults.crashes == 1);
}

TEST_CASE("of several documents, one a line, the one on this procedure is read") {
  const Model model = stuck();
  const std::string text =
      verdict("", "Elsewhere") + "\n\n" + verdict(R"({"name": "no-split", "verdict": "refuted", "events": []})") + "\n";
  CHECK(read_refutation(model, text, "v.json"));
}

TEST_CASE("what is no verdict on this procedure is refused in words") {
  CHECK(problem("") == "the file is empty");
  CHECK(problem("procedure: At the quay") == "this is no JSON");
  CHECK(problem("[1, 2]") == "it holds no verdict on `At the quay`");
  CHECK(problem(verdict("", "Elsewhere")) == "it holds no verdict on `At the quay`");
  CHECK(problem(verdict("")) == "it holds no refutation: no property is refuted in it");
  CHECK(problem(verdict(R"({"name": "no-split", "verdict": "refuted", "events": []})"), Property::no_clash) ==
        "it holds no refutation of no-clash");
  CHECK(problem(verdict(R"({"name": "no-gaps", "verdict": "refuted", "events": []})")) ==
        "there is no property `no-gaps`");
  CHECK(problem(verdict(R"({"name": "no-split", "verdict": "refuted"})")) ==
        "this is no verdict of schema cairn/verdict/1: `events` is missing or of another kind");
  CHECK(problem(verdict(R"({"name": "no-split", "verdict": "refuted", "events": [{"event": "jumped"}]})")) ==
        "there is no event `jumped`");
}

TEST_CASE("a name that the procedure does not have comes with the nearest that it has") {
  const Model model = stuck();
  const auto read = read_refutation(
      model, verdict(R"({"name": "no-split", "verdict": "refuted", "events": [{"event": "broke", "cable": "spam"}]})"),
      "v.json");
  REQUIRE(!read);
  CHECK(read.problems().front().message == "the procedure has no cable `spam`");
  CHECK(read.problems().front().nearest == "span");
}

TEST_CASE("a document deep in brackets, or with absurd numbers, is no crash") {
  CHECK(problem(std::string(200000, '[')) == "this is no JSON");
  CHECK(problem(std::string(200000, '[') + std::string(200000, ']')) == "this is no JSON");
  const Model model = stuck();
  const auto read = read_refutation(
      model,
      R"({"schema": "cairn/verdict/1", "procedure": "At the quay", "verdict": "refuted", "faults": {"cable-breaks":
          18446744073709551615, "crashes": 0, "omissions": 0, "late-starts": 0, "mends": false}, "properties":
          [{"name": "no-split", "verdict": "refuted", "events": []}]})",
      "v.json");
  REQUIRE(read);
  CHECK(read.value().faults.cable_breaks == std::numeric_limits<std::int64_t>::max());
}

// Procedures of which it can be said by reasoning what each part is for. The yard: yard-1 leads with priority 180,
// yard-3 joins and would come with 190; all settings take at once.
#include <doctest/doctest.h>

#include "support/engines.hpp"
#include "support/printing.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

using Names = std::vector<std::string>;

const LeftOut& part_named(const Model& model, const Why& why, const std::string& name) {
  const auto& parts = why.properties.front().parts;
  const auto at = std::find_if(parts.begin(), parts.end(),
                               [&](const LeftOut& left_out) { return name_of(model, left_out.parts.front()) == name; });
  REQUIRE(at != parts.end());
  return *at;
}

std::string refutation_without(const Model& model, const Why& why, const std::string& name) {
  const LeftOut& left_out = part_named(model, why, name);
  return told(without(model, left_out.parts), left_out.outcome.events);
}

}  // namespace

TEST_CASE("primary-stays needs the lowered priority, and that yard-3 is up to take it") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::primary_stays)).value();
  CHECK(answer.report.verdict() == Verdict::proved);
  CHECK(parts_that_are(Standing::needed, model, answer) == Names{"s2", "s3", "s2 before s3"});
}

TEST_CASE("a refutation is a shortest one of the model without the part") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::primary_stays)).value();
  CHECK(refutation_without(model, answer, "s3") == "s1, started yard-3, s2, s4, s5");
  CHECK(refutation_without(model, answer, "s2") == "s1, s3, s4, started yard-3, s5");
}

TEST_CASE("reaches-goal needs what brings yard-3 in, and no waiting at the end") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::reaches_goal)).value();
  const Names needed = parts_that_are(Standing::needed, model, answer);
  CHECK(std::count(needed.begin(), needed.end(), "s1") == 1);
  CHECK(std::count(needed.begin(), needed.end(), "s5") == 1);
  CHECK(part_named(model, answer, "s6").standing == Standing::idle);
  // The joiner's start brings back what it had saved, and that is what it is then saved as.
  CHECK(part_named(model, answer, "s5 before s6").standing == Standing::idle);
}

TEST_CASE("survives-cold-start needs the save, and holds of nothing where no run is complete") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::survives_cold_start)).value();
  CHECK(part_named(model, answer, "s4").standing == Standing::needed);
  CHECK(part_named(model, answer, "s4").outcome.events.back().kind == Event::Kind::cold_start);
  CHECK(part_named(model, answer, "s1").standing == Standing::vacuous);
  CHECK(part_named(model, answer, "s1").outcome.vacuous == "no run is complete");
}

TEST_CASE("every property asked has its own answer on each part") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model).value();
  REQUIRE(answer.properties.size() == 7);
  for (std::size_t i = 0; i < answer.properties.size(); ++i) {
    const PropertyWhy& all = answer.properties[i];
    CHECK(all.parts.size() == parts_of(model).size());
    const Why alone = why(model, asking(all.asked.property)).value();
    for (std::size_t p = 0; p < all.parts.size(); ++p) {
      CHECK(all.parts[p].standing == alone.properties.front().parts[p].standing);
      CHECK(all.parts[p].outcome.events == alone.properties.front().parts[p].outcome.events);
    }
  }
}

TEST_CASE("a refuted property owes nothing to any part") {
  const Why answer = why(quickstart("append-outranks.yaml"), asking(Property::primary_stays)).value();
  CHECK(answer.properties.front().verdict == Verdict::refuted);
  CHECK(answer.properties.front().parts.empty());
}

TEST_CASE("of awaits that stand in for one another one has to stay") {
  const Model model = at_the_yard(R"(steps:
  - power-on: yard-3
  - await: {condition: up(yard-3), id: once}
  - await: {condition: up(yard-3), id: twice}
  - await: {condition: up(yard-1), id: idle}
  - set-priority: {device: yard-3, to: 90}
properties: [no-refusal]
)");
  const Why answer = why(model, test::exploring()).value();
  CHECK(parts_that_are(Standing::idle, model, answer).size() == 9);  // each of five steps and four orderings
  const auto& one_of = answer.properties.front().one_of;
  REQUIRE(one_of.size() == 1);
  CHECK(names_of(model, one_of.front().parts) == Names{"once", "twice"});
  CHECK(one_of.front().standing == Standing::needed);
  CHECK(told(without(model, one_of.front().parts), one_of.front().outcome.events) == "s1, idle, s5");
}

TEST_CASE("several sets of awaits, each of which has to keep one") {
  const Model model = at_the_yard(R"(steps:
  - power-on: yard-3
  - await: {condition: up(yard-3), id: a}
  - await: {condition: up(yard-3), id: b}
  - restart: yard-3
  - await: {condition: up(yard-3), id: c}
  - await: {condition: up(yard-3), id: d}
  - set-priority: {device: yard-3, to: 90}
properties: [no-refusal]
)");
  const Why answer = why(model).value();
  const auto& one_of = answer.properties.front().one_of;
  REQUIRE(one_of.size() == 2);
  CHECK(names_of(model, one_of[0].parts) == Names{"c", "d"});
  CHECK(names_of(model, one_of[1].parts) == Names{"a", "b"});
}

TEST_CASE("a part that the proof uses is told from one that is idle") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::primary_stays)).value();
  // The proof speaks of what is saved in s4; without that step the property has another one.
  CHECK(part_named(model, answer, "s4").standing == Standing::used);
  CHECK(part_named(model, answer, "s3").standing == Standing::needed);
  CHECK(part_named(model, answer, "s6").standing == Standing::idle);
}

TEST_CASE("each fact comes with the parts that make it true") {
  const Model model = quickstart("append.yaml");
  const Why answer = why(model, asking(Property::primary_stays)).value();
  const std::vector<std::string>& facts = answer.report.properties.front().settled.facts;
  const PropertyWhy& property = answer.properties.front();
  REQUIRE(property.facts.size() == facts.size());
  const auto parts_of_fact = [&](const std::string& words) {
    const auto fact = std::find(facts.begin(), facts.end(), words);
    REQUIRE(fact != facts.end());
    return names_of(model, property.facts[static_cast<std::size_t>(fact - facts.begin())]);
  };
  // Nothing in the procedure touches the priorities of the running stack, and no way to leave out a part does.
  CHECK(parts_of_fact("yard-1 keeps priority 180; yard-2 keeps priority 120").empty());
  // s2 is the await without which s3 meets a device that is still starting.
  const Names up = parts_of_fact("between s2 and s3, yard-3 is up");
  CHECK(std::find(up.begin(), up.end(), "s2") != up.end());
}

TEST_CASE("what a limit leaves open is unknown, with the reason") {
  std::atomic<bool> interrupt = false;
  ProveOptions options = asking(Property::primary_stays);
  options.limits.interrupt = &interrupt;
  // The model itself is proved; the interrupt comes with the first state of the first variant.
  int calls = 0;
  options.progress = [&](const Progress&) { interrupt = ++calls > 1; };
  const Why answer = why(quickstart("append.yaml"), options).value();
  CHECK(answer.report.verdict() == Verdict::proved);
  const LeftOut& last = answer.properties.front().parts.back();
  CHECK(last.standing == Standing::unknown);
  CHECK(last.outcome.reason == Reason::interrupted);
}

TEST_CASE("a question that prove does not take, why does not take") {
  CHECK_FALSE(why(quickstart("append.yaml"), asking(Property::tolerates_loss)).ok());
}

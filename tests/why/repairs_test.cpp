// Mistakes of which it is known how they are mended.
#include <doctest/doctest.h>

#include "differential/compare.hpp"
#include "differential/generate.hpp"
#include "support/engines.hpp"
#include "support/printing.hpp"
#include "verify/why_changes.hpp"
#include "verify/why_repairs.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

std::string told(const Model& model, const Change& change) {
  const std::string& id = model[change.step].id;
  if (change.kind == Change::Kind::value) return id + " to " + std::to_string(change.value);
  if (change.kind == Change::Kind::remove) return "without " + id;
  return id + (change.behind ? " behind " : " before ") + model[change.anchor].id;
}

/// The sets of changes that prove everything.
std::vector<std::string> mending(const Model& model, const Repairs& repairs) {
  std::vector<std::string> sets;
  for (const Repair& repair : repairs.found) {
    if (!repair.all_proved) continue;
    std::string set;
    for (const Change& change : repair.changes) set += (set.empty() ? "" : ", ") + told(model, change);
    sets.push_back(set);
  }
  return sets;
}

using Sets = std::vector<std::string>;

}  // namespace

TEST_CASE("a cable that goes in too early goes in later, or while nothing runs at its end") {
  const Model model = quickstart("append-cabled-early.yaml");
  const Repairs repairs = why(model).value().repairs;
  CHECK(mending(model, repairs) == Sets{"s3 before s1", "s3 behind s5"});
  CHECK(repairs.all_tried);
}

TEST_CASE("a number that is in use becomes one that is not") {
  const Model model = at_the_yard(R"(steps:
  - power-on: yard-3
  - await: up(yard-3)
  - set-number: {device: yard-3, to: 1}
  - set-priority: {device: yard-3, to: 90}
  - set-side: {port: yard-3/w, side: west}
  - enable: yard-3/w
  - save: yard-3
  - plug: run-3
  - await: follower(yard-3)
goal: {stack: [yard-1, yard-2, yard-3]}
properties: [no-clash, reaches-goal]
)");
  const Sets sets = mending(model, why(model).value().repairs);
  for (const char* known : {"s3 to 4", "s3 to 9", "without s3"})
    CHECK(std::count(sets.begin(), sets.end(), known) == 1);
  CHECK(std::count(sets.begin(), sets.end(), "s3 to 2") == 0);
}

TEST_CASE("two mistakes are mended by two changes") {
  // yard-3 is given the number of yard-1, and yard-2 is switched on while it runs.
  const Model model = at_the_yard(R"(steps:
  - power-on: {device: yard-2, id: running}
  - power-on: yard-3
  - await: up(yard-3)
  - set-number: {device: yard-3, to: 1, id: taken}
  - set-priority: {device: yard-3, to: 90}
  - set-side: {port: yard-3/w, side: west}
  - enable: yard-3/w
  - save: yard-3
  - plug: run-3
  - await: follower(yard-3)
goal: {stack: [yard-1, yard-2, yard-3]}
properties: [no-refusal, no-clash, reaches-goal]
)");
  const Repairs repairs = why(model).value().repairs;
  const Sets sets = mending(model, repairs);
  REQUIRE_FALSE(sets.empty());
  CHECK(std::all_of(sets.begin(), sets.end(), [](const std::string& set) { return set.find(',') != set.npos; }));
  CHECK(std::count(sets.begin(), sets.end(), "without running, taken to 4") +
            std::count(sets.begin(), sets.end(), "taken to 4, without running") ==
        1);
}

TEST_CASE("what a change costs is told") {
  const Model model = quickstart("append-outranks.yaml");
  const Why answer = why(model).value();
  CHECK(mending(model, answer.repairs).empty());
  for (const Repair& repair : answer.repairs.found) {
    REQUIRE(repair.verdicts.size() == answer.report.properties.size());
    CHECK(std::any_of(repair.verdicts.begin(), repair.verdicts.end(),
                      [](const PropertyVerdict& p) { return p.verdict != Verdict::proved || !p.vacuous.empty(); }));
  }
}

TEST_CASE("nothing is tried where nothing is refuted") {
  const Repairs repairs = why(quickstart("append.yaml")).value().repairs;
  CHECK(repairs.found.empty());
  CHECK(repairs.tried == 0);
  CHECK(repairs.all_tried);
}

TEST_CASE("the effort is bounded, and says so") {
  const Model model = quickstart("append-cabled-early.yaml");
  const Report report = prove(model, test::exploring()).value();
  const verify::Trials trials{ProveOptions()};
  const Repairs one = verify::find_repairs(model, report, trials, {.tries = 1});
  CHECK(one.tried == 1);
  CHECK_FALSE(one.all_tried);
  CHECK_FALSE(verify::find_repairs(model, report, trials, {.states = 10}).all_tried);
}

TEST_CASE("no change of one step that proves something is missed, and none that does not is told") {
  std::size_t refuted = 0;
  std::size_t repaired = 0;
  for (std::uint64_t seed = 9'500'000; refuted < 60; ++seed) {
    const auto model = differential::read(differential::generate(seed));
    if (!model) continue;
    const Report report = prove(*model, test::exploring()).value();
    const auto small = [](const PropertyVerdict& p) { return p.explored <= 100; };
    if (report.verdict() != Verdict::refuted || report.contradicted()) continue;
    if (!std::all_of(report.properties.begin(), report.properties.end(), small)) continue;
    ++refuted;
    const Repairs repairs = verify::find_repairs(*model, report, verify::Trials{ProveOptions()}, {.follows = 0});
    std::vector<std::vector<Change>> found;
    for (const Repair& repair : repairs.found) {
      if (repair.changes.size() == 1) found.push_back(repair.changes);
    }
    std::vector<std::vector<Change>> plain;
    for (const Change& change : verify::changes_of(*model)) {
      const Report now = prove(with_changes(*model, {change}), test::exploring()).value();
      bool proves = false;
      for (std::size_t i = 0; i < now.properties.size(); ++i) {
        proves = proves || (report.properties[i].verdict == Verdict::refuted &&
                            now.properties[i].verdict == Verdict::proved && now.properties[i].vacuous.empty());
      }
      if (proves) plain.push_back({change});
    }
    CAPTURE(seed);
    CHECK(found == plain);
    repaired += found.empty() ? 0 : 1;
  }
  CHECK(repaired >= 10);
}

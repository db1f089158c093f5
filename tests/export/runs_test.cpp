// Runs as questions: the length of a refutation and no shorter one, for every property, as the exploration says.
#include "verify/export_runs.hpp"

#include <doctest/doctest.h>

#include <array>

#include "cairn/prove.hpp"
#include "solver/clauses.hpp"
#include "solver/z3_solver.hpp"
#include "spec/random_models.hpp"

using namespace cairn;
using namespace cairn::test;
using verify::Draft;
using verify::RunQuestions;

namespace {

struct Bench {
  Bench(const Model& model, const AskedProperty& asked, std::size_t most_nodes = 1'000'000)
      : faults(asked_with_faults(asked.property) ? model.procedure.faults : FaultBudget{}),
        system(model, faults, system::static_domains(model, faults)),
        unroller(system),
        questions(unroller, asked, most_nodes) {}

  [[nodiscard]] bool satisfiable(const std::optional<Draft>& draft) const {
    REQUIRE(draft);
    const auto z3 = solver::make_z3_solver(nullptr);
    solver::Clauses clauses(system.terms, *z3);
    for (const system::Assertion& each : draft->assertions) clauses.require(each.term);
    return z3->check({}, {}) == solver::Outcome::satisfiable;
  }

  FaultBudget faults;
  system::System system;
  solver::Unroller unroller;
  RunQuestions questions;
};

Trace refutation_of(const Model& model, const AskedProperty& asked) {
  ProveOptions options;
  options.properties = {asked};
  const Result<Report> report = prove(model, options);
  REQUIRE(report);
  return report.value().properties.front().events;
}

}  // namespace

TEST_CASE("random models: a run as long as the refutation breaks the property, and no shorter one does") {
  std::array<int, property_count> asked_of{};
  Random random(4);
  for (int round = 0; round < 60; ++round) {
    RandomModelIs is{4, 4};
    if (round % 2 == 1) is.faults = {.cable_breaks = 1, .crashes = round % 3};
    Model model = random_model(random, is);
    Goal goal;
    for (std::uint32_t d = 0; d < model.site.devices.size(); ++d) goal.stack.push_back(DeviceId(d));
    if (round % 4 > 0) goal.stack.resize(1);
    if (round % 2 == 1) goal.primary = goal.stack.front();
    model.procedure.goal = goal;
    for (int i = 0; i < property_count; ++i) {
      const auto property = static_cast<Property>(i);
      const AskedProperty asked{property, property == Property::tolerates_loss ? 1 + round % 3 : 0};
      if (speaks_of_keep(property) && model.procedure.keep.empty()) continue;
      const Trace events = refutation_of(model, asked);
      if (events.empty()) continue;
      CAPTURE(round);
      CAPTURE(name_of(property));
      Bench bench(model, asked);
      CHECK(bench.satisfiable(bench.questions.breaks(events)));
      CHECK_FALSE(bench.satisfiable(bench.questions.does_not_break(events.size() - 1)));
      CHECK(bench.satisfiable(bench.questions.does_not_break(events.size())));
      ++asked_of.at(static_cast<std::size_t>(i));
    }
  }
  for (const int count : asked_of) CHECK(count > 0);
}

TEST_CASE("names tell the length, and what is asked") {
  ModelBuilder b;
  const DeviceId gate = b.device("gate-1");
  b.power_off(gate);
  b.power_off(gate);
  const Model model = b.model();
  const AskedProperty no_refusal{Property::no_refusal, 0};
  Bench bench(model, no_refusal);
  const Trace both{{Event::Kind::step, 0}, {Event::Kind::step, 1}};
  CHECK(refutation_of(model, no_refusal) == both);
  const auto breaks = bench.questions.breaks(both);
  REQUIRE(breaks);
  CHECK(breaks->name == "run-of-2-events-breaks-no-refusal");
  CHECK(breaks->says == "A run of 2 events breaks no-refusal.");
  CHECK(breaks->assertions.size() == 3);
  const auto shorter = bench.questions.does_not_break(1);
  REQUIRE(shorter);
  CHECK(shorter->name == "no-run-of-up-to-1-events-breaks-no-refusal");
  CHECK(shorter->says == "No run of at most 1 event breaks no-refusal.");
  const auto exists = bench.questions.exists(2);
  REQUIRE(exists);
  CHECK(exists->name == "there-are-runs-of-2-events");
  CHECK(bench.satisfiable(exists));
  CHECK_FALSE(bench.satisfiable(bench.questions.exists(3)));
}

TEST_CASE("a question that would be too large is not made") {
  Random random(9);
  const Model model = random_model(random, {4, 4});
  const AskedProperty no_clash{Property::no_clash, 0};
  Bench bench(model, no_clash, 10);
  CHECK_FALSE(bench.questions.exists(3));
  CHECK_FALSE(bench.questions.does_not_break(3));
}

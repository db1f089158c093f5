// Bounded model checking against the exploration: the same verdict, the same length, the same refutation.
#include "solver/bmc.hpp"

#include <doctest/doctest.h>

#include <array>
#include <atomic>
#include <memory>
#include <optional>

#include "base/contradiction.hpp"
#include "explore/explore.hpp"
#include "solver/cadical_solver.hpp"
#include "solver/confirm.hpp"
#include "solver/scripted_solver.hpp"
#include "solver/z3_solver.hpp"
#include "spec/random_models.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::BoundedAnswer;
using solver::BoundedLimits;
using solver::Cause;
using solver::Outcome;

namespace {

FaultBudget budget_of(const Model& model, const AskedProperty& asked) {
  return asked_with_faults(asked.property) ? model.procedure.faults : FaultBudget{};
}

struct Bench {
  system::System system;
  solver::Unroller unroller;

  Bench(const Model& model, const AskedProperty& asked)
      : system(model, budget_of(model, asked), system::static_domains(model, budget_of(model, asked))),
        unroller(system) {}
};

std::unique_ptr<solver::Solver> scout() {
  return solver::make_cadical_solver(nullptr);
}
std::unique_ptr<solver::Solver> judge() {
  return solver::make_z3_solver(nullptr);
}

BoundedAnswer answer(const Model& model, const AskedProperty& asked, const BoundedLimits& limits = {}) {
  Bench bench(model, asked);
  return check_bounded(bench.unroller, scout, judge, asked, limits);
}

std::optional<Trace> explored(const Model& model, const AskedProperty& asked) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  return explore::explore(world, budget_of(model, asked), {asked}, guard).answers.front().refutation;
}

// Two devices are off; either may be powered on first, and that nothing joins them misses the goal.
Model apart() {
  ModelBuilder b;
  DeviceIs off;
  off.on = false;
  const DeviceId a = b.device("gate-1", off);
  const DeviceId c = b.device("gate-2", off);
  const DeviceId d = b.device("gate-3");
  b.unordered();
  b.power_on(a);
  b.power_on(c);
  b.keep({d});
  b.goal({{a, c}, {}, false, {}, {}});
  return b.model();
}

// A goal that some of the devices are to reach: a first few of them, or all but a first few.
void set_goal(Model& model, Random& random) {
  const std::size_t all = model.site.devices.size();
  const std::size_t first = below(random, all), count = 1 + below(random, all - first);
  Goal goal;
  for (std::size_t i = 0; i < count; ++i) goal.stack.push_back(DeviceId(static_cast<std::uint32_t>(first + i)));
  if (below(random, 2) == 0) goal.primary = goal.stack.front();
  goal.saved = below(random, 3) == 0;
  model.procedure.goal = goal;
}

constexpr AskedProperty reaches_goal{Property::reaches_goal, 0};
constexpr AskedProperty no_refusal{Property::no_refusal, 0};

}  // namespace

TEST_CASE("random models: verdict, length and choice are those of the exploration") {
  std::array<std::size_t, property_count> proved{};
  std::array<std::size_t, property_count> refuted{};
  Random random(23);
  for (int round = 0; round < 60; ++round) {
    RandomModelIs is{4, 4};
    if (round % 3 == 1) is.faults = {.cable_breaks = 1, .crashes = round % 2};
    if (round % 3 == 2) is.faults = {.omissions = 1, .late_starts = 1};
    Model model = random_model(random, is);
    set_goal(model, random);
    for (int i = 0; i < property_count; ++i) {
      const auto property = static_cast<Property>(i);
      const AskedProperty asked{property, property == Property::tolerates_loss ? 1 + round % 3 : 0};
      if (speaks_of_keep(property) && model.procedure.keep.empty()) continue;
      CAPTURE(round);
      CAPTURE(name_of(property));
      const std::optional<Trace> expected = explored(model, asked);
      const BoundedAnswer told = answer(model, asked);
      CHECK(told.verdict == (expected ? Verdict::refuted : Verdict::proved));
      CHECK(told.refutation == expected.value_or(Trace()));
      CHECK(told.cause == Cause::none);
      CHECK(told.complaint.empty());
      ++(told.verdict == Verdict::refuted ? refuted : proved).at(static_cast<std::size_t>(i));
      if (told.verdict != Verdict::refuted) continue;
      CHECK(solver::unsatisfied_by(model, budget_of(model, asked), asked, told.refutation).empty());
    }
  }
  for (const std::size_t count : refuted) CHECK(count > 0);
  for (const std::size_t count : proved) CHECK(count > 0);
}

TEST_CASE("a proof tells the length that no run has, and what each depth cost") {
  const Model model = apart();
  std::vector<std::size_t> told;
  BoundedLimits limits;
  limits.progress = [&](const solver::DepthCost& cost) { told.push_back(cost.depth); };
  const BoundedAnswer proof = answer(model, no_refusal, limits);
  CHECK(proof.verdict == Verdict::proved);
  // Two steps and two starts make four events: a fifth at depth 4 there is not.
  REQUIRE(proof.depths.size() == 5);
  CHECK(told == std::vector<std::size_t>{0, 1, 2, 3, 4});
  for (std::size_t t = 0; t < proof.depths.size(); ++t) {
    CHECK(proof.depths[t].depth == t);
    CHECK(proof.depths[t].seconds >= 0);
    if (t > 0) CHECK(proof.depths[t].clauses >= proof.depths[t - 1].clauses);
  }
  CHECK(proof.depths.back().variables > 0);
}

TEST_CASE("of the shortest the one with the fewest switches, then the earliest in the file") {
  const auto step = [](std::uint32_t place) { return Event{Event::Kind::step, place}; };
  const auto started = [](std::uint32_t place) { return Event{Event::Kind::started, place}; };
  const BoundedAnswer told = answer(apart(), reaches_goal);
  CHECK(told.refutation == Trace{step(0), step(1), started(0), started(1)});
}

TEST_CASE("a state that is bad from the start is refuted by no events") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  b.keep(yard);  // two leaders, apart
  const AskedProperty no_split{Property::no_split, 0};
  const BoundedAnswer told = answer(b.model(), no_split);
  CHECK(told.verdict == Verdict::refuted);
  CHECK(told.refutation.empty());
  CHECK(told.depths.empty());
}

TEST_CASE("longer runs than allowed are not looked at, and that is no proof") {
  BoundedLimits limits;
  limits.length = 3;
  const BoundedAnswer told = answer(apart(), reaches_goal, limits);
  CHECK(told.verdict == Verdict::undecided);
  CHECK(told.cause == Cause::none);
  CHECK(told.complaint == "runs of more than 3 events were not looked at");
  limits.length = 4;
  CHECK(answer(apart(), reaches_goal, limits).verdict == Verdict::refuted);
}

TEST_CASE("bounds of all questions together end the search") {
  BoundedLimits limits;
  limits.bounds.effort = 0;
  const BoundedAnswer told = answer(apart(), reaches_goal, limits);
  CHECK(told.verdict == Verdict::undecided);
  CHECK(told.cause == Cause::effort);
  limits.bounds.effort = 100'000'000;
  CHECK(answer(apart(), reaches_goal, limits).verdict == Verdict::refuted);
}

TEST_CASE("an interrupt ends the search") {
  const std::atomic<bool> interrupt = true;
  const Model model = apart();
  Bench bench(model, reaches_goal);
  const auto z3 = solver::make_z3_solver(&interrupt);
  const BoundedAnswer told = check_bounded(bench.unroller, *z3, reaches_goal, {});
  CHECK(told.verdict == Verdict::undecided);
  CHECK(told.cause == Cause::interrupted);
}

TEST_CASE("an answer that the solver does not give ends the search with its reason") {
  const Model model = apart();
  Bench bench(model, no_refusal);
  ScriptedSolver scripted;
  scripted.then({.outcome = Outcome::satisfiable})
      .then({.outcome = Outcome::unknown, .cause = Cause::failed, .complaint = "out of luck"});
  const BoundedAnswer told = check_bounded(bench.unroller, scripted, no_refusal, {});
  CHECK(told.verdict == Verdict::undecided);
  CHECK(told.cause == Cause::failed);
  CHECK(told.complaint == "out of luck");
  CHECK(told.depths.size() == 1);
  CHECK(scripted.used_up());
}

namespace {

// Two events in a row, and never two devices that could have the same number.
Model two_saves() {
  ModelBuilder b;
  const DeviceId yard = b.device("yard-1");
  b.save({yard});
  b.save({yard});
  return b.model();
}

constexpr AskedProperty no_clash{Property::no_clash, 0};

}  // namespace

TEST_CASE("nothing is bad and no run goes on: proved, at one question a depth") {
  const Model model = two_saves();
  Bench bench(model, no_clash);
  ScriptedSolver scripted;
  scripted.then({.outcome = Outcome::satisfiable})
      .then({.outcome = Outcome::satisfiable})
      .then({.outcome = Outcome::unsatisfiable});
  const BoundedAnswer told = check_bounded(bench.unroller, scripted, no_clash, {});
  CHECK(told.verdict == Verdict::proved);
  CHECK(told.depths.size() == 3);
  CHECK(scripted.used_up());
  for (const ScriptedSolver::Question& each : scripted.asked()) CHECK(each.assumptions.empty());
}

TEST_CASE("that no run is longer is not asked where it is known") {
  const Model model = two_saves();
  Bench bench(model, no_clash);
  ScriptedSolver scripted;
  scripted.then({.outcome = Outcome::satisfiable}).then({.outcome = Outcome::satisfiable});
  BoundedLimits limits;
  limits.longest = 2;
  const BoundedAnswer told = check_bounded(bench.unroller, scripted, no_clash, limits);
  CHECK(told.verdict == Verdict::proved);
  CHECK(told.depths.size() == 3);
  CHECK(scripted.used_up());
}

TEST_CASE("a proof of the scout is no proof until the judge has found it too") {
  const Model model = apart();
  Bench bench(model, no_refusal);
  const auto doubtful = [] {
    auto scripted = std::make_unique<ScriptedSolver>();
    scripted->then({.outcome = Outcome::unsatisfiable}).then({.outcome = Outcome::unsatisfiable});
    return scripted;
  };
  CHECK_THROWS_AS(static_cast<void>(check_bounded(bench.unroller, doubtful, judge, no_refusal, {})), Contradiction);
  const auto helpless = [] {
    auto scripted = std::make_unique<ScriptedSolver>();
    scripted->then({.outcome = Outcome::unknown, .cause = Cause::time});
    return scripted;
  };
  const BoundedAnswer told = check_bounded(bench.unroller, scout, helpless, no_refusal, {});
  CHECK(told.verdict == Verdict::undecided);
  CHECK(told.cause == Cause::time);
}

TEST_CASE("both solvers that ship tell the same refutation") {
  for (const auto& make : {scout, judge}) {
    const Model model = apart();
    Bench bench(model, reaches_goal);
    CHECK(check_bounded(bench.unroller, *make(), reaches_goal, {}).refutation.size() == 4);
  }
}

TEST_CASE("a refutation stays one when its choice cannot be finished") {
  const Model model = apart();
  Bench bench(model, reaches_goal);
  const auto z3 = solver::make_z3_solver(nullptr);
  const BoundedAnswer whole = check_bounded(bench.unroller, *z3, reaches_goal, {});
  REQUIRE(whole.verdict == Verdict::refuted);

  // Enough to find one, as the counted effort of the whole search tells, and too little to choose.
  Bench again(model, reaches_goal);
  bool met = false;
  for (std::uint64_t effort = 1; effort < z3->effort() && !met; effort += 1 + z3->effort() / 200) {
    const auto fresh = solver::make_z3_solver(nullptr);
    BoundedLimits limits;
    limits.bounds.effort = effort;
    const BoundedAnswer told = check_bounded(again.unroller, *fresh, reaches_goal, limits);
    if (told.verdict != Verdict::refuted) {
      CHECK(told.cause == Cause::effort);
      continue;
    }
    met = told.cause == Cause::effort;
    CHECK(told.refutation.size() == whole.refutation.size());
    CHECK(solver::unsatisfied_by(model, {}, reaches_goal, told.refutation).empty());
  }
  CHECK(met);
}

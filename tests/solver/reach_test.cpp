// What a proof has to speak of, looked for by constraints: met in the same models as in every state of an exploration.
#include "solver/reach.hpp"

#include <doctest/doctest.h>

#include <map>
#include <memory>
#include <utility>

#include "base/contradiction.hpp"
#include "explore/explore.hpp"
#include "solver/cadical_solver.hpp"
#include "solver/scripted_solver.hpp"
#include "solver/z3_solver.hpp"
#include "spec/random_models.hpp"
#include "support/newcomer.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Cause;
using solver::Outcome;
using solver::ReachAnswer;
using solver::Sight;

namespace {

struct Bench {
  system::System system;
  solver::Unroller unroller;

  explicit Bench(const Model& model)
      : system(model, model.procedure.faults, system::static_domains(model, model.procedure.faults)),
        unroller(system) {}
};

std::unique_ptr<solver::Solver> scout() {
  return solver::make_cadical_solver(nullptr);
}
std::unique_ptr<solver::Solver> judge() {
  return solver::make_z3_solver(nullptr);
}

ReachAnswer answer(const Model& model, Sight sight) {
  Bench bench(model);
  return look_for(bench.unroller, scout, judge, sight, {});
}

// One of the two follows the other for good, and is kept.
Model follower() {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  b.chain(yard);
  b.stack(yard[0], yard);
  b.keep({yard[1]});
  b.save({yard[0]});
  b.save({yard[1]});
  return b.model();
}

// After all that the procedure does.
void end_with_await(Model& model, Condition condition) {
  Step await;
  await.id = "in the end";
  await.verb = Verb::await;
  await.condition = std::move(condition);
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) await.after.emplace_back(i);
  model.procedure.steps.push_back(std::move(await));
}

}  // namespace

TEST_CASE("random models: met or not as in the states of an exploration") {
  std::map<ReachAnswer::Outcome, std::size_t> of_leading, of_completing;
  std::size_t later = 0;
  Random random(29);
  for (int round = 0; round < 60; ++round) {
    RandomModelIs is{4, 4};
    if (round % 3 == 1) is.faults = {.cable_breaks = 1, .crashes = round % 2};
    if (round % 3 == 2) is.faults = {.omissions = 1, .late_starts = 1};
    Model model = random_model(random, is);
    model.procedure.keep = {DeviceId(below(random, model.site.devices.size()))};
    if (round % 2 == 0) end_with_await(model, when::primary(model.procedure.keep.front()));
    CAPTURE(round);
    const semantics::World world(model);
    const explore::Exploration all = explore::explore(world, model.procedure.faults, {}, explore::Guard({}, {}));
    REQUIRE(all.every_state_visited);
    if (!all.endless.empty()) continue;  // docs/semantics-questions.md, 2: no length is the last
    const ReachAnswer leads = answer(model, Sight::kept_device_leads);
    CHECK(leads.outcome == (all.a_kept_device_led ? ReachAnswer::Outcome::met : ReachAnswer::Outcome::never));
    const ReachAnswer completes = answer(model, Sight::complete_at_rest);
    CHECK(completes.outcome == (all.a_run_completed ? ReachAnswer::Outcome::met : ReachAnswer::Outcome::never));
    ++of_leading[leads.outcome];
    ++of_completing[completes.outcome];
    later += leads.events.empty() ? 0 : 1;
  }
  CHECK(of_leading[ReachAnswer::Outcome::met] > 0);
  CHECK(of_leading[ReachAnswer::Outcome::never] > 0);
  CHECK(of_completing[ReachAnswer::Outcome::met] > 0);
  CHECK(of_completing[ReachAnswer::Outcome::never] > 0);
  CHECK(later > 0);
}

TEST_CASE("what is met is told by a run of the fewest events") {
  const ReachAnswer leads = answer(Newcomer().b.model(), Sight::kept_device_leads);
  CHECK(leads.outcome == ReachAnswer::Outcome::met);
  CHECK(leads.events == Trace{{Event::Kind::step, 0}, {Event::Kind::started, 1}});
  const ReachAnswer completes = answer(Newcomer().b.model(), Sight::complete_at_rest);
  CHECK(completes.outcome == ReachAnswer::Outcome::met);
  CHECK(completes.events == leads.events);
}

TEST_CASE("what is never met is told by the length that no run exceeds") {
  const ReachAnswer leads = answer(follower(), Sight::kept_device_leads);
  CHECK(leads.outcome == ReachAnswer::Outcome::never);
  CHECK(leads.length == 2);
  CHECK(leads.events.empty());
}

TEST_CASE("where a kept device leads from the start, nothing is asked") {
  ModelBuilder b;
  b.keep({b.device("gate-1")});
  const Model model = b.model();
  Bench bench(model);
  ScriptedSolver scripted;
  const ReachAnswer told = look_for(bench.unroller, scripted, Sight::kept_device_leads, {});
  CHECK(told.outcome == ReachAnswer::Outcome::met);
  CHECK(told.events.empty());
  CHECK(scripted.asked().empty());
}

TEST_CASE("a question without an answer leaves it unknown, and says why") {
  const Model model = follower();
  Bench bench(model);
  ScriptedSolver scripted;
  scripted.then({.outcome = Outcome::satisfiable})
      .then({.outcome = Outcome::unknown, .cause = Cause::failed, .complaint = "out of luck"});
  const ReachAnswer told = look_for(bench.unroller, scripted, Sight::complete_at_rest, {});
  CHECK(told.outcome == ReachAnswer::Outcome::unknown);
  CHECK(told.cause == Cause::failed);
  CHECK(told.complaint == "out of luck");
  CHECK(scripted.used_up());
}

TEST_CASE("that no run is longer is not asked where it is known") {
  const Model model = follower();
  Bench bench(model);
  const auto cadical = scout();
  const ReachAnswer asked = look_for(bench.unroller, *cadical, Sight::kept_device_leads, {});
  ScriptedSolver scripted;
  for (std::size_t t = 0; t < asked.length; ++t) scripted.then({.outcome = Outcome::satisfiable});
  const ReachAnswer told = look_for(bench.unroller, scripted, Sight::kept_device_leads, {}, asked.length);
  CHECK(told.outcome == ReachAnswer::Outcome::never);
  CHECK(told.length == asked.length);
  CHECK(scripted.used_up());
}

TEST_CASE("bounds hold for all questions together") {
  const Model model = follower();
  Bench bench(model);
  const auto cadical = scout();
  const ReachAnswer timely =
      look_for(bench.unroller, *cadical, Sight::complete_at_rest, {.seconds = 0, .effort = {}, .megabytes = {}});
  CHECK(timely.outcome == ReachAnswer::Outcome::unknown);
  CHECK(timely.cause == Cause::time);
}

TEST_CASE("that it is never met is not told until the judge has found it too") {
  const Model model = Newcomer().b.model();
  Bench bench(model);
  const auto doubtful = [] {
    auto scripted = std::make_unique<ScriptedSolver>();
    scripted->then({.outcome = Outcome::unsatisfiable});
    return scripted;
  };
  CHECK_THROWS_AS(static_cast<void>(look_for(bench.unroller, doubtful, judge, Sight::complete_at_rest, {})),
                  Contradiction);
  const auto helpless = [] {
    auto scripted = std::make_unique<ScriptedSolver>();
    scripted->then({.outcome = Outcome::unknown, .cause = Cause::memory});
    return scripted;
  };
  const Model never = follower();
  Bench other(never);
  const ReachAnswer told = look_for(other.unroller, scout, helpless, Sight::kept_device_leads, {});
  CHECK(told.outcome == ReachAnswer::Outcome::unknown);
  CHECK(told.cause == Cause::memory);
}

// The two writings on every reachable state of every model of the project, over the ranges that are read off its text.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/render.hpp"
#include "confront/relation.hpp"
#include "confront/states.hpp"
#include "explore/explore.hpp"
#include "models/shelf.hpp"
#include "semantics/conditions.hpp"
#include "semantics/state.hpp"
#include "system/conditions.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

/// Keeps every settled state.
struct Reached : explore::Observer {
  std::vector<State> states;
  void open(const State& s, const semantics::Derived&, const std::vector<Event>&) override { states.push_back(s); }
  void taken(const State&, const Event&, Refusal, const State&) override {}
};

std::vector<State> reachable_states(const semantics::World& world, const FaultBudget& budget) {
  Reached reached;
  const explore::Exploration exploration =
      explore::explore(world, budget, {}, explore::Guard({}, nullptr), {.observer = &reached});
  REQUIRE_FALSE(exploration.stopped);
  return std::move(reached.states);
}

/// A model under one budget: its system, and the states that it can reach.
struct Subject {
  std::string name;
  const Model& model;
  semantics::World world;
  system::System system;
  std::vector<State> states;

  Subject(std::string called, const Model& of, const FaultBudget& budget)
      : name(std::move(called)),
        model(of),
        world(model),
        system(model, budget, system::static_domains(model, budget)),
        states(reachable_states(world, budget)) {}
};

/// Every procedure of the project, with the faults that it states, and without any.
void for_each_subject(const std::function<void(Subject&)>& visit) {
  const DiskFiles disk;
  for (const std::string& path : test::model_files()) {
    if (!test::is_procedure(path)) continue;
    const auto model = load_procedure(test::model_path(path), disk);
    REQUIRE_MESSAGE(model, path << "\n" << render_diagnostics(model.problems()));
    const FaultBudget& faults = model.value().procedure.faults;
    if (!faults.none()) {
      Subject subject(path, model.value(), faults);
      visit(subject);
    }
    Subject without(path + " without faults", model.value(), {});
    visit(without);
  }
}

}  // namespace

TEST_CASE("on every reachable state of every model, each event with its settling is the same in both") {
  Tally tally;
  Random random(1);
  std::size_t states = 0;
  for_each_subject([&](Subject& subject) {
    states += subject.states.size();
    Relation relation(subject.world, subject.system, subject.name, tally);
    for (const State& s : subject.states) {
      relation.answer_state(s, true);
      relation.answer_choice(s, random);
      relation.answer_events(s);
    }
    relation.finish();
  });
  CHECK(tally["strays"].held == 0);
  CHECK(tally["unfinished"].held == 0);
  MESSAGE(states << " states: " << told(tally));
}

TEST_CASE("the ranges that are read off the text hold every reachable state, and no event leaves them") {
  std::size_t values = 0, taken = 0;
  for_each_subject([&](Subject& subject) {
    const system::Space& space = subject.system.space;
    system::Domains reached(space.size());
    for (const State& s : subject.states) {
      for (system::VariableId v = 0; v < space.size(); ++v) {
        const std::int64_t value = space.read(s, v);
        const auto at = std::lower_bound(reached[v].begin(), reached[v].end(), value);
        if (at == reached[v].end() || *at != value) reached[v].insert(at, value);
      }
    }
    for (system::VariableId v = 0; v < space.size(); ++v) {
      INFO(subject.name << ", " << space.name(v));
      const std::vector<std::int64_t>& domain = subject.system.domains[v];
      REQUIRE(std::includes(domain.begin(), domain.end(), reached[v].begin(), reached[v].end()));
      REQUIRE(subject.system.strays(v) == system::never);
      values += domain.size();
      taken += reached[v].size();
    }
  });
  MESSAGE(values << " values in the ranges, " << taken << " of them taken by a reachable state");
}

TEST_CASE("the initial state of every model settles to the same in both") {
  for_each_subject([&](Subject& subject) {
    const system::Settling& first = subject.system.first;
    Course course(subject.world);
    State s = semantics::initial_state(subject.world, subject.system.space.budget());
    course.settle(s);
    for (system::VariableId v = 0; v < subject.system.space.size(); ++v) {
      INFO(subject.name << ", " << subject.system.space.name(v));
      REQUIRE(first.end[v] == system::Value(subject.system.space.read(s, v)));
    }
    REQUIRE(first.unfinished == system::never);
    for (std::size_t i = 0; i < on_the_way.size(); ++i) {
      const system::Term broken = subject.system.broken_at_first(on_the_way.at(i));
      REQUIRE(broken == (course.broken.at(i) ? system::always : system::never));
    }
  });
}

TEST_CASE("on every reachable state of every model, its conditions and what rest breaks are the same in both") {
  Tally tally;
  for_each_subject([&](Subject& subject) {
    system::System& system = subject.system;
    const Procedure& procedure = subject.model.procedure;
    std::vector<const Condition*> conditions;
    for (const Step& step : procedure.steps) {
      if (step.verb == Verb::await || step.verb == Verb::check) conditions.push_back(&step.condition);
    }
    if (procedure.goal && procedure.goal->where) conditions.push_back(&*procedure.goal->where);
    std::vector<system::Term> holds;
    for (const Condition* condition : conditions) {
      holds.push_back(system::holds(system.terms, system.now.state, system.now_derived, *condition));
    }
    std::array<system::RestBreach, 3> breaches;
    if (procedure.goal) {
      breaches = {system.broken_at_rest({Property::reaches_goal, 0}),
                  system.broken_at_rest({Property::survives_cold_start, 0}),
                  system.broken_at_rest({Property::tolerates_loss, 1})};
    }
    std::vector<system::Term> inputs = system.now.booleans;
    inputs.insert(inputs.end(), breaches[2].lost.begin(), breaches[2].lost.end());
    Sheet sheet(system.terms, inputs, tally);
    std::vector<Sheet::Question> questions;
    for (const system::Term condition : holds) questions.push_back(sheet.ask("condition", "", condition));
    const auto misses = sheet.ask("6.6", "", breaches[0].broken);
    const auto dies = sheet.ask("6.7", "", breaches[1].broken);
    const auto unfinished = sheet.ask("6.7 unfinished", "", breaches[1].unfinished);
    const auto cut = sheet.ask("6.8", "", breaches[2].broken);
    const auto open = [&](const State& s) {
      sheet.open(assignment_of(system.domains, values_of(system.space, s)),
                 [&subject, s] { return subject.name + ": " + told(subject.system.space, s); });
    };
    for (const State& s : subject.states) {
      const semantics::Derived derived = semantics::derive(subject.world, s);
      open(s);
      for (std::size_t i = 0; i < conditions.size(); ++i) {
        sheet.answer(questions[i], semantics::holds(subject.world, s, derived, *conditions[i]));
      }
      if (!procedure.goal) continue;
      const bool at_rest = rests(subject.world, s);
      const bool counts = at_rest && semantics::complete(s);
      sheet.answer(misses, at_rest && semantics::broken_at_rest(subject.world, s, derived));
      State end = s;
      semantics::cold_start(subject.world, end);
      Course course(subject.world);
      course.settle(end);
      const bool more_needed = course.unsettled >= static_cast<std::size_t>(system.passes);
      sheet.answer(unfinished, counts && more_needed);
      if (!more_needed) sheet.answer(dies, counts && semantics::goal_missed(subject.world, end, course.derived()));
      if (!counts) continue;
      for (const CableId lost : semantics::breakable(s)) {
        open(s);
        sheet.set(system.now.booleans.size() + lost.value);
        State after = s;
        after[lost].broken = true;
        sheet.answer(cut,
                     semantics::goal_stack_apart(subject.world, semantics::derive(subject.world, after)).has_value());
      }
    }
    sheet.finish();
  });
  CHECK(tally["6.7 unfinished"].held == 0);
  MESSAGE(told(tally));
}

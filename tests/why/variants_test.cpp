// What a procedure looks like without a part of it.
#include <doctest/doctest.h>

#include "semantics/precedence.hpp"
#include "support/model_builder.hpp"
#include "support/printing.hpp"
#include "verify/why_variants.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::Precedence;

namespace {

std::vector<std::string> ids(const Model& model) {
  std::vector<std::string> names;
  for (const Step& step : model.procedure.steps) names.push_back(step.id);
  return names;
}

// Two branches between a first and a last step.
Model branches() {
  return at_the_yard(R"(steps:
  - save: {devices: yard-1, id: first}
  - any-order:
      - - save: {devices: yard-1, id: left-1}
        - save: {devices: yard-1, id: left-2}
      - save: {devices: yard-2, id: right}
  - await: {condition: done(right) and done(left-2), id: last}
properties: [no-clash]
)");
}

bool before(const Model& model, const std::string& earlier, const std::string& later) {
  return Precedence(model.procedure).before(step_named(model, earlier), step_named(model, later));
}

Part step_part(const Model& model, const std::string& id) {
  return {Part::Kind::step, step_named(model, id), {}};
}

Part ordering(const Model& model, const std::string& earlier, const std::string& later) {
  return {Part::Kind::ordering, step_named(model, later), step_named(model, earlier)};
}

}  // namespace

TEST_CASE("parts stand in file order, each step with the orderings by which it waits") {
  const Model model = branches();
  CHECK(names_of(model, parts_of(model)) ==
        std::vector<std::string>{"first", "left-1", "first before left-1", "left-2", "left-1 before left-2", "right",
                                 "first before right", "last", "left-2 before last", "right before last"});
  CHECK(parts_of(model).front().kind == Part::Kind::step);
  CHECK(parts_of(model)[7].kind == Part::Kind::await);
  CHECK(parts_of(at_the_yard("steps:\n  - check: up(yard-1)\nproperties: [no-clash]\n")).front().kind ==
        Part::Kind::check);
  CHECK(parts_of(at_the_yard("properties: [no-clash]\n")).empty());
}

TEST_CASE("an ordering that follows from others is no part") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  const StepId first = b.save({a});
  b.save({a});
  b.save({a}, {.after = {first}});
  CHECK(parts_of(b.model()).size() == 5);  // three steps, two orderings
}

TEST_CASE("what followed a step that is left out follows what it followed") {
  const Model model = branches();
  const Model variant = without(model, {step_part(model, "left-2")});
  CHECK(ids(variant) == std::vector<std::string>{"first", "left-1", "right", "last"});
  CHECK(before(variant, "left-1", "last"));
  CHECK(before(variant, "first", "right"));
  CHECK_FALSE(before(variant, "left-1", "right"));
}

TEST_CASE("done() of a step that is left out asks whether all that it followed is done") {
  const Model model = branches();
  const Model variant = without(model, {step_part(model, "left-2"), step_part(model, "first")});
  const Condition& condition = variant[step_named(variant, "last")].condition;
  REQUIRE(condition.parts.size() == 2);
  CHECK(condition.parts[0].kind == Condition::Kind::done);  // done(right), renumbered
  CHECK(condition.parts[0].step == step_named(variant, "right"));
  REQUIRE(condition.parts[1].kind == Condition::Kind::all);
  REQUIRE(condition.parts[1].parts.size() == 1);
  CHECK(condition.parts[1].parts[0].step == step_named(variant, "left-1"));
  // Of a step that followed nothing, it is true.
  const Model none = without(model, {step_part(model, "right"), step_part(model, "first")});
  const Condition& right = none[step_named(none, "last")].condition.parts[0];  // what right followed: first
  REQUIRE(right.parts.size() == 1);
  CHECK(right.parts[0].kind == Condition::Kind::all);
  CHECK(right.parts[0].parts.empty());
}

TEST_CASE("the goal's condition changes with the steps") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  b.save({a});
  const StepId last = b.apply({a});
  Goal goal = goal_of({a});
  goal.where = when::done(last);
  b.goal(goal);
  const Model variant = without(b.model(), {{Part::Kind::step, StepId(0), {}}});
  CHECK(variant.procedure.goal->where->step == StepId(0));
}

TEST_CASE("leaving an ordering out frees one pair of steps, and no other") {
  const Model model = branches();
  const Precedence all(model.procedure);
  for (const Part& part : parts_of(model)) {
    if (part.kind != Part::Kind::ordering) continue;
    const Precedence rest(without(model, {part}).procedure);
    for (std::size_t e = 0; e < model.procedure.steps.size(); ++e) {
      for (std::size_t l = 0; l < model.procedure.steps.size(); ++l) {
        const bool the_pair = StepId(e) == part.before && StepId(l) == part.step;
        CHECK(rest.before(StepId(e), StepId(l)) == (all.before(StepId(e), StepId(l)) && !the_pair));
      }
    }
  }
}

TEST_CASE("orderings and steps left out together") {
  const Model model = branches();
  const Model variant = without(
      model, {ordering(model, "left-1", "left-2"), step_part(model, "left-1"), ordering(model, "right", "last")});
  CHECK(ids(variant) == std::vector<std::string>{"first", "left-2", "right", "last"});
  CHECK(before(variant, "first", "left-2"));
  CHECK(before(variant, "left-2", "last"));
  CHECK_FALSE(before(variant, "right", "last"));
}

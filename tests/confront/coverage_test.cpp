// The random models have everything there is: each value of each rule, each verb, each fault, each part of a goal.
#include <doctest/doctest.h>

#include <set>
#include <tuple>

#include "confront/models.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

/// The models that most of these tests look at.
const std::vector<Model>& models() {
  static const std::vector<Model> all = [] {
    std::vector<Model> made;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
      Random random(seed);
      made.push_back(random_model(random));
    }
    return made;
  }();
  return all;
}

/// How many values `value_of(model)` takes.
template <class ValueOf>
std::size_t values(ValueOf value_of) {
  std::set<decltype(value_of(std::declval<const Model&>()))> seen;
  for (const Model& model : models()) seen.insert(value_of(model));
  return seen.size();
}

}  // namespace

TEST_CASE("the random models use every value of every rule") {
  CHECK(values([](const Model& m) { return m.platform.number_takes; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.priority_takes; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.settings_follow; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.side_takes; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.side_needs_disabled; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.facing; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.software; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.factory.enabled; }) == 2);
  CHECK(values([](const Model& m) { return m.platform.factory.side; }) == 3);
  CHECK(values([](const Model& m) { return m.platform.max_members; }) == 5);
  CHECK(values([](const Model& m) { return m.platform.election; }) == 12);
  // What decides how often a stack passes (4.5.c), together with whether settings get lost.
  CHECK(values([](const Model& m) {
          return std::tuple(m.platform.side_leads_to, m.platform.orphans, m.platform.settings_follow,
                            m.platform.number_takes);
        }) == 16);
}

TEST_CASE("the random models use every verb, every fault and every part of a goal") {
  std::set<Verb> verbs;
  for (const Model& model : models()) {
    for (const Step& step : model.procedure.steps) verbs.insert(step.verb);
  }
  CHECK(verbs.size() == static_cast<std::size_t>(Verb::check) + 1);
  CHECK(values([](const Model& m) { return m.procedure.faults.cable_breaks; }) == 3);
  CHECK(values([](const Model& m) { return m.procedure.faults.crashes; }) == 3);
  CHECK(values([](const Model& m) { return m.procedure.faults.omissions; }) == 3);
  CHECK(values([](const Model& m) { return m.procedure.faults.late_starts; }) == 3);
  CHECK(values([](const Model& m) { return m.procedure.faults.mends; }) == 2);
  CHECK(values([](const Model& m) {
          const Goal& goal = *m.procedure.goal;
          return std::tuple(goal.stack.size() > 1, static_cast<bool>(goal.primary), goal.saved, goal.where.has_value());
        }) == 16);
  CHECK(values([](const Model& m) { return m.site.devices.size(); }) == 4);
}

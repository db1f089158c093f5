// Closed sets of the models of the project, and of random models: the formulas agree with what the exploration found of
// every property, proved or refuted.
#include <doctest/doctest.h>

#include <array>
#include <atomic>
#include <string>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "confirm/sets.hpp"
#include "confront/models.hpp"
#include "explore/explore.hpp"
#include "models/shelf.hpp"
#include "support/second_neighbour.hpp"
#include "verify/closed_set.hpp"

using namespace cairn;
using Outcome = solver::SetConfirmation::Outcome;

namespace {

const explore::Guard no_limits({}, {});

/// How often a property was found proved and refuted, by either writing.
struct Tally {
  std::array<std::size_t, property_count> proved{}, refuted{};
};

// All that the exploration did not refute, confirmed at once; and each that it refuted, by itself: the formulas refute
// it somewhere in the set of all states.
void confirm_all(const semantics::World& world, const FaultBudget& faults, const std::vector<AskedProperty>& asked,
                 Tally& tally) {
  const explore::Exploration all = explore::explore(world, faults, {}, no_limits);
  REQUIRE(all.visited != nullptr);
  if (!all.endless.empty()) return;
  std::vector<AskedProperty> proved;
  for (const explore::Answer& answer : explore::explore(world, faults, asked, no_limits).answers) {
    const auto place = static_cast<std::size_t>(answer.asked.property);
    if (!answer.refutation) {
      proved.push_back(answer.asked);
      ++tally.proved.at(place);
      continue;
    }
    ++tally.refuted.at(place);
    const auto refuted = verify::confirm_closed_set(world, faults, {answer.asked}, *all.visited, 1'000'000, no_limits);
    CAPTURE(name_of(answer.asked.property));
    REQUIRE(refuted.outcome == Outcome::differs);
    CHECK(refuted.difference->kind == solver::Difference::Kind::broken);
    CHECK(refuted.difference->property == answer.asked);
    CHECK(verify::told(world, faults, *refuted.difference).find(name_of(answer.asked.property)) != std::string::npos);
  }
  const auto agreed = verify::confirm_closed_set(world, faults, proved, *all.visited, 1'000'000, no_limits);
  if (agreed.difference) FAIL_CHECK(verify::told(world, faults, *agreed.difference));
  CHECK(agreed.outcome == Outcome::agrees);
  CHECK(agreed.effort.states == all.explored);
}

constexpr std::array<Reductions, 4> forgetting{{{true, false, false, false, false},
                                                {false, true, false, false, false},
                                                {false, false, true, false, false},
                                                {true, true, true, false, false}}};

// The same of reduced sets: what holds is confirmed, and what is refuted never is.
void confirm_reduced(const semantics::World& world, const FaultBudget& faults, const std::vector<AskedProperty>& asked,
                     Tally& tally) {
  std::vector<AskedProperty> proved;
  std::vector<AskedProperty> refuted;
  for (const explore::Answer& answer : explore::explore(world, faults, asked, no_limits).answers) {
    (answer.refutation ? refuted : proved).push_back(answer.asked);
  }
  for (const Reductions& reductions : forgetting) {
    const explore::Exploration all = explore::explore(world, faults, {}, no_limits, {.reductions = reductions});
    REQUIRE(all.every_state_visited);
    if (!all.endless.empty()) return;
    const auto confirm = [&](const std::vector<AskedProperty>& some) {
      return verify::confirm_reduced_set(world, faults, some, *all.visited, reductions, 1'000'000, no_limits);
    };
    const auto agreed = confirm(proved);
    if (agreed.difference) FAIL_CHECK(verify::told(world, faults, *agreed.difference));
    CHECK(agreed.outcome == Outcome::agrees);
    for (const AskedProperty& a : proved) ++tally.proved.at(static_cast<std::size_t>(a.property));
    for (const AskedProperty& a : refuted) {
      CHECK(confirm({a}).outcome != Outcome::agrees);
      ++tally.refuted.at(static_cast<std::size_t>(a.property));
    }
  }
}

using Confirm = decltype(confirm_all);

// As they are asked together (semantics 6).
void confirm_model(const Model& model, const std::vector<AskedProperty>& asked, Tally& tally, Confirm& confirm) {
  const semantics::World world(model);
  std::vector<AskedProperty> with_faults;
  std::vector<AskedProperty> without;
  for (const AskedProperty& a : asked) (asked_with_faults(a.property) ? with_faults : without).push_back(a);
  confirm(world, model.procedure.faults, with_faults, tally);
  confirm(world, {}, without, tally);
}

void confirm_models(Confirm& confirm) {
  Tally tally;
  std::size_t models = 0;
  for (const std::string& path : test::model_files()) {
    if (!test::is_procedure(path)) continue;
    CAPTURE(path);
    const auto model = load_procedure(test::model_path(path), DiskFiles());
    REQUIRE(model);
    confirm_model(model.value(), model.value().procedure.properties, tally, confirm);
    ++models;
  }
  CHECK(models >= 50);
  for (std::size_t i = 0; i < tally.proved.size(); ++i) {
    CAPTURE(name_of(static_cast<Property>(i)));
    CHECK(tally.proved.at(i) > 0);
    CHECK(tally.refuted.at(i) > 0);
  }
}

}  // namespace

TEST_CASE("the formulas agree on every closed set of the models, property by property") {
  confirm_models(confirm_all);
}

TEST_CASE("the formulas agree on every reduced set of the models, property by property") {
  confirm_models(confirm_reduced);
}

TEST_CASE("the formulas agree on every closed set of random models") {
  confront::Random random(11);
  Tally tally;
  for (int i = 0; i < 300; ++i) {
    const Model model = confront::random_model(random);
    CAPTURE(i);
    std::vector<AskedProperty> asked;
    for (int property = 0; property < property_count; ++property) {
      asked.push_back({static_cast<Property>(property), 0});
      if (asked.back().property == Property::tolerates_loss) asked.back().k = 1 + i % 3;
    }
    confirm_model(model, asked, tally, confirm_all);
  }
  for (std::size_t i = 0; i < tally.proved.size(); ++i) {
    CAPTURE(name_of(static_cast<Property>(i)));
    CHECK(tally.proved.at(i) > 10);
    CHECK(tally.refuted.at(i) > 10);
  }
}

TEST_CASE("what limits a run limits its confirmation") {
  const Model model = test::SecondNeighbour(Orphans::carry_on).b.model();
  const semantics::World world(model);
  const explore::Exploration all = explore::explore(world, {}, {}, no_limits);
  REQUIRE(all.visited != nullptr);
  const auto confirm = [&](std::uint64_t most, const Limits& limits) {
    return verify::confirm_closed_set(world, {}, {}, *all.visited, most, explore::Guard(limits, {}));
  };
  CHECK(confirm(all.explored, {}).outcome == Outcome::agrees);
  CHECK(confirm(all.explored - 1, {}).outcome == Outcome::too_large);
  const std::atomic<bool> interrupt{true};
  CHECK(confirm(all.explored, {{}, {}, &interrupt}).reason == Reason::interrupted);
  CHECK(confirm(all.explored, {0, {}, nullptr}).reason == Reason::time);
  CHECK(confirm(all.explored, {0, {}, nullptr}).outcome == Outcome::stopped);
}

TEST_CASE("passes are followed for as long as links form between them, also in runs without end") {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    const Model model = test::SecondNeighbour(orphans).b.model();
    const auto moves = test::parts_of(model, {});
    const auto confirmation = test::confirm(*moves, test::reachable(model, {}), {});
    CHECK(confirmation.outcome == Outcome::agrees);
    CHECK(confirmation.effort.passes > 0);
  }
}

TEST_CASE("a pass that is thought to be the last, and is not, is found") {
  confront::Random random(12);
  std::size_t found = 0;
  for (int i = 0; i < 240; ++i) {
    const Model model = confront::random_model(random);
    const auto moves = test::parts_of(model, model.procedure.faults);
    moves->pass.unsettled = system::never;
    const auto confirmation = test::confirm(*moves, test::reachable(model, model.procedure.faults), {});
    if (confirmation.outcome == Outcome::differs) ++found;
  }
  CHECK(found >= 2);
}

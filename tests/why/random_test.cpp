// Random models: what `without` makes of them compared with the text without the step, and what `why` says of their
// parts compared with the plain explorer of tests/naive.
#include <doctest/doctest.h>

#include "differential/compare.hpp"
#include "differential/generate.hpp"
#include "differential/order.hpp"
#include "naive/explore.hpp"
#include "support/engines.hpp"
#include "support/printing.hpp"
#include "verify/why_parts.hpp"
#include "why/yard.hpp"

using namespace cairn;
using namespace cairn::test;
using differential::Draft;
using differential::Item;

namespace {

constexpr std::uint64_t first_seed = 9'000'000;  // not those of other tests
constexpr std::size_t most_states = 600;

bool drop(std::vector<Item>& items, std::size_t& place) {
  for (auto item = items.begin(); item != items.end(); ++item) {
    if (item->branches.empty()) {
      if (place-- > 0) continue;
      items.erase(item);
      return true;
    }
    for (auto& branch : item->branches) {
      if (drop(branch, place)) return true;
    }
  }
  return false;
}

// With a step gone, its followers' `after` would name nothing, and places would be counted anew.
bool names_no_step(Draft& draft) {
  for (const auto* step : differential::all_steps(draft.steps)) {
    if (!step->after.empty()) return false;
  }
  for (const auto* condition : differential::all_conditions(draft)) {
    if (condition->word == "done") return false;
  }
  return true;
}

}  // namespace

TEST_CASE("leaving a step out is what taking its line out of the file is") {
  std::size_t compared = 0;
  for (std::uint64_t seed = first_seed; compared < 400; ++seed) {
    Draft draft = differential::generate(seed);
    const auto model = differential::read(draft);
    if (!model || model->procedure.steps.empty() || !names_no_step(draft)) continue;
    const std::size_t gone = seed % model->procedure.steps.size();
    std::size_t place = gone;
    REQUIRE(drop(draft.steps, place));
    differential::drop_empty(draft.steps);
    const Model variant = without(*model, {{Part::Kind::step, StepId(gone), {}}});
    CAPTURE(seed);
    CHECK(differential::same_order(draft, variant));
    ++compared;
  }
}

TEST_CASE("needed is refuted without the part, idle is proved without it, and the plain explorer agrees") {
  std::size_t needed = 0;
  std::size_t idle = 0;
  for (std::uint64_t seed = first_seed; needed < 300 || idle < 300; ++seed) {
    const auto model = differential::read(differential::generate(seed));
    if (!model || !naive::explore(*model, most_states)) continue;
    const Report report = prove(*model, test::exploring()).value();
    std::vector<PropertyWhy> properties;
    for (const PropertyVerdict& p : report.properties) properties.push_back({p.asked, p.verdict, {}, {}, {}});
    verify::try_parts(*model, report, verify::Trials{ProveOptions()}, properties);
    for (const PropertyWhy& property : properties) {
      // One part a property is enough: which, is different from model to model.
      if (property.parts.empty()) continue;
      const LeftOut& left_out = property.parts[seed % property.parts.size()];
      const FaultBudget faults = asked_with_faults(property.asked.property) ? report.faults : FaultBudget{};
      const auto plain = naive::explore(without(*model, left_out.parts), faults, {property.asked}, 20 * most_states);
      if (!plain || plain->answers.front().cycle) continue;
      CAPTURE(seed);
      CAPTURE(name_of(*model, left_out.parts.front()));
      CHECK(plain->answers.front().refuted == (left_out.standing == Standing::needed));
      CHECK(plain->answers.front().preferred == left_out.outcome.events);
      ++(left_out.standing == Standing::needed ? needed : idle);
    }
  }
}

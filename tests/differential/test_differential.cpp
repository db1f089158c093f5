#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <set>

#include "differential/expectations.hpp"
#include "differential/generate.hpp"
#include "differential/render.hpp"
#include "differential/shrink.hpp"
#include "support/models_a_run.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 1;
constexpr std::size_t fixed_models = test::models_a_run(3000);

}  // namespace

TEST_CASE("the library and the reference answer alike on random models") {
  const Tally tally = run_campaign(library_and_reference(), fixed_models, fixed_seed, found);
  expect_agreement(tally, fixed_models, 50);
}

TEST_CASE("models on which the two once disagreed") {
  expect_agreement_on_kept_models([](const Model& model) { return compare(model); });
}

TEST_CASE("a seed gives one model, and other seeds give others") {
  CHECK(render(generate(7)) == render(generate(7)));
  CHECK(render(generate(7)) != render(generate(8)));
}

TEST_CASE("random models use every verb, condition, rule and fault") {
  std::set<Verb> verbs;
  std::set<std::string> conditions;
  std::set<std::string> rules;
  std::size_t forks = 0, afters = 0, vias = 0;
  for (std::uint64_t seed = 0; seed < 1000; ++seed) {
    Draft draft = generate(seed);
    for (const StepDraft* step : all_steps(draft.steps)) {
      verbs.insert(step->verb);
      afters += step->after.empty() ? 0 : 1;
      vias += step->via ? 1 : 0;
    }
    for (const Item& item : draft.steps) forks += item.branches.empty() ? 0 : 1;
    for (const ConditionDraft* condition : all_conditions(draft)) conditions.insert(condition->word);
    const Platform& p = draft.platform;
    const auto note = [&](const char* rule, auto value) { rules.insert(fmt::format("{} {}", rule, int(value))); };
    note("number-takes", p.number_takes);
    note("priority-takes", p.priority_takes);
    note("settings-follow", p.settings_follow);
    note("side-takes", p.side_takes);
    note("side-needs-disabled", p.side_needs_disabled);
    note("facing", p.facing);
    note("side-leads-to", p.side_leads_to);
    note("orphans", p.orphans);
    note("software", p.software);
    note("max-members stated", draft.max_members_stated);
    note("cable-breaks", draft.faults.cable_breaks);
    note("crashes", draft.faults.crashes);
    note("omissions", draft.faults.omissions);
    note("late-starts", draft.faults.late_starts);
    note("mends", draft.faults.mends);
    note("stack", draft.stack.has_value());
    note("keep", draft.keep.has_value());
    for (const AskedProperty& asked : draft.properties) note("k", asked.k);
    note("election", p.election.empty() ? 9 : static_cast<int>(p.election.front()));
  }
  CHECK(verbs.size() == 15);
  CHECK(conditions.size() == 19);  // 15 atoms and four ways to combine them
  CHECK(rules.size() == 10 * 2 + 4 * 3 + 3 * 2 + 4 + 4);
  CHECK(forks > 50);
  CHECK(afters > 10);
  CHECK(vias > 100);
}

TEST_CASE("shrinking leaves the smallest draft that still shows it") {
  const auto shows = [](const Draft& draft) {
    Draft copy = draft;
    const auto model = read(draft);
    if (!model || draft.faults.crashes == 0) return false;
    const auto steps = all_steps(copy.steps);
    return std::any_of(steps.begin(), steps.end(), [](const StepDraft* step) { return step->verb == Verb::enable; });
  };
  std::size_t shrunk = 0;
  for (std::uint64_t seed = 0; shrunk < 5; ++seed) {
    if (!shows(generate(seed))) continue;
    Draft minimal = shrink(generate(seed), shows);
    CHECK(shows(minimal));
    CHECK(all_steps(minimal.steps).size() == 1);
    CHECK(minimal.devices.size() == 1);
    CHECK(minimal.cables.empty());
    CHECK(minimal.faults == FaultBudget{.crashes = 1});
    CHECK_FALSE(minimal.goal);
    ++shrunk;
  }
}

// The sets of explorations that forget, put to the formulas as partial states: on random models every one is closed,
// and hardly any stays unclear.
#include <doctest/doctest.h>

#include "differential/expectations.hpp"
#include "differential/reduced_sets.hpp"
#include "support/models_a_run.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 8;
constexpr std::size_t fixed_models = test::models_a_run(1000);
constexpr std::size_t fixed_loners = test::models_a_run(500);

// Of 159,000 sets of other seeds, none stayed unclear.
void expect_clear(const Tally& tally) {
  CHECK(tally.sets > 4 * tally.compared);
  CHECK(tally.unclear * 1000 < tally.sets);
}

}  // namespace

TEST_CASE("sets of random models that were reduced are closed, and keep what holds and nothing else") {
  const Tally tally = run_campaign(reduced_sets_and_formulas(false), fixed_models, fixed_seed, found);
  expect_agreement(tally, fixed_models, 50);
  expect_clear(tally);
}

TEST_CASE("so are those of random models of devices that lead themselves and are joined") {
  const Tally tally = run_campaign(reduced_sets_and_formulas_of_loners(false), fixed_loners, fixed_seed, found);
  fmt::print("{}", tally.text());
  CHECK(tally.compared == fixed_loners);
  for (const Tally::Disagreement& disagreement : tally.disagreements) {
    FAIL_CHECK(disagreement.difference << "\n  smallest model: " << disagreement.kept_at);
  }
  expect_clear(tally);
}

TEST_CASE("so are those of models on which reductions once disagreed") {
  expect_agreement_on_kept_models([](const Model& model) { return confirm_reduced_sets(model, true); });
}

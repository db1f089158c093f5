// Explorations that leave out what makes no difference, against those that leave out nothing.
#include <doctest/doctest.h>

#include "differential/expectations.hpp"
#include "differential/reductions.hpp"
#include "support/models_a_run.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 5;
constexpr std::size_t fixed_models = test::models_a_run(5000);
constexpr std::size_t fixed_loners = test::models_a_run(2500);
constexpr std::size_t fixed_copies = test::models_a_run(1000);

}  // namespace

TEST_CASE("reductions change no verdict, length, refutation, state at rest or sighting on random models") {
  expect_agreement(run_campaign(reduced_and_whole(), fixed_models, fixed_seed, found), fixed_models, 50);
}

TEST_CASE("reductions change nothing on random models of devices that lead themselves and are joined") {
  const Tally tally = run_campaign(reduced_and_whole_of_loners(), fixed_loners, fixed_seed, found);
  fmt::print("{}", tally.text());
  CHECK(tally.compared == fixed_loners);
  for (const Tally::Disagreement& disagreement : tally.disagreements) {
    FAIL_CHECK(disagreement.difference << "\n  smallest model: " << disagreement.kept_at);
  }
  CHECK(tally.too_large * 20 < tally.compared);
  CHECK(tally.unreadable * 10 < tally.compared);
}

TEST_CASE("reductions change nothing on random models of parts that are copies of one another") {
  const Tally tally = run_campaign(reduced_and_whole_of_copies(), fixed_copies, fixed_seed, found);
  fmt::print("{}", tally.text());
  CHECK(tally.compared == fixed_copies);
  for (const Tally::Disagreement& disagreement : tally.disagreements) {
    FAIL_CHECK(disagreement.difference << "\n  smallest model: " << disagreement.kept_at);
  }
  CHECK(tally.swapped * 4 > tally.compared);
  CHECK(tally.too_large * 5 < tally.compared);
}

TEST_CASE("reductions change nothing where some pair once disagreed") {
  expect_agreement_on_kept_models([](const Model& model) { return compare_reductions(model); });
}

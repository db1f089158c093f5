// One thread against several, which must give the same answer to the byte.
#include <doctest/doctest.h>

#include "differential/expectations.hpp"
#include "differential/jobs.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 2;
constexpr std::size_t fixed_models = 300;

}  // namespace

TEST_CASE("1, 2, 4 and 8 jobs give the same answer, with the same counts, on random models") {
  const Tally tally = run_campaign(one_and_several_jobs(), fixed_models, fixed_seed, found);
  expect_agreement(tally, fixed_models, 30);
  // Small models would be explored by one thread all the same.
  CHECK(tally.states / fixed_models > 50);
}

TEST_CASE("1, 2, 4 and 8 jobs give the same answer where some pair once disagreed") {
  expect_agreement_on_kept_models([](const Model& model) { return compare_jobs(model); });
}

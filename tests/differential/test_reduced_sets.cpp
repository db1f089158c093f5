// The sets of explorations that forget, put to the formulas as partial states: on random models every one is closed, and
// hardly any stays unclear.
#include <doctest/doctest.h>

#include "differential/expectations.hpp"
#include "differential/reduced_sets.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 8;
constexpr std::size_t fixed_models = 500;

}  // namespace

TEST_CASE("sets of random models that were reduced are closed") {
  const Tally tally = run_campaign(reduced_sets_and_formulas(false), fixed_models, fixed_seed, found);
  expect_agreement(tally, fixed_models, 50);
}

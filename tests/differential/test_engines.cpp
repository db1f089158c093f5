// States alone and constraints alone, confronted on random models through the public interface.
#include <doctest/doctest.h>

#include "differential/engines.hpp"
#include "differential/expectations.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 3;
constexpr std::size_t fixed_models = 300;

}  // namespace

TEST_CASE("states and constraints answer alike on random models") {
  const Tally tally = run_campaign(states_and_constraints(), fixed_models, fixed_seed, found);
  expect_agreement(tally, fixed_models, 30);
  CHECK(tally.unsettled * 50 < tally.compared);
  // Nor would proofs be worth much that all come about in one way.
  std::size_t vacuous = 0, by_facts = 0, by_unrolling = 0;
  for (const Tally::OfProperty& of : tally.properties) {
    vacuous += of.vacuous;
    by_facts += of.by_facts;
    by_unrolling += of.by_unrolling;
  }
  CHECK(vacuous > 0);
  CHECK(by_facts > fixed_models / 10);
  CHECK(by_unrolling > fixed_models / 10);
}

TEST_CASE("states and constraints answer alike where some pair once disagreed") {
  expect_agreement_on_kept_models([](const Model& model) { return compare_engines(model); });
}

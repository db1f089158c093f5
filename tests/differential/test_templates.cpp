// Templates against enumeration (semantics 9): every instance is run by the reference.
#include <doctest/doctest.h>

#include "differential/expectations.hpp"
#include "support/models_a_run.hpp"

using namespace cairn;
using namespace cairn::differential;

TEST_CASE("of random templates the verdict, the shortest length and the instance named are those of all instances") {
  const std::size_t models = test::models_a_run(600);
  const Tally tally = run_campaign(templates_and_instances(), models, 6, found);
  fmt::print("{}", tally.text());
  CHECK(tally.compared == models);
  for (const Tally::Disagreement& disagreement : tally.disagreements) {
    FAIL_CHECK(disagreement.difference << "\n  smallest model: " << disagreement.kept_at);
  }
}

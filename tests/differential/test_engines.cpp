// States alone and constraints alone, confronted on random models through the public interface.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <filesystem>

#include "cairn/load.hpp"
#include "differential/campaign.hpp"
#include "differential/engines.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

constexpr std::uint64_t fixed_seed = 3;
constexpr std::size_t fixed_models = 300;
const std::string found = std::string(CAIRN_SOURCE_DIR) + "/tests/differential/found";

}  // namespace

TEST_CASE("states and constraints answer alike on random models") {
  const Tally tally = run_campaign(states_and_constraints(), fixed_models, fixed_seed, found);
  fmt::print("{}", tally.text());
  CHECK(tally.compared == fixed_models);
  for (const Tally::Disagreement& disagreement : tally.disagreements) {
    FAIL_CHECK(disagreement.difference << "\n  smallest model: " << disagreement.kept_at);
  }
  // Models that are left out must stay the exception, or the figures would speak of tame models only.
  CHECK(tally.too_large * 20 < tally.compared);
  CHECK(tally.unreadable * 10 < tally.compared);
  CHECK(tally.endless * 30 < tally.compared);
  CHECK(tally.unsettled * 50 < tally.compared);
  // A property that is nearly always proved, or nearly always refuted, would be compared for nothing; so would proofs
  // that all come about in one way.
  std::size_t vacuous = 0, by_facts = 0, by_unrolling = 0;
  for (int i = 0; i < property_count; ++i) {
    CAPTURE(name_of(static_cast<Property>(i)));
    const Tally::OfProperty& of = tally.properties[static_cast<std::size_t>(i)];
    CHECK(of.asked * 2 > tally.compared);
    CHECK(of.refuted_percent() >= 20);
    CHECK(of.refuted_percent() <= 80);
    vacuous += of.vacuous;
    by_facts += of.by_facts;
    by_unrolling += of.by_unrolling;
  }
  CHECK(vacuous > 0);
  CHECK(by_facts > fixed_models / 10);
  CHECK(by_unrolling > fixed_models / 10);
}

TEST_CASE("states and constraints answer alike where some pair once disagreed") {
  for (const auto& entry : std::filesystem::directory_iterator(found)) {
    if (entry.path().extension() != ".yaml") continue;
    CAPTURE(entry.path().string());
    const auto model = load_procedure(entry.path().string(), DiskFiles());
    REQUIRE(model.ok());
    const Comparison comparison = compare_engines(model.value());
    INFO(comparison.difference);
    CHECK(comparison.outcome != Comparison::Outcome::disagree);
    CHECK(comparison.outcome != Comparison::Outcome::too_large);
  }
}

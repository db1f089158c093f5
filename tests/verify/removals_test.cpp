// Proofs by facts of the models, taken apart: without one of its facts hardly any of them is a proof any more.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <string_view>

#include "cairn/load.hpp"
#include "explore/explore.hpp"
#include "models/shelf.hpp"
#include "solver/cadical_solver.hpp"
#include "verify/by_facts.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Fact;

namespace {

constexpr std::array<std::string_view, 13> models{
    "quickstart/append.yaml",           "procedures/append-east.yaml",    "procedures/append-plug-and-play.yaml",
    "procedures/append-west.yaml",      "procedures/change-number.yaml",  "procedures/close-chain.yaml",
    "procedures/free-held.yaml",        "procedures/guard-by-check.yaml", "procedures/hand-over.yaml",
    "procedures/insert-into-ring.yaml", "procedures/merge-lone.yaml",     "procedures/open-ring.yaml",
    "procedures/replace-dead.yaml",
};

struct Counts {
  std::size_t proofs = 0;
  std::size_t facts = 0;
  std::size_t noticed = 0;  ///< of those facts: the proof without it has a hole
};

bool has_hole(const solver::Subject& subject, const AskedProperty& asked, const std::vector<Fact>& facts) {
  const auto solver = solver::make_cadical_solver(nullptr);
  const solver::Outcome hole = find_hole(subject, asked, facts, *solver, {});
  REQUIRE(hole != solver::Outcome::unknown);
  return hole == solver::Outcome::satisfiable;
}

void take_apart(const solver::Subject& subject, const AskedProperty& asked, const std::vector<Fact>& facts,
                Counts& counts) {
  REQUIRE_FALSE(has_hole(subject, asked, facts));
  ++counts.proofs;
  for (std::size_t i = 0; i < facts.size(); ++i) {
    std::vector<Fact> fewer = facts;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    ++counts.facts;
    counts.noticed += has_hole(subject, asked, fewer) ? 1 : 0;
  }
}

// The properties of the model that are asked under this budget, proved as `--engine auto` does.
void take_apart_those(const Model& model, const FaultBudget& budget, Counts& counts) {
  const semantics::World world(model);
  const explore::Exploration all = explore::explore(world, budget, {}, explore::Guard({}, {}));
  verify::ByFacts by_facts(model, budget, {});
  by_facts.see(all);
  const solver::Subject subject{model, budget, system::stated_domains(model, budget)};
  for (const AskedProperty& asked : model.procedure.properties) {
    if (asked_with_faults(asked.property) && budget != model.procedure.faults) continue;
    if (!asked_with_faults(asked.property) && !budget.none()) continue;
    const auto answer = by_facts.prove(asked);
    if (const auto* proof = std::get_if<solver::FactsProof>(&answer)) take_apart(subject, asked, proof->facts, counts);
  }
}

}  // namespace

TEST_CASE("a proof by facts leans on each of them: the obligations notice that one is missing") {
  Counts all;
  for (const std::string_view path : models) {
    CAPTURE(path);
    const auto model = load_procedure(model_path(std::string(path)), DiskFiles());
    REQUIRE(model.ok());
    Counts counts;
    const FaultBudget& faults = model.value().procedure.faults;
    take_apart_those(model.value(), {}, counts);
    if (!faults.none()) take_apart_those(model.value(), faults, counts);
    // What is hard to spare is left in a proof: in the largest of them a few facts may be too many.
    CHECK(counts.noticed * 100 >= counts.facts * 90);
    CHECK(counts.proofs > 0);
    fmt::print("{}: {} proofs, {} of {} removals noticed\n", path, counts.proofs, counts.noticed, counts.facts);
    all.proofs += counts.proofs;
    all.facts += counts.facts;
    all.noticed += counts.noticed;
  }
  fmt::print("{} proofs, {} of {} removals noticed\n", all.proofs, all.noticed, all.facts);
  CHECK(all.facts > 400);
  CHECK(all.noticed * 100 >= all.facts * 98);
}

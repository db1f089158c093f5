#include "verify/by_facts.hpp"

#include <algorithm>
#include <utility>

#include "solver/cadical_solver.hpp"
#include "solver/z3_solver.hpp"

namespace cairn::verify {

using solver::Fact;

namespace {

// Counts of the solvers' own steps: several times what the proofs of models/ and of the benchmark take.
constexpr std::uint64_t conflicts_a_question = 20'000;
constexpr std::uint64_t judge_effort = 400'000'000;
constexpr std::size_t most_candidates = 20'000;

solver::FactsBounds bounds_of(const Limits& limits) {
  solver::FactsBounds bounds;
  bounds.scout.effort = conflicts_a_question;
  bounds.scout.seconds = limits.seconds;
  bounds.judge.effort = judge_effort;
  bounds.judge.seconds = limits.seconds;
  return bounds;
}

bool counts_faults(const system::Space& space, const Fact& fact) {
  const auto is_budget = [&](const solver::Within& claim) {
    return space[claim.variable].kind == system::Variable::Kind::left;
  };
  return fact.kind == Fact::Kind::spent || (fact.kind == Fact::Kind::within && is_budget(fact.holds)) ||
         std::any_of(fact.given.begin(), fact.given.end(), is_budget);
}

}  // namespace

ByFacts::ByFacts(const Model& model, const FaultBudget& faults, const Limits& limits)
    : model_(model),
      faults_(faults),
      limits_(limits),
      domains_(system::stated_domains(model, faults)),
      system_(model, faults, domains_),
      miner_(system_.space) {}

void ByFacts::see(const explore::Visited& visited) {
  constexpr explore::StateIndex enough = 4'000;
  State state = visited.any();
  const explore::StateIndex step = 1 + visited.size() / enough;
  for (explore::StateIndex i = 0; i < visited.size(); i += step) {
    visited.read(i, state);
    see(state);
  }
}

bool ByFacts::offer_more() {
  std::vector<Fact> candidates;
  switch (kinds_offered_++) {
    case 0: {
      candidates = candidates_from_text(system_.space, domains_);
      const std::vector<Fact> single = miner_.single();
      candidates.insert(candidates.end(), single.begin(), single.end());
      break;
    }
    case 1:
      candidates = miner_.paired();
      break;
    case 2:
      candidates = miner_.paired_between_steps();
      break;
    default:
      return false;
  }
  if (candidates.size() > most_candidates) return offer_more();
  sort_by_simplicity(system_.space, candidates);
  prover_->offer(candidates);
  return true;
}

bool ByFacts::interrupted() const {
  return limits_.interrupt != nullptr && limits_.interrupt->load(std::memory_order_relaxed);
}

std::optional<ProvedByFacts> ByFacts::prove(const AskedProperty& asked) {
  if (!prover_) {
    const std::atomic<bool>* interrupt = limits_.interrupt;
    prover_.emplace(
        system_, [interrupt] { return solver::make_cadical_solver(interrupt); },
        [interrupt] { return solver::make_z3_solver(interrupt); }, bounds_of(limits_));
    offer_more();
  }
  while (!interrupted()) {
    auto answer = prover_->prove(asked);
    if (auto* proof = std::get_if<solver::FactsProof>(&answer)) {
      const bool any_number = holds_uncounted(asked, proof->facts);
      return ProvedByFacts{std::move(proof->facts), any_number};
    }
    if (std::get<solver::NoFactsProof>(answer).why != solver::NoFactsProof::Why::not_excluded || !offer_more()) break;
  }
  return std::nullopt;
}

bool ByFacts::holds_uncounted(const AskedProperty& asked, const std::vector<Fact>& facts) const {
  if (faults_.none() || std::any_of(facts.begin(), facts.end(),
                                    [this](const Fact& fact) { return counts_faults(system_.space, fact); })) {
    return false;
  }
  system::System uncounted(model_, faults_, domains_, system::Counting::uncounted);
  const std::unique_ptr<solver::Solver> judge = solver::make_z3_solver(limits_.interrupt);
  return find_hole(uncounted, asked, facts, *judge, bounds_of(limits_).judge) == solver::Outcome::unsatisfiable;
}

}  // namespace cairn::verify

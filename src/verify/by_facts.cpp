#include "verify/by_facts.hpp"

#include <algorithm>
#include <utility>

#include "solver/cadical_solver.hpp"
#include "solver/z3_solver.hpp"

namespace cairn::verify {

using solver::Fact;

namespace {

// Counts of the solvers' own steps: several times what the proofs of models/ and of the benchmark take.
constexpr std::uint64_t scout_conflicts = 100'000;
constexpr std::uint64_t judge_effort = 400'000'000;
constexpr std::size_t most_candidates = 20'000;
constexpr int tiers = 4;

solver::FactsBounds bounds_of(const Limits& limits) {
  solver::FactsBounds bounds;
  bounds.scout.effort = scout_conflicts;
  bounds.scout.seconds = limits.seconds;
  bounds.judge.effort = judge_effort;
  bounds.judge.seconds = limits.seconds;
  return bounds;
}

}  // namespace

std::string words_of(const solver::NoFactsProof& why) {
  switch (why.why) {
    case solver::NoFactsProof::Why::not_excluded:
      return "the facts that every event keeps do not exclude every breach";
    case solver::NoFactsProof::Why::too_costly:
      return why.cause == solver::Cause::effort ? "the effort for it was used up" : "a limit was met first";
    case solver::NoFactsProof::Why::failed:
      return why.complaint;
  }
  return {};
}

ByFacts::ByFacts(const Model& model, const FaultBudget& faults, const Limits& limits)
    : subject_{model, faults, system::stated_domains(model, faults)},
      limits_(limits),
      space_(model, faults),
      touched_(touched_by_steps(space_, subject_.widest)),
      miner_(space_) {}

void ByFacts::see(const explore::Exploration& all) {
  const explore::Visited& visited = *all.visited;
  constexpr explore::StateIndex enough = 4'000;
  State state = visited.any();
  const explore::StateIndex step = 1 + visited.size() / enough;
  for (explore::StateIndex i = 0; i < visited.size(); i += step) {
    visited.read(i, state);
    see(state);
  }
  seen_all_ = all.every_state_visited;
}

std::vector<Fact> ByFacts::next_candidates() {
  const auto from_text = [&] { return gathered(space_, touched_, candidates_from_text(space_, subject_.widest)); };
  const auto from_states = [&] { return gathered(space_, touched_, miner_.single()); };
  switch (tiers_offered_++) {
    case 0: {
      if (!seen_all_) return from_text();
      // What was seen says more than what the text says of the same.
      std::vector<Fact> both = from_states();
      const std::vector<Fact> text = from_text();
      both.insert(both.end(), text.begin(), text.end());
      return both;
    }
    case 1:
      // Of the first states alone much is true that is not true for long.
      return seen_all_ ? std::vector<Fact>{} : from_states();
    case 2:
      return miner_.paired();
    default:
      return miner_.paired_between_steps();
  }
}

bool ByFacts::offer_more() {
  while (tiers_offered_ < tiers) {
    std::vector<Fact> candidates = next_candidates();
    if (candidates.empty() || candidates.size() > most_candidates) continue;
    sort_by_simplicity(space_, candidates);
    prover_->offer(candidates);
    return true;
  }
  return false;
}

std::variant<solver::FactsProof, solver::NoFactsProof> ByFacts::prove(const AskedProperty& asked) {
  if (!prover_) {
    const std::atomic<bool>* interrupt = limits_.interrupt;
    prover_.emplace(
        subject_, [interrupt] { return solver::make_cadical_solver(interrupt); },
        [interrupt] { return solver::make_z3_solver(interrupt); }, bounds_of(limits_));
    offer_more();
  }
  while (true) {
    auto answer = prover_->prove(asked);
    const auto* none = std::get_if<solver::NoFactsProof>(&answer);
    const bool may_need_more = none != nullptr && none->why == solver::NoFactsProof::Why::not_excluded;
    if (!may_need_more || !offer_more()) return answer;
  }
}

}  // namespace cairn::verify

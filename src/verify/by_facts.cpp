#include "verify/by_facts.hpp"

#include <algorithm>
#include <utility>

#include "verify/solver_limits.hpp"

namespace cairn::verify {

namespace {

// Counts of the solvers' own steps: several times what the proofs of models/ and of the benchmark take.
constexpr std::uint64_t scout_conflicts = 100'000;
constexpr std::uint64_t judge_effort = 400'000'000;
constexpr std::size_t most_candidates = 20'000;

solver::FactsBounds facts_bounds_of(const Limits& limits) {
  solver::FactsBounds bounds;
  bounds.scout = bounds.judge = bounds_of(limits);
  bounds.scout.effort = scout_conflicts;
  bounds.judge.effort = judge_effort;
  return bounds;
}

std::string words_of(solver::Cause cause) {
  switch (cause) {
    case solver::Cause::effort:
      return "the effort for it was used up";
    case solver::Cause::memory:
      return "there was no memory left for it";
    case solver::Cause::interrupted:
      return "it was interrupted";
    case solver::Cause::time:
    case solver::Cause::none:
    case solver::Cause::failed:
      return "the time for it was used up";
  }
  return {};
}

}  // namespace

std::string words_of(const solver::NoFactsProof& why) {
  switch (why.why) {
    case solver::NoFactsProof::Why::not_excluded:
      return "the facts that every event keeps do not exclude every breach";
    case solver::NoFactsProof::Why::too_costly:
      return words_of(why.cause);
    case solver::NoFactsProof::Why::failed:
      return why.complaint;
  }
  return {};
}

ByFacts::ByFacts(const Model& model, const FaultBudget& faults, const Limits& limits)
    : space_(model, faults), miner_(space_), guard_(limits, {}) {}

const ByFacts::Ground& ByFacts::ground() {
  if (!ground_) {
    solver::Subject subject{space_.model(), space_.budget(), system::stated_domains(space_.model(), space_.budget())};
    std::vector<bool> touched = touched_by_steps(space_, subject.widest);
    ground_.emplace(Ground{std::move(subject), std::move(touched)});
  }
  return *ground_;
}

void ByFacts::see(const explore::Exploration& all) {
  const explore::Visited& visited = *all.visited;
  constexpr explore::StateIndex enough = 100'000;
  constexpr explore::StateIndex enough_in_pairs = 4'000;
  const explore::StateIndex step = 1 + visited.size() / enough;
  const explore::StateIndex step_in_pairs = step * (1 + visited.size() / step / enough_in_pairs);
  State state = visited.any();
  for (explore::StateIndex i = 0; i < visited.size(); i += step) {
    visited.read(i, state);
    const bool in_pairs = i % step_in_pairs == 0;
    if (!all.alike) {
      miner_.add(state, in_pairs);
      continue;
    }
    // What is true of one of several devices alike is true of each of them.
    constexpr std::size_t enough_images = 24;
    for (const State& image : all.alike->images(state, enough_images)) miner_.add(image, in_pairs);
  }
  seen_all_ = all.every_state_visited;
  from_above_ = all.leaves_states_out();  // its set cannot be confirmed in another way
}

ByFacts::Candidates ByFacts::mined(std::size_t tier) {
  const auto gathered_of = [this](const Candidates& facts) { return gathered(space_, ground().touched, facts); };
  const auto from_text = [&] { return gathered_of(candidates_from_text(space_, ground().subject.widest)); };
  const auto from_states = [&] { return gathered_of(miner_.single()); };
  switch (tier) {
    case 0: {
      if (!seen_all_) return from_text();
      // What was seen says more than what the text says of the same.
      Candidates both = from_states();
      const Candidates text = from_text();
      both.insert(both.end(), text.begin(), text.end());
      return both;
    }
    case 1:
      // Of the first states alone much is true that is not true for long.
      return seen_all_ ? Candidates{} : from_states();
    case 2:
      return miner_.paired();
    default:
      return miner_.paired_between_steps();
  }
}

const ByFacts::Candidates& ByFacts::candidates(std::size_t tier) {
  std::optional<Candidates>& known = candidates_.at(tier);
  if (!known) {
    known = mined(tier);
    if (known->size() > most_candidates) known->clear();
    sort_by_simplicity(space_, *known);
  }
  return *known;
}

bool ByFacts::offer_more(solver::FactsProver& prover, std::size_t& tier) {
  while (tier < tiers) {
    const Candidates& more = candidates(tier++);
    if (more.empty()) continue;
    prover.offer(more);
    return true;
  }
  return false;
}

std::variant<solver::FactsProof, solver::NoFactsProof> ByFacts::prove(const AskedProperty& asked) {
  const Limits left = guard_.left();
  solver::FactsBounds bounds = facts_bounds_of(left);
  bounds.from_above = from_above_;
  solver::FactsProver prover(ground().subject, solvers_.searching(left), solvers_.judging(left), bounds);
  std::size_t tier = 0;
  offer_more(prover, tier);
  while (true) {
    auto answer = prover.prove(asked);
    const auto* none = std::get_if<solver::NoFactsProof>(&answer);
    const bool may_need_more = none != nullptr && none->why == solver::NoFactsProof::Why::not_excluded;
    if (!may_need_more || !offer_more(prover, tier)) return answer;
  }
}

}  // namespace cairn::verify

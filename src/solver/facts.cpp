#include "solver/facts.hpp"

#include <algorithm>

#include "base/contradiction.hpp"
#include "system/evaluate.hpp"

namespace cairn::solver {

using system::SymbolicState;
using system::System;
using system::Term;

namespace {

void insert_all(std::vector<std::size_t>& into, const std::vector<std::size_t>& more) {
  std::vector<std::size_t> both;
  std::set_union(into.begin(), into.end(), more.begin(), more.end(), std::back_inserter(both));
  into = std::move(both);
}

std::vector<std::size_t> without(const std::vector<std::size_t>& all, const std::vector<std::size_t>& less) {
  std::vector<std::size_t> rest;
  std::set_difference(all.begin(), all.end(), less.begin(), less.end(), std::back_inserter(rest));
  return rest;
}

}  // namespace

FactsProver::FactsProver(System& system, Solver& solver, const Bounds& bounds)
    : system_(system), solver_(solver), clauses_(system.terms, solver), bounds_(bounds) {
  for (system::VariableId v = 0; v < system.space.size(); ++v) {
    if (system.strays(v) != system::never) {
      throw Contradiction("the relation leaves its domains at: " + system.space.name(v));
    }
  }
  clauses_.require(system.now.typing);
  clauses_.require(system.settled);
  event_ = solver.declare();
  clauses_.require_if(event_, system.one_event);
}

void FactsProver::offer(const std::vector<Fact>& candidates) {
  for (const Fact& fact : candidates) {
    if (term_of(system_.terms, system_.first.end, fact) != system::always) continue;
    const Term now = term_of(system_.terms, system_.now.state, fact);
    if (now == system::always) continue;
    const Literal assumed = solver_.declare();
    clauses_.require_if(assumed, now);
    place_of_[assumed.variable()] = candidates_.size();
    candidates_.push_back({fact, now, term_of(system_.terms, system_.next, fact), assumed, {}, false, true});
    ++effort_.candidates;
  }
}

FactsProver::Bad FactsProver::bad_of(const AskedProperty& asked) {
  const auto key = std::pair(asked.property, asked.k);
  if (const auto known = bad_.find(key); known != bad_.end()) return known->second;
  Bad bad;
  if (speaks_of_goal(asked.property)) {
    const system::RestBreach breach = system_.broken_at_rest(asked);
    bad = {clauses_.literal_of(system_.terms.either(breach.broken, breach.unfinished)), false};
  } else {
    bad = {clauses_.literal_of(system_.broken_on_the_way(asked.property)), true};
  }
  return bad_.emplace(key, bad).first->second;
}

Literal FactsProver::violated(std::size_t place) {
  Candidate& candidate = candidates_[place];
  if (!candidate.has_violated) {
    candidate.violated = clauses_.literal_of(!candidate.next);
    candidate.has_violated = true;
  }
  return candidate.violated;
}

std::vector<Literal> FactsProver::assumptions(const Places& facts) const {
  std::vector<Literal> all;
  for (const std::size_t place : facts) all.push_back(candidates_[place].assumed);
  return all;
}

FactsProver::Places FactsProver::live() const {
  Places all;
  for (std::size_t place = 0; place < candidates_.size(); ++place) {
    if (candidates_[place].live) all.push_back(place);
  }
  return all;
}

FactsProver::Places FactsProver::in_core() {
  Places used;
  for (const Literal literal : solver_.core()) {
    if (const auto fact = place_of_.find(literal.variable()); fact != place_of_.end()) used.push_back(fact->second);
  }
  std::sort(used.begin(), used.end());
  return used;
}

Outcome FactsProver::ask(std::vector<Literal> assumed) {
  ++effort_.questions;
  return solver_.check(assumed, bounds_);
}

Outcome FactsProver::exclude(const Bad& bad, const Places& facts, Places& used) {
  std::vector<Literal> assumed = assumptions(facts);
  assumed.push_back(bad.literal);
  if (bad.on_the_way) assumed.push_back(event_);
  Outcome outcome = ask(assumed);
  if (outcome != Outcome::unsatisfiable) return outcome;
  used = in_core();
  if (system_.unfinished == system::never) return outcome;
  // The relation is that of the semantics only where its passes are enough.
  assumed = assumptions(facts);
  assumed.push_back(clauses_.literal_of(system_.unfinished));
  assumed.push_back(event_);
  outcome = ask(assumed);
  if (outcome == Outcome::unsatisfiable) insert_all(used, in_core());
  return outcome;
}

Outcome FactsProver::keep(const Places& facts, const Places& kept, Places& used) {
  const Literal asked = solver_.declare();
  std::vector<Literal> one_is_violated{!asked};
  for (const std::size_t place : kept) one_is_violated.push_back(violated(place));
  solver_.add(one_is_violated);
  std::vector<Literal> assumed = assumptions(facts);
  assumed.push_back(asked);
  assumed.push_back(event_);
  const Outcome outcome = ask(assumed);
  if (outcome == Outcome::unsatisfiable) used = in_core();
  return outcome;
}

void FactsProver::drop_violated() {
  std::vector<Term> inputs = system_.now.booleans;
  for (const system::Occurrence& each : system_.events) inputs.push_back(each.happens);
  const Places places = live();
  std::vector<Term> outputs;
  for (const std::size_t place : places) outputs.push_back(candidates_[place].next);
  const system::Program program(system_.terms, inputs, outputs);
  std::vector<system::Lanes> values;
  for (const Term input : inputs) values.push_back(clauses_.value_of(input) ? ~system::Lanes{0} : 0);
  std::vector<system::Lanes> results(outputs.size());
  std::vector<system::Lanes> scratch;
  program.run(values, results, scratch);
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (results[i] != 0) continue;
    candidates_[places[i]].live = false;
    ++effort_.dropped;
  }
}

NoFactsProof FactsProver::costly() const {
  if (solver_.cause() == Cause::failed) return {NoFactsProof::Why::failed, Cause::failed, solver_.complaint()};
  return {NoFactsProof::Why::too_costly, solver_.cause(), {}};
}

std::optional<FactsProver::Places> FactsProver::close(const Bad& bad, NoFactsProof& why) {
  while (true) {
    Places needed;
    const Outcome excluded = exclude(bad, live(), needed);
    if (excluded != Outcome::unsatisfiable) {
      why = excluded == Outcome::satisfiable ? NoFactsProof{} : costly();
      return std::nullopt;
    }
    bool all_kept = true;
    Places pending = needed;
    while (!pending.empty()) {
      Places used;
      const Outcome kept = keep(live(), pending, used);
      if (kept == Outcome::unknown) {
        why = costly();
        return std::nullopt;
      }
      if (kept == Outcome::satisfiable) {
        all_kept = false;
        drop_violated();
        std::erase_if(pending, [this](std::size_t place) { return !candidates_[place].live; });
      } else {
        pending = without(used, needed);
        insert_all(needed, used);
      }
    }
    if (all_kept) return needed;
  }
}

void FactsProver::minimise(const Bad& bad, Places& facts, std::uint64_t questions) {
  const std::uint64_t last = effort_.questions + questions;
  // What is left when only that is taken up which the answers lean on; nothing where `all` does not do.
  const auto closed_within = [&](const Places& all) -> std::optional<Places> {
    Places needed;
    if (exclude(bad, all, needed) != Outcome::unsatisfiable) return std::nullopt;
    Places pending = needed;
    while (!pending.empty()) {
      Places used;
      if (keep(all, pending, used) != Outcome::unsatisfiable) return std::nullopt;
      pending = without(used, needed);
      insert_all(needed, used);
    }
    return needed;
  };
  for (std::size_t i = facts.size(); i-- > 0 && effort_.questions < last;) {
    if (i >= facts.size()) continue;
    Places fewer = facts;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    if (const auto closed = closed_within(fewer)) facts = *closed;
  }
}

std::variant<FactsProof, NoFactsProof> FactsProver::prove(const AskedProperty& asked, std::uint64_t minimal_within) {
  if (!speaks_of_goal(asked.property) && system_.broken_at_first(asked.property) != system::never) {
    return NoFactsProof{};
  }
  const Bad bad = bad_of(asked);
  NoFactsProof why;
  std::optional<Places> facts = close(bad, why);
  if (!facts) return why;
  minimise(bad, *facts, minimal_within);
  FactsProof proof;
  for (const std::size_t place : *facts) proof.facts.push_back(candidates_[place].fact);
  return proof;
}

}  // namespace cairn::solver

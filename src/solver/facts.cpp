#include "solver/facts.hpp"

#include <algorithm>
#include <set>

#include "base/contradiction.hpp"

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

// What is bad of a step, or of a state at rest.
Term bad_term(System& system, const AskedProperty& asked) {
  if (!speaks_of_goal(asked.property)) return system.broken_on_the_way(asked.property);
  const system::RestBreach breach = system.broken_at_rest(asked);
  return system.terms.either(breach.broken, breach.unfinished);
}

}  // namespace

bool begins_well(System& system, const AskedProperty& asked, const std::vector<Fact>& facts) {
  const bool broken = !speaks_of_goal(asked.property) && system.broken_at_first(asked.property) != system::never;
  return !broken && std::all_of(facts.begin(), facts.end(), [&](const Fact& fact) {
    return term_of(system.terms, system.first.end, fact) == system::always;
  });
}

Outcome find_hole(System& system, const AskedProperty& asked, const std::vector<Fact>& facts, Solver& solver,
                  const Bounds& bounds) {
  Clauses clauses(system.terms, solver);
  clauses.require(system.now.typing);
  clauses.require(system.settled);
  const Literal event = solver.declare();
  clauses.require_if(event, system.one_event);
  std::vector<Term> wrong{system.unfinished};
  for (const Fact& fact : facts) {
    clauses.require(term_of(system.terms, system.now.state, fact));
    wrong.push_back(!term_of(system.terms, system.next, fact));
  }
  const Term bad = bad_term(system, asked);
  const bool on_the_way = !speaks_of_goal(asked.property);
  if (on_the_way) wrong.push_back(bad);
  const std::vector<Literal> with_an_event{event, clauses.literal_of(system.terms.any(wrong))};
  const Outcome outcome = solver.check(with_an_event, bounds);
  if (outcome != Outcome::unsatisfiable || on_the_way) return outcome;
  const std::vector<Literal> at_rest{clauses.literal_of(bad)};
  return solver.check(at_rest, bounds);
}

FactsProver::FactsProver(System& system, const SolverMaker& scout, SolverMaker judge, const FactsBounds& bounds)
    : system_(system), judge_(std::move(judge)), solver_(scout()), clauses_(system.terms, *solver_), bounds_(bounds) {
  for (system::VariableId v = 0; v < system.space.size(); ++v) {
    if (system.strays(v) != system::never) {
      throw Contradiction("the relation leaves its domains at: " + system.space.name(v));
    }
  }
  clauses_.require(system.now.typing);
  clauses_.require(system.settled);
  event_ = solver_->declare();
  clauses_.require_if(event_, system.one_event);
}

void FactsProver::offer(const std::vector<Fact>& candidates) {
  for (const Fact& fact : candidates) {
    if (term_of(system_.terms, system_.first.end, fact) != system::always) continue;
    const Term now = term_of(system_.terms, system_.now.state, fact);
    if (now == system::always) continue;
    const Literal assumed = solver_->declare();
    clauses_.require_if(assumed, now);
    place_of_[assumed.variable()] = candidates_.size();
    candidates_.push_back({fact, now, term_of(system_.terms, system_.next, fact), assumed, {}, false, true});
    ++effort_.candidates;
  }
  now_program_.reset();
  next_program_.reset();
}

FactsProver::Bad FactsProver::bad_of(const AskedProperty& asked) {
  const auto key = std::pair(asked.property, asked.k);
  if (const auto known = bad_.find(key); known != bad_.end()) return known->second;
  Bad bad{bad_term(system_, asked), {}, !speaks_of_goal(asked.property)};
  bad.literal = clauses_.literal_of(bad.term);
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

FactsProver::Places FactsProver::in_core() {
  Places used;
  for (const Literal literal : solver_->core()) {
    if (const auto fact = place_of_.find(literal.variable()); fact != place_of_.end()) used.push_back(fact->second);
  }
  std::sort(used.begin(), used.end());
  return used;
}

Outcome FactsProver::ask(const std::vector<Literal>& assumed) {
  if (effort_.questions >= last_question_) return Outcome::unknown;
  ++effort_.questions;
  return solver_->check(assumed, bounds_.scout);
}

Outcome FactsProver::find_bad(const Bad& bad, const Places& facts, Places& used) {
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

Outcome FactsProver::find_loss(const Places& facts, const Places& kept, Places& used) {
  const Literal asked = solver_->declare();
  std::vector<Literal> one_is_lost{!asked};
  for (const std::size_t place : kept) one_is_lost.push_back(violated(place));
  solver_->add(one_is_lost);
  std::vector<Literal> assumed = assumptions(facts);
  assumed.push_back(asked);
  assumed.push_back(event_);
  const Outcome outcome = ask(assumed);
  if (outcome == Outcome::unsatisfiable) used = in_core();
  return outcome;
}

std::vector<system::Lanes> FactsProver::model() const {
  std::vector<system::Lanes> values;
  const auto add = [&](Term input) { values.push_back(clauses_.value_of(input) ? ~system::Lanes{0} : 0); };
  for (const Term boolean : system_.now.booleans) add(boolean);
  for (const system::Occurrence& each : system_.events) add(each.happens);
  return values;
}

std::vector<system::Lanes> FactsProver::hold_in(const std::vector<system::Lanes>& values, bool after_event) {
  std::optional<system::Program>& program = after_event ? next_program_ : now_program_;
  if (!program) {
    std::vector<Term> inputs = system_.now.booleans;
    for (const system::Occurrence& each : system_.events) inputs.push_back(each.happens);
    std::vector<Term> outputs;
    for (const Candidate& candidate : candidates_) outputs.push_back(after_event ? candidate.next : candidate.now);
    program.emplace(system_.terms, inputs, outputs);
  }
  std::vector<system::Lanes> results(candidates_.size());
  program->run(values, results, scratch_);
  return results;
}

Known FactsProver::reason_for(Term target, const std::vector<system::Lanes>& model) {
  std::vector<Literal> assumed;
  const auto assume = [&](Term boolean, bool value) {
    assumed.push_back(clauses_.literal_of(value ? boolean : !boolean));
  };
  std::size_t i = 0;
  for (const Term boolean : system_.now.booleans) assume(boolean, model[i++] != 0);
  for (const system::Occurrence& each : system_.events) {
    // That the event may happen is part of the reason.
    if (model[i] != 0) target = system_.terms.both(target, each.may_happen);
    assume(each.happens, model[i++] != 0);
  }
  // All that the model says, against what follows from it: the core is the reason.
  assume(target, false);
  if (ask(assumed) != Outcome::unsatisfiable) return {};
  std::set<Literal> core;
  for (const Literal literal : solver_->core()) core.insert(literal);
  Known known;
  for (system::VariableId v = 0; v < system_.space.size(); ++v) {
    const std::vector<system::Value::Case>& cases = system_.now.state[v].cases();
    if (cases.size() < 2) continue;
    std::vector<std::int64_t> possible;
    for (const system::Value::Case& each : cases) {
      const Literal holds = clauses_.literal_of(each.holds);
      if (core.contains(holds)) {
        possible = {each.value};
        break;
      }
      if (!core.contains(!holds)) possible.push_back(each.value);
    }
    if (possible.size() < cases.size()) known[v] = std::move(possible);
  }
  return known;
}

bool FactsProver::rule_out(Places& facts, Term target) {
  const std::vector<system::Lanes> found = model();
  const std::vector<system::Lanes> hold = hold_in(found, false);
  const Known reason = reason_for(target, found);
  std::optional<std::size_t> chosen;
  for (std::size_t place = 0; place < candidates_.size(); ++place) {
    if (!candidates_[place].live || hold[place] != 0) continue;
    if (!chosen) chosen = place;
    if (!fails_where(candidates_[place].fact, reason)) continue;
    chosen = place;
    break;
  }
  if (!chosen) return false;
  facts.insert(std::lower_bound(facts.begin(), facts.end(), *chosen), *chosen);
  return true;
}

std::size_t FactsProver::first_lost(const Places& facts, const std::vector<system::Lanes>& model) {
  const std::vector<system::Lanes> hold = hold_in(model, true);
  return *std::find_if(facts.begin(), facts.end(), [&](std::size_t place) { return hold[place] == 0; });
}

void FactsProver::drop_lost(Places& facts, const std::vector<system::Lanes>& model) {
  const std::vector<system::Lanes> hold = hold_in(model, true);
  for (const std::size_t place : facts) {
    if (hold[place] != 0) continue;
    candidates_[place].live = false;
    ++effort_.dropped;
  }
  std::erase_if(facts, [this](std::size_t place) { return !candidates_[place].live; });
}

namespace {

NoFactsProof costly(const Solver& solver) {
  if (solver.cause() == Cause::failed) return {NoFactsProof::Why::failed, Cause::failed, solver.complaint()};
  return {NoFactsProof::Why::too_costly, solver.cause(), {}};
}

}  // namespace

std::optional<FactsProver::Places> FactsProver::close(const Bad& bad, NoFactsProof& why) {
  Places facts;
  Places used;
  const auto give_up = [&](NoFactsProof reason) {
    why = std::move(reason);
    return std::nullopt;
  };
  while (true) {
    Outcome outcome = find_bad(bad, facts, used);
    if (outcome == Outcome::unknown) return give_up(costly(*solver_));
    if (outcome == Outcome::satisfiable) {
      if (!rule_out(facts, bad.term)) return give_up({});
      continue;
    }
    outcome = find_loss(facts, facts, used);
    if (outcome == Outcome::unknown) return give_up(costly(*solver_));
    if (outcome == Outcome::unsatisfiable) return facts;
    const std::vector<system::Lanes> found = model();
    if (!rule_out(facts, !candidates_[first_lost(facts, found)].next)) drop_lost(facts, found);
  }
}

std::optional<FactsProver::Places> FactsProver::leaned_on(const Bad& bad, const Places& all) {
  Places needed;
  if (find_bad(bad, all, needed) != Outcome::unsatisfiable) return std::nullopt;
  Places pending = needed;
  while (!pending.empty()) {
    Places used;
    if (find_loss(all, pending, used) != Outcome::unsatisfiable) return std::nullopt;
    pending = without(used, needed);
    insert_all(needed, used);
  }
  return needed;
}

void FactsProver::minimise(const Bad& bad, Places& facts) {
  last_question_ = std::min(last_question_, effort_.questions + bounds_.minimising);
  for (std::size_t i = facts.size(); i-- > 0 && effort_.questions < last_question_;) {
    if (i >= facts.size()) continue;
    Places fewer = facts;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    if (const auto rest = leaned_on(bad, fewer)) facts = *rest;
  }
}

std::variant<FactsProof, NoFactsProof> FactsProver::judged(const AskedProperty& asked, const Places& facts) {
  FactsProof proof;
  for (const std::size_t place : facts) proof.facts.push_back(candidates_[place].fact);
  const std::unique_ptr<Solver> judge = judge_();
  const Outcome hole = find_hole(system_, asked, proof.facts, *judge, bounds_.judge);
  if (hole == Outcome::unknown) return costly(*judge);
  if (hole == Outcome::satisfiable || !begins_well(system_, asked, proof.facts)) {
    throw Contradiction("two solvers disagree on the proof of a property by facts");
  }
  return proof;
}

std::variant<FactsProof, NoFactsProof> FactsProver::prove(const AskedProperty& asked) {
  if (!begins_well(system_, asked, {})) return NoFactsProof{};
  last_question_ = effort_.questions + bounds_.questions;
  const Bad bad = bad_of(asked);
  NoFactsProof why;
  std::optional<Places> facts = close(bad, why);
  if (!facts) return why;
  minimise(bad, *facts);
  return judged(asked, *facts);
}

}  // namespace cairn::solver

#include "solver/obligations.hpp"

#include <algorithm>

#include "base/contradiction.hpp"
#include "solver/allowance.hpp"

namespace cairn::solver {

using system::System;
using system::Term;
using system::VariableId;

Obligations::Obligations(const Subject& subject, const std::vector<Fact>& facts, Solver& solver)
    : system_(subject.model, subject.faults, narrowed(subject.widest, facts), subject.counting),
      clauses_(system_.terms, solver),
      event_(solver.declare()) {
  for (VariableId v = 0; v < system_.space.size(); ++v) {
    for (const system::Value::Case& each : system_.next[v].cases()) {
      if (std::ranges::binary_search(subject.widest[v], each.value)) continue;
      throw Contradiction("the relation leaves its domains at: " + system_.space.name(v));
    }
  }
  clauses_.require(system_.now.typing);
  clauses_.require(system_.settled);
  clauses_.require_if(event_, system_.one_event);
}

void Obligations::demand(const Fact& fact) {
  clauses_.require(term_of(system_.terms, system_.now.state, fact));
}

void Obligations::demand_if(Literal condition, const Fact& fact) {
  clauses_.require_if(condition, term_of(system_.terms, system_.now.state, fact));
}

Term Obligations::lost(const Fact& fact) {
  return !term_of(system_.terms, system_.next, fact);
}

Obligations::Bad Obligations::bad(const AskedProperty& asked) {
  if (!speaks_of_goal(asked.property)) return {system_.broken_on_the_way(asked.property), true};
  const system::RestBreach breach = system_.broken_at_rest(asked);
  return {system_.terms.either(breach.broken, breach.unfinished), false};
}

bool Obligations::begins_bad(const AskedProperty& asked) {
  return !speaks_of_goal(asked.property) && system_.broken_at_first(asked.property) != system::never;
}

Outcome find_hole(const Subject& subject, const AskedProperty& asked, const std::vector<Fact>& facts, Solver& solver,
                  const Bounds& bounds) {
  Obligations obligations(subject, facts, solver);
  System& system = obligations.system();
  const bool begins_with_facts = std::all_of(facts.begin(), facts.end(), [&](const Fact& fact) {
    return term_of(system.terms, system.first.end, fact) == system::always;
  });
  bool begins_within = true;
  for (VariableId v = 0; v < system.space.size(); ++v) {
    begins_within =
        begins_within && std::ranges::binary_search(system.domains[v], system.first.end[v].cases().front().value);
  }
  if (obligations.begins_bad(asked) || !begins_with_facts || !begins_within) return Outcome::satisfiable;
  Allowance allowance(solver, bounds);
  std::vector<Term> lost{obligations.unfinished()};
  for (const Fact& fact : facts) {
    obligations.demand(fact);
    lost.push_back(obligations.lost(fact));
  }
  const Obligations::Bad bad = obligations.bad(asked);
  try {
    for (const Obligations::Bad& each : {Obligations::Bad{system.terms.any(lost), true}, bad}) {
      if (each.term == system::never) continue;
      std::vector<Literal> assumed{obligations.literal_of(each.term)};
      if (each.on_the_way) assumed.push_back(obligations.event());
      if (allowance.can(assumed)) return Outcome::satisfiable;
    }
  } catch (const Unanswered&) {
    return Outcome::unknown;
  }
  return Outcome::unsatisfiable;
}

}  // namespace cairn::solver

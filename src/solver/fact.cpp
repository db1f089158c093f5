#include "solver/fact.hpp"

#include <algorithm>
#include <utility>

namespace cairn::solver {

using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

Term holds_in(Terms& terms, const SymbolicState& s, const Within& claim) {
  std::vector<Term> cases;
  for (const std::int64_t value : claim.values) cases.push_back(s[claim.variable].is(value));
  return terms.any(cases);
}

// Calls visit(before, after) for each step that another waits for.
template <class Visit>
void for_each_ordering(const system::Space& space, Visit visit) {
  for (std::uint32_t s = 0; s < space.steps(); ++s) {
    for (const StepId before : space.model()[StepId(s)].after) visit(before, StepId(s));
  }
}

// One unit for each cable that is broken, and for each break that is left.
Term spent(Terms& terms, const SymbolicState& s) {
  const system::Space& space = s.space();
  std::vector<Term> units;
  for (std::uint32_t c = 0; c < space.cables(); ++c) units.push_back(s.broken(CableId(c)));
  const system::Value& left = s[space.left(system::Fault::cable_break)];
  for (std::int64_t n = 1; n <= space.budget().cable_breaks; ++n) {
    units.push_back(!less(terms, left, system::Value(n)));
  }
  return !terms.at_least(units, space.budget().cable_breaks + 1);
}

Term in_order(Terms& terms, const SymbolicState& s) {
  std::vector<Term> all;
  for_each_ordering(s.space(),
                    [&](StepId before, StepId after) { all.push_back(terms.implies(s.done(after), s.done(before))); });
  return terms.all(all);
}

Term claim_of(Terms& terms, const SymbolicState& s, const Fact& fact) {
  switch (fact.kind) {
    case Fact::Kind::within: {
      std::vector<Term> claims;
      for (const Within& claim : claims_of(fact)) claims.push_back(holds_in(terms, s, claim));
      return terms.all(claims);
    }
    case Fact::Kind::law:
      return law(terms, s, static_cast<system::Law>(fact.place));
    case Fact::Kind::order:
      return in_order(terms, s);
    case Fact::Kind::spent:
      return spent(terms, s);
  }
  return system::never;
}

}  // namespace

Fact within(Within holds, std::vector<Within> given) {
  Fact fact;
  fact.given = std::move(given);
  fact.holds = std::move(holds);
  return fact;
}

std::vector<Within> claims_of(const Fact& fact) {
  std::vector<Within> claims{fact.holds};
  claims.insert(claims.end(), fact.also.begin(), fact.also.end());
  return claims;
}

bool bounds_values(const Fact& fact) {
  return fact.kind == Fact::Kind::within && fact.given.empty();
}

bool counts_faults(const system::Space& space, const Fact& fact) {
  const auto is_budget = [&](const Within& claim) {
    return space[claim.variable].kind == system::Variable::Kind::left;
  };
  if (fact.kind == Fact::Kind::spent || std::any_of(fact.given.begin(), fact.given.end(), is_budget)) return true;
  const std::vector<Within> claims = claims_of(fact);
  return fact.kind == Fact::Kind::within && std::any_of(claims.begin(), claims.end(), is_budget);
}

system::Domains narrowed(system::Domains widest, const std::vector<Fact>& facts) {
  for (const Fact& fact : facts) {
    if (!bounds_values(fact)) continue;
    for (const Within& claim : claims_of(fact)) {
      std::erase_if(widest[claim.variable], [&](std::int64_t value) {
        return !std::binary_search(claim.values.begin(), claim.values.end(), value);
      });
    }
  }
  return widest;
}

Term term_of(Terms& terms, const SymbolicState& s, const Fact& fact) {
  std::vector<Term> given;
  for (const Within& condition : fact.given) given.push_back(holds_in(terms, s, condition));
  return terms.implies(terms.all(given), claim_of(terms, s, fact));
}

namespace {

bool holds_in(const Values& state, const Within& claim) {
  return std::binary_search(claim.values.begin(), claim.values.end(), state[claim.variable]);
}

}  // namespace

bool fails_in(Terms& terms, const system::Space& space, const Fact& fact, const Values& state) {
  const auto holds = [&](const Within& claim) { return holds_in(state, claim); };
  if (!std::all_of(fact.given.begin(), fact.given.end(), holds)) return false;
  switch (fact.kind) {
    case Fact::Kind::within:
      return !holds(fact.holds) || !std::all_of(fact.also.begin(), fact.also.end(), holds);
    case Fact::Kind::law:
    case Fact::Kind::order:
    case Fact::Kind::spent:
      break;
  }
  SymbolicState constant(space);
  for (system::VariableId v = 0; v < space.size(); ++v) constant[v] = system::Value(state[v]);
  return claim_of(terms, constant, fact) == system::never;
}

bool fails_where(const system::Space& space, const Fact& fact, const Known& known) {
  const auto all_values = [&](const Within& claim, bool are_in) {
    const auto values = known.find(claim.variable);
    return values != known.end() && std::all_of(values->second.begin(), values->second.end(), [&](std::int64_t value) {
             return std::binary_search(claim.values.begin(), claim.values.end(), value) == are_in;
           });
  };
  const bool applies =
      std::all_of(fact.given.begin(), fact.given.end(), [&](const Within& claim) { return all_values(claim, true); });
  if (!applies) return false;
  if (fact.kind == Fact::Kind::within) {
    return all_values(fact.holds, false) || std::any_of(fact.also.begin(), fact.also.end(),
                                                        [&](const Within& claim) { return all_values(claim, false); });
  }
  if (fact.kind == Fact::Kind::order) {
    bool fails = false;
    for_each_ordering(space, [&](StepId before, StepId after) {
      fails = fails || (all_values({space.done(after), {1}}, true) && all_values({space.done(before), {0}}, true));
    });
    return fails;
  }
  return false;
}

}  // namespace cairn::solver

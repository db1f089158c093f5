#include "solver/fact.hpp"

#include <algorithm>

namespace cairn::solver {

using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

Term within(Terms& terms, const SymbolicState& s, const Within& claim) {
  std::vector<Term> cases;
  for (const std::int64_t value : claim.values) cases.push_back(s[claim.variable].is(value));
  return terms.any(cases);
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

Term claim_of(Terms& terms, const SymbolicState& s, const Fact& fact) {
  switch (fact.kind) {
    case Fact::Kind::within:
      return within(terms, s, fact.holds);
    case Fact::Kind::differ:
      return !equal(terms, s[fact.holds.variable], s[fact.other]);
    case Fact::Kind::law:
      return law(terms, s, static_cast<system::Law>(fact.place));
    case Fact::Kind::spent:
      return spent(terms, s);
  }
  return system::never;
}

}  // namespace

Term term_of(Terms& terms, const SymbolicState& s, const Fact& fact) {
  std::vector<Term> given;
  for (const Within& condition : fact.given) given.push_back(within(terms, s, condition));
  return terms.implies(terms.all(given), claim_of(terms, s, fact));
}

bool fails_where(const Fact& fact, const Known& known) {
  const auto all_values = [&](const Within& claim, bool are_in) {
    const auto values = known.find(claim.variable);
    return values != known.end() && std::all_of(values->second.begin(), values->second.end(), [&](std::int64_t value) {
             return std::binary_search(claim.values.begin(), claim.values.end(), value) == are_in;
           });
  };
  const bool applies =
      std::all_of(fact.given.begin(), fact.given.end(), [&](const Within& claim) { return all_values(claim, true); });
  if (!applies) return false;
  if (fact.kind == Fact::Kind::within) return all_values(fact.holds, false);
  if (fact.kind != Fact::Kind::differ) return false;
  const auto one = known.find(fact.holds.variable);
  const auto other = known.find(fact.other);
  return one != known.end() && other != known.end() && one->second.size() == 1 && one->second == other->second;
}

}  // namespace cairn::solver

#include "solver/fact.hpp"

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

}  // namespace cairn::solver

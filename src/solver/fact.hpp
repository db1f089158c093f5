/// \file
/// A fact: something simple that may hold in every settled state that can be reached.
#pragma once

#include <cstdint>
#include <map>
#include <vector>

#include "system/variables.hpp"

namespace cairn::solver {

/// That a state variable has one of some values.
struct Within {
  system::VariableId variable = 0;
  std::vector<std::int64_t> values;  ///< ascending, none twice
  auto operator<=>(const Within&) const = default;
};

/// Where all of `given` hold, so does what the kind says.
struct Fact {
  enum class Kind : std::uint8_t {
    within,  ///< `holds`, and all of `also`
    law,     ///< the system::Law `place`
    order,   ///< 5.a: no step is done unless all that it waits for are done
    spent,   ///< 5.c.1: the cables that are broken and the breaks that are left are no more than the budget
  };
  std::vector<Within> given;
  Kind kind = Kind::within;
  Within holds;
  std::uint32_t place = 0;
  std::vector<Within> also{};
  auto operator<=>(const Fact&) const = default;
};

/// A fact of kind `within`.
[[nodiscard]] Fact within(Within holds, std::vector<Within> given = {});

/// All that a fact of kind `within` claims: `holds` first, then `also`.
[[nodiscard]] std::vector<Within> claims_of(const Fact& fact);

/// The fact bounds what variables are worth, under no condition.
[[nodiscard]] bool bounds_values(const Fact& fact);

/// The fact speaks of how many faults are left.
[[nodiscard]] bool counts_faults(const system::Space& space, const Fact& fact);

/// `widest`, but of the variables that the facts bound by themselves only the values that they allow.
[[nodiscard]] system::Domains narrowed(system::Domains widest, const std::vector<Fact>& facts);

/// The fact as a term over `s`.
[[nodiscard]] system::Term term_of(system::Terms& terms, const system::SymbolicState& s, const Fact& fact);

/// A state: the value of each variable, by VariableId.
using Values = std::vector<std::int64_t>;

/// That the fact fails in the state. \param terms  any pool: what is made of constants takes no room in it
[[nodiscard]] bool fails_in(system::Terms& terms, const system::Space& space, const Fact& fact, const Values& state);

/// What is known of a state: per variable the values that it may have, ascending; of the others nothing.
using Known = std::map<system::VariableId, std::vector<std::int64_t>>;

/// That the fact fails in every state of which this is known.
[[nodiscard]] bool fails_where(const system::Space& space, const Fact& fact, const Known& known);

}  // namespace cairn::solver

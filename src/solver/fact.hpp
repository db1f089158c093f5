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
    within,  ///< `holds`
    differ,  ///< the variable of `holds` has another value than `other`
    law,     ///< the system::Law `place`
    spent,   ///< 5.c.1: the cables that are broken and the breaks that are left are no more than the budget
  };
  std::vector<Within> given;
  Kind kind = Kind::within;
  Within holds;
  system::VariableId other = 0;
  std::uint32_t place = 0;
  auto operator<=>(const Fact&) const = default;
};

/// The fact as a term over `s`.
[[nodiscard]] system::Term term_of(system::Terms& terms, const system::SymbolicState& s, const Fact& fact);

/// What is known of a state: per variable the values that it may have, ascending; of the others nothing.
using Known = std::map<system::VariableId, std::vector<std::int64_t>>;

/// That the fact fails in every state of which this is known.
[[nodiscard]] bool fails_where(const Fact& fact, const Known& known);

}  // namespace cairn::solver

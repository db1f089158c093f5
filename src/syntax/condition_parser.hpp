/// \file
/// Conditions (semantics 8, format "Conditions") as text, with the place of every part.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "cairn/condition.hpp"
#include "syntax/reference.hpp"

namespace cairn::syntax {

/// Atoms joined by `not`, `and`, `or` and `implies`.
template <class Atom>
struct Formula {
  enum class Join : std::uint8_t { atom, negation, all, any, implies };
  Join join = Join::atom;
  Atom atom;                   ///< where `join` is atom
  std::vector<Formula> parts;  ///< else; one of a negation, two of an implication, two or more of the others
};

/// A word and what it takes, names not yet looked up.
struct AtomDraft {
  Condition::Kind kind = Condition::Kind::up;
  std::vector<Reference> references;
  Sign sign = Sign::equal;
  Value value;             ///< number, priority
  Side side = Side::none;  ///< side
};

/// One side of a comparison in `assume`.
struct OperandDraft {
  std::optional<Value> value;   ///< an integer or a parameter
  std::optional<Name> address;  ///< address(DEVICE)
};

struct ComparisonDraft {
  OperandDraft left;
  Sign sign = Sign::equal;
  OperandDraft right;
};

using ConditionDraft = Formula<AtomDraft>;
using AssumptionDraft = Formula<ComparisonDraft>;

/// What no condition may exceed, so that everything that walks one may recurse.
inline constexpr int deepest_condition = 200;

/// The condition that `node` is; nothing after reporting its first syntax error, where it stands.
std::optional<ConditionDraft> parse_condition(const Node& node, std::string_view what, Problems& problems);
/// The same for `assume`.
std::optional<AssumptionDraft> parse_assumption(const Node& node, Problems& problems);

}  // namespace cairn::syntax

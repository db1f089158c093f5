/// \file
/// Semantics 8, Conditions, as terms.
#pragma once

#include "cairn/condition.hpp"
#include "system/derived.hpp"

namespace cairn::system {

/// That `condition` holds in `s`, of which `derived` was derived.
[[nodiscard]] Term holds(Terms& terms, const SymbolicState& s, const Derived& derived, const Condition& condition);

/// `saved(d)`: startup equals running for priority, enabled and sides, running sides equal operational sides, and
/// next_number equals number.
[[nodiscard]] Term saved(Terms& terms, const SymbolicState& s, DeviceId d);

}  // namespace cairn::system

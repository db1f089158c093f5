/// \file
/// Semantics 8, Conditions.
#pragma once

#include "cairn/condition.hpp"
#include "semantics/derived.hpp"

namespace cairn::semantics {

/// Whether `condition` holds in `s`, of which `derived` was derived.
[[nodiscard]] bool holds(const World& world, const State& s, const Derived& derived, const Condition& condition);

/// `saved(d)`: startup equals running for priority, enabled and sides, running sides equal operational sides, and
/// next_number equals number.
[[nodiscard]] bool saved(const World& world, const State& s, DeviceId d);

}  // namespace cairn::semantics

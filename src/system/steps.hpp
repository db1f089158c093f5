/// \file
/// Semantics 5.d, the table of steps, as terms: when a device would reject a step, and what it does else.
#pragma once

#include "system/derived.hpp"

namespace cairn::system {

/// 5.h: d is reachable via v.
[[nodiscard]] Term reachable(Terms& terms, const SymbolicState& s, const Derived& derived, DeviceId d, DeviceId v);

/// 5.d, right column: the step would be refused in `s`.
[[nodiscard]] Term refused(Terms& terms, const SymbolicState& s, const Derived& derived, StepId id);

/// 5.d, middle column: the state after the step where it is not refused, but for its becoming done.
[[nodiscard]] SymbolicState effect(Terms& terms, const SymbolicState& before, const Derived& derived, StepId id);

/// 5.f: where `condition` holds, the priority of d and its ports' `enabled` and `side` in startup become the platform's
/// factory values.
void reset_startup(Terms& terms, SymbolicState& s, DeviceId d, Term condition);

}  // namespace cairn::system

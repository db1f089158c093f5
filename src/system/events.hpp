/// \file
/// Semantics 5, Events, as terms: which may happen and what they do.
#pragma once

#include <optional>
#include <vector>

#include "cairn/verdict.hpp"
#include "system/derived.hpp"

namespace cairn::system {

/// 5.a, but for the condition of an `await`: not done, everything it must follow done, not halted.
[[nodiscard]] Term has_turn(Terms& terms, const SymbolicState& s, StepId step);
/// 5.a: the step is ready.
[[nodiscard]] Term ready(Terms& terms, const SymbolicState& s, const Derived& derived, StepId step);

/// Every event of the space that its budget allows for at all: steps in file order, starts in the site's order, then
/// faults kind by kind.
[[nodiscard]] std::vector<Event> events_of(const Space& space);

/// 5.a to 5.c: the event may happen in `s`, which is settled.
[[nodiscard]] Term may_happen(Terms& terms, const SymbolicState& s, const Derived& derived, const Event& event);

/// The fault kind whose budget the event spends, or nothing.
[[nodiscard]] std::optional<Fault> spends(const Event& event);

/// The state that the event leaves, before any pass. A cold start (6.a) is no event of this kind.
[[nodiscard]] SymbolicState take(Terms& terms, const SymbolicState& before, const Derived& derived, const Event& event);

/// 5.b, 5.f: the start of d completes, but for the order of seniority and its leader.
void come_up(Terms& terms, SymbolicState& s, DeviceId d);

/// 5.j: every step is done and the procedure has not halted.
[[nodiscard]] Term complete(Terms& terms, const SymbolicState& s);
/// 5.j, of a settled state: no step is ready and no device is starting.
[[nodiscard]] Term at_rest(Terms& terms, const SymbolicState& s, const Derived& derived);

}  // namespace cairn::system

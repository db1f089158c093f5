/// \file
/// Semantics 5, Events: which may happen, which a device refuses, and what they do.
#pragma once

#include <algorithm>
#include <vector>

#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"
#include "semantics/derived.hpp"

namespace cairn::semantics {

/// The step is not done, and may yet be (5.d, 5.i).
[[nodiscard]] inline bool pending(const State& s, StepId step) {
  return !s.halted && !s.is_done(step);
}

/// One of the steps is.
[[nodiscard]] inline bool any_pending(const State& s, const std::vector<StepId>& steps) {
  return std::any_of(steps.begin(), steps.end(), [&](StepId step) { return pending(s, step); });
}

/// 5.a, but for the condition of an `await`: not done, everything it must follow done, not halted.
[[nodiscard]] bool has_turn(const World& world, const State& s, StepId step);

/// 5.a: the step is ready.
[[nodiscard]] bool ready(const World& world, const State& s, const Derived& derived, StepId step);

/// 5.h: d is reachable via v.
[[nodiscard]] bool reachable(const State& s, const Derived& derived, DeviceId d, DeviceId v);

/// 5.d, right column: why the step would be refused, or Refusal::none.
[[nodiscard]] Refusal refusal_of(const World& world, const State& s, const Derived& derived, StepId id);

/// Every event that may happen in the settled state `s`, in the order of Event: steps in file order, starts in the
/// site's order, then faults kind by kind. `out` is cleared first.
void events_in(const World& world, const State& s, const Derived& derived, std::vector<Event>& out);

/// Lets an event that may happen take effect on `s`, of which `derived` was derived; `s` is left unsettled.
/// Returns why a step was refused. A cold start (6.a) is no event of this kind: see properties.hpp.
Refusal take(const World& world, State& s, const Derived& derived, const Event& event);

/// 5.b, 5.f: the start of d completes, but for the order of seniority and, where it is late, its leader.
void come_up(const World& world, State& s, DeviceId d);

/// 5.j: every step is done and the procedure has not halted.
[[nodiscard]] bool complete(const State& s);

/// 5.j, of a settled state whose events are `events`: no step is ready and no device is starting.
[[nodiscard]] bool at_rest(const State& s, const std::vector<Event>& events);

}  // namespace cairn::semantics

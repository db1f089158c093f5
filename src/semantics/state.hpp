/// \file
/// Semantics 2, State: the initial one, and the order of seniority. (The state itself is public: cairn/state.hpp.)
#pragma once

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::semantics {

/// Semantics 2, Initial state, before it settles; `budget` is what may strike (2.e).
[[nodiscard]] State initial_state(const World& world, const FaultBudget& budget);

/// 2.a `senior(d, e)`: d has been up longer than e.
[[nodiscard]] inline bool senior(const State& s, DeviceId d, DeviceId e) {
  return s[d].seniority != 0 && s[d].seniority < s[e].seniority;
}

/// 4.1: d is up and has no leader.
[[nodiscard]] inline bool fresh(const State& s, DeviceId d) {
  return !s[d].leader;
}

/// 6.2: d leads itself.
[[nodiscard]] inline bool leads(const State& s, DeviceId d) {
  return s[d].leader == d;
}

/// d is up or held: its power is on and its start is complete.
[[nodiscard]] inline bool running(const State& s, DeviceId d) {
  return s[d].power == Power::up || s[d].power == Power::held;
}

/// 5.b: every other device that is up or held becomes senior to d, d to none.
void become_junior(State& s, DeviceId d);

/// d goes down to `power` (off or starting): it has no leader any more and leaves the order of seniority (2.a).
void go_down(State& s, DeviceId d, Power power);

}  // namespace cairn::semantics

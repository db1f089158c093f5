/// \file
/// Semantics 6, Properties: what breaks each of them.
#pragma once

#include <optional>
#include <vector>

#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"
#include "semantics/settle.hpp"

namespace cairn::semantics {

/// 6.1 no-split or 6.4 no-clash, in one state; the other properties are broken by no state of this kind.
[[nodiscard]] std::optional<Breach> broken_in(const World& world, const State& s, const Derived& derived,
                                              Property property);

/// 6.2 primary-stays or 6.3 members-stay, by what settling is about to do in `s`.
[[nodiscard]] std::optional<Breach> broken_by(const World& world, const State& s, const PassPlan& plan,
                                              Property property);

/// 6.2, 6.3 or 6.5 no-refusal, by an event taken in `s` (settled) that was refused for `refusal`, or not.
[[nodiscard]] std::optional<Breach> broken_by(const World& world, const State& s, const Event& event, Refusal refusal,
                                              Property property);

/// 6.b: which part of the goal fails first, and at which device; nothing where the goal holds.
[[nodiscard]] std::optional<Breach> goal_missed(const World& world, const State& s, const Derived& derived);

/// 6.6 reaches-goal, in a state at rest.
[[nodiscard]] std::optional<Breach> broken_at_rest(const World& world, const State& s, const Derived& derived);

/// 6.a: power fails and returns for all at once, but for the settling that follows.
void cold_start(const World& world, State& s);

/// 6.7 survives-cold-start, of a complete state at rest: `s` becomes the settled state after a cold start.
[[nodiscard]] std::optional<Breach> broken_by_cold_start(const World& world, State& s, Scratch& scratch,
                                                         Watcher& watcher);

/// 6.8: the devices of goal.stack are together; else two of them that are not.
[[nodiscard]] std::optional<Breach> goal_stack_apart(const World& world, const Derived& derived);

/// The cables that a loss may strike: plugged and unbroken.
[[nodiscard]] std::vector<CableId> breakable(const State& s);

/// 6.2, vacuity (6.e): a device of `keep` leads.
[[nodiscard]] bool a_kept_device_leads(const World& world, const State& s);

}  // namespace cairn::semantics

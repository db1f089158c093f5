/// \file
/// Semantics 5.d, the table of steps: what each verb does to a state. (When it is refused: events.hpp.)
#pragma once

#include "semantics/derived.hpp"

namespace cairn::semantics {

/// The effect of a step that is not refused, but for its becoming done.
void take_effect(const World& world, State& s, const Derived& derived, StepId id);

/// 5.f: the priority of d and its ports' `enabled` and `side` in startup become the platform's factory values.
void reset_startup(const World& world, State& s, DeviceId d);

/// 5.g: the devices that an `apply` or a `save` handles.
[[nodiscard]] std::vector<DeviceId> handled(const Derived& derived, const Step& step);

}  // namespace cairn::semantics

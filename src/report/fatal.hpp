/// \file
/// The moment of a refutation at which the property breaks, looked at closely.
#pragma once

#include "cairn/walk.hpp"
#include "semantics/world.hpp"

namespace cairn::report {

/// The state in which `breach` shows, or which settling is about to change by it: of the last moment of `walk`, or of
/// its settling at the start where it has no moments.
[[nodiscard]] const State& fatal_state(const semantics::World& world, const Walk& walk, const Breach& breach);

/// The leader that wins the contest in which `loser` goes down, or nothing where none is in its class.
[[nodiscard]] DeviceId winner_over(const semantics::World& world, const State& s, DeviceId loser);

/// The settled state before the last event; of a loss of several cables at once, before the first of them.
[[nodiscard]] const State& state_before_end(const Walk& walk, const Breach& breach);

}  // namespace cairn::report

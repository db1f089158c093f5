/// \file
/// What 6.6 to 6.8 ask of a state at rest, and the events that show how it fails.
#pragma once

#include <optional>

#include "explore/limits.hpp"
#include "semantics/properties.hpp"

namespace cairn::explore {

/// Of a state at rest: the events after it that end a refutation of `asked` (none for reaches-goal), or nothing where
/// it stands the test. `watcher` sees the settling after a cold start. \throws Stopped  when `ask` answered in the
/// middle of a search
[[nodiscard]] std::optional<Trace> fatal_tail(const semantics::World& world, const State& s,
                                              const semantics::Derived& derived, const AskedProperty& asked,
                                              semantics::Watcher& watcher, const AskLimits& ask);

/// The most events that fatal_tail can answer for `asked`.
[[nodiscard]] std::size_t longest_tail(const semantics::World& world, const AskedProperty& asked);

}  // namespace cairn::explore

/// \file
/// What changed because of an event: links, roles, restarts, numbers, and settings that were lost. Nothing else.
#pragma once

#include <string>
#include <vector>

#include "cairn/walk.hpp"
#include "semantics/world.hpp"

namespace cairn::report {

/// One phrase each, in the order in which it comes about. Empty where the event says it all.
[[nodiscard]] std::vector<std::string> changes(const semantics::World& world, const Moment& moment);

/// What settling changed, pass by pass. `from` is the state before the first pass.
[[nodiscard]] std::vector<std::string> settling(const semantics::World& world, const State& from,
                                                const std::vector<Pass>& passes);

}  // namespace cairn::report

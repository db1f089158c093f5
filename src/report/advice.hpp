/// \file
/// The way out of a refutation, where the cause makes it plain. Advice is a guess at what was meant; the next proof
/// judges it.
#pragma once

#include <string>
#include <vector>

#include "cairn/walk.hpp"
#include "semantics/world.hpp"

namespace cairn::report {

/// Whole sentences, the likeliest first, at most three; none where nothing is plain. `breach` is that of `walk`.
[[nodiscard]] std::vector<std::string> ways_out(const semantics::World& world, const Walk& walk, const Breach& breach);

}  // namespace cairn::report

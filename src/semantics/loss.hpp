/// \file
/// Semantics 6.8, tolerates-loss: which k cables, lost at once, take the goal's stack apart.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "semantics/derived.hpp"

namespace cairn::semantics {

/// What the search for a fatal loss found.
struct Loss {
  bool interrupted = false;                   ///< The search was ended before it could tell.
  std::optional<std::vector<CableId>> fatal;  ///< In the site's order; nothing where every loss is survived.
};

/// Of a complete state at rest: tries every set of k cables that are plugged and unbroken (all of them where there are
/// fewer) in the site's order, and answers the first whose loss takes goal.stack apart right after, before any pass.
/// `interrupted` is asked before each set; the search ends when it answers true.
[[nodiscard]] Loss find_fatal_loss(const World& world, const State& s, std::int64_t k,
                                   const std::function<bool()>& interrupted);

}  // namespace cairn::semantics

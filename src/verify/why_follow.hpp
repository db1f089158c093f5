/// \file
/// A refutation followed in a changed procedure, as far as it goes.
#pragma once

#include <vector>

#include "cairn/why.hpp"

namespace cairn::verify {

/// True when the run that breaks `asked` in `model` no longer does so with `changes`: its events in order, a step that
/// moved when its turn comes at its new place, and what cannot happen left out. A property of the goal is judged where
/// the run comes to rest.
[[nodiscard]] bool avoids(const Model& model, const std::vector<Change>& changes, const FaultBudget& faults,
                          const PropertyVerdict& refuted);

}  // namespace cairn::verify

/// \file
/// Format "Procedure", its steps: verbs, what they take, and `any-order`.
#pragma once

#include "syntax/draft.hpp"

namespace cairn::syntax {

/// Reads a list of steps; appends every step to `steps`, depth first, and says in the Block how they are ordered.
[[nodiscard]] Block read_steps(const Node& node, std::vector<StepDraft>& steps, Problems& problems);

}  // namespace cairn::syntax

/// \file
/// Makes a model that shows something as small as it can be while it still shows it.
#pragma once

#include <functional>

#include "differential/draft.hpp"

namespace cairn::differential {

/// Whether a draft still shows what is looked for.
using Shows = std::function<bool(const Draft&)>;

/// No single simplification of the result shows it any more. Demands shows(draft).
Draft shrink(Draft draft, const Shows& shows);

/// Writes the draft as a model file with `why` as a comment on top, and returns its path.
std::string keep_found(const Draft& draft, const std::string& directory, const std::string& name,
                       const std::string& why);

}  // namespace cairn::differential

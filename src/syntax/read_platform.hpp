/// \file
/// Format "Platform": a node to a platform.
#pragma once

#include "syntax/draft.hpp"

namespace cairn::syntax {

/// Reads what can be read and reports the rest.
[[nodiscard]] PlatformDraft read_platform(const Node& node, Problems& problems);

}  // namespace cairn::syntax

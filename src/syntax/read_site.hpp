/// \file
/// Format "Site": a node to a draft of a site.
#pragma once

#include "syntax/draft.hpp"

namespace cairn::syntax {

/// Reads what can be read and reports the rest. The draft refers to `node`, which must outlive it.
[[nodiscard]] SiteDraft read_site(const Node& node, Problems& problems);

}  // namespace cairn::syntax

/// \file
/// Format "Procedure" and "Template": a node to a draft of a procedure.
#pragma once

#include "syntax/draft.hpp"

namespace cairn::syntax {

/// Reads what can be read and reports the rest. The draft refers to `node`, which must outlive it.
[[nodiscard]] ProcedureDraft read_procedure(const Node& node, Problems& problems);

}  // namespace cairn::syntax

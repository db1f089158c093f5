/// \file
/// Whether a file is text at all, asked before it is parsed.
#pragma once

#include "syntax/problems.hpp"
#include "syntax/source.hpp"

namespace cairn::syntax {

/// False after reporting the first byte that no model has: what is no UTF-8, a control character (YAML 1.2.2,
/// sections 5.1 and 5.2), or a carriage return without a line feed, which the library does not count as a line break.
[[nodiscard]] bool is_text(const Source& source, Problems& problems);

}  // namespace cairn::syntax

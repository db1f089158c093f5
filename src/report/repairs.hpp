/// \file
/// How to avoid refutations: the changes that were found, in words.
#pragma once

#include <string>
#include <vector>

#include "cairn/why.hpp"
#include "report/layout.hpp"

namespace cairn::report {

/// "set s4 to 12", "move s3 behind s5", "leave out s8", joined by "and".
[[nodiscard]] std::string changes_in_words(const Model& model, const std::vector<Change>& changes);

/// One section, where something is refuted.
void tell_repairs(Page& page, const Model& model, const Why& why);

}  // namespace cairn::report

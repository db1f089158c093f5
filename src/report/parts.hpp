/// \file
/// What parts of a procedure are called.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cairn/why.hpp"

namespace cairn::report {

/// "await", "check", "save", "ordering"; "step" of one that does anything else.
[[nodiscard]] std::string_view kind_of(const Model& model, const Part& part);

/// "s3"; of an ordering "s2 before s3".
[[nodiscard]] std::string name_in(const Model& model, const Part& part);
[[nodiscard]] std::vector<std::string> names_in(const Model& model, const std::vector<Part>& parts);

/// Where it stands in the file of the procedure: one line a step, the earlier step's first, each line once. None where
/// the model was not read from a file.
[[nodiscard]] std::vector<int> lines_of(const Model& model, const Part& part);

}  // namespace cairn::report

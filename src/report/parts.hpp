/// \file
/// What parts of a procedure are called.
#pragma once

#include <string>
#include <vector>

#include "cairn/why.hpp"

namespace cairn::report {

/// "s3"; of an ordering "s2 before s3".
[[nodiscard]] std::string name_in(const Model& model, const Part& part);
[[nodiscard]] std::vector<std::string> names_in(const Model& model, const std::vector<Part>& parts);

}  // namespace cairn::report

/// \file
/// From a template and one choice of what it leaves open to the plain model that it means (semantics 9.a, 9.b).
#pragma once

#include "cairn/model.hpp"

namespace cairn::unknowns {

/// The template with every value in its place. A condition is told as the template has it.
[[nodiscard]] Model instantiate(const Model& model, const Instance& instance);

}  // namespace cairn::unknowns

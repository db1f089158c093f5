/// \file
/// What the answer has cost, and what reductions have spared.
#pragma once

#include "cairn/verdict.hpp"
#include "report/layout.hpp"

namespace cairn::report {

/// A table of the properties: states, and seconds by what they went into; then what solvers did and what was spared.
void tell_cost(Page& page, const Report& report);

}  // namespace cairn::report

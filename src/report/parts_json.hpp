/// \file
/// Parts of a procedure, and what becomes of verdicts without them, as JSON (docs/cli.md, why).
#pragma once

#include "cairn/why.hpp"
#include "report/json.hpp"

namespace cairn::report {

/// Which part it is.
[[nodiscard]] Json json_of(const Model& model, const Part& part);

/// Adds the standing, and what is told of the outcome beside it: the events, the reason, of what the proof is empty.
/// `variant` is the model without the parts.
void add_outcome(Json& json, const Model& variant, const LeftOut& left_out);

}  // namespace cairn::report

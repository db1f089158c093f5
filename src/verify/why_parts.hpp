/// \file
/// What proved properties owe to the parts of the procedure, found by doing without.
#pragma once

#include <vector>

#include "cairn/why.hpp"
#include "verify/why_trials.hpp"
#include "verify/why_uses.hpp"

namespace cairn::verify {

/// Fills `parts`, `one_of` and `facts` of every property that `proof`, the report on `model` itself, has proved.
/// `properties` stand as in `proof`.
void try_parts(const Model& model, const Report& proof, const std::vector<Uses>& uses, const Trials& trials,
               std::vector<PropertyWhy>& properties);

}  // namespace cairn::verify

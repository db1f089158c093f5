/// \file
/// What proved properties owe to the parts of the procedure, found by doing without.
#pragma once

#include <vector>

#include "cairn/why.hpp"
#include "verify/why_trials.hpp"
#include "verify/why_uses.hpp"

namespace cairn::verify {

/// Fills `parts` and `one_of` of every property that `proof`, the report on `model` itself, has proved. `properties`
/// stand as in `proof`.
void try_parts(const Model& model, const Report& proof, const Trials& trials, std::vector<PropertyWhy>& properties);

/// Fills `facts` of the property whose proof uses them, and tells `used` from `idle`; after `try_parts`.
void tell_uses(const Uses& uses, std::vector<PropertyWhy>& properties);

}  // namespace cairn::verify

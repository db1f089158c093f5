/// \file
/// What a verdict rests on that the site file does not state.
#pragma once

#include <vector>

#include "cairn/model.hpp"
#include "cairn/verdict.hpp"

namespace cairn::verify {

/// Per device, in the site's order, what came from the platform's factory values; devices without such are left out.
[[nodiscard]] std::vector<FactoryValues> factory_values(const Model& model);

}  // namespace cairn::verify

/// \file
/// Section 6: what must not happen.
#pragma once

#include "cairn/property.hpp"
#include "naive/events.hpp"

namespace cairn::naive {

/// 6.1 to 6.6: the happening breaks the property, in one of the states that it runs through (4.6) or by what it does.
bool breaks(const Model& model, Property property, const Happening& happening);

/// 6.b
bool goal_holds(const Model& model, const World& world);

/// 6.7: the complete state at rest does not survive a cold start.
bool dies_of_cold_start(const Model& model, const World& at_rest);

/// 6.8: the ways to lose k cables, or all where there are fewer, as sets in the order of the file.
std::vector<std::vector<CableId>> losses(const Model& model, const World& at_rest, std::int64_t k);

/// 6.8: the devices of goal.stack are not together right after the loss.
bool loss_cuts(const Model& model, const World& at_rest, const std::vector<CableId>& loss);

}  // namespace cairn::naive

/// \file
/// Section 4: how a stack settles.
#pragma once

#include "naive/world.hpp"

namespace cairn::naive {

/// One pass (4.a), computed from `before` as it is.
struct Pass {
  World before;
  World after;
  std::set<DeviceId> held;       ///< 4.3.a
  std::set<DeviceId> restarted;  ///< 4.3.b

  [[nodiscard]] bool unsettled() const { return !held.empty() || !restarted.empty(); }  ///< 4.5.a
};

/// 4.4: d outranks e.
bool outranks(const Model& model, const World& world, DeviceId d, DeviceId e);

/// Every pass until the state is settled (4.5); the last one held and restarted nothing.
std::vector<Pass> settle(const Model& model, const World& world);

}  // namespace cairn::naive

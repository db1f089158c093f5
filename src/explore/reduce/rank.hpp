/// \file
/// Which keys of the election order (semantics 4.4) can come to decide between two devices.
#pragma once

#include <cstdint>
#include <vector>

#include "explore/domains.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Read off the model alone: holds in every state that can be reached.
class Rank {
 public:
  /// \param cold_start  whether a cold start (6.a) is one of the events
  Rank(const semantics::World& world, bool cold_start);

  /// True only where it never makes a difference to who outranks whom that devices, and numbers, stand for others.
  [[nodiscard]] bool sees_nothing_of(const Swap& swap) const;

 private:
  [[nodiscard]] bool sees_nothing_of(const Swap& swap, DeviceId d, DeviceId e) const;
  [[nodiscard]] bool may_be_as_senior(DeviceId d, DeviceId e) const;
  [[nodiscard]] bool order_of_numbers_stays(const Swap& swap, DeviceId d, DeviceId e) const;

  const semantics::World& world_;
  bool cold_start_;
  Domains domains_;
  std::vector<DeviceId> heads_;  ///< per device the first that any ways over cables, plugged or not, lead to
};

}  // namespace cairn::explore

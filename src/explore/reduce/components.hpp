/// \file
/// Which devices can have to do with one another as long as no further cable is plugged in.
#pragma once

#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// The parts that plugged cables make of the devices, whether the cables carry links or not. Devices to be kept count
/// as joined, since properties compare them with one another (6.1).
class Components {
 public:
  explicit Components(const semantics::World& world);

  void look_at(const State& s);
  /// Counts the parts of two devices as one.
  void join(DeviceId d, DeviceId e);

  /// The first device of the part, in the site's order.
  [[nodiscard]] DeviceId of(DeviceId d) const { return heads_[d.value]; }
  [[nodiscard]] bool is_head(DeviceId d) const { return heads_[d.value] == d; }

 private:
  const semantics::World* world_;
  std::vector<DeviceId> heads_;
};

/// Per step, the devices that it and its conditions may read or change, together with all that are joined to them; in
/// ascending order, never none. To read whether a step is done is to read all that the step has to do with.
[[nodiscard]] std::vector<std::vector<DeviceId>> devices_of_steps(const Model& model);

}  // namespace cairn::explore

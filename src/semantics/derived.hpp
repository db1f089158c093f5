/// \file
/// Semantics 3, Derived: which cables are up, which links have formed, who is together with whom.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::semantics {

/// What follows from a state. Reused from state to state, so that nothing is allocated on the way.
struct Derived {
  std::vector<std::uint8_t> cable_up;  ///< 3.a, one a cable
  std::vector<std::uint8_t> linked;    ///< 3.b, one a cable
  /// 3.d: the class of each device that is up, told by its first device in the site's order; nothing for the others.
  std::vector<DeviceId> class_of;
  /// The next device of the same class in the site's order, or nothing.
  std::vector<DeviceId> next_in_class;

  [[nodiscard]] bool is_up(DeviceId d) const { return static_cast<bool>(class_of[d.value]); }
  /// 3.c, of two devices.
  [[nodiscard]] bool together(DeviceId d, DeviceId e) const {
    return is_up(d) && class_of[d.value] == class_of[e.value];
  }
  /// True for the device that stands for its class.
  [[nodiscard]] bool heads_class(DeviceId d) const { return class_of[d.value] == d; }
};

/// Fills `out` for `s`.
void derive(const World& world, const State& s, Derived& out);

/// As above, by value.
[[nodiscard]] Derived derive(const World& world, const State& s);

}  // namespace cairn::semantics

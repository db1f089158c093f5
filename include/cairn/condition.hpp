/// \file
/// Conditions (semantics 8): what an await waits for, a check demands and a goal may add.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/ids.hpp"
#include "cairn/quantity.hpp"

namespace cairn {

/// One of the two directions of a ring (ITU-T G.8032 calls its two ring ports east and west), or neither.
enum class Side : std::uint8_t { none, east, west };

/// How a comparison compares.
enum class Sign : std::uint8_t { equal, not_equal, less, less_or_equal, greater, greater_or_equal };

/// A condition as a tree, names resolved. Which fields count depends on `kind`.
struct Condition {
  enum class Kind : std::uint8_t {
    up,        ///< up(device)
    held,      ///< held(device)
    starting,  ///< starting(device)
    off,       ///< off(device)
    linked,    ///< linked(cable)
    cable_up,  ///< cable-up(cable)
    together,  ///< together(devices…)
    primary,   ///< primary(device)
    follower,  ///< follower(device)
    number,    ///< number(device) sign value
    priority,  ///< priority(device) sign value
    saved,     ///< saved(device)
    enabled,   ///< enabled(port)
    side,      ///< side(port) = or != side
    done,      ///< done(step)
    negation,  ///< not parts[0]
    all,       ///< parts[0] and parts[1] and …
    any,       ///< parts[0] or parts[1] or …
    implies,   ///< parts[0] implies parts[1]
  };

  Kind kind = Kind::all;  ///< An `all` without parts is true.
  std::vector<DeviceId> devices;
  PortId port;
  CableId cable;
  StepId step;
  Sign sign = Sign::equal;
  Quantity value = 0;
  Side side = Side::none;
  std::vector<Condition> parts;
};

}  // namespace cairn

/// \file
/// A state of the world (semantics 2): what the stack, its cables and the procedure are like at one moment.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/condition.hpp"
#include "cairn/ids.hpp"
#include "cairn/model.hpp"

namespace cairn {

/// 2.a. `held` is running and reachable on its own console, but kept out of every stack.
enum class Power : std::uint8_t { off, starting, up, held };

/// 2.a
struct DeviceState {
  Power power = Power::off;
  DeviceId leader;  ///< The primary that it follows; itself when it is the primary; nothing when it has none.
  /// The strict weak order `senior`, told as levels: among the devices that are up or held the level 1 has been up
  /// longest, and no level is left out between 1 and the largest. 0 while a device is off or starting.
  std::uint32_t seniority = 0;
  Quantity number = 0;
  Quantity next_number = 0;
  Quantity priority = 0;
  Quantity startup_priority = 0;

  bool operator==(const DeviceState&) const = default;
};

/// 2.b
struct PortState {
  bool enabled = false;
  bool startup_enabled = false;
  Side side = Side::none;
  Side startup_side = Side::none;
  Side operational_side = Side::none;

  bool operator==(const PortState&) const = default;
};

/// 2.c
struct CableState {
  bool plugged = false;
  bool broken = false;

  bool operator==(const CableState&) const = default;
};

struct State {
  std::vector<DeviceState> devices;
  std::vector<PortState> ports;
  std::vector<CableState> cables;
  std::vector<std::uint8_t> done;  ///< 2.d, one a step: 0 or 1
  FaultBudget left;                ///< 2.e
  bool halted = false;             ///< 2.f

  [[nodiscard]] DeviceState& operator[](DeviceId d) { return devices[d.value]; }
  [[nodiscard]] const DeviceState& operator[](DeviceId d) const { return devices[d.value]; }
  [[nodiscard]] PortState& operator[](PortId p) { return ports[p.value]; }
  [[nodiscard]] const PortState& operator[](PortId p) const { return ports[p.value]; }
  [[nodiscard]] CableState& operator[](CableId c) { return cables[c.value]; }
  [[nodiscard]] const CableState& operator[](CableId c) const { return cables[c.value]; }
  [[nodiscard]] bool is_done(StepId s) const { return done[s.value] != 0; }

  bool operator==(const State&) const = default;
};

}  // namespace cairn

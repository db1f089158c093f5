/// \file
/// The reference writing of docs/semantics.md: slow, plain and independent. It is what the real exploration is
/// confronted with, so it shares nothing with it but the public data types: it includes nothing from src/, packs
/// nothing, skips nothing, and follows the text sentence by sentence. It must never ship, and must never be made
/// faster by an idea that the real one also has.
#pragma once

#include <compare>
#include <cstdint>
#include <set>
#include <utility>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/state.hpp"

namespace cairn::naive {

/// 2.a, without `senior`.
struct Switch {
  Power power = Power::off;
  DeviceId leader;
  std::int64_t number = 0;
  std::int64_t next_number = 0;
  std::int64_t priority = 0;
  std::int64_t startup_priority = 0;
  auto operator<=>(const Switch&) const = default;
};

/// 2.b
struct Socket {
  bool enabled = false;
  bool startup_enabled = false;
  Side side = Side::none;
  Side startup_side = Side::none;
  Side operational_side = Side::none;
  auto operator<=>(const Socket&) const = default;
};

/// 2.c
struct Wire {
  bool plugged = false;
  bool broken = false;
  auto operator<=>(const Wire&) const = default;
};

/// 2.e
struct Budget {
  std::int64_t cable_breaks = 0;
  std::int64_t crashes = 0;
  std::int64_t omissions = 0;
  std::int64_t late_starts = 0;
  bool mends = false;
  auto operator<=>(const Budget&) const = default;
};

/// A state, with `senior` as the set of its pairs.
struct World {
  std::vector<Switch> switches;
  std::vector<Socket> sockets;
  std::vector<Wire> wires;
  std::set<std::pair<DeviceId, DeviceId>> senior;  ///< (d, e): d has been up longer than e.
  std::set<StepId> done;
  Budget left;
  bool halted = false;

  Switch& operator[](DeviceId d) { return switches[d.value]; }
  const Switch& operator[](DeviceId d) const { return switches[d.value]; }
  Socket& operator[](PortId p) { return sockets[p.value]; }
  const Socket& operator[](PortId p) const { return sockets[p.value]; }
  Wire& operator[](CableId c) { return wires[c.value]; }
  const Wire& operator[](CableId c) const { return wires[c.value]; }
  auto operator<=>(const World&) const = default;
};

std::vector<DeviceId> all_devices(const Model& model);
std::vector<CableId> all_cables(const Model& model);
std::vector<StepId> all_steps(const Model& model);

/// 2.g to 2.l: the initial state, as the site file says, before it settles.
World initial(const Model& model, const FaultBudget& budget);

/// The device is no longer up or held: nothing is senior to it, nor it to anything (2.a, 2.j).
void forget_seniority(World& world, DeviceId d);

/// The same state as the library's public type tells it, for comparing.
State as_state(const Model& model, const World& world);

}  // namespace cairn::naive

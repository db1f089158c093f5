/// \file
/// Exchanges parts of a model that may be told apart by their names alone (docs/reductions.md, Alike).
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "cairn/state.hpp"
#include "cairn/verdict.hpp"

namespace cairn::explore {

/// What stands for each device, port, cable and step, by place: each stands for one other or for itself.
struct Renaming {
  std::vector<DeviceId> devices;
  std::vector<PortId> ports;
  std::vector<CableId> cables;
  std::vector<StepId> steps;

  /// Each for itself.
  [[nodiscard]] static Renaming identity(const Model& model);

  [[nodiscard]] DeviceId operator[](DeviceId d) const { return devices[d.value]; }
  [[nodiscard]] PortId operator[](PortId p) const { return ports[p.value]; }
  [[nodiscard]] CableId operator[](CableId c) const { return cables[c.value]; }
  [[nodiscard]] StepId operator[](StepId s) const { return steps[s.value]; }

  /// First `other`, then this.
  [[nodiscard]] Renaming after(const Renaming& other) const;
  /// The event that happens to what stands for what `event` happens to.
  [[nodiscard]] Event image(const Event& event) const;

  bool operator==(const Renaming&) const = default;
};

/// A renaming that undoes itself, and what becomes of member numbers.
struct Swap : Renaming {
  /// Pairs of numbers that stand for each other, both ways; each other number stands for itself.
  std::vector<std::pair<std::int64_t, std::int64_t>> numbers;

  [[nodiscard]] std::int64_t image(std::int64_t number) const;
  using Renaming::image;

  bool operator==(const Swap&) const = default;
};

/// A swap made ready to be applied to many states. Demands that it undoes itself.
class Exchange {
 public:
  explicit Exchange(const Swap& swap);

  [[nodiscard]] const Swap& swap() const { return swap_; }
  /// True where the image of `s` comes before `s` in an order of states that is the same for all swaps: that of their
  /// steps, then devices, ports and cables, the first that differs.
  [[nodiscard]] bool lowers(const State& s) const;
  /// Makes `s` its image.
  void apply(State& s) const;

 private:
  [[nodiscard]] DeviceState image(const DeviceState& device) const;

  Swap swap_;
  /// The pairs that are exchanged, the first in file order first.
  std::vector<std::pair<DeviceId, DeviceId>> devices_;
  std::vector<std::pair<PortId, PortId>> ports_;
  std::vector<std::pair<CableId, CableId>> cables_;
  std::vector<std::pair<StepId, StepId>> steps_;
  std::vector<DeviceId> looked_at_;  ///< of each pair the first, and those that stay where they are
};

}  // namespace cairn::explore

#include "explore/reduce/find_swaps.hpp"

#include <algorithm>

#include "explore/reduce/automorphism.hpp"

namespace cairn::explore {

namespace {

/// Walks from two devices along cables on both sides at once, and pairs up what it comes past.
class Walk {
 public:
  explicit Walk(const semantics::World& world)
      : world_(world),
        model_(world.model()),
        devices_(world.device_count()),
        ports_(model_.site.ports.size()),
        cables_(world.cable_count()) {}

  [[nodiscard]] std::optional<Swap> from(DeviceId d, DeviceId e) {
    if (!pair_up(d, e)) return {};
    while (!open_.empty()) {
      const auto [a, b] = open_.back();
      open_.pop_back();
      if (!follow_cables(a, b)) return {};
    }
    Swap swap;
    static_cast<Renaming&>(swap) = Renaming::identity(model_);
    take_over(devices_, swap.devices);
    take_over(ports_, swap.ports);
    take_over(cables_, swap.cables);
    swap.numbers = numbers_;
    return swap;
  }

 private:
  enum class Paired : std::uint8_t { newly, before, never };

  // Each of the two stands for the other, or has done so before.
  template <class Id>
  static Paired pair_up(std::vector<Id>& images, Id a, Id b) {
    if (images[a.value] == b && images[b.value] == a) return Paired::before;
    if (images[a.value] || images[b.value]) return Paired::never;
    images[a.value] = b;
    images[b.value] = a;
    return Paired::newly;
  }

  template <class Id>
  static void take_over(const std::vector<Id>& found, std::vector<Id>& images) {
    for (std::size_t i = 0; i < found.size(); ++i) {
      if (found[i]) images[i] = found[i];
    }
  }

  bool pair_up(DeviceId d, DeviceId e) {
    const Paired paired = pair_up(devices_, d, e);
    if (paired != Paired::newly) return paired == Paired::before;
    const Device& a = model_[d];
    const Device& b = model_[e];
    const bool equal = a.on == b.on && a.priority == b.priority && a.startup_priority == b.startup_priority &&
                       a.tenure == b.tenure && a.software == b.software && a.ports.size() == b.ports.size();
    if (!equal || !pair_up(a.number, b.number) || !pair_up(a.next_number, b.next_number)) return false;
    for (std::size_t i = 0; d != e && i < a.ports.size(); ++i) {
      if (!pair_up(a.ports[i], b.ports[i])) return false;
    }
    return true;
  }

  bool pair_up(PortId p, PortId q) {
    const Paired paired = pair_up(ports_, p, q);
    if (paired == Paired::newly) open_.emplace_back(p, q);
    return paired != Paired::never;
  }

  bool pair_up(std::int64_t n, std::int64_t m) {
    for (const auto& [from, to] : numbers_) {
      if (from == n || to == m) return from == n && to == m;
    }
    if (n == m) return true;
    numbers_.emplace_back(n, m);
    numbers_.emplace_back(m, n);
    return true;
  }

  // The first cable of one port stands for the first of the other, and so on.
  bool follow_cables(PortId p, PortId q) {
    const std::vector<CableId>& at_p = world_.cables_at(p);
    const std::vector<CableId>& at_q = world_.cables_at(q);
    if (at_p.size() != at_q.size()) return false;
    for (std::size_t i = 0; i < at_p.size(); ++i) {
      const Paired paired = pair_up(cables_, at_p[i], at_q[i]);
      if (paired == Paired::never) return false;
      if (paired == Paired::before) continue;
      const PortId there = other_end(at_p[i], p);
      const PortId their = other_end(at_q[i], q);
      if (!pair_up(model_[there].device, model_[their].device) || !pair_up(there, their)) return false;
    }
    return true;
  }

  [[nodiscard]] PortId other_end(CableId c, PortId here) const {
    return model_[c].a == here ? model_[c].b : model_[c].a;
  }

  const semantics::World& world_;
  const Model& model_;
  std::vector<DeviceId> devices_;
  std::vector<PortId> ports_;
  std::vector<CableId> cables_;
  std::vector<std::pair<std::int64_t, std::int64_t>> numbers_;
  std::vector<std::pair<PortId, PortId>> open_;
};

}  // namespace

std::optional<Swap> SwapGuesser::guess(DeviceId d, DeviceId e) const {
  std::optional<Swap> swap = Walk(world_).from(d, e);
  if (!swap) return {};
  steps_.match(*swap);
  std::ranges::sort(swap->numbers);
  return swap;
}

std::vector<Swap> find_swaps(const semantics::World& world, bool cold_start) {
  const SwapGuesser guesser(world);
  const Automorphisms automorphisms(world, cold_start);
  std::vector<Swap> swaps;
  for (std::size_t i = 0; i < world.device_count(); ++i) {
    for (std::size_t j = i + 1; j < world.device_count(); ++j) {
      std::optional<Swap> swap = guesser.guess(DeviceId(i), DeviceId(j));
      if (!swap || std::ranges::find(swaps, *swap) != swaps.end()) continue;
      if (automorphisms.contain(*swap)) swaps.push_back(std::move(*swap));
    }
  }
  return swaps;
}

}  // namespace cairn::explore

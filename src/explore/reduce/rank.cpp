#include "explore/reduce/rank.hpp"

#include <algorithm>

namespace cairn::explore {

Rank::Rank(const semantics::World& world, bool cold_start)
    : world_(world), cold_start_(cold_start), domains_(domains_of(world)) {
  for (std::size_t i = 0; i < world.device_count(); ++i) heads_.emplace_back(i);
  for (std::size_t i = 0; i < world.cable_count(); ++i) {
    const DeviceId a = heads_[world.device_a(CableId(i)).value];
    const DeviceId b = heads_[world.device_b(CableId(i)).value];
    std::ranges::replace(heads_, std::max(a, b), std::min(a, b));
  }
}

// 2.j, 5.b: two that are on at the start may be as senior as each other; who comes up later is junior to all. 6.a: "no
// one senior to another".
bool Rank::may_be_as_senior(DeviceId d, DeviceId e) const {
  const Device& a = world_.model()[d];
  const Device& b = world_.model()[e];
  return cold_start_ || (a.on && b.on && a.tenure == b.tenure);
}

// 4.4.c
bool Rank::order_of_numbers_stays(const Swap& swap, DeviceId d, DeviceId e) const {
  return std::ranges::all_of(domains_.numbers[d.value], [&](std::int64_t a) {
    return std::ranges::all_of(domains_.numbers[e.value],
                               [&](std::int64_t b) { return (a < b) == (swap.image(a) < swap.image(b)); });
  });
}

// 4.4: the keys are compared one after the other, as far as the first that decides. Priorities and the order of
// seniority are exchanged with the devices. Rank is asked of devices that are together alone (4.1, 4.2).
bool Rank::sees_nothing_of(const Swap& swap, DeviceId d, DeviceId e) const {
  if (heads_[d.value] != heads_[e.value]) return true;
  for (const ElectionKey key : world_.platform().election) {
    switch (key) {
      case ElectionKey::priority:
        if (!share_a_value(domains_.priorities[d.value], domains_.priorities[e.value])) return true;
        break;
      case ElectionKey::tenure:
        if (!may_be_as_senior(d, e)) return true;
        break;
      case ElectionKey::number:
        if (!order_of_numbers_stays(swap, d, e)) return false;
        if (!share_a_value(domains_.numbers[d.value], domains_.numbers[e.value])) return true;
        break;
    }
  }
  const auto before = [&](DeviceId a, DeviceId b) { return world_.model()[a].address < world_.model()[b].address; };
  return before(d, e) == before(swap[d], swap[e]);  // 4.4.d
}

bool Rank::sees_nothing_of(const Swap& swap) const {
  for (std::size_t i = 0; i < heads_.size(); ++i) {
    for (std::size_t j = 0; j < heads_.size(); ++j) {
      if (i != j && !sees_nothing_of(swap, DeviceId(i), DeviceId(j))) return false;
    }
  }
  return true;
}

}  // namespace cairn::explore

#include "explore/reduce/alike.hpp"

#include <algorithm>

#include "explore/reduce/find_swaps.hpp"

namespace cairn::explore {

Alike::Alike(const Model& model, const std::vector<Swap>& swaps) : identity_(Renaming::identity(model)) {
  for (const Swap& swap : swaps) exchanges_.emplace_back(swap);
}

std::shared_ptr<const Alike> Alike::find(const semantics::World& world, const std::vector<AskedProperty>& asked) {
  const bool cold_start =
      std::ranges::any_of(asked, [](const AskedProperty& a) { return a.property == Property::survives_cold_start; });
  const std::vector<Swap> swaps = find_swaps(world, cold_start);
  return swaps.empty() ? nullptr : std::make_shared<const Alike>(world.model(), swaps);
}

// Each swap makes the state less, so that this comes to an end. Where parts alike are exchanged two by two, and have
// nothing to do with one another, no swap can make it less once they are in order.
void Alike::arrange(State& s, Applied& applied) const {
  applied.clear();
  for (bool changes = true; changes;) {
    changes = false;
    for (std::uint32_t i = 0; i < exchanges_.size(); ++i) {
      if (!exchanges_[i].lowers(s)) continue;
      exchanges_[i].apply(s);
      applied.push_back(i);
      changes = true;
    }
  }
}

// A swap undoes itself.
Renaming Alike::before(const Renaming& renaming, const Applied& applied) const {
  Renaming all = renaming;
  for (const std::uint32_t i : applied) all = all.after(exchanges_[i].swap());
  return all;
}

std::vector<State> Alike::images(const State& s, std::size_t most) const {
  std::vector<State> all{s};
  for (std::size_t i = 0; i < all.size() && all.size() < most; ++i) {
    for (const Exchange& exchange : exchanges_) {
      State image = all[i];
      exchange.apply(image);
      if (std::ranges::find(all, image) == all.end()) all.push_back(std::move(image));
    }
  }
  return all;
}

}  // namespace cairn::explore

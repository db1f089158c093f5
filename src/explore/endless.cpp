#include "explore/endless.hpp"

#include <optional>
#include <set>

namespace cairn::explore {

namespace {

/// A start that leads from a state of the cycle to the next, and the swaps that led there from its outcome.
struct Start {
  DeviceId device;
  Alike::Applied applied;
};

std::vector<Start> starts_between(StateIndex from, StateIndex to, Expander& expander, const Store& store,
                                  semantics::Watcher& watcher) {
  std::vector<Start> starts;
  expander.open(store[from]);
  for (const Event& event : expander.events()) {
    if (event.kind != Event::Kind::started) continue;
    expander.take(event, watcher);
    if (store.find(expander.packed_next()) == to) starts.push_back({event.device(), expander.applied()});
  }
  return starts;
}

}  // namespace

std::vector<DeviceId> endless_devices(const std::vector<StateIndex>& cycle, Expander& expander, const Store& store,
                                      const Alike* alike, semantics::Watcher& watcher) {
  std::set<DeviceId> devices;
  std::optional<Renaming> truly;  // of the run: who stands in truth for each device of the states of the cycle
  if (alike != nullptr) truly = alike->identity();
  do {
    for (std::size_t i = 0; i < cycle.size(); ++i) {
      const auto starts = starts_between(cycle[i], cycle[(i + 1) % cycle.size()], expander, store, watcher);
      for (const Start& start : starts) devices.insert(truly ? (*truly)[start.device] : start.device);
      if (truly) truly = alike->before(*truly, starts.front().applied);
    }
  } while (truly && *truly != alike->identity());
  return {devices.begin(), devices.end()};
}

}  // namespace cairn::explore

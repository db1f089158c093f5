/// \file
/// Semantics 5.k: who goes on for ever where a run does not end.
#pragma once

#include <vector>

#include "explore/expander.hpp"
#include "explore/store.hpp"

namespace cairn::explore {

/// The devices whose starts lead from each state of the cycle to the next, ascending; none of no cycle.
/// \param cycle    as StartGraph::find_cycle() tells it
/// \param alike    what `expander` counts as one; where that is something, a round of the cycle may lead back with
///                 others in the places of the first, and it is followed until it does not
/// \param watcher  sees the starts
[[nodiscard]] std::vector<DeviceId> endless_devices(const std::vector<StateIndex>& cycle, Expander& expander,
                                                    const Store& store, const Alike* alike,
                                                    semantics::Watcher& watcher);

}  // namespace cairn::explore

/// \file
/// What one settling pass does with the devices of one class (semantics 4). States that no short run leads to are
/// arranged by hand: a pass is computed from any state.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "support/run.hpp"

namespace cairn::test {

using Ids = std::vector<DeviceId>;
using Admitted = std::vector<std::pair<DeviceId, DeviceId>>;

/// Devices in a chain, every one of them up.
struct Class {
  ModelBuilder b;
  Ids d;

  explicit Class(const std::vector<DeviceIs>& devices) {
    for (std::size_t i = 0; i < devices.size(); ++i) d.push_back(b.device("d" + std::to_string(i), devices[i]));
    b.chain(d);
  }

  /// `leaders[i]` is the device that device i of the model follows, by place; -1 is none.
  [[nodiscard]] semantics::PassPlan plan(const std::vector<int>& leaders) const {
    Run run(b);
    for (std::size_t i = 0; i < leaders.size(); ++i) {
      run.state().devices[i].leader = leaders[i] < 0 ? DeviceId() : DeviceId(static_cast<std::size_t>(leaders[i]));
    }
    return run.plan();
  }
};

}  // namespace cairn::test

/// \file
/// Devices that lead themselves and will be joined, for tests of what decides between them.
#pragma once

#include <string>
#include <vector>

#include "explore/reduce/seniority.hpp"
#include "support/run.hpp"

namespace cairn::test {

/// Devices that all lead themselves, as long as the steps of a test do not join them. Ranked by priority, then tenure;
/// of priority 5, unless a test says otherwise, and all of different tenure.
struct Leaders {
  ModelBuilder b;

  Leaders() { b.platform().election = {ElectionKey::priority, ElectionKey::tenure}; }

  /// The first that is added is the most senior one.
  DeviceId add(const std::string& name, std::int64_t priority = 5, std::int64_t startup_priority = 5) {
    return b.device(name, {.priority = priority,
                           .startup_priority = startup_priority,
                           .tenure = --tenure_,
                           .ports = {{"w", Side::west}, {"e", Side::east}, {"s", Side::east}}});
  }
  std::vector<DeviceId> add_all(std::initializer_list<const char*> names) {
    std::vector<DeviceId> devices;
    for (const char* name : names) devices.push_back(add(name));
    return devices;
  }
  /// East of d to west of e, not plugged yet.
  CableId cable(DeviceId d, DeviceId e) { return b.cable(b.east(d), b.west(e), false); }
  /// The same, and a step that plugs it; further ones follow in the order of the builder.
  StepId plug(DeviceId d, DeviceId e, StepIs is = {}) { return b.plug(cable(d, e), std::move(is)); }

 private:
  std::int64_t tenure_ = 90;
};

/// Whether the reduction keeps who of d and e is senior, in the state of the run.
inline bool asks(const Run& run, DeviceId d, DeviceId e) {
  explore::Seniority seniority(run.world());
  State s = run.state();
  seniority.level(s);
  return seniority.may_be_asked(d, e);
}

/// The same in the initial state, settled.
inline bool asks(const ModelBuilder& b, DeviceId d, DeviceId e) {
  Run run(b);
  return asks(run.settle(), d, e);
}

}  // namespace cairn::test

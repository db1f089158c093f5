/// \file
/// A stack of three in a chain, on which properties break (semantics 6).
#pragma once

#include <vector>

#include "support/run.hpp"

namespace cairn::test {

/// a - b - c, led by a, all of it to keep unless a test says otherwise; one break and one crash may happen.
struct Trio {
  ModelBuilder b;
  std::vector<DeviceId> d;
  std::vector<CableId> cables;

  Trio() {
    d = b.devices({"a", "b", "c"});
    cables = b.chain(d);
    b.stack(d[0], d);
    b.faults({.cable_breaks = 1, .crashes = 1});
    b.unordered();
  }
};

/// True when the property broke for this cause.
inline bool broke_by(const Run& run, Property property, Breach::Cause cause) {
  return run.broken(property) && run.broken(property)->cause == cause;
}

}  // namespace cairn::test

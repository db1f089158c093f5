/// \file
/// A lone device that leads itself, and one that is off; the second is kept, and powered on. It leads once it is up.
#pragma once

#include "support/model_builder.hpp"

namespace cairn::test {

struct Newcomer {
  Newcomer() {
    DeviceIs off;
    off.on = false;
    b.device("gate-1");
    late = b.device("gate-2", off);
    b.keep({late});
    b.power_on(late);
  }

  ModelBuilder b;
  DeviceId late;
};

}  // namespace cairn::test

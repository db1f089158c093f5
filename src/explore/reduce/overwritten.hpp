/// \file
/// Settings that a start will overwrite before anybody reads them are not kept (docs/reductions.md, Settings).
#pragma once

#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Tells of which devices that are off or starting the settings in force are of no account (semantics 2.k, 5.b).
class Overwritten {
 public:
  explicit Overwritten(const semantics::World& world);

  /// Gives such devices the settings that their next start gives them. True where that changed the state.
  bool replace(State& s) const;

  /// The device is down, and no condition that may still be asked reads its settings.
  [[nodiscard]] bool unread(const State& s, DeviceId d) const;
  /// All such devices.
  [[nodiscard]] std::vector<DeviceId> unread(const State& s) const;
  /// Its number too: no start compares it with the next one (5.f).
  [[nodiscard]] bool number_unread() const { return number_unread_; }

 private:
  /// Who reads the settings of a device.
  struct Readers {
    bool goal = false;
    std::vector<StepId> steps;  ///< awaits and checks
  };

  const semantics::World& world_;
  bool number_unread_;
  std::vector<Readers> readers_;  ///< per device
};

}  // namespace cairn::explore

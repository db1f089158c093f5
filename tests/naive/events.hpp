/// \file
/// Section 5: what may happen in a settled state, and what it leads to.
#pragma once

#include <optional>

#include "cairn/verdict.hpp"
#include "naive/settle.hpp"

namespace cairn::naive {

/// 5.a, without what omissions add: the step may happen.
bool ready(const Model& model, const World& world, StepId s);

/// Every event that may happen in a settled state, in the order that traces are compared by: steps in file order,
/// starts, breaks, mends, crashes, omissions, late starts.
std::vector<Event> events(const Model& model, const World& world);

/// One event, or the initial moment, and the settling that follows it.
struct Happening {
  World left;                ///< As the event leaves it, before any pass.
  std::vector<Pass> passes;  ///< Until it is settled.
  bool refused = false;      ///< 5.d
  DeviceId taken_down;       ///< The device that a `restart` or `power-off` step took down, up or held before it…
  bool led_itself = false;   ///< …and whether it led itself then.

  [[nodiscard]] const World& settled() const { return passes.back().after; }
};

/// The initial state and its settling (4.6: depth zero).
Happening begin(const Model& model, const FaultBudget& budget);

/// Demands that the event is one of events(model, world).
Happening happen(const Model& model, const World& world, const Event& event);

/// 6.a: power fails and returns for all at once.
Happening cold_start(const Model& model, const World& world);

/// 5.j: every step is done and nothing has halted.
bool complete(const Model& model, const World& world);

/// 5.j: no step is ready and no device is starting. The state is settled.
bool at_rest(const Model& model, const World& world);

}  // namespace cairn::naive

/// \file
/// Every reachable state of every instance of a template, breadth first (semantics 9).
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/verdict.hpp"
#include "explore/limits.hpp"
#include "explore/sightings.hpp"
#include "unknowns/space.hpp"

namespace cairn::explore {

/// Of one property: the least number of events that refutes it in any instance, and such an instance.
struct SplitRefutation {
  std::size_t length;
  Instance instance;
};

struct SplitAnswer {
  AskedProperty asked;
  std::optional<SplitRefutation> refutation;
};

struct SplitExploration {
  explicit SplitExploration(Sightings sightings) : seen(std::move(sightings)) {}

  std::vector<SplitAnswer> answers;  ///< in the order asked
  std::optional<Reason> stopped;     ///< the limit that was met; what is not refuted is then undecided
  std::uint64_t explored = 0;        ///< pairs of a settled state and what has been decided in it
  bool a_kept_device_led = false;    ///< 6.e, in some instance
  bool a_run_completed = false;      ///< 6.e, in some instance
  std::vector<UnstatedTie> ties;     ///< ascending
  Sightings seen;
  /// Starts may follow one another for ever, against semantics 5.k, in this instance.
  std::optional<Instance> endless;
  bool every_state_visited = false;
};

/// As explore(), for all instances of a template at once: of those that a state is reached in, it carries what has been
/// decided of them on the way, and is split where something more is asked. What is reached under a condition that
/// implies one under which it was reached before is dropped.
/// \param space  the instances; there is one
[[nodiscard]] SplitExploration explore_instances(const Model& model, const unknowns::Space& space,
                                                 const FaultBudget& budget, const std::vector<AskedProperty>& asked,
                                                 const Guard& guard);

}  // namespace cairn::explore

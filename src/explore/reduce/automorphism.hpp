/// \file
/// Which swaps map a model to itself (docs/reductions.md, Alike): what the reduction stands on.
#pragma once

#include "explore/reduce/rank.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/precedence.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Those under which the image of each run is a run, with the same breaches of every property.
class Automorphisms {
 public:
  /// \param cold_start  whether a cold start (6.a) is one of the events
  Automorphisms(const semantics::World& world, bool cold_start)
      : world_(world), precedence_(world.model().procedure), rank_(world, cold_start) {}

  /// True only where `swap` is one of them. Nothing is demanded of it but one entry for each device, port, cable and
  /// step.
  [[nodiscard]] bool contain(const Swap& swap) const;

 private:
  const semantics::World& world_;
  semantics::Precedence precedence_;
  Rank rank_;
};

}  // namespace cairn::explore

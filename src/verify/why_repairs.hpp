/// \file
/// How to avoid refutations: changes of one or two steps, each tried.
#pragma once

#include "cairn/why.hpp"
#include "verify/why_trials.hpp"

namespace cairn::verify {

/// How much is tried before the search ends.
struct Effort {
  std::uint64_t tries = 3'000;       ///< changed procedures put to the proof
  std::uint64_t states = 4'000'000;  ///< visited in these proofs
  std::uint64_t follows = 20'000;    ///< pairs of changes through which refutations are followed
};

/// Looks for changes that avoid the refutations of `report`, the one on `model` itself. Nothing is tried where nothing
/// is refuted.
[[nodiscard]] Repairs find_repairs(const Model& model, const Report& report, const Trials& trials,
                                   const Effort& effort = {});

}  // namespace cairn::verify

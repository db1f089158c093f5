/// \file
/// Looks for the steps that stand for one another where devices, ports and cables do (docs/reductions.md, Alike).
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/model.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/precedence.hpp"

namespace cairn::explore {

/// Guesses: it may find less than there is, and not all that it finds need be true.
class StepMatcher {
 public:
  explicit StepMatcher(const Model& model);

  /// Fills in the steps of `swap`, of which all the rest is given: one for another that does the same to what stands
  /// for its devices, ports and cables, after and before steps of which the same is true. Adds the numbers that such
  /// steps give.
  void match(Swap& swap) const;

 private:
  /// Per step a number that is the same for steps that are alike, and hardly ever for others.
  using Marks = std::vector<std::uint64_t>;
  [[nodiscard]] Marks marks(const Renaming& renaming) const;
  void add_numbers(Swap& swap) const;

  const Model& model_;
  semantics::Precedence precedence_;
  Marks marks_;  ///< each thing standing for itself
};

}  // namespace cairn::explore

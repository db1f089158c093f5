/// \file
/// Verdicts on a template: proved means for every instance, refuted comes with an instance (semantics 9).
#pragma once

#include "explore/split/search.hpp"
#include "unknowns/space.hpp"
#include "verify/settler.hpp"

namespace cairn::verify {

/// Settles the properties of a template that are asked with the same faults, all instances at once. What refutes one is
/// looked for anew in the instance that is named, by the ways of a plain model: replayed, and put to the formulas.
class ByInstances {
 public:
  /// \param faults  what may strike
  /// All of these must outlive this.
  ByInstances(const Model& model, const ProveOptions& options, const FaultBudget& faults, const explore::Guard& guard);

  /// Fills the verdicts, which are not empty.
  void settle(const Verdicts& verdicts);

  [[nodiscard]] const Settler::Yield& yield() const { return yield_; }

 private:
  void take(explore::SplitExploration all, const Verdicts& verdicts);
  void take_refutation(const explore::SplitRefutation& refutation, PropertyVerdict& verdict);

  const Model& model_;
  const ProveOptions& options_;
  const FaultBudget& faults_;
  const explore::Guard& guard_;
  unknowns::Space space_;
  Settler::Yield yield_;
};

}  // namespace cairn::verify

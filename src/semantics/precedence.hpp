/// \file
/// Semantics 5.a: which steps wait for which.
#pragma once

#include <vector>

#include "cairn/model.hpp"

namespace cairn::semantics {

/// Which step has to be done before which, directly or not.
class Precedence {
 public:
  explicit Precedence(const Procedure& procedure);

  /// True when `later` cannot happen before `earlier` is done.
  [[nodiscard]] bool before(StepId earlier, StepId later) const { return earlier_[later.value][earlier.value]; }
  /// True when `earlier` is before `later` and no step between them.
  [[nodiscard]] bool directly_before(StepId earlier, StepId later) const;

  bool operator==(const Precedence&) const = default;

 private:
  std::vector<std::vector<bool>> earlier_;  ///< by step: the steps before it
};

}  // namespace cairn::semantics

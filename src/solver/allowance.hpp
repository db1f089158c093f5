/// \file
/// One allowance for many questions.
#pragma once

#include <algorithm>
#include <cstdint>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "solver/deadline.hpp"
#include "solver/solver.hpp"

namespace cairn::solver {

/// Thrown where a question found no answer: a bound was met, or the solver failed.
struct Unanswered {
  Cause cause;
  std::string complaint;
};

/// Puts questions to a solver whose time and effort are bounded all together, from the construction on.
class Allowance {
 public:
  Allowance(Solver& solver, const Bounds& all)
      : solver_(solver), all_(all), effort_before_(solver.effort()), deadline_(all.seconds) {}

  /// Whether all clauses can hold together with the assumptions.
  /// \throws Unanswered
  [[nodiscard]] bool can(std::span<const Literal> assumptions) {
    const Outcome outcome = solver_.check(assumptions, left());
    if (outcome == Outcome::unknown) throw Unanswered{solver_.cause(), solver_.complaint()};
    return outcome == Outcome::satisfiable;
  }

 private:
  [[nodiscard]] Bounds left() const {
    Bounds bounds = all_;
    bounds.seconds = deadline_.left();
    if (bounds.effort) bounds.effort = *bounds.effort - std::min(*bounds.effort, solver_.effort() - effort_before_);
    return bounds;
  }

  Solver& solver_;
  Bounds all_;
  std::uint64_t effort_before_;
  Deadline deadline_;
};

}  // namespace cairn::solver

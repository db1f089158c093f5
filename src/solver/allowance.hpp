/// \file
/// One allowance for many questions.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "solver/solver.hpp"

namespace cairn::solver {

/// Thrown where a question found no answer: a bound was met, or the solver failed.
struct Unanswered {
  Cause cause;
  std::string complaint;
};

/// What `bounds` leave when so much time has passed. The count of effort is each solver's own.
[[nodiscard]] inline Bounds left_of(Bounds bounds, std::chrono::duration<double> elapsed) {
  if (bounds.seconds) bounds.seconds = std::max(0.0, *bounds.seconds - elapsed.count());
  return bounds;
}

/// Puts questions to a solver whose time and effort are bounded all together, from the construction on.
class Allowance {
 public:
  Allowance(Solver& solver, const Bounds& all) : solver_(solver), all_(all), effort_before_(solver.effort()) {}

  /// Whether all clauses can hold together with the assumptions.
  /// \throws Unanswered
  [[nodiscard]] bool can(std::span<const Literal> assumptions) {
    const Outcome outcome = solver_.check(assumptions, left());
    if (outcome == Outcome::unknown) throw Unanswered{solver_.cause(), solver_.complaint()};
    return outcome == Outcome::satisfiable;
  }

 private:
  [[nodiscard]] Bounds left() const {
    Bounds bounds = left_of(all_, std::chrono::steady_clock::now() - start_);
    if (bounds.effort) bounds.effort = *bounds.effort - std::min(*bounds.effort, solver_.effort() - effort_before_);
    return bounds;
  }

  Solver& solver_;
  Bounds all_;
  std::uint64_t effort_before_;
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

}  // namespace cairn::solver

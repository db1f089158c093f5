/// \file
/// Bounded model checking: a shortest refutation by constraints alone, or a run length that no run exceeds.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "cairn/verdict.hpp"
#include "solver/solver.hpp"
#include "solver/unroller.hpp"

namespace cairn::solver {

/// What it took to settle one depth.
struct DepthCost {
  std::size_t depth = 0;
  std::size_t variables = 0;  ///< of the solver, so far
  std::size_t clauses = 0;    ///< the same
  double seconds = 0;         ///< for this depth alone, terms and clauses included
};

/// The answer on one property.
struct BoundedAnswer {
  /// `proved`: no run has as many events as `depths` has entries, and none that is shorter breaks the property.
  Verdict verdict = Verdict::undecided;
  /// `refuted`: a shortest one, chosen as docs/decisions/which-refutation.md tells. Where `cause` or `complaint` say
  /// that the search for it was ended, one that was met by then.
  Trace refutation;
  Cause cause = Cause::none;  ///< the bound that ended the search
  std::string complaint;      ///< what else ended it, in one sentence
  std::vector<DepthCost> depths;
};

/// How far to go and at what price.
struct BoundedLimits {
  Bounds bounds;                                   ///< of all questions on the property together; effort: a solver
  std::optional<std::size_t> length;               ///< longest runs to look at
  std::optional<std::size_t> longest;              ///< no run has more events: judged before, and not asked again
  std::function<void(const DepthCost&)> progress;  ///< called after each depth; may be empty
};

/// Asks depth by depth: can the property break with this event, and if not, can there be such an event at all?
/// \throws Contradiction  where the constraints break a promise of their own
/// \param solver  without clauses; used up by the question
[[nodiscard]] BoundedAnswer check_bounded(Unroller& unroller, Solver& solver, const AskedProperty& asked,
                                          const BoundedLimits& limits);

/// The same with two solvers: a quick one looks (the scout), and where it finds a proof another goes through all depths
/// anew (the judge), which alone decides. The depths that are told are those of the scout. A refutation is replayed by
/// whoever reports it and needs no judge.
///
/// \throws Contradiction  where the judge finds the scout wrong
[[nodiscard]] BoundedAnswer check_bounded(Unroller& unroller, const SolverMaker& scout, const SolverMaker& judge,
                                          const AskedProperty& asked, const BoundedLimits& limits);

}  // namespace cairn::solver

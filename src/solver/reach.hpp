/// \file
/// Whether any run meets what a proof has to speak of, if it is not to hold of nothing (semantics 6.e).
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

#include "cairn/verdict.hpp"
#include "solver/solver.hpp"
#include "solver/unroller.hpp"

namespace cairn::solver {

/// What a run may meet.
enum class Sight : std::uint8_t {
  kept_device_leads,  ///< a device of `keep` leads, in any state that 4.6 looks at
  complete_at_rest,   ///< a complete state at rest
};

/// Whether there is a run that meets it.
struct ReachAnswer {
  enum class Outcome : std::uint8_t {
    met,      ///< by `events`
    never,    ///< by no run, and none has more events than `length`
    unknown,  ///< the search was ended, by `cause` or for what `complaint` says
  };
  Outcome outcome = Outcome::unknown;
  Trace events;
  std::size_t length = 0;
  Cause cause = Cause::none;
  std::string complaint;
};

/// Looks at runs of 0, 1, 2 … events, until one meets it or no run is longer.
/// \param solver   without clauses; used up by the question
/// \param bounds   of all questions together
/// \param longest  no run has more events: judged before, and not asked again
[[nodiscard]] ReachAnswer look_for(Unroller& unroller, Solver& solver, Sight sight, const Bounds& bounds,
                                   std::optional<std::size_t> longest = {});

/// The same with two solvers: where a quick one (the scout) has found no such run, another (the judge) goes through all
/// lengths anew and decides. A run that was found is walked by whoever relies on it, and needs no judge.
/// \param bounds  of all questions together; effort: of each solver
/// \throws Contradiction  where the judge finds the scout wrong
[[nodiscard]] ReachAnswer look_for(Unroller& unroller, const SolverMaker& scout, const SolverMaker& judge, Sight sight,
                                   const Bounds& bounds, std::optional<std::size_t> longest = {});

}  // namespace cairn::solver

/// \file
/// A model taken apart: each event, one settling pass and the cold start by itself, as functions of one state that may
/// be any within the domains, settled or not.
///
/// System (build.hpp) joins these parts into one relation for a solver. Where states are at hand, the parts are
/// evaluated one after another: nothing has to be joined, and one pass is enough, evaluated as often as it takes. The
/// lemmas on which the relation leans (which events need no pass, how many passes are enough, what a settled state
/// looks like) are not used here.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "system/events.hpp"
#include "system/properties.hpp"
#include "system/settle.hpp"

namespace cairn::system {

/// An event as a function of the state.
struct Move {
  Event event;
  Term may_happen;
  SymbolicState after;  ///< before any pass
};

/// The parts. Once built, only the pool grows, by the questions that are asked.
struct Moves {
  /// \param ranges           what `now` ranges over
  /// \param with_cold_start  the cold start (6.a) is wanted too
  Moves(const Model& model, const FaultBudget& budget, const Domains& ranges, bool with_cold_start);

  Moves(const Moves&) = delete;
  Moves& operator=(const Moves&) = delete;

  Space space;
  Terms terms;
  Domains domains;

  /// The initial state settled, and what it went through: all constants.
  Settling first;

  FreeState now;
  Derived now_derived;
  std::vector<Move> events;
  Pass pass;                          ///< what a pass decides in `now`
  SymbolicState passed;               ///< after that pass
  std::optional<SymbolicState> cold;  ///< after the cold start, before any pass; `now` is at rest
};

/// The parts of a model over the smallest domains that hold the initial state and `seed`, and that no event, no pass
/// and no cold start leaves, as far as the building of the parts shows by itself.
/// \param seed             per variable values that it takes, in any order; a good guess saves time, a poor one makes
///                         the domains larger than they need be
/// \param with_cold_start  as in Moves
[[nodiscard]] std::unique_ptr<Moves> take_apart(const Model& model, const FaultBudget& budget, const Domains& seed,
                                                bool with_cold_start);

}  // namespace cairn::system

/// \file
/// What has to be shown of a proof by facts, as clauses.
#pragma once

#include <vector>

#include "solver/clauses.hpp"
#include "solver/fact.hpp"
#include "solver/solver.hpp"
#include "system/build.hpp"

namespace cairn::solver {

/// What a proof speaks of.
struct Subject {
  const Model& model;  ///< must outlive whatever is made of this
  FaultBudget faults;
  system::Domains widest;  ///< the values that are in question at all: no event leaves them
  system::Counting counting = system::Counting::counted;
};

/// The transition relation where some facts hold, and what may go wrong in one step of it.
///
/// Facts that bound values by themselves are not demanded but built in: the state ranges over what they allow, and all
/// that they decide is folded away before any solver sees it. That an event leaves what they allow is asked like the
/// loss of any other fact.
class Obligations {
 public:
  /// \param facts   of which those are built in that bound values by themselves
  /// \param solver  without clauses; it must outlive this
  /// \throws Contradiction  where an event leaves the widest domains
  Obligations(const Subject& subject, const std::vector<Fact>& facts, Solver& solver);

  [[nodiscard]] system::System& system() { return system_; }
  [[nodiscard]] const Clauses& clauses() const { return clauses_; }
  [[nodiscard]] Literal literal_of(system::Term term) { return clauses_.literal_of(term); }

  /// Where it holds, one event happens.
  [[nodiscard]] Literal event() const { return event_; }
  /// Demands the fact of the state before the event, for good.
  void demand(const Fact& fact);
  /// Demands the fact of the state before the event where `condition` holds.
  void demand_if(Literal condition, const Fact& fact);
  /// The state after the event is without the fact.
  [[nodiscard]] system::Term lost(const Fact& fact);

  /// What breaks a property.
  struct Bad {
    system::Term term;
    bool on_the_way;  ///< an event leads to it; else the state before any event is bad, at rest
  };
  [[nodiscard]] Bad bad(const AskedProperty& asked);
  /// The property is broken before any event.
  [[nodiscard]] bool begins_bad(const AskedProperty& asked);
  /// The settling passes that are written out are not enough after the event: the relation is not that of the
  /// semantics.
  [[nodiscard]] system::Term unfinished() const { return system_.unfinished; }

 private:
  system::System system_;
  Clauses clauses_;
  Literal event_;
};

/// Puts the obligations of a proof by facts to a solver without clauses: that the first state has the facts and is not
/// bad, that no state with the facts is bad or becomes so on the way of an event, and that no event loses one of them.
/// `unsatisfiable` means that the proof holds.
[[nodiscard]] Outcome find_hole(const Subject& subject, const AskedProperty& asked, const std::vector<Fact>& facts,
                                Solver& solver, const Bounds& bounds);

}  // namespace cairn::solver

/// \file
/// Terms as clauses of a solver.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "solver/solver.hpp"
#include "system/term.hpp"

namespace cairn::solver {

/// Gives every node that is asked for a Boolean of the solver, with clauses that make the two equal (Tseitin, both
/// directions): so a literal may be assumed or demanded either way, today or later. Each node is translated once. The
/// pool may grow meanwhile; both must outlive this.
class Clauses {
 public:
  Clauses(const system::Terms& terms, Solver& solver) : terms_(terms), solver_(solver) {}

  /// A literal that is equal to the term.
  Literal literal_of(system::Term term);
  /// Demands that the term holds. Outermost conjunctions, disjunctions and choices need no Boolean of their own.
  void require(system::Term term) { demand(term, {}); }
  /// Demands that the term holds where `condition` does.
  void require_if(Literal condition, system::Term term) { demand(term, !condition); }

  /// After `satisfiable`: the value of a term that was translated, or of a variable; one that no clause knows is false.
  [[nodiscard]] bool value_of(system::Term term) const;

 private:
  void demand(system::Term term, std::optional<Literal> unless);
  void demand_one_of(system::Term first, std::vector<Literal> unless);
  void translate(std::uint32_t node);
  [[nodiscard]] bool known(std::uint32_t node) const { return node < literals_.size() && literals_[node].has_value(); }
  [[nodiscard]] Literal at(system::Term term) const {
    const Literal literal = *literals_[term.node()];
    return term.negated() ? !literal : literal;
  }

  const system::Terms& terms_;
  Solver& solver_;
  std::vector<std::optional<Literal>> literals_;  ///< by node
};

}  // namespace cairn::solver

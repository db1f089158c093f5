/// \file
/// Which of the shortest refutations is told, by further constraints (docs/decisions/which-refutation.md).
#pragma once

#include <cstddef>
#include <vector>

#include "solver/allowance.hpp"
#include "solver/clauses.hpp"
#include "solver/unroller.hpp"

namespace cairn::solver {

/// A run that satisfies the constraints, and what narrows them down to it.
struct Choice {
  std::vector<std::size_t> places;  ///< in System::events, one a depth
  std::vector<Literal> assumed;     ///< satisfiable all together
};

/// Narrows a choice down to the preferred run: the one with the fewest faults, then with the fewest switches between
/// actors, then the earliest in file order. All functions demand that the solver has found a model of `choice.assumed`
/// last or that `choice.places` tells one, and keep `choice` such that it is the best so far when they throw.
/// \throws Unanswered
class Preference {
 public:
  Preference(Unroller& unroller, Clauses& clauses, Allowance& allowance)
      : unroller_(unroller), clauses_(clauses), allowance_(allowance) {}

  void choose(Choice& choice);

  /// As few of the terms are true as can be. \returns how many
  std::size_t fewest(const std::vector<system::Term>& counted, Choice& choice);
  /// As many of the terms as can be are true, the first ones first.
  std::vector<bool> first_ones(const std::vector<system::Term>& terms, Choice& choice);

 private:
  [[nodiscard]] system::Term acts(std::size_t t, Actor actor);
  [[nodiscard]] std::vector<system::Term> faults(std::size_t length);
  [[nodiscard]] std::vector<system::Term> switches(std::size_t length);
  void earliest(Choice& choice);
  /// True where an event before the one chosen can happen at depth t; the choice is then of such a one.
  bool can_be_earlier(std::size_t t, Choice& choice);
  [[nodiscard]] bool can(const std::vector<Literal>& assumed, Literal too);

  Unroller& unroller_;
  Clauses& clauses_;
  Allowance& allowance_;
};

}  // namespace cairn::solver

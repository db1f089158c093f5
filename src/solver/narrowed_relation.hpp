/// \file
/// The transition relation narrowed to some candidates for facts, as a search for a proof asks about it.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "solver/obligations.hpp"
#include "solver/step_found.hpp"

namespace cairn::solver {

/// A fact that may serve.
struct Candidate {
  Fact fact;
  bool live = true;  ///< no event is known to lose it
};
using Candidates = std::vector<Candidate>;

/// Candidates, as places in the list of all, ascending.
using Places = std::vector<std::size_t>;

/// Of the places those of facts that bound values, which are built in.
[[nodiscard]] Places built_in(const Candidates& all, const Places& places);

/// A relation of its own solver. The candidates that are built in must not change while it lives; others may be added.
class NarrowedRelation {
 public:
  NarrowedRelation(const Subject& subject, const Candidates& all, const Places& facts, std::unique_ptr<Solver> solver);

  /// What it is narrowed to.
  [[nodiscard]] const Places& narrowed_to() const { return narrowed_to_; }
  [[nodiscard]] Solver& solver() { return *solver_; }
  [[nodiscard]] Obligations& obligations() { return obligations_; }
  [[nodiscard]] StepReader& reader() { return reader_; }

  /// Demands the facts, as far as they are not built in.
  [[nodiscard]] std::vector<Literal> assumptions(const Places& facts);
  /// Where it holds, the event loses the fact.
  [[nodiscard]] Literal lost(std::size_t place);
  /// After `unsatisfiable`: the facts that the answer leans on, beside those built in.
  [[nodiscard]] Places in_core();
  [[nodiscard]] const Obligations::Bad& bad(const AskedProperty& asked);

 private:
  const Candidates& all_;
  Places narrowed_to_;
  std::unique_ptr<Solver> solver_;
  Obligations obligations_;
  StepReader reader_;
  std::map<std::size_t, Literal> assumed_;         ///< by place
  std::map<std::uint32_t, std::size_t> place_of_;  ///< by the variable of `assumed_`
  std::map<std::size_t, Literal> lost_;            ///< by place
  std::optional<Obligations::Bad> bad_;            ///< of the one property that is asked
};

}  // namespace cairn::solver

/// \file
/// Proofs by facts of the properties that one budget of faults is asked with.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cairn/options.hpp"
#include "cairn/state.hpp"
#include "cairn/verdict.hpp"
#include "explore/explore.hpp"
#include "explore/limits.hpp"
#include "solver/facts.hpp"
#include "verify/mine.hpp"
#include "verify/two_solvers.hpp"

namespace cairn::verify {

/// Why there is no proof by facts, in words: "they do not exclude every breach".
[[nodiscard]] std::string words_of(const solver::NoFactsProof& why);

/// Mines candidates and has the solvers sift them, the simplest kinds first: a richer kind only where the simpler ones
/// do not do. The effort is counted, not timed, so that the same question ends in the same way on every machine, unless
/// a limit of the call is met first. Each property is looked at afresh: its proof does not depend on what else is
/// asked.
class ByFacts {
 public:
  /// The limits are for all proofs together, from now on. The model must outlive this.
  ByFacts(const Model& model, const FaultBudget& faults, const Limits& limits);
  ByFacts(const ByFacts&) = delete;
  ByFacts& operator=(const ByFacts&) = delete;

  [[nodiscard]] const system::Space& space() const { return space_; }

  /// As many of the states that were visited as are enough to see what varies; to be told before the first proof.
  /// Without any, candidates come from the text alone.
  void see(const explore::Exploration& all);

  /// A proof, or why there is none.
  /// \throws Contradiction  where two solvers disagree
  [[nodiscard]] std::variant<solver::FactsProof, solver::NoFactsProof> prove(const AskedProperty& asked);

  /// What the solvers did so far.
  [[nodiscard]] SolverWork work() const { return solvers_.work(); }

 private:
  /// What the model says by itself. It takes its time, and not every call needs a proof by facts.
  struct Ground {
    solver::Subject subject;
    std::vector<bool> touched;  ///< by a step, per variable
  };
  [[nodiscard]] const Ground& ground();

  static constexpr std::size_t tiers = 4;
  using Candidates = std::vector<solver::Fact>;
  /// The candidates of a tier, in no order. Richer tiers come later.
  [[nodiscard]] Candidates mined(std::size_t tier);
  /// The same, the simplest first; none where they are too many. All properties share them.
  [[nodiscard]] const Candidates& candidates(std::size_t tier);
  /// Offers the next tier that has candidates, and moves on; false where there is none.
  bool offer_more(solver::FactsProver& prover, std::size_t& tier);

  system::Space space_;
  Miner miner_;
  explore::Guard guard_;
  TwoSolvers solvers_;
  bool seen_all_ = false;
  bool from_above_ = false;
  std::optional<Ground> ground_;                             ///< made when it is needed
  std::array<std::optional<Candidates>, tiers> candidates_;  ///< the same
};

}  // namespace cairn::verify

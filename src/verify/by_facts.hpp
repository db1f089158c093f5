/// \file
/// Proofs by facts of the properties that one budget of faults is asked with.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cairn/options.hpp"
#include "cairn/state.hpp"
#include "cairn/verdict.hpp"
#include "explore/explore.hpp"
#include "solver/facts.hpp"
#include "verify/mine.hpp"

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

  /// A settled state that can be reached. Without any, candidates come from the text alone.
  void see(const State& s) { miner_.add(s); }
  /// As many of the states that were visited as are enough to see what varies.
  void see(const explore::Exploration& all);

  /// A proof, or why there is none.
  /// \throws Contradiction  where two solvers disagree
  [[nodiscard]] std::variant<solver::FactsProof, solver::NoFactsProof> prove(const AskedProperty& asked);

 private:
  /// The candidates of a tier, the poorest first, in no order.
  [[nodiscard]] std::vector<solver::Fact> candidates(int tier) const;
  /// Offers the next tier that has candidates, but not too many, and moves on; false where there is none.
  bool offer_more(solver::FactsProver& prover, int& tier) const;

  solver::Subject subject_;
  system::Space space_;
  std::vector<bool> touched_;
  Miner miner_;
  Limits limits_;
  solver::Deadline deadline_;
  bool seen_all_ = false;
};

}  // namespace cairn::verify

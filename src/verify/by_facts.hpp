/// \file
/// Proofs by facts of the properties that one budget of faults is asked with.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "cairn/options.hpp"
#include "cairn/state.hpp"
#include "cairn/verdict.hpp"
#include "explore/visited.hpp"
#include "solver/facts.hpp"
#include "verify/mine.hpp"

namespace cairn::verify {

/// What makes a property hold.
struct ProvedByFacts {
  std::vector<solver::Fact> facts;
  bool any_number = false;  ///< they do not depend on how many faults strike, of the kinds that may
};

/// Mines candidates and has the solvers sift them, the simplest kinds first: a richer kind only where the simpler ones
/// do not do. The effort is counted, not timed, so that the same question ends in the same way on every machine, unless
/// a limit of the call is met first.
class ByFacts {
 public:
  ByFacts(const Model& model, const FaultBudget& faults, const Limits& limits);

  [[nodiscard]] const system::Space& space() const { return system_.space; }

  /// A settled state that can be reached. Without any, candidates come from the text alone.
  void see(const State& s) { miner_.add(s); }
  /// As many of those that an exploration visited as are enough to see what varies.
  void see(const explore::Visited& visited);

  /// A proof, or nothing where the facts do not do or the effort is spent.
  /// \throws Contradiction  where two solvers disagree
  [[nodiscard]] std::optional<ProvedByFacts> prove(const AskedProperty& asked);

 private:
  /// Offers the next richer kind of candidates; false where there is none, or too many of them.
  bool offer_more();
  [[nodiscard]] bool holds_uncounted(const AskedProperty& asked, const std::vector<solver::Fact>& facts) const;
  [[nodiscard]] bool interrupted() const;

  const Model& model_;
  FaultBudget faults_;
  Limits limits_;
  system::Domains domains_;
  system::System system_;
  Miner miner_;
  std::optional<solver::FactsProver> prover_;
  int kinds_offered_ = 0;
};

}  // namespace cairn::verify

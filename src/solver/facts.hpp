/// \file
/// Proof by facts: of many candidates the few that together are an invariant and leave nothing bad.
///
/// Every reachable settled state satisfies the facts when the first one does and no event leads from a state that
/// satisfies them to one that does not; a property holds when no state that satisfies them, and no event in one, breaks
/// it. The solvers answer both with the state variables free: a quick one searches (the scout), and the obligations of
/// the proof that it ends with are put anew to another (the judge), which alone decides. A candidate is taken up only
/// when the solver has found a state that it rules out and that nothing taken up so far does: the simplest such
/// candidate each time. Only where a question is hard, all that bounds values is taken up as a help. At the end what
/// can be spared is spared, so that the proof is small.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "solver/deadline.hpp"
#include "solver/narrowed_relation.hpp"

namespace cairn::solver {

/// A property proved by facts.
struct FactsProof {
  /// The first state satisfies them, every event keeps them, and together they exclude the bad.
  std::vector<Fact> facts;
  /// They do so however many faults strike, of the kinds that may strike at all.
  bool any_number = false;
};

/// What a search for a proof may cost.
struct FactsBounds {
  Bounds scout;                    ///< of all questions to the scout: time in all, effort for one property
  Bounds judge;                    ///< of all questions to the judge: time in all, effort for one property
  std::uint64_t questions = 2000;  ///< to the scout, for one property
  /// Where these questions are not enough, as many more for the largest set of candidates that every event keeps: its
  /// proofs are long, and few of them are read.
  bool from_above = false;
  std::uint64_t hard = 5'000;     ///< effort of a question above which all that bounds values is taken up as a help
  std::uint64_t sparing = 2'000;  ///< effort of a question by which a fact is spared: it may be there to make it easy
  std::uint64_t minimising = 10'000;  ///< effort of all these questions
};

/// Why a property is not proved by facts.
struct NoFactsProof {
  enum class Why : std::uint8_t {
    not_excluded,  ///< a state that satisfies all facts that every event keeps is bad
    too_costly,    ///< the solver met its bounds
    failed,        ///< the solver failed; `complaint` says how
  };
  Why why = Why::not_excluded;
  Cause cause = Cause::none;  ///< too_costly
  std::string complaint;
};

/// Settles properties of one subject, one after another; what was learned of the candidates stays.
class FactsProver {
 public:
  FactsProver(Subject subject, SolverMaker scout, SolverMaker judge, const FactsBounds& bounds);
  FactsProver(const FactsProver&) = delete;
  FactsProver& operator=(const FactsProver&) = delete;

  /// Adds candidates, the simplest first: where several would do, the earlier is taken. What says nothing, and what
  /// does not hold in the first state, is passed over. What an event was found to lose does not come back by more of
  /// them.
  void offer(const std::vector<Fact>& candidates);

  /// Looks for a proof with the candidates so far.
  /// \throws Contradiction  where the judge finds the scout wrong
  [[nodiscard]] std::variant<FactsProof, NoFactsProof> prove(const AskedProperty& asked);

 private:
  class Search;
  /// The proof, once the judge has found no hole in it.
  [[nodiscard]] std::variant<FactsProof, NoFactsProof> judged(const AskedProperty& asked, std::vector<Fact> facts);
  /// The judge finds no hole even where faults are not counted: then there is none where they are.
  [[nodiscard]] bool holds_uncounted(const AskedProperty& asked, const std::vector<Fact>& facts) const;

  Subject subject_;
  SolverMaker scout_, judge_;
  FactsBounds bounds_;
  Deadline deadline_;
  system::Space space_;
  system::Terms constants_;
  system::SymbolicState start_;  ///< the first settled state
  Candidates candidates_;
};

}  // namespace cairn::solver

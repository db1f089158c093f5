/// \file
/// Proof by facts: of many candidates the few that together are an invariant and leave nothing bad.
///
/// Every reachable settled state satisfies the facts when the first one does and no event leads from a state that
/// satisfies them to one that does not; a property holds when no state that satisfies them, and no event in one, breaks
/// it. The solver answers both with the state variables free. Candidates are taken up only when an answer leaned on
/// them, so that those which have nothing to do with the question cost nothing but their clauses.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "solver/clauses.hpp"
#include "solver/fact.hpp"
#include "solver/solver.hpp"
#include "system/build.hpp"

namespace cairn::solver {

/// What a proof by facts cost.
struct FactsEffort {
  std::uint64_t questions = 0;   ///< put to the solver
  std::uint64_t candidates = 0;  ///< facts that were offered
  std::uint64_t dropped = 0;     ///< of those, not kept by every event
};

/// A property proved by facts.
struct FactsProof {
  std::vector<Fact>
      facts;  ///< the first state satisfies them, every event keeps them, and together they exclude the bad
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

/// Settles properties of one system, one after another; what was learned of the candidates stays.
class FactsProver {
 public:
  /// \param bounds  of each question
  FactsProver(system::System& system, Solver& solver, const Bounds& bounds);

  /// Adds candidates; those that do not hold in the first state are passed over.
  void offer(const std::vector<Fact>& candidates);

  /// Looks for a proof with the candidates so far.
  /// \param minimal_within  how many questions may be spent to do without single facts
  [[nodiscard]] std::variant<FactsProof, NoFactsProof> prove(const AskedProperty& asked, std::uint64_t minimal_within);

  [[nodiscard]] const FactsEffort& effort() const { return effort_; }

 private:
  struct Candidate {
    Fact fact;
    system::Term now, next;
    Literal assumed;   ///< where it holds, so does `now`
    Literal violated;  ///< where it holds, `next` does not
    bool has_violated = false;
    bool live = true;
  };
  /// Candidates, as places in candidates_.
  using Places = std::vector<std::size_t>;

  struct Bad {
    Literal literal;
    bool on_the_way;  ///< an event leads to it
  };

  [[nodiscard]] Bad bad_of(const AskedProperty& asked);
  [[nodiscard]] Literal violated(std::size_t place);
  [[nodiscard]] std::vector<Literal> assumptions(const Places& facts) const;
  [[nodiscard]] Places live() const;
  [[nodiscard]] Places in_core();
  Outcome ask(std::vector<Literal> assumptions);

  /// That the facts exclude the bad: `unsatisfiable`, and `used` are those that the answer leaned on.
  Outcome exclude(const Bad& bad, const Places& facts, Places& used);
  /// That every event in a state with the facts keeps `kept`.
  Outcome keep(const Places& facts, const Places& kept, Places& used);
  /// Drops the live candidates that the model found violates.
  void drop_violated();

  /// Facts among the live ones that exclude the bad and that events keep, found from the bad backwards.
  std::optional<Places> close(const Bad& bad, NoFactsProof& why);
  void minimise(const Bad& bad, Places& facts, std::uint64_t questions);
  [[nodiscard]] NoFactsProof costly() const;

  system::System& system_;
  Solver& solver_;
  Clauses clauses_;
  Bounds bounds_;
  FactsEffort effort_;
  std::vector<Candidate> candidates_;
  std::map<std::uint32_t, std::size_t> place_of_;  ///< by the variable of `assumed`
  std::map<std::pair<Property, std::int64_t>, Bad> bad_;
  Literal event_;  ///< where it holds, one event happens
};

}  // namespace cairn::solver

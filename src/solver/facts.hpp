/// \file
/// Proof by facts: of many candidates the few that together are an invariant and leave nothing bad.
///
/// Every reachable settled state satisfies the facts when the first one does and no event leads from a state that
/// satisfies them to one that does not; a property holds when no state that satisfies them, and no event in one, breaks
/// it. The solvers answer both with the state variables free: a quick one searches (the scout), and the two questions
/// of the proof that it ends with are put anew to another (the judge), which alone decides. A candidate is taken up
/// only when the solver has found a state that it rules out and that nothing taken up so far does: the simplest such
/// candidate each time. So the proof stays small, and what has nothing to do with the question costs nothing but its
/// clauses.
#pragma once

#include <cstdint>
#include <functional>
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
#include "system/evaluate.hpp"

namespace cairn::solver {

/// What the search for proofs cost.
struct FactsEffort {
  std::uint64_t questions = 0;   ///< put to the scout
  std::uint64_t candidates = 0;  ///< facts that were offered
  std::uint64_t dropped = 0;     ///< of those, not kept by every event
};

/// A property proved by facts.
struct FactsProof {
  /// The first state satisfies them, every event keeps them, and together they exclude the bad.
  std::vector<Fact> facts;
};

/// Puts the obligations of a proof by facts to a solver without clauses: that no state with the facts is bad or becomes
/// so on the way of an event, and that no event loses one of them. (That the first state has them needs no solver.)
/// `unsatisfiable` means that the proof holds.
[[nodiscard]] Outcome find_hole(system::System& system, const AskedProperty& asked, const std::vector<Fact>& facts,
                                Solver& solver, const Bounds& bounds);

/// That the first state has all of the facts, and neither it nor what it settled from is bad.
[[nodiscard]] bool begins_well(system::System& system, const AskedProperty& asked, const std::vector<Fact>& facts);

/// Makes solvers without clauses.
using SolverMaker = std::function<std::unique_ptr<Solver>()>;

/// What a search for a proof may cost.
struct FactsBounds {
  Bounds scout;                    ///< of each question to the scout
  Bounds judge;                    ///< of each question to the judge
  std::uint64_t questions = 2000;  ///< to the scout, for one property
  std::uint64_t minimising = 300;  ///< of those, how many may be spent to do without single facts
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
  FactsProver(system::System& system, const SolverMaker& scout, SolverMaker judge, const FactsBounds& bounds);

  /// Adds candidates, the simplest first: where several would do, the earlier is taken. Those that do not hold in the
  /// first state are passed over.
  void offer(const std::vector<Fact>& candidates);

  /// Looks for a proof with the candidates so far.
  /// \throws Contradiction  where the judge finds the scout wrong
  [[nodiscard]] std::variant<FactsProof, NoFactsProof> prove(const AskedProperty& asked);

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
    system::Term term;
    Literal literal;
    bool on_the_way;  ///< an event leads to it
  };

  [[nodiscard]] Bad bad_of(const AskedProperty& asked);
  [[nodiscard]] Literal violated(std::size_t place);
  [[nodiscard]] std::vector<Literal> assumptions(const Places& facts) const;
  [[nodiscard]] Places in_core();
  Outcome ask(const std::vector<Literal>& assumed);

  /// Whether a state with the facts is bad, or leads to what is.
  Outcome find_bad(const Bad& bad, const Places& facts, Places& used);
  /// Whether an event leads from a state with the facts to one without some of `kept`.
  Outcome find_loss(const Places& facts, const Places& kept, Places& used);

  /// The model that the solver has found, as what `programs` take.
  [[nodiscard]] std::vector<system::Lanes> model() const;
  /// Of all candidates, which hold in the state of the model, or after its event.
  [[nodiscard]] std::vector<system::Lanes> hold_in(const std::vector<system::Lanes>& values, bool after_event);
  /// What of the model's state and event alone makes `target` hold.
  [[nodiscard]] Known reason_for(system::Term target, const std::vector<system::Lanes>& model);
  /// Takes up the first live candidate that the model's state is without, if possible one that the reason for `target`
  /// is without; false where there is none.
  bool rule_out(Places& facts, system::Term target);
  /// Those of the facts that the model's event does not keep are candidates no more.
  void drop_lost(Places& facts, const std::vector<system::Lanes>& model);
  /// A fact that the model's event does not keep.
  [[nodiscard]] std::size_t first_lost(const Places& facts, const std::vector<system::Lanes>& model);

  /// Facts among the live ones that exclude the bad and that events keep.
  std::optional<Places> close(const Bad& bad, NoFactsProof& why);
  /// Those of `all` that the answers lean on, where `all` is such a set; nothing where it is not.
  std::optional<Places> leaned_on(const Bad& bad, const Places& all);
  void minimise(const Bad& bad, Places& facts);
  /// The proof, once the judge has found no hole in it.
  [[nodiscard]] std::variant<FactsProof, NoFactsProof> judged(const AskedProperty& asked, const Places& facts);

  system::System& system_;
  SolverMaker judge_;
  std::unique_ptr<Solver> solver_;
  Clauses clauses_;
  FactsBounds bounds_;
  std::uint64_t last_question_ = 0;  ///< to the scout, for the property in work
  FactsEffort effort_;
  std::vector<Candidate> candidates_;
  std::map<std::uint32_t, std::size_t> place_of_;  ///< by the variable of `assumed`
  std::map<std::pair<Property, std::int64_t>, Bad> bad_;
  Literal event_;  ///< where it holds, one event happens
  /// All candidates in `now` and in `next`; made anew after candidates were added.
  std::optional<system::Program> now_program_, next_program_;
  std::vector<system::Lanes> scratch_;
};

}  // namespace cairn::solver

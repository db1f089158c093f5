#include "solver/reach.hpp"

#include <vector>

#include "base/contradiction.hpp"
#include "solver/allowance.hpp"
#include "solver/clauses.hpp"
#include "solver/decode.hpp"
#include "solver/passes.hpp"

namespace cairn::solver {

using system::System;
using system::Term;

namespace {

/// One sight in the runs of one system.
class Search {
 public:
  Search(Unroller& unroller, Solver& solver, Sight sight, const Bounds& bounds, std::optional<std::size_t> longest)
      : unroller_(unroller), clauses_(unroller.system().terms, solver), allowance_(solver, bounds), longest_(longest) {
    System& system = unroller.system();
    if (sight == Sight::complete_at_rest) {
      at_rest_ = system.complete_at_rest();
    } else {
      at_first_ = system.kept_device_leads_at_first();
      on_the_way_ = system.kept_device_leads_on_the_way();
    }
  }

  ReachAnswer answer() {
    try {
      if (at_first_ != system::never) {
        answer_.outcome = ReachAnswer::Outcome::met;
      } else {
        look_at_all_lengths();
      }
    } catch (const Unanswered& end) {
      answer_.cause = end.cause;
      answer_.complaint = end.complaint;
    }
    return std::move(answer_);
  }

 private:
  void look_at_all_lengths() {
    for (std::size_t t = 0;; ++t) {
      if (is_met(unroller_.at(t, at_rest_), system::never, t)) return;
      if (t == longest_) return find_never(t);
      clauses_.require(unroller_.one_event(t));
      const Term unfinished = unroller_.at(t, unroller_.system().unfinished);
      if (is_met(unroller_.at(t, on_the_way_), unfinished, t + 1)) return;
      demand_enough_passes(unfinished, clauses_, allowance_);
      if (!allowance_.can({})) return find_never(t);
    }
  }

  void find_never(std::size_t length) {
    answer_.outcome = ReachAnswer::Outcome::never;
    answer_.length = length;
  }

  /// \param seen        the sight, after `length` events
  /// \param unfinished  the last of them does not settle in the passes of the formulas
  bool is_met(Term seen, Term unfinished, std::size_t length) {
    if (seen == system::never) return false;
    const std::vector<Literal> assumed{clauses_.literal_of(seen), clauses_.literal_of(!unfinished)};
    if (!allowance_.can(assumed)) return false;
    answer_.outcome = ReachAnswer::Outcome::met;
    answer_.events = trace_of(unroller_.system(), decode(unroller_, clauses_, length));
    return true;
  }

  Unroller& unroller_;
  Clauses clauses_;
  Allowance allowance_;
  std::optional<std::size_t> longest_;
  Term at_first_, on_the_way_, at_rest_;
  ReachAnswer answer_;
};

}  // namespace

ReachAnswer look_for(Unroller& unroller, Solver& solver, Sight sight, const Bounds& bounds,
                     std::optional<std::size_t> longest) {
  return Search(unroller, solver, sight, bounds, longest).answer();
}

ReachAnswer look_for(Unroller& unroller, const SolverMaker& scout, const SolverMaker& judge, Sight sight,
                     const Bounds& bounds, std::optional<std::size_t> longest) {
  const Deadline deadline(bounds.seconds);
  ReachAnswer answer = look_for(unroller, *scout(), sight, bounds, longest);
  if (answer.outcome != ReachAnswer::Outcome::never) return answer;
  Bounds rest = bounds;
  rest.seconds = deadline.left();
  ReachAnswer judged = look_for(unroller, *judge(), sight, rest, longest);
  const bool agree = judged.outcome == ReachAnswer::Outcome::never && judged.length == answer.length;
  if (judged.outcome != ReachAnswer::Outcome::unknown && !agree) {
    throw Contradiction("two solvers disagree on the runs that make a proof speak of something");
  }
  return judged;
}

}  // namespace cairn::solver

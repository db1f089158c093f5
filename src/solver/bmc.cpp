#include "solver/bmc.hpp"

#include <fmt/format.h>

#include <chrono>
#include <utility>

#include "base/contradiction.hpp"
#include "solver/allowance.hpp"
#include "solver/clauses.hpp"
#include "solver/decode.hpp"
#include "solver/passes.hpp"
#include "solver/preference.hpp"

namespace cairn::solver {

using system::RestBreach;
using system::System;
using system::Term;
using system::Terms;

namespace {

/// One property asked of one system.
class Question {
 public:
  Question(Unroller& unroller, Solver& solver, const AskedProperty& asked, const BoundedLimits& limits)
      : unroller_(unroller),
        system_(unroller.system()),
        solver_(solver),
        clauses_(system_.terms, solver),
        allowance_(solver, limits.bounds),
        asked_(asked),
        limits_(limits) {
    if (speaks_of_goal(asked.property)) at_rest_ = system_.broken_at_rest(asked);
    if (!speaks_of_goal(asked.property)) on_the_way_ = system_.broken_on_the_way(asked.property);
  }

  BoundedAnswer answer() {
    try {
      if (!speaks_of_goal(asked_.property) && system_.broken_at_first(asked_.property) != system::never) {
        answer_.verdict = Verdict::refuted;
      } else {
        look_at_all_depths();
      }
    } catch (const Unanswered& end) {
      answer_.cause = end.cause;
      answer_.complaint = end.complaint;
    }
    return std::move(answer_);
  }

 private:
  void look_at_all_depths() {
    for (std::size_t t = 0; !is_long_enough(t); ++t) {
      if (limits_.length && t > *limits_.length) {
        throw Unanswered{Cause::none, fmt::format("runs of more than {} events were not looked at", *limits_.length)};
      }
      const auto start = std::chrono::steady_clock::now();
      const bool goes_on = look_at(t);
      const std::chrono::duration<double> seconds = std::chrono::steady_clock::now() - start;
      answer_.depths.push_back({t, solver_.variables(), solver_.clauses(), seconds.count()});
      if (limits_.progress) limits_.progress(answer_.depths.back());
      if (!goes_on) {
        if (answer_.verdict != Verdict::refuted) answer_.verdict = Verdict::proved;
        return;
      }
    }
  }

  /// Nothing at depth t can lead to a refutation as short as the one that is known.
  [[nodiscard]] bool is_long_enough(std::size_t t) const {
    if (answer_.verdict != Verdict::refuted) return false;
    // The more cables are lost the longer the refutation is: a deeper state may still have a shorter one.
    return asked_.property != Property::tolerates_loss || t > answer_.refutation.size();
  }

  /// \returns false where no run has an event at depth t
  bool look_at(std::size_t t) {
    if (speaks_of_goal(asked_.property)) look_at_rest(t);
    if (is_long_enough(t)) return true;
    if (t == limits_.longest) return false;
    clauses_.require(unroller_.one_event(t));
    look_at_event(t);
    return is_long_enough(t) || allowance_.can({});
  }

  void look_at_event(std::size_t t) {
    const Term unfinished = unroller_.at(t, system_.unfinished);
    const Term bad = unroller_.at(t, on_the_way_);
    if (bad != system::never) {
      Choice choice{{}, {clauses_.literal_of(bad), clauses_.literal_of(!unfinished)}};
      if (allowance_.can(choice.assumed)) return refute(choice, t + 1);
      clauses_.require(terms().implies(bad, unfinished));
    }
    demand_enough_passes(unfinished, clauses_, allowance_);
  }

  void look_at_rest(std::size_t t) {
    const Term unfinished = unroller_.at(t, at_rest_.unfinished);
    const Term bad = unroller_.at(t, at_rest_.broken);
    if (bad != system::never) {
      Choice choice{{}, {clauses_.literal_of(bad), clauses_.literal_of(!unfinished)}};
      if (answer_.verdict == Verdict::refuted) {
        const auto most = static_cast<std::int64_t>(answer_.refutation.size() - t);
        choice.assumed.push_back(clauses_.literal_of(!terms().at_least(at_rest_.lost, most + 1)));
      }
      if (allowance_.can(choice.assumed)) return refute(choice, t);
    }
    demand_enough_passes(unfinished, clauses_, allowance_);
  }

  /// The model that the solver has found begins with `length` events that refute the property.
  void refute(Choice& choice, std::size_t length) {
    choice.places = decode(unroller_, clauses_, length);
    note(choice, lost_in_model());
    Preference preference(unroller_, clauses_, allowance_);
    std::vector<bool> lost;
    try {
      if (!at_rest_.lost.empty()) preference.fewest(at_rest_.lost, choice);
      preference.choose(choice);
      lost = preference.first_ones(at_rest_.lost, choice);
    } catch (const Unanswered&) {
      if (at_rest_.lost.empty()) note(choice, {});
      throw;
    }
    note(choice, lost);
  }

  [[nodiscard]] std::vector<bool> lost_in_model() const {
    std::vector<bool> lost;
    for (const Term each : at_rest_.lost) lost.push_back(clauses_.value_of(each));
    return lost;
  }

  void note(const Choice& choice, const std::vector<bool>& lost) {
    answer_.verdict = Verdict::refuted;
    answer_.refutation = trace_of(system_, choice.places);
    if (asked_.property == Property::survives_cold_start) {
      answer_.refutation.push_back({Event::Kind::cold_start, 0});
    }
    for (std::uint32_t c = 0; c < lost.size(); ++c) {
      if (lost[c]) answer_.refutation.push_back({Event::Kind::broke, c});
    }
  }

  [[nodiscard]] Terms& terms() const { return system_.terms; }

  Unroller& unroller_;
  System& system_;
  Solver& solver_;
  Clauses clauses_;
  Allowance allowance_;
  AskedProperty asked_;
  const BoundedLimits& limits_;
  Term on_the_way_;
  RestBreach at_rest_;
  BoundedAnswer answer_;
};

}  // namespace

BoundedAnswer check_bounded(Unroller& unroller, Solver& solver, const AskedProperty& asked,
                            const BoundedLimits& limits) {
  return Question(unroller, solver, asked, limits).answer();
}

BoundedAnswer check_bounded(Unroller& unroller, const SolverMaker& scout, const SolverMaker& judge,
                            const AskedProperty& asked, const BoundedLimits& limits) {
  const Deadline deadline(limits.bounds.seconds);
  BoundedAnswer answer = check_bounded(unroller, *scout(), asked, limits);
  if (answer.verdict != Verdict::proved) return answer;
  BoundedLimits quietly = limits;
  quietly.progress = {};
  quietly.bounds.seconds = deadline.left();
  BoundedAnswer judged = check_bounded(unroller, *judge(), asked, quietly);
  const bool agree = judged.verdict == Verdict::proved && judged.depths.size() == answer.depths.size();
  if (judged.verdict != Verdict::undecided && !agree) {
    throw Contradiction(fmt::format("two solvers disagree on the runs for {}", name_of(asked.property)));
  }
  answer.verdict = judged.verdict;
  answer.cause = judged.cause;
  answer.complaint = std::move(judged.complaint);
  return answer;
}

}  // namespace cairn::solver

#include "cairn/prove.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/contradiction.hpp"
#include "explore/explore.hpp"
#include "verify/audit.hpp"
#include "verify/by_constraints.hpp"
#include "verify/by_facts.hpp"
#include "verify/by_unrolling.hpp"
#include "verify/closed_set.hpp"
#include "verify/emptiness.hpp"
#include "verify/question.hpp"
#include "verify/rests_on.hpp"
#include "verify/told_proofs.hpp"
#include "verify/vacuity.hpp"

namespace cairn {

namespace {

using verify::ByFacts;
using verify::Question;
using Verdicts = std::vector<PropertyVerdict*>;

/// Adds the time that a scope takes to a sum.
class Timed {
 public:
  explicit Timed(double& sum) : sum_(sum) {}
  Timed(const Timed&) = delete;
  Timed& operator=(const Timed&) = delete;
  ~Timed() { sum_ += watch_.seconds(); }

 private:
  double& sum_;
  explore::Watch watch_;
};

/// Settles one question: with one exploration, or with two where faults may strike and properties are asked without.
class Prover {
 public:
  Prover(const Model& model, const ProveOptions& options, std::vector<verify::ToldProof>& proofs)
      : model_(model),
        options_(options),
        proofs_(proofs),
        world_(model),
        question_(verify::question_of(model, options)),
        empty_(model),
        guard_(options.limits, options.progress) {}

  Report run() {
    report_.faults = question_.faults;
    for (const AskedProperty& asked : question_.properties) report_.properties.emplace_back().asked = asked;
    if (question_.faults.none()) {
      settle(FaultBudget{}, [](Property) { return true; });
    } else {
      // The smaller question first, so that a limit met in the larger leaves its answers standing.
      settle(FaultBudget{}, [](Property p) { return !asked_with_faults(p); });
      settle(question_.faults, [](Property p) { return asked_with_faults(p); });
    }
    std::sort(report_.rests_on.ties.begin(), report_.rests_on.ties.end());
    const auto repeated = std::unique(report_.rests_on.ties.begin(), report_.rests_on.ties.end());
    report_.rests_on.ties.erase(repeated, report_.rests_on.ties.end());
    report_.rests_on.factory = verify::factory_values(model_);
    report_.findings = empty_.told(question_.faults);
    return std::move(report_);
  }

 private:
  // What is asked under `faults`: those of the properties that `belongs` chooses.
  template <class Belongs>
  void settle(const FaultBudget& faults, Belongs belongs) {
    Verdicts verdicts;
    for (PropertyVerdict& verdict : report_.properties) {
      if (belongs(verdict.asked.property)) verdicts.push_back(&verdict);
    }
    if (verdicts.empty()) return;
    try {
      if (options_.engine == Engine::solver) {
        by_constraints(faults, verdicts);
        empty_.add_nothing();
      } else {
        by_states(faults, verdicts);
      }
      if (options_.engine == Engine::both) compare(faults, verdicts);
    } catch (const Contradiction& contradiction) {
      empty_.add_nothing();
      claim_nothing_more(contradiction.what(), verdicts);
    }
  }

  // What is refuted stands: it was replayed.
  static void claim_nothing_more(const std::string& why, const Verdicts& verdicts) {
    for (PropertyVerdict* verdict : verdicts) {
      if (verdict->verdict != Verdict::refuted) verify::claim_nothing(why, *verdict);
    }
  }

  void by_states(const FaultBudget& faults, const Verdicts& asked) {
    Verdicts verdicts = asked;
    explore::Exploration all = explored_whole(faults, verdicts);
    take_refutations(all, verdicts);
    if (!verdicts.empty() && options_.engine == Engine::automatic) by_facts(faults, all, verdicts);
    const bool is_large = all.cut_short || all.stopped == Reason::memory;
    if (!is_large || verdicts.empty()) return conclude(faults, all, asked, verdicts);
    all.visited.reset();  // room for those that follow
    by_reduced_states(faults, asked, verdicts);
  }

  // Each search leaves out the more, the less it asks for.
  void by_reduced_states(const FaultBudget& faults, const Verdicts& asked, const Verdicts& verdicts) {
    for (Verdicts& left : searched_together(verdicts)) {
      explore::Exploration all = explored(faults, left, {.reductions = options_.reductions, .jobs = options_.jobs});
      take_refutations(all, left);
      if (all.orders_left_out && !left.empty() && may_be_vacuous_by_orders(all, left)) {
        Reductions in_every_order = options_.reductions;
        in_every_order.orders = false;
        all = explored(faults, left, {.reductions = in_every_order, .jobs = options_.jobs});
        if (all.answers.front().refutation) {
          throw Contradiction("orders that make no difference were left out, and a breach was missed");
        }
      }
      conclude(faults, all, asked, left);
    }
  }

  // All that asks states at rest, and each of the others by itself; where no order is left out, all of them.
  [[nodiscard]] std::vector<Verdicts> searched_together(const Verdicts& verdicts) const {
    if (!options_.reductions.orders) return {verdicts};
    std::vector<Verdicts> searches;
    Verdicts at_rest;
    for (PropertyVerdict* verdict : verdicts) {
      if (speaks_of_goal(verdict->asked.property)) {
        at_rest.push_back(verdict);
      } else {
        searches.push_back({verdict});
      }
    }
    if (!at_rest.empty()) searches.push_back(at_rest);
    return searches;
  }

  // Whether a device of keep ever leads (6.e) is seen only where no state is left out. Runs that end complete are seen.
  [[nodiscard]] bool may_be_vacuous_by_orders(const explore::Exploration& all, const Verdicts& verdicts) const {
    return verdicts.front()->asked.property == Property::primary_stays &&
           !vacuity(all, Property::primary_stays).empty();
  }

  // A run without end takes back whatever was proved of `asked`.
  void conclude(const FaultBudget& faults, const explore::Exploration& all, const Verdicts& asked,
                const Verdicts& left) {
    empty_.add(all, faults);
    report_.rests_on.ties.insert(report_.rests_on.ties.end(), all.ties.begin(), all.ties.end());
    if (!all.endless.empty()) return claim_nothing_more(endless_run(all.endless), asked);
    take_proofs(faults, all, left);
  }

  // A set of states that nothing was left out of can be confirmed, and mined for facts.
  explore::Exploration explored_whole(const FaultBudget& faults, const Verdicts& verdicts) {
    return explored(faults, verdicts, {.most_states = options_.confirm_limit, .jobs = options_.jobs});
  }

  explore::Exploration explored(const FaultBudget& faults, const Verdicts& verdicts, const explore::Manner& manner) {
    const Timed timed(report_.timing.exploring);
    std::vector<AskedProperty> asked;
    for (const PropertyVerdict* verdict : verdicts) asked.push_back(verdict->asked);
    explore::Exploration all = explore::explore(world_, faults, asked, guard_, manner);
    for (PropertyVerdict* verdict : verdicts) verdict->explored = all.explored;
    return all;
  }

  // A refutation stands by itself, whatever else is amiss: it is replayed, and put to the formulas. What is left is not
  // refuted.
  void take_refutations(const explore::Exploration& all, Verdicts& verdicts) {
    Verdicts left;
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
      if (all.answers[i].refutation) {
        take_refutation(*all.answers[i].refutation, *verdicts[i]);
      } else {
        left.push_back(verdicts[i]);
      }
    }
    verdicts = left;
  }

  void take_refutation(const Trace& events, PropertyVerdict& verdict) {
    {
      const Timed timed(report_.timing.replaying);
      verify::judge_refutation(model_, question_.faults, events, verdict);
    }
    if (verdict.verdict != Verdict::refuted) return;
    const Timed timed(report_.timing.confirming);
    verify::confirm_refutation(model_, question_.faults, verdict);
  }

  // Proved by facts are those that can be; they are taken out of `verdicts`.
  void by_facts(const FaultBudget& faults, const explore::Exploration& all, Verdicts& verdicts) {
    if (all.stopped || !all.endless.empty()) return;
    const Timed timed(report_.timing.solving);
    Limits limits = guard_.left();
    // The states would do by themselves; time has to be left for their confirmation, and for other questions.
    if (all.every_state_visited && limits.seconds) *limits.seconds /= 2;
    ByFacts facts(model_, faults, limits);
    facts.see(all);
    Verdicts left;
    for (PropertyVerdict* verdict : verdicts) {
      const Property property = verdict->asked.property;
      const bool may_be_endless = !all.every_state_visited && !verify::ends_for_sure(model_);
      if (may_be_vacuous(all, property) || (may_be_endless && speaks_of_goal(property))) {
        left.push_back(verdict);
        continue;
      }
      const auto answer = facts.prove(verdict->asked);
      const auto* proof = std::get_if<solver::FactsProof>(&answer);
      if (proof == nullptr) {
        verdict->settled.not_by_facts = verify::words_of(std::get<solver::NoFactsProof>(answer));
        left.push_back(verdict);
        continue;
      }
      verify::tell(*proof, facts.space(), *verdict);
      proofs_.push_back({verdict->asked, faults, proof->facts});
      verdict->settled.confirmed = all.every_state_visited;
      verdict->vacuous = vacuity(all, verdict->asked.property);
    }
    verdicts = left;
  }

  // Whether a proof would hold of nothing (6.e) is not known before every state is visited.
  [[nodiscard]] bool may_be_vacuous(const explore::Exploration& all, Property property) const {
    return !all.every_state_visited && !vacuity(all, property).empty();
  }

  void take_proofs(const FaultBudget& faults, const explore::Exploration& all, const Verdicts& verdicts) {
    if (verdicts.empty()) return;
    for (PropertyVerdict* verdict : verdicts) {
      verdict->verdict = all.stopped ? Verdict::undecided : Verdict::proved;
      verdict->settled.reduced = all.reduced;
      if (all.stopped) verdict->reason = *all.stopped;
      if (!all.stopped) verdict->vacuous = vacuity(all, verdict->asked.property);
    }
    if (!all.stopped && !all.reduced) confirm(faults, all, verdicts);
  }

  // The closed set is evaluated again with the formulas.
  void confirm(const FaultBudget& faults, const explore::Exploration& all, const Verdicts& verdicts) {
    const Timed timed(report_.timing.confirming);
    std::vector<AskedProperty> asked;
    for (const PropertyVerdict* verdict : verdicts) asked.push_back(verdict->asked);
    using Outcome = solver::SetConfirmation::Outcome;
    const solver::SetConfirmation again =
        verify::confirm_closed_set(world_, faults, asked, *all.visited, options_.confirm_limit, guard_);
    for (PropertyVerdict* verdict : verdicts) {
      verdict->settled.confirmed = again.outcome == Outcome::agrees;
      if (again.outcome == Outcome::differs) {
        verify::claim_nothing(verify::told(world_, faults, *again.difference), *verdict);
      }
    }
  }

  void by_constraints(const FaultBudget& faults, const Verdicts& verdicts) {
    ByFacts facts(model_, faults, guard_.left());
    verify::ByUnrolling unrolling(model_, faults);
    for (PropertyVerdict* verdict : verdicts) {
      {
        const Timed timed(report_.timing.solving);
        auto proof = settle_by_constraints(facts, unrolling, guard_.left(), *verdict);
        if (proof) proofs_.push_back({verdict->asked, faults, std::move(proof->facts)});
      }
      if (verdict->verdict == Verdict::refuted) take_refutation(Trace(verdict->events), *verdict);
    }
  }

  // Both ways must agree on verdict, length and vacuity; where one is undecided, the other stands, not confirmed.
  void compare(const FaultBudget& faults, const Verdicts& verdicts) {
    std::vector<PropertyVerdict> others;
    for (const PropertyVerdict* verdict : verdicts) others.emplace_back().asked = verdict->asked;
    Verdicts by_solver;
    for (PropertyVerdict& other : others) by_solver.push_back(&other);
    by_constraints(faults, by_solver);
    for (std::size_t i = 0; i < verdicts.size(); ++i) verify::reconcile(others[i], *verdicts[i]);
  }

  // Semantics 5.k. The lemma has counterexamples: docs/semantics-questions.md.
  [[nodiscard]] std::string endless_run(const std::vector<DeviceId>& devices) const {
    std::vector<std::string_view> names;
    names.reserve(devices.size());
    for (const DeviceId d : devices) names.push_back(model_[d].name);
    return fmt::format(
        "a run need not end: {} restart one another for ever, where semantics 5.k says that every run ends (see "
        "docs/semantics-questions.md). Such a stack never comes to rest: do not carry this procedure out",
        fmt::join(names, " and "));
  }

  // Semantics 6.e
  [[nodiscard]] std::string vacuity(const explore::Exploration& all, Property property) const {
    return verify::vacuity(model_, property, {all.a_kept_device_led, all.a_run_completed});
  }

  const Model& model_;
  const ProveOptions& options_;
  std::vector<verify::ToldProof>& proofs_;
  semantics::World world_;
  Question question_;
  verify::Emptinesses empty_;
  explore::Guard guard_;
  Report report_;
};

}  // namespace

Diagnostics objections(const Model& model, const ProveOptions& options) {
  return verify::objections(model, verify::question_of(model, options));
}

Result<Report> verify::prove(const Model& model, const ProveOptions& options, std::vector<ToldProof>& proofs) {
  if (Diagnostics problems = objections(model, question_of(model, options)); !problems.empty()) return problems;
  return Prover(model, options, proofs).run();
}

Result<Report> prove(const Model& model, const ProveOptions& options) {
  std::vector<verify::ToldProof> proofs;
  return verify::prove(model, options, proofs);
}

}  // namespace cairn

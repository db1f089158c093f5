#include "differential/reduced_sets.hpp"

#include <fmt/format.h>

#include "cairn/prove.hpp"
#include "differential/reductions.hpp"
#include "explore/explore.hpp"
#include "verify/closed_set.hpp"

namespace cairn::differential {

namespace {

const explore::Guard no_limits({}, {});

/// One question of one model.
class Sets {
 public:
  Sets(const Model& model, const Question& question, bool strict, Comparison& comparison)
      : world_(model), question_(question), strict_(strict), comparison_(comparison) {}

  void put_to_the_formulas() {
    const explore::Exploration whole = explored(Reductions::none());
    if (whole.cut_short) return give_up(Comparison::Outcome::too_large);
    if (!whole.endless.empty()) return give_up(Comparison::Outcome::endless);
    std::vector<AskedProperty> kept;
    for (const explore::Answer& answer : whole.answers) {
      comparison_.verdicts.push_back({answer.asked, answer.refutation.has_value(), false});
      if (!answer.refutation) kept.push_back(answer.asked);
    }
    comparison_.states += whole.explored;
    if (kept.empty()) return;
    for (const auto& [name, reductions] : forgetting) confirm(name, reductions, kept);
  }

 private:
  void confirm(const char* name, const Reductions& reductions, const std::vector<AskedProperty>& kept) {
    const explore::Exploration reduced = explored(reductions);
    const auto again = verify::confirm_reduced_set(world_, question_.faults, kept, *reduced.visited, reductions,
                                                   2 * most_states, no_limits);
    using Outcome = solver::SetConfirmation::Outcome;
    ++comparison_.sets;
    if (again.outcome == Outcome::agrees) return;
    if (again.outcome == Outcome::unclear) {
      ++comparison_.unclear;
      if (strict_) disagree(name, "is open", *again.doubt);
    } else {
      disagree(name, "is not closed", *again.difference);
    }
  }

  void disagree(const char* name, const char* how, const solver::Difference& difference) {
    if (comparison_.outcome != Comparison::Outcome::agree) return;
    comparison_.outcome = Comparison::Outcome::disagree;
    comparison_.difference = fmt::format("the set reduced by {} {}, kind {}: {}", name, how,
                                         static_cast<int>(difference.kind),
                                         verify::told(world_, question_.faults, difference));
  }

  [[nodiscard]] explore::Exploration explored(const Reductions& reductions) const {
    return explore::explore(world_, question_.faults, question_.asked, no_limits, {nullptr, most_states, reductions});
  }

  void give_up(Comparison::Outcome outcome) { comparison_.outcome = outcome; }

  semantics::World world_;
  const Question& question_;
  bool strict_;
  Comparison& comparison_;
};

}  // namespace

Comparison confirm_reduced_sets(const Model& model, bool strict) {
  Comparison comparison;
  if (!objections(model, {}).empty()) {
    comparison.outcome = Comparison::Outcome::unreadable;
    return comparison;
  }
  for (const Question& question : questions_of(model)) {
    if (question.asked.empty() || comparison.outcome != Comparison::Outcome::agree) continue;
    Sets(model, question, strict, comparison).put_to_the_formulas();
  }
  return comparison;
}

}  // namespace cairn::differential

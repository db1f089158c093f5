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
    const explore::Exploration all =
        explore::explore(world_, question_.faults, {}, no_limits, {.most_states = most_states});
    if (all.cut_short) return give_up(Comparison::Outcome::too_large);
    if (!all.endless.empty()) return give_up(Comparison::Outcome::endless);
    const explore::Exploration whole = explore::explore(world_, question_.faults, question_.asked, no_limits);
    std::vector<AskedProperty> kept;
    std::vector<AskedProperty> broken;
    for (const explore::Answer& answer : whole.answers) {
      comparison_.verdicts.push_back({answer.asked, answer.refutation.has_value(), false});
      (answer.refutation ? broken : kept).push_back(answer.asked);
    }
    comparison_.states += whole.explored;
    for (const auto& [name, reductions] : forgetting) confirm(name, reductions, kept, broken);
  }

 private:
  // What holds is confirmed, but for sets that stay unclear; what is broken never is. With nothing asked every state is
  // visited.
  void confirm(const char* name, const Reductions& reductions, const std::vector<AskedProperty>& kept,
               const std::vector<AskedProperty>& broken) {
    using Outcome = solver::SetConfirmation::Outcome;
    const explore::Exploration reduced =
        explore::explore(world_, question_.faults, {}, no_limits, {nullptr, most_states, reductions});
    const auto confirmed = [&](const std::vector<AskedProperty>& some) {
      return verify::confirm_reduced_set(world_, question_.faults, some, *reduced.visited, reductions, 2 * most_states,
                                         no_limits);
    };
    const auto again = confirmed(kept);
    ++comparison_.sets;
    if (again.outcome == Outcome::unclear) {
      ++comparison_.unclear;
      if (strict_) disagree(name, "is open", *again.doubt);
    } else if (again.outcome == Outcome::differs) {
      disagree(name, "is not closed", *again.difference);
    }
    for (const AskedProperty& asked : broken) {
      if (confirmed({asked}).outcome == Outcome::agrees) missed(name, asked);
    }
  }

  void missed(const char* name, const AskedProperty& asked) {
    comparison_.outcome = Comparison::Outcome::disagree;
    comparison_.difference =
        fmt::format("the set reduced by {} keeps {}: which is refuted", name, name_of(asked.property));
  }

  void disagree(const char* name, const char* how, const solver::Difference& difference) {
    if (comparison_.outcome != Comparison::Outcome::agree) return;
    comparison_.outcome = Comparison::Outcome::disagree;
    comparison_.difference =
        fmt::format("the set reduced by {} {}: {}", name, how, verify::told(world_, question_.faults, difference));
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

#include "differential/reductions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

#include "cairn/prove.hpp"
#include "explore/explore.hpp"
#include "explore/layout.hpp"
#include "explore/reduce/alike.hpp"
#include "explore/reduce/forget.hpp"
#include "semantics/events.hpp"

namespace cairn::differential {

namespace {

constexpr Reductions all_but_alike{true, true, true, true, false};

/// Those that leave out orders: of the runs to one end some are left.
constexpr std::array<std::pair<const char*, Reductions>, 3> leaving_out{{
    {"orders", {false, false, false, true, false}},
    {"all but alike", all_but_alike},
    {"all", {true, true, true, true, true}},
}};

/// Those by which devices that are alike count once, and all runs are as they were but for which is which.
constexpr std::array<std::pair<const char*, Reductions>, 2> swapping{{
    {"alike", {false, false, false, false, true}},
    {"alike and all that forget", {true, true, true, false, true}},
}};

/// Packed states, none twice.
using Packed = std::set<std::vector<std::uint64_t>>;

/// Gathers the states, those at rest by themselves too.
class States final : public explore::Observer {
 public:
  States(const semantics::World& world, const FaultBudget& budget) : world_(world), layout_(world, budget) {}

  void open(const State& s, const semantics::Derived&, const std::vector<Event>& events) override {
    all_.push_back(s);
    if (semantics::at_rest(s, events)) at_rest_.push_back(s);
  }
  void taken(const State&, const Event&, Refusal, const State&) override {}

  /// What stands for them where `reductions` forget, and states that swaps make of one another count as one.
  [[nodiscard]] Packed all(const Reductions& reductions, const explore::Alike* alike = nullptr) const {
    return standing(all_, reductions, alike);
  }
  [[nodiscard]] Packed at_rest(const Reductions& reductions, const explore::Alike* alike = nullptr) const {
    return standing(at_rest_, reductions, alike);
  }

 private:
  /// More than swaps make of any state of these models.
  static constexpr std::size_t most_images = 1000;

  // Of all that swaps make of a state, the first in the order of the packed ones.
  [[nodiscard]] Packed standing(const std::vector<State>& states, const Reductions& reductions,
                                const explore::Alike* alike) const {
    explore::Forgetter forgetter(world_, reductions);
    Packed all;
    for (const State& s : states) {
      Packed images;
      for (State image : alike == nullptr ? std::vector<State>{s} : alike->images(s, most_images)) {
        forgetter.forget(image);
        std::vector<std::uint64_t> words(layout_.words());
        layout_.pack(image, words.data());
        images.insert(std::move(words));
      }
      all.insert(*images.begin());
    }
    return all;
  }

  const semantics::World& world_;
  explore::Layout layout_;
  std::vector<State> all_, at_rest_;
};

class Confrontation {
 public:
  Confrontation(const Model& model, Comparison& comparison)
      : model_(model), world_(model), guard_({}, {}), comparison_(comparison) {}

  void ask(const Question& question) {
    States states(world_, question.faults);
    const explore::Exploration all = explored(question, Reductions::none(), &states);
    if (all.cut_short) return give_up(Comparison::Outcome::too_large);
    // Where no devices are alike nothing is swapped.
    const bool alike = explore::Alike::find(world_, question.asked) != nullptr;
    for (const auto& [name, reductions] : swapping) {
      if (!alike) continue;
      const explore::Exploration swapped = explored(question, reductions, nullptr);
      expect(!swapped.every_state_visited || swapped.endless.empty() == all.endless.empty(), "runs without end", name);
    }
    if (is_over()) return;
    if (!all.endless.empty()) return give_up(Comparison::Outcome::endless);
    const explore::Exploration whole = explored(question, Reductions::none(), nullptr);
    note(whole);
    for (const auto& [name, reductions] : forgetting) {
      States left(world_, question.faults);
      const explore::Exploration all_reduced = explored(question, reductions, &left);
      const explore::Exploration reduced = explored(question, reductions, nullptr);
      expect(answers(whole) == answers(reduced), "answers", name);
      expect(seen(all) == seen(all_reduced), "sightings", name);
      expect(states.at_rest(reductions) == left.at_rest(reductions), "states at rest", name);
      expect(all_reduced.explored <= all.explored, "the number of states", name);
    }
    for (const auto& [name, reductions] : swapping) {
      if (alike) swap(question, all, whole, states, reductions, name);
    }
    for (const auto& [name, reductions] : leaving_out) {
      if (!alike && reductions == all_but_alike) continue;  // the same as all
      for (std::size_t i = 0; i < question.asked.size(); ++i) {
        if (speaks_of_goal(question.asked[i].property)) continue;
        const Question one{question.faults, {question.asked[i]}};
        compare_shortest(one, whole.answers[i], explored(one, reductions, nullptr).answers.front(), name);
      }
      compare_rest(question, whole, states, reductions, name);
    }
  }

  [[nodiscard]] bool is_over() const { return comparison_.outcome != Comparison::Outcome::agree; }

 private:
  void swap(const Question& question, const explore::Exploration& all, const explore::Exploration& whole,
            const States& states, const Reductions& reductions, const char* name) {
    States left(world_, question.faults);
    const explore::Exploration all_swapped = explored(question, reductions, &left);
    const explore::Alike* alike = all_swapped.alike.get();
    if (alike != nullptr) ++comparison_.swapped;
    expect(seen(all) == seen(all_swapped), "sightings", name);
    expect(states.at_rest(reductions, alike) == left.at_rest(reductions, alike), "states at rest", name);
    if (!reductions.seniority) {
      expect(states.all(reductions, alike) == left.all(reductions, alike), "states", name);
    }
    expect(all_swapped.explored <= all.explored, "the number of states", name);
    const explore::Exploration swapped = explored(question, reductions, nullptr);
    for (std::size_t i = 0; i < whole.answers.size(); ++i) {
      compare_shortest(question, whole.answers[i], swapped.answers[i], name);
    }
  }

  // The refutation may be another one, but no longer.
  void compare_shortest(const Question& question, const explore::Answer& whole, const explore::Answer& reduced,
                        const char* name) {
    const std::string what = fmt::format("the shortest breach of {}", name_of(whole.asked.property));
    expect(whole.refutation.has_value() == reduced.refutation.has_value(), what.c_str(), name);
    if (!whole.refutation || !reduced.refutation) return;
    expect(whole.refutation->size() == reduced.refutation->size(), what.c_str(), name);
    const auto walked = replay(model_, question.faults, reduced.asked, *reduced.refutation);
    expect(std::holds_alternative<Walk>(walked), "the replay", name);
  }

  void compare_rest(const Question& question, const explore::Exploration& whole, const States& states,
                    const Reductions& reductions, const char* name) {
    Question at_rest{question.faults, {}};
    std::vector<const explore::Answer*> answers;
    for (const explore::Answer& answer : whole.answers) {
      if (!speaks_of_goal(answer.asked.property)) continue;
      at_rest.asked.push_back(answer.asked);
      answers.push_back(&answer);
    }
    if (answers.empty()) return;
    States left(world_, question.faults);
    const auto alike = explored(at_rest, reductions, &left).alike;
    // Who came up first, where that is never asked, depends on the order that was taken.
    Reductions standing = reductions;
    standing.seniority = true;
    expect(states.at_rest(standing, alike.get()) == left.at_rest(standing, alike.get()), "states at rest", name);
    const explore::Exploration reduced = explored(at_rest, reductions, nullptr);
    for (std::size_t i = 0; i < answers.size(); ++i) {
      compare_shortest(at_rest, *answers[i], reduced.answers[i], name);
    }
  }

  // With an observer every state is visited.
  explore::Exploration explored(const Question& question, const Reductions& reductions, explore::Observer* observer) {
    return explore::explore(world_, question.faults, question.asked, guard_, {observer, most_states, reductions});
  }

  [[nodiscard]] std::vector<std::string> answers(const explore::Exploration& all) const {
    std::vector<std::string> answers;
    for (const explore::Answer& answer : all.answers) {
      answers.push_back(fmt::format("{} {}", name_of(answer.asked.property),
                                    answer.refutation ? "refuted: " + tell(model_, *answer.refutation) : "holds"));
    }
    return answers;
  }

  [[nodiscard]] std::string seen(const explore::Exploration& all) const {
    std::string seen =
        fmt::format("{}{}{}", all.a_kept_device_led, all.a_run_completed, all.seen.rank_decided_anything());
    for (std::size_t i = 0; i < model_.procedure.steps.size(); ++i) {
      const StepId step(i);
      seen += fmt::format(" {}{}{}", all.seen.happened(step), all.seen.waited(step), all.seen.failed(step));
    }
    for (const auto kind : {Event::Kind::started, Event::Kind::broke, Event::Kind::mended, Event::Kind::crashed,
                            Event::Kind::omitted, Event::Kind::started_late}) {
      seen += fmt::format(" {}", all.seen.happened(kind));
    }
    for (const UnstatedTie& tie : all.ties) {
      seen += fmt::format(" {}:{}-{}", static_cast<int>(tie.key), tie.winner.value, tie.loser.value);
    }
    return seen;
  }

  void note(const explore::Exploration& whole) {
    comparison_.states += whole.explored;
    for (const explore::Answer& answer : whole.answers) {
      comparison_.verdicts.push_back({answer.asked, answer.refutation.has_value(), false});
    }
  }

  void give_up(Comparison::Outcome outcome) { comparison_.outcome = outcome; }

  void expect(bool same, const char* what, const char* reduction) {
    if (same || is_over()) return;
    comparison_.outcome = Comparison::Outcome::disagree;
    comparison_.difference = fmt::format("{} with reduction {}: not as without", what, reduction);
  }

  const Model& model_;
  semantics::World world_;
  explore::Guard guard_;
  Comparison& comparison_;
};

}  // namespace

std::vector<Question> questions_of(const Model& model) {
  Question with{model.procedure.faults, {}};
  Question without{{}, {}};
  for (const AskedProperty& asked : model.procedure.properties) {
    const bool faulty = asked_with_faults(asked.property) && !model.procedure.faults.none();
    (faulty ? with : without).asked.push_back(asked);
  }
  // Orders are left out where no fault may strike: that is asked of all properties.
  Question calm{{}, {}};
  for (const AskedProperty& asked : with.asked) calm.asked.push_back(asked);
  return {without, with, calm};
}

Comparison compare_reductions(const Model& model) {
  Comparison comparison;
  if (!objections(model, {}).empty()) {
    comparison.outcome = Comparison::Outcome::unreadable;
    return comparison;
  }
  Confrontation confrontation(model, comparison);
  for (const Question& question : questions_of(model)) {
    if (!question.asked.empty() && !confrontation.is_over()) confrontation.ask(question);
  }
  return comparison;
}

Comparison compare_reductions(const Draft& draft) {
  if (const auto model = read(draft)) return compare_reductions(*model);
  Comparison unreadable;
  unreadable.outcome = Comparison::Outcome::unreadable;
  return unreadable;
}

}  // namespace cairn::differential

#include "verify/export_facts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>

#include "verify/fact_words.hpp"

namespace cairn::verify {

using solver::Fact;
using system::Assertion;
using system::Settling;
using system::System;
using system::Term;
using system::Terms;
using system::Value;
using system::VariableId;

namespace {

constexpr std::string_view one_value_each =
    "A quantity with a variable for each of its values has exactly one of them.";

/// The state that the site file describes, as variables with given values, and how it settles. (System::first is the
/// same folded to constants: of a question about it nothing would be left.)
struct Start {
  std::vector<Assertion> given;
  Settling settling;
};

Start start_of(System& system) {
  Terms& terms = system.terms;
  const system::SymbolicState initial = initial_state(system.space);
  system::Domains domains = system.domains;
  for (VariableId v = 0; v < system.space.size(); ++v) {
    const std::int64_t value = initial[v].cases().front().value;
    const auto place = std::ranges::lower_bound(domains[v], value);
    if (place == domains[v].end() || *place != value) domains[v].insert(place, value);
  }
  const system::FreeState start = free_state(terms, system.space, domains, " at the start");
  std::vector<Assertion> given{{std::string(one_value_each), start.typing}};
  for (VariableId v = 0; v < system.space.size(); ++v) {
    const std::int64_t value = initial[v].cases().front().value;
    const Term holds = start.state[v].is(value);
    if (holds != system::always)
      given.push_back({fmt::format("{}: {}", system.space.name(v), system.space.value_name(v, value)), holds});
  }
  const int passes = static_cast<int>(system.first.stages.size());
  return {std::move(given), settle(terms, start.state, passes)};
}

class FactQuestions {
 public:
  FactQuestions(System& system, const AskedProperty& asked, const std::vector<Fact>& facts)
      : system_(system), terms_(system.terms), asked_(asked), facts_(facts) {
    states_ = {
        {"A quantity with a variable for each of its values has exactly one of them.", system.now.typing},
        {"The stack has settled: devices that are linked follow the same leader, and each that is up is together "
         "with its leader.",
         system.settled}};
    for (std::size_t i = 0; i < facts.size(); ++i) {
      states_.push_back({fmt::format("Fact {}: {}.", i + 1, words(i)), term_of(terms_, system.now.state, facts[i])});
    }
  }

  std::vector<Draft> all() {
    add(of_the_first_state());
    if (!speaks_of_goal(asked_.property)) add(question_of_start(system_, asked_, false));
    add({"some-state-satisfies-the-facts", "There are states in which all facts hold: they do not speak of nothing.",
         true, "such a state, for instance the first one", states_});
    if (an_event_comes_first()) {
      add({"some-event-happens-where-the-facts-hold",
           "Events happen in states in which all facts hold: that each event keeps them does not speak of nothing.",
           true, "such a state and event, for instance the first event of the procedure", with_an_event()});
    }
    for (std::size_t i = 0; i < facts_.size(); ++i) add(of_keeping(i));
    add_passes("passes-are-enough", system_.unfinished, with_an_event(), "an event");
    add_exclusion();
    return std::move(drafts_);
  }

 private:
  void add(Draft draft) { drafts_.push_back(std::move(draft)); }
  [[nodiscard]] std::string words(std::size_t fact) const { return words_of(system_.space, facts_[fact]); }

  /// System::one_event in pieces that can be read.
  [[nodiscard]] std::vector<Assertion> with_an_event() {
    std::vector<Assertion> all = states_;
    std::vector<Term> happens;
    for (const system::Occurrence& each : system_.events) {
      const std::string name = system::event_name(system_.space.model(), each.event);
      all.push_back({fmt::format("Where `{}` may happen.", name), terms_.implies(each.happens, each.may_happen)});
      happens.push_back(each.happens);
    }
    all.push_back({"One event happens.", terms_.any(happens)});
    all.push_back({"No two do.", terms_.at_most_one(happens)});
    return all;
  }

  /// The first settled state has an event, so that the question has an answer.
  [[nodiscard]] bool an_event_comes_first() {
    const system::Derived derived = derive(terms_, system_.first.end);
    return std::ranges::any_of(system_.events, [&](const system::Occurrence& each) {
      return may_happen(terms_, system_.first.end, derived, each.event) == system::always;
    });
  }

  Draft of_the_first_state() {
    Start start = start_of(system_);
    std::vector<Term> holds{settled(terms_, start.settling.end, derive(terms_, start.settling.end))};
    for (const Fact& fact : facts_) holds.push_back(term_of(terms_, start.settling.end, fact));
    std::vector<Assertion> assertions = std::move(start.given);
    assertions.push_back(
        {"What the stack settles to is not settled, or is without one of the facts.", !terms_.all(holds)});
    return {"first-state-satisfies-the-facts",
            "The first state, which the one in the site file settles to, has all facts.", false,
            "no other way to settle: all facts hold before the first event", std::move(assertions)};
  }

  /// Variables of the state afterwards, as far as `claim` is made of them, are what the event and settling make them.
  void add_what_becomes(std::vector<Assertion>& assertions, const system::FreeState& after, Term claim) {
    const std::vector<std::uint32_t> cone = cone_of(terms_, std::span(&claim, 1));
    for (VariableId v = 0; v < system_.space.size(); ++v) {
      std::vector<Term> equations;
      for (const Value::Case& each : after.state[v].cases()) {
        const bool used = !each.holds.negated() && terms_.op(each.holds.node()) == system::Op::variable &&
                          std::ranges::binary_search(cone, each.holds.node());
        if (used) equations.push_back(terms_.same(each.holds, system_.next[v].is(each.value)));
      }
      if (equations.empty()) continue;
      assertions.push_back({fmt::format("What becomes of: {}.", system_.space.name(v)), terms_.all(equations)});
    }
  }

  Draft of_keeping(std::size_t fact) {
    if (!after_) after_ = free_state(terms_, system_.space, system_.domains, "'");
    const Term claim = term_of(terms_, after_->state, facts_[fact]);
    std::vector<Assertion> assertions = with_an_event();
    add_what_becomes(assertions, *after_, claim);
    assertions.push_back({fmt::format("Fact {} does not hold afterwards.", fact + 1), !claim});
    const int width = facts_.size() > 9 ? 2 : 1;
    return {fmt::format("event-keeps-{:0{}}-{}", fact + 1, width, slug(words(fact))),
            fmt::format("Every event keeps fact {}, as long as all facts hold before it: {}.", fact + 1, words(fact)),
            false, fmt::format("no state with all facts, and no event in it, after which fact {} fails", fact + 1),
            std::move(assertions)};
  }

  // Where it is plain that the passes written out are enough, nothing has to be asked.
  void add_passes(std::string name, Term unfinished, std::vector<Assertion> assertions, std::string_view after) {
    if (unfinished == system::never) return;
    assertions.push_back({"More settling passes are needed than the formulas have.", unfinished});
    add({std::move(name),
         fmt::format("After {} the stack settles within {} passes, as many as the formulas have.", after,
                     system_.passes),
         false, "no state with all facts in which they are too few", std::move(assertions)});
  }

  void add_exclusion() {
    std::vector<Assertion> assertions;
    if (speaks_of_goal(asked_.property)) {
      const system::RestBreach breach = system_.broken_at_rest(asked_);
      add_passes("passes-are-enough-after-a-cold-start", breach.unfinished, states_, "a cold start");
      assertions = states_;
      assertions.push_back({breach_in_words(system_.space.model(), asked_) + ".", breach.broken});
    } else {
      assertions = with_an_event();
      assertions.push_back({fmt::format("At the event, or while the stack settles after it, {}.",
                                        breach_in_words(system_.space.model(), asked_)),
                            system_.broken_on_the_way(asked_.property)});
    }
    const bool at_rest = speaks_of_goal(asked_.property);
    add({"facts-exclude-a-breach-of-" + slug(name_with_k(asked_)),
         fmt::format("Where all facts hold, {} is not broken{}.", name_with_k(asked_),
                     at_rest ? "" : " by an event or by what follows it"),
         false, fmt::format("no state with all facts {}", at_rest ? "that breaks it" : "with an event that breaks it"),
         std::move(assertions)});
  }

  System& system_;
  Terms& terms_;
  AskedProperty asked_;
  const std::vector<Fact>& facts_;
  std::vector<Assertion> states_;  ///< of a state with all facts
  std::optional<system::FreeState> after_;
  std::vector<Draft> drafts_;
};

}  // namespace

Draft question_of_start(System& system, const AskedProperty& asked, bool broken) {
  Start start = start_of(system);
  Terms& terms = system.terms;
  std::vector<Term> cases;
  for (const system::Stage& stage : start.settling.stages) {
    cases.push_back(broken_in(terms, stage.state, stage.derived, asked.property));
    cases.push_back(broken_by(terms, stage.state, stage.pass, asked.property));
  }
  cases.push_back(broken_in(terms, start.settling.end, start.settling.end_derived, asked.property));
  std::vector<Assertion> assertions = std::move(start.given);
  assertions.push_back(
      {fmt::format("In this state, or while it settles, {}.", breach_in_words(system.space.model(), asked)),
       terms.any(cases)});
  const std::string property = name_with_k(asked);
  if (broken) {
    return {"start-breaks-" + slug(property),
            fmt::format("The state in the site file breaks {} before anything happens.", property), true,
            "one such state, the one given", std::move(assertions)};
  }
  return {"start-does-not-break-" + slug(property),
          fmt::format("The state in the site file does not break {}, nor does settling from it.", property), false,
          "one state as given, and it breaks nothing", std::move(assertions)};
}

std::vector<Draft> questions_of_facts(System& system, const AskedProperty& asked, const std::vector<Fact>& facts) {
  return FactQuestions(system, asked, facts).all();
}

}  // namespace cairn::verify

// Together the models show everything there is: each value of each rule, each verb, condition, fault and verdict.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <variant>

#include "cairn/walk.hpp"
#include "models/shelf.hpp"

namespace cairn::test {
namespace {

/// Collects `value_of(model)` over all procedures.
template <class ValueOf>
auto seen(ValueOf value_of) {
  std::set<decltype(value_of(std::declval<const Model&>()))> values;
  for (const Proved& proved : shelf()) values.insert(value_of(proved.model));
  return values;
}

void collect(const Condition& condition, std::set<Condition::Kind>& kinds, std::set<Sign>& signs) {
  kinds.insert(condition.kind);
  signs.insert(condition.sign);
  for (const Condition& part : condition.parts) collect(part, kinds, signs);
}

bool refuted_or_proved(Property property, Verdict verdict) {
  for (const Proved& proved : shelf()) {
    for (const PropertyVerdict& given : proved.report.properties) {
      if (given.asked.property == property && given.verdict == verdict && given.vacuous.empty()) return true;
    }
  }
  return false;
}

}  // namespace

TEST_CASE("the platforms use every value of every rule") {
  CHECK(seen([](const Model& m) { return m.platform.title; }).size() >= 4);
  CHECK(seen([](const Model& m) { return m.platform.number_takes; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.priority_takes; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.settings_follow; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.side_takes; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.side_needs_disabled; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.facing; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.side_leads_to; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.orphans; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.software; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.factory.enabled; }).size() == 2);
  CHECK(seen([](const Model& m) { return m.platform.factory.side; }).size() == 3);
}

TEST_CASE("the platforms elect in different orders, one of them by the address alone") {
  const auto elections = seen([](const Model& m) { return m.platform.election; });
  std::set<ElectionKey> keys;
  for (const auto& election : elections) keys.insert(election.begin(), election.end());
  CHECK(elections.size() >= 4);
  CHECK(elections.contains({}));
  CHECK(keys.size() == 3);
}

TEST_CASE("the platforms state a limit of members, and leave it to the numbers") {
  const auto limited = seen(
      [](const Model& m) { return m.platform.max_members < m.platform.numbers.high - m.platform.numbers.low + 1; });
  CHECK(limited.size() == 2);
}

TEST_CASE("the procedures use every verb") {
  std::set<Verb> verbs;
  for (const Proved& proved : shelf()) {
    for (const Step& step : proved.model.procedure.steps) verbs.insert(step.verb);
  }
  CHECK(verbs.size() == static_cast<std::size_t>(Verb::check) + 1);
}

TEST_CASE("the procedures use every word of a condition and every sign") {
  std::set<Condition::Kind> kinds;
  std::set<Sign> signs;
  for (const Proved& proved : shelf()) {
    for (const Step& step : proved.model.procedure.steps) {
      if (step.verb == Verb::await || step.verb == Verb::check) collect(step.condition, kinds, signs);
    }
    const auto& goal = proved.model.procedure.goal;
    if (goal && goal->where) collect(*goal->where, kinds, signs);
  }
  CHECK(kinds.size() == static_cast<std::size_t>(Condition::Kind::implies) + 1);
  CHECK(signs.size() == static_cast<std::size_t>(Sign::greater_or_equal) + 1);
}

TEST_CASE("the procedures order steps in every way and use every console") {
  bool side_by_side = false, after = false, via = false, stack_of = false, kept = false, note = false;
  for (const Proved& proved : shelf()) {
    const std::string text = model_text(proved.path);
    side_by_side = side_by_side || text.find("any-order:") != std::string::npos;
    after = after || text.find("after:") != std::string::npos;
    kept = kept || proved.model.procedure.keep_stated;
    for (const Step& step : proved.model.procedure.steps) {
      via = via || (step.via && step.device && step.via != step.device);
      stack_of = stack_of || step.stack_of;
      note = note || !step.note.empty();
    }
  }
  CHECK(side_by_side);
  CHECK(after);
  CHECK(via);
  CHECK(stack_of);
  CHECK(kept);
  CHECK(note);
}

TEST_CASE("every fault is allowed in some procedure, and every kind of event occurs in some refutation") {
  FaultBudget most;
  std::set<Event::Kind> kinds;
  for (const Proved& proved : shelf()) {
    const FaultBudget& faults = proved.model.procedure.faults;
    most.cable_breaks = std::max(most.cable_breaks, faults.cable_breaks);
    most.crashes = std::max(most.crashes, faults.crashes);
    most.omissions = std::max(most.omissions, faults.omissions);
    most.late_starts = std::max(most.late_starts, faults.late_starts);
    most.mends = most.mends || faults.mends;
    for (const PropertyVerdict& given : proved.report.properties) {
      for (const Event& event : given.events) kinds.insert(event.kind);
    }
  }
  CHECK(most == FaultBudget{1, 1, 1, 1, true});
  CHECK(kinds.size() == static_cast<std::size_t>(Event::Kind::cold_start) + 1);
}

TEST_CASE("every property occurs proved, of something, and refuted") {
  for (int i = 0; i < property_count; ++i) {
    const auto property = static_cast<Property>(i);
    const std::string name(name_of(property));
    CAPTURE(name);
    CHECK(refuted_or_proved(property, Verdict::proved));
    CHECK(refuted_or_proved(property, Verdict::refuted));
  }
}

TEST_CASE("every way to break a property occurs") {
  std::set<Breach::Cause> causes;
  for (const Proved& proved : shelf()) {
    for (const PropertyVerdict& given : proved.report.properties) {
      if (given.verdict != Verdict::refuted) continue;
      const auto replayed = replay(proved.model, proved.report.faults, given.asked, given.events);
      const auto* walked = std::get_if<Walk>(&replayed);
      if (walked != nullptr && walked->breach) causes.insert(walked->breach->cause);
    }
  }
  CHECK(causes.size() == static_cast<std::size_t>(Breach::Cause::loss_cuts) + 1);
}

}  // namespace cairn::test

// Section 8 in both writings.
#include "system/conditions.hpp"

#include <doctest/doctest.h>

#include <string>

#include "confront/round.hpp"
#include "semantics/conditions.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

/// The condition of that kind where it is one that speaks of things, so that each kind is counted by itself.
std::string kind_of(const Condition& condition) {
  return "8, kind " + std::to_string(static_cast<int>(condition.kind));
}

}  // namespace

TEST_CASE("8: conditions hold in the same states in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Condition> conditions;
    std::vector<Sheet::Question> questions;
    for (int i = 0; i < 40; ++i) {
      conditions.push_back(random_condition(round.random, round.model, i < 25 ? 0 : 3));
      const system::Term holds = system::holds(round.terms, round.now.state, round.derived, conditions.back());
      questions.push_back(sheet.ask(kind_of(conditions.back()), "condition " + std::to_string(i), holds));
    }
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      const semantics::Derived derived = semantics::derive(round.world, s);
      round.open(sheet, s);
      for (std::size_t at = 0; at < conditions.size(); ++at) {
        sheet.answer(questions[at], semantics::holds(round.world, s, derived, conditions[at]));
      }
    }
    sheet.finish();
  }
  check_both_answers(tally, 500);
  CHECK(tally.size() == static_cast<std::size_t>(Condition::Kind::implies) + 1);
  MESSAGE(told(tally));
}

TEST_CASE("8: a condition without parts holds, or does not") {
  Round round(1);
  Condition condition;
  condition.kind = Condition::Kind::all;
  CHECK(system::holds(round.terms, round.now.state, round.derived, condition) == system::always);
  condition.kind = Condition::Kind::any;
  CHECK(system::holds(round.terms, round.now.state, round.derived, condition) == system::never);
}

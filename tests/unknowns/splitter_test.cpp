#include "explore/split/splitter.hpp"

#include <doctest/doctest.h>

#include <set>

#include "base/contradiction.hpp"
#include "unknowns/open_model.hpp"

using namespace cairn;
using namespace cairn::unknowns;
using explore::Splitter;
using test::open_model;
using test::q;

TEST_CASE("what is decided splits nothing, and what is not splits in two") {
  const Model model = open_model({{0, 9}});
  const Space space(model);
  Cases cases(space);
  Splitter splitter(cases);
  std::vector<std::pair<bool, bool>> answers;
  splitter.in_every_case(Cases::undecided, [&] {
    const bool low = splitter.less(q(0), 5);
    answers.emplace_back(low, splitter.less(q(0), 7));  // decided by the first, where that is true
  });
  CHECK(answers == std::vector<std::pair<bool, bool>>{{true, true}, {false, true}, {false, false}});
  answers.clear();
  splitter.in_every_case(Cases::undecided,
                         [&] { answers.emplace_back(splitter.less(q(0), 10), splitter.equal(3, 4)); });
  CHECK(answers == std::vector<std::pair<bool, bool>>{{true, false}});
}

TEST_CASE("of n devices that nothing is known of, n can win, and how the losers stand is left open") {
  const Model model = open_model({}, {}, 4);
  const Space space(model);
  Cases cases(space);
  Splitter splitter(cases);
  std::vector<std::size_t> winners;
  splitter.in_every_case(Cases::undecided, [&] {
    winners.push_back(splitter.best({{q(0)}, {q(1)}, {q(2)}, {q(3)}}, {false}));
    CHECK(cases.literals(splitter.here()).size() == 3);
  });
  CHECK(winners == std::vector<std::size_t>{0, 1, 2, 3});
}

// IEEE 802.1Q-2022, 13.2 and 14.2.5: of two bridge identifiers, priority and then address, the lower is better; here
// the higher priority wins, so that the rule is taken over for the address alone (from memory).
TEST_CASE("with equal priorities the lower address wins, and with another priority the address is not asked") {
  const Model model = open_model({{0, 255}}, {8}, 1);
  const Space space(model);
  Cases cases(space);
  Splitter splitter(cases);
  std::set<std::pair<std::size_t, std::size_t>> seen;  // the winner, and how much was decided
  splitter.in_every_case(Cases::undecided, [&] {
    const std::size_t winner = splitter.best({{100, 8}, {q(0), q(1)}}, {true, false});
    const CaseId here = splitter.here();
    seen.insert({winner, cases.literals(here).size()});
    const Relation priority = cases.possible(here, q(0), 100);
    const bool lower_address = cases.possible(here, q(1), 8) == Relation::less();
    CHECK((winner == 1) == (priority == Relation::greater() || (priority == Relation::equal() && lower_address)));
  });
  CHECK(seen == std::set<std::pair<std::size_t, std::size_t>>{{0, 1}, {0, 2}, {1, 1}, {1, 2}});
}

TEST_CASE("work in the midst of other work leaves that as it is") {
  const Model model = open_model({{0, 9}, {0, 9}});
  const Space space(model);
  Cases cases(space);
  Splitter splitter(cases);
  int outer = 0;
  int inner = 0;
  splitter.in_every_case(Cases::undecided, [&] {
    const bool low = splitter.less(q(0), 5);
    const CaseId here = splitter.here();
    splitter.in_every_case(here, [&] {
      ++inner;
      CHECK(splitter.less(q(0), 5) == low);
      (void)splitter.less(q(1), 3);
    });
    CHECK(splitter.here() == here);
    (void)splitter.equal(q(1), 9);
    ++outer;
  });
  CHECK(outer == 4);
  CHECK(inner == 8);
}

TEST_CASE("work that asks other things than it did is found out") {
  const Model model = open_model({{0, 9}, {0, 9}});
  const Space space(model);
  Cases cases(space);
  Splitter splitter(cases);
  std::size_t rounds = 0;
  CHECK_THROWS_AS(splitter.in_every_case(Cases::undecided, [&] { (void)splitter.less(q(rounds++), 5); }),
                  Contradiction);
}

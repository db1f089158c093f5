#include "unknowns/cases.hpp"

#include <doctest/doctest.h>

#include "unknowns/open_model.hpp"

using namespace cairn;
using namespace cairn::unknowns;
using test::open_model;
using test::q;

TEST_CASE("a case is the same however it was come to, and what says nothing new makes none") {
  const Model model = open_model({{0, 9}, {0, 9}});
  const Space space(model);
  Cases cases(space);
  const Literal low{q(0), 5, Relation::less()};
  const Literal apart{q(0), q(1), Relation::not_equal()};
  const auto one = cases.refine(*cases.refine(Cases::undecided, low), apart);
  const auto other = cases.refine(*cases.refine(Cases::undecided, apart), low);
  REQUIRE(one);
  CHECK(one == other);
  CHECK(cases.refine(*one, {5, q(0), Relation::greater()}) == one);
  CHECK(cases.refine(*one, {q(0), 7, Relation::less()}) == one);
  CHECK_FALSE(cases.refine(*one, {q(0), 6, Relation::of(Sign::greater_or_equal)}));
  CHECK(cases.refine(*one, {2, 3, Relation::less()}) == one);
  CHECK_FALSE(cases.refine(*one, {2, 3, Relation::greater()}));
}

TEST_CASE("what is decided of two quantities comes together") {
  const Model model = open_model({{0, 9}, {0, 9}});
  const Space space(model);
  Cases cases(space);
  const auto differ = cases.refine(Cases::undecided, {q(0), q(1), Relation::not_equal()});
  CHECK(cases.possible(*differ, q(0), q(1)) == Relation::not_equal());
  CHECK(cases.refine(*differ, {q(0), q(1), Relation::of(Sign::less_or_equal)}) ==
        cases.refine(Cases::undecided, {q(0), q(1), Relation::less()}));
  CHECK_FALSE(cases.refine(*differ, {q(1), q(0), Relation::equal()}));
}

TEST_CASE("a narrower case is within a wider one, and both together are the narrower") {
  const Model model = open_model({{0, 9}, {0, 9}});
  const Space space(model);
  Cases cases(space);
  const CaseId wide = *cases.refine(Cases::undecided, {q(0), 5, Relation::less()});
  const CaseId narrow = *cases.refine(Cases::undecided, {q(0), 3, Relation::equal()});
  const CaseId beside = *cases.refine(Cases::undecided, {q(1), 2, Relation::less()});
  CHECK(cases.is_within(narrow, wide));
  CHECK_FALSE(cases.is_within(wide, narrow));
  CHECK(cases.is_within(wide, Cases::undecided));
  CHECK(cases.both(narrow, wide) == narrow);
  CHECK(cases.both(wide, beside) == cases.both(beside, wide));
  const CaseId high = *cases.refine(Cases::undecided, {q(0), 6, Relation::greater()});
  CHECK_FALSE(cases.both(wide, high));
}

TEST_CASE("every case shows an instance of its own") {
  Model model = open_model({{0, 3}, {0, 3}});
  const Space space(model);
  Cases cases(space);
  CaseId in = Cases::undecided;
  for (const Literal& literal : {Literal{q(0), q(1), Relation::greater()}, Literal{q(1), 0, Relation::not_equal()},
                                 Literal{q(0), 2, Relation::not_equal()}}) {
    in = *cases.refine(in, literal);
    for (const Literal& decided : cases.literals(in)) CHECK(holds(decided, cases.instance(in).values));
  }
  CHECK(cases.instance(in).values[0] == 3);
}

#include "system/value.hpp"

#include <algorithm>
#include <vector>

#include <doctest/doctest.h>

#include "system/garden.hpp"

using namespace cairn::system;
using namespace cairn::system::test;

namespace {

/// What a value is under an assignment; demands that exactly one case holds.
std::int64_t number(const Garden& garden, const Value& value, Assignment a) {
  std::vector<std::int64_t> held;
  for (const auto& [number, holds] : value.cases()) {
    if (worth(garden.terms, garden.inputs, holds, a)) held.push_back(number);
  }
  REQUIRE(held.size() == 1);
  return held[0];
}

/// A value made of random choices between small numbers.
Value draw(Garden& garden) {
  Value value(static_cast<std::int64_t>(garden.below(6)) - 1);
  for (std::size_t i = garden.below(5); i > 0; --i) {
    value = choose(garden.terms, garden.pick().term, value, Value(static_cast<std::int64_t>(garden.below(6)) - 1));
  }
  return value;
}

}  // namespace

TEST_CASE("choosing, comparing and counting down agree with numbers, under every assignment") {
  for (std::uint32_t seed = 1; seed <= 300; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 4);
    for (int i = 0; i < 12; ++i) garden.grow();
    const Value x = draw(garden);
    const Value y = draw(garden);
    const auto condition = garden.pick();
    const Value chosen = choose(garden.terms, condition.term, x, y);
    const Term same = equal(garden.terms, x, y);
    const Term below = less(garden.terms, x, y);
    const Value lower = less_one(garden.terms, x);
    for (const Value* value : {&x, &y, &chosen, &lower}) {
      REQUIRE(std::ranges::is_sorted(value->cases(), std::less_equal{}, &Value::Case::value));
      REQUIRE(std::ranges::none_of(value->cases(), [](const auto& one) { return one.holds == never; }));
    }
    for (Assignment a = 0; a < garden.assignments(); ++a) {
      const auto value = [&](Term term) { return worth(garden.terms, garden.inputs, term, a); };
      const auto in_x = number(garden, x, a);
      const auto in_y = number(garden, y, a);
      REQUIRE(number(garden, chosen, a) == (condition.table[a] ? in_x : in_y));
      REQUIRE(value(same) == (in_x == in_y));
      REQUIRE(value(below) == (in_x < in_y));
      REQUIRE(number(garden, lower, a) == std::max<std::int64_t>(in_x - 1, 0));
      for (std::int64_t n = -2; n < 7; ++n) REQUIRE(value(x.is(n)) == (in_x == n));
    }
  }
}

TEST_CASE("constants are told at once") {
  Terms terms;
  CHECK(equal(terms, Value(3), Value(3)) == always);
  CHECK(equal(terms, Value(3), Value(4)) == never);
  CHECK(less(terms, Value(3), Value(4)) == always);
  CHECK(less(terms, Value(3), Value(3)) == never);
  CHECK(less_one(terms, Value(3)) == Value(2));
  CHECK(less_one(terms, Value(0)) == Value(0));
  CHECK(Value(3).is(3) == always);
  CHECK(Value(3).is(2) == never);
  const Term a = terms.variable("a");
  CHECK(choose(terms, a, Value(3), Value(3)) == Value(3));
  CHECK(choose(terms, always, Value(3), Value(4)) == Value(3));
  CHECK(choose(terms, a, Value(3), Value(4)) == Value({{3, a}, {4, !a}}));
  CHECK(Value({{1, never}, {2, always}}) == Value(2));
}

TEST_CASE("what is compared with itself is told at once") {
  Terms terms;
  const Term a = terms.variable("a");
  const Value three({{1, terms.variable("1")}, {2, terms.variable("2")}, {3, terms.variable("3")}});
  CHECK(equal(terms, three, three) == always);
  CHECK(less(terms, three, three) == never);
  const Value value = choose(terms, a, Value(1), Value(2));
  CHECK(equal(terms, value, value) == always);
  CHECK(less(terms, value, value) == never);
  CHECK(equal(terms, value, Value(1)) == a);
  CHECK(less(terms, value, Value(2)) == a);
}

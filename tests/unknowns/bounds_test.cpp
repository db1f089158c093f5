#include "unknowns/bounds.hpp"

#include <doctest/doctest.h>

#include <limits>

#include "unknowns/open_model.hpp"

using namespace cairn;
using namespace cairn::unknowns;
using test::q;

namespace {

Bounds within(std::int64_t low, std::int64_t high, std::size_t unknowns) {
  Bounds bounds(unknowns);
  for (std::size_t i = 0; i < unknowns; ++i) {
    REQUIRE(bounds.add({q(i), low, Relation::of(Sign::greater_or_equal)}));
    REQUIRE(bounds.add({q(i), high, Relation::of(Sign::less_or_equal)}));
  }
  return bounds;
}

}  // namespace

TEST_CASE("what follows by way of others is known: a < b < c within 0 to 2 leaves one choice") {
  Bounds bounds = within(0, 2, 3);
  REQUIRE(bounds.add({q(0), q(1), Relation::less()}));
  CHECK(bounds.possible(q(0), q(2)) == Relation::any());
  REQUIRE(bounds.add({q(1), q(2), Relation::less()}));
  CHECK(bounds.possible(q(0), q(2)) == Relation::less());
  CHECK(bounds.possible(q(0), 0) == Relation::equal());
  CHECK(bounds.possible(q(1), 1) == Relation::equal());
  CHECK(bounds.least() == std::vector<std::int64_t>{0, 1, 2});
  CHECK_FALSE(bounds.add({q(2), q(0), Relation::of(Sign::less_or_equal)}));
}

TEST_CASE("two that differ are told apart at the ends of what is possible") {
  Bounds bounds = within(3, 5, 1);
  REQUIRE(bounds.add({q(0), 3, Relation::not_equal()}));
  CHECK(bounds.least() == std::vector<std::int64_t>{4});
  REQUIRE(bounds.add({q(0), 5, Relation::not_equal()}));
  CHECK(bounds.possible(q(0), 4) == Relation::equal());
  CHECK_FALSE(bounds.add({q(0), 4, Relation::not_equal()}));
}

TEST_CASE("known quantities and one with itself are compared as they are") {
  Bounds bounds = within(0, 9, 1);
  CHECK(bounds.possible(3, 4) == Relation::less());
  CHECK(bounds.possible(4, 3) == Relation::greater());
  CHECK(bounds.possible(q(0), q(0)) == Relation::equal());
  CHECK(bounds.add({3, 4, Relation::less()}));
  CHECK_FALSE(bounds.add({4, 3, Relation::less()}));
  CHECK_FALSE(bounds.add({q(0), q(0), Relation::not_equal()}));
}

TEST_CASE("sums at the ends of 64 bits do not wrap") {
  Bounds bounds(2);
  const std::int64_t top = std::numeric_limits<std::int64_t>::max();
  for (std::size_t i = 0; i < 2; ++i) {
    REQUIRE(bounds.add({q(i), least_known, Relation::of(Sign::greater_or_equal)}));
    REQUIRE(bounds.add({q(i), top, Relation::of(Sign::less_or_equal)}));
  }
  REQUIRE(bounds.add({q(0), q(1), Relation::less()}));
  CHECK(bounds.possible(q(1), least_known) == Relation::greater());
  CHECK(bounds.possible(q(0), top) == Relation::less());
  CHECK(bounds.highest(UnknownId(0)) == top - 1);
}

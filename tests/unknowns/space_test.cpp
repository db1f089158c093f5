// Whether a template has an instance: against all choices of small ranges, one by one.
#include "unknowns/space.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <random>

#include "support/models_a_run.hpp"
#include "unknowns/open_model.hpp"

using namespace cairn;
using namespace cairn::unknowns;
using test::open_model;
using test::q;

namespace {

using Engine = std::mt19937_64;

constexpr std::int64_t largest = 3;

std::size_t below(Engine& engine, std::size_t n) {
  return static_cast<std::size_t>(engine() % n);
}

Quantity random_quantity(Engine& engine, std::size_t unknowns) {
  const std::size_t i = below(engine, unknowns + 2);
  return i < unknowns ? q(i) : static_cast<Quantity>(below(engine, largest + 2));
}

Literal random_literal(Engine& engine, std::size_t unknowns) {
  constexpr std::array signs{Sign::equal,         Sign::not_equal, Sign::less,
                             Sign::less_or_equal, Sign::greater,   Sign::greater_or_equal};
  return {random_quantity(engine, unknowns), random_quantity(engine, unknowns),
          Relation::of(signs[below(engine, signs.size())])};
}

// NOLINTNEXTLINE(misc-no-recursion): three deep
Assumption random_assumption(Engine& engine, std::size_t unknowns, int depth) {
  using Kind = Assumption::Kind;
  Assumption assumption;
  assumption.kind = depth == 0 ? Kind::comparison : static_cast<Kind>(below(engine, 5));
  if (assumption.kind == Kind::comparison) {
    assumption.left.quantity = random_quantity(engine, unknowns);
    assumption.sign = static_cast<Sign>(below(engine, 6));
    assumption.right.quantity = random_quantity(engine, unknowns);
    return assumption;
  }
  const std::size_t parts = assumption.kind == Kind::negation  ? 1
                            : assumption.kind == Kind::implies ? 2
                                                               : 1 + below(engine, 3);
  for (std::size_t i = 0; i < parts; ++i) assumption.parts.push_back(random_assumption(engine, unknowns, depth - 1));
  return assumption;
}

// NOLINTNEXTLINE(misc-no-recursion): as deep as the assumption
bool holds_in(const Assumption& assumption, const std::vector<std::int64_t>& values) {
  const auto part = [&](const Assumption& inner) { return holds_in(inner, values); };
  switch (assumption.kind) {
    case Assumption::Kind::comparison:
      return holds({assumption.left.quantity, assumption.right.quantity, Relation::of(assumption.sign)}, values);
    case Assumption::Kind::negation:
      return !part(assumption.parts[0]);
    case Assumption::Kind::all:
      return std::ranges::all_of(assumption.parts, part);
    case Assumption::Kind::any:
      return std::ranges::any_of(assumption.parts, part);
    case Assumption::Kind::implies:
      return !part(assumption.parts[0]) || part(assumption.parts[1]);
  }
  return false;
}

/// Every choice of `unknowns` integers from 0 to `largest`.
void for_each_choice(std::size_t unknowns, const std::function<void(const std::vector<std::int64_t>&)>& visit) {
  std::vector<std::int64_t> values(unknowns, 0);
  while (true) {
    visit(values);
    std::size_t i = 0;
    while (i < unknowns && values[i] == largest) values[i++] = 0;
    if (i == unknowns) return;
    ++values[i];
  }
}

}  // namespace

TEST_CASE("an instance is found exactly where trying all choices finds one, and is one") {
  Engine engine(17);
  std::size_t with = 0;
  const std::size_t rounds = test::models_a_run(20'000);
  for (std::size_t round = 0; round < rounds; ++round) {
    CAPTURE(round);
    const std::size_t unknowns = 1 + below(engine, 4);
    Model model = open_model(std::vector<Range>(unknowns, {0, largest}));
    model.unknowns.assume = random_assumption(engine, unknowns, 3);
    std::vector<Literal> literals;
    const std::size_t count = below(engine, 5);
    for (std::size_t i = 0; i < count; ++i) literals.push_back(random_literal(engine, unknowns));
    const auto is_one = [&](const std::vector<std::int64_t>& values) {
      return holds_in(*model.unknowns.assume, values) &&
             std::ranges::all_of(literals, [&](const Literal& literal) { return holds(literal, values); });
    };
    bool any = false;
    for_each_choice(unknowns, [&](const auto& values) { any = any || is_one(values); });
    const auto found = Space(model).find(literals);
    REQUIRE(found.has_value() == any);
    if (found) REQUIRE(is_one(found->values));
    with += any ? 1 : 0;
  }
  CHECK(with * 4 > rounds);
  CHECK(with * 4 < rounds * 3);
}

// 9.b: "differs from all others. (Between two known addresses that follow each other there is no place.)"
TEST_CASE("addresses differ from one another, and between two that follow each other there is no place") {
  const Model model = open_model({}, {4, 5}, 1);
  const Space space(model);
  const Literal above_the_first{q(0), 4, Relation::greater()};
  const Literal below_the_second{q(0), 5, Relation::less()};
  CHECK(space.find(std::vector{above_the_first})->values == std::vector<std::int64_t>{6});
  CHECK_FALSE(space.find(std::vector{above_the_first, below_the_second}));
  const Model pair = open_model({}, {}, 2);
  CHECK_FALSE(Space(pair).find(std::vector{Literal{q(0), q(1), Relation::equal()}}));
}

TEST_CASE("between 0 and a known address there is room for as many as it says, and no more") {
  for (const std::size_t open : {3U, 4U}) {
    const Model model = open_model({}, {3}, open);
    std::vector<Literal> literals;
    for (std::size_t i = 0; i < open; ++i) literals.push_back({q(i), 3, Relation::less()});
    CHECK(Space(model).find(literals).has_value() == (open == 3));
  }
}

TEST_CASE("the orders of n open addresses are n!") {
  std::size_t expected = 1;
  for (std::size_t n = 1; n <= 5; ++n) {
    expected *= n;
    const Model model = open_model({}, {}, n);
    const Space space(model);
    std::size_t orders = 0;
    std::vector<Literal> literals;
    // NOLINTNEXTLINE(misc-no-recursion): as deep as there are pairs
    const std::function<void(std::size_t, std::size_t)> decide = [&](std::size_t i, std::size_t j) {
      if (!space.find(literals)) return;
      if (i + 1 >= n) {
        ++orders;
        return;
      }
      for (const Relation r : {Relation::less(), Relation::greater()}) {
        literals.push_back({q(i), q(j), r});
        j + 1 < n ? decide(i, j + 1) : decide(i + 1, i + 2);
        literals.pop_back();
      }
    };
    decide(0, 1);
    CHECK(orders == expected);
  }
}

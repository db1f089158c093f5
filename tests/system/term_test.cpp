#include "system/term.hpp"

#include <algorithm>
#include <bit>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "system/garden.hpp"

using namespace cairn::system;
using namespace cairn::system::test;

namespace {

/// What the header promises of every node.
void check_shape(const Terms& terms) {
  for (std::uint32_t node = 1; node < terms.size(); ++node) {
    const auto parts = terms.parts(node);
    for (const Term part : parts) {
      REQUIRE(part.node() < node);
      REQUIRE(part.plain() != never);
    }
    switch (terms.op(node)) {
      case Op::constant:
        FAIL("a second constant");
        break;
      case Op::variable:
        REQUIRE(parts.empty());
        break;
      case Op::all:
        REQUIRE(parts.size() >= 2);
        for (std::size_t i = 1; i < parts.size(); ++i) REQUIRE(parts[i - 1].node() < parts[i].node());
        break;
      case Op::choose:
        REQUIRE(parts.size() == 3);
        REQUIRE(!parts[0].negated());
        REQUIRE(!parts[1].negated());
        REQUIRE(parts[1].node() != parts[2].node());
        break;
      case Op::differ:
        REQUIRE(parts.size() == 2);
        REQUIRE(!parts[0].negated());
        REQUIRE(!parts[1].negated());
        REQUIRE(parts[0] < parts[1]);
        break;
    }
  }
}

/// A term as deep as it is long: each link looks at the one before and at the next variable. No link folds.
Term chain(Terms& terms, std::span<const Term> over, std::size_t length) {
  Term term = over[0];
  for (std::size_t i = 1; i < length; ++i) {
    const Term a = over[i % over.size()];
    const Term b = over[(i * 7 + 3) % over.size()];
    term = i % 3 == 0   ? terms.choose(a, term, b)
           : i % 3 == 1 ? terms.differ(term, a)
                        : terms.both(!term, terms.either(a, b));
  }
  return term;
}

}  // namespace

TEST_CASE("random terms are worth what they were built to be worth, under every assignment") {
  for (std::uint32_t seed = 1; seed <= 400; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 1 + seed % 6);
    for (int i = 0; i < 60; ++i) garden.grow();
    check_shape(garden.terms);
    for (const auto& [term, table] : garden.plants) {
      for (Assignment a = 0; a < garden.assignments(); ++a) {
        REQUIRE(worth(garden.terms, garden.inputs, term, a) == table[a]);
      }
    }
  }
}

// E. V. Huntington, "Sets of independent postulates for the algebra of logic", Transactions of the American
// Mathematical Society 5 (1904), first set, and what follows from it (from memory). Each law holds between the terms
// themselves: no solver has to find it out.
TEST_CASE("the laws of Boolean algebra hold at once") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  const Term c = terms.variable("c");
  SUBCASE("commutativity, identity, complement") {
    CHECK(terms.both(a, b) == terms.both(b, a));
    CHECK(terms.either(a, b) == terms.either(b, a));
    CHECK(terms.both(a, always) == a);
    CHECK(terms.either(a, never) == a);
    CHECK(terms.both(a, !a) == never);
    CHECK(terms.either(a, !a) == always);
  }
  SUBCASE("idempotence, annihilation, involution, De Morgan") {
    CHECK(terms.both(a, a) == a);
    CHECK(terms.either(a, a) == a);
    CHECK(terms.both(a, never) == never);
    CHECK(terms.either(a, always) == always);
    CHECK(!!a == a);
    CHECK(!terms.both(a, b) == terms.either(!a, !b));
  }
  SUBCASE("associativity, and absorption") {
    CHECK(terms.both(a, terms.both(b, c)) == terms.both(terms.both(a, b), c));
    CHECK(terms.both(a, terms.both(b, c)) == terms.all({c, a, b}));
    CHECK(terms.either(a, terms.either(b, c)) == terms.any({b, c, a}));
    CHECK(terms.both(a, terms.either(a, b)) == a);
    CHECK(terms.either(a, terms.both(a, b)) == a);
    CHECK(terms.both(a, terms.either(!a, b)) == terms.both(a, b));
  }
  SUBCASE("opposites meet across a nested conjunction") {
    CHECK(terms.both(terms.both(a, b), terms.both(!b, c)) == never);
    CHECK(terms.both(terms.both(a, b), terms.both(b, c)) == terms.all({a, b, c}));
  }
  SUBCASE("and with one that is too long to be written out again") {
    const auto x = variables(terms, 10);
    const Term all = terms.all(x);
    CHECK(terms.both(all, x[4]) == all);
    CHECK(terms.both(all, !x[4]) == never);
    CHECK(terms.both(!all, !x[4]) == !x[4]);
    CHECK(terms.both(all, terms.both(x[1], a)) == terms.both(all, a));
  }
}

TEST_CASE("a choice is told by the plainest operation that says it") {
  Terms terms;
  const Term c = terms.variable("c");
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  CHECK(terms.choose(always, a, b) == a);
  CHECK(terms.choose(never, a, b) == b);
  CHECK(terms.choose(c, a, a) == a);
  CHECK(terms.choose(c, !a, a) == terms.differ(c, a));
  CHECK(terms.choose(c, a, !a) == terms.same(c, a));
  CHECK(terms.choose(c, always, b) == terms.either(c, b));
  CHECK(terms.choose(c, never, b) == terms.both(!c, b));
  CHECK(terms.choose(c, a, always) == terms.implies(c, a));
  CHECK(terms.choose(c, a, never) == terms.both(c, a));
  CHECK(terms.choose(c, always, never) == c);
  CHECK(terms.choose(c, never, always) == !c);
  CHECK(terms.choose(c, c, b) == terms.either(c, b));
  CHECK(terms.choose(c, !c, b) == terms.both(!c, b));
  CHECK(terms.choose(c, a, c) == terms.both(c, a));
  CHECK(terms.choose(c, a, !c) == terms.implies(c, a));
  CHECK(terms.choose(!c, a, b) == terms.choose(c, b, a));
  CHECK(terms.choose(c, !a, !b) == !terms.choose(c, a, b));
  CHECK(terms.choose(c, terms.choose(c, a, b), b) == terms.choose(c, a, b));
  CHECK(terms.choose(c, terms.both(c, a), b) == terms.choose(c, a, b));
  CHECK(terms.choose(c, terms.differ(c, a), b) == terms.choose(c, !a, b));
  CHECK(terms.op(terms.choose(c, a, b).node()) == Op::choose);
}

TEST_CASE("a choice or a difference that is written with conjunctions is found") {
  Terms terms;
  const Term c = terms.variable("c");
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  CHECK(terms.either(terms.both(c, a), terms.both(!c, b)) == terms.choose(c, a, b));
  CHECK(terms.either(terms.both(a, !b), terms.both(!a, b)) == terms.differ(a, b));
  CHECK(terms.either(terms.both(a, b), terms.both(!a, !b)) == terms.same(a, b));
  CHECK(terms.either(terms.both(c, a), terms.both(!c, a)) == a);
}

TEST_CASE("differences keep to themselves what is told twice") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  CHECK(terms.differ(a, a) == never);
  CHECK(terms.differ(a, !a) == always);
  CHECK(terms.differ(a, never) == a);
  CHECK(terms.differ(always, a) == !a);
  CHECK(terms.differ(!a, b) == !terms.differ(a, b));
  CHECK(terms.differ(!a, !b) == terms.differ(b, a));
  CHECK(terms.differ(a, terms.differ(b, a)) == b);
  CHECK(terms.differ(terms.same(a, b), b) == !a);
  CHECK(terms.same(a, b) == !terms.differ(a, b));
  CHECK(terms.both(a, terms.differ(a, b)) == terms.both(a, !b));
  CHECK(terms.both(!a, terms.differ(a, b)) == terms.both(!a, b));
}

TEST_CASE("equal expressions are one node, and the pool does not grow by asking again") {
  Terms terms;
  const auto x = variables(terms, 40);
  std::vector<Term> made;
  const auto make = [&] {
    std::vector<Term> all;
    for (std::size_t i = 0; i < 20'000; ++i) {
      const Term a = i < 40 ? x[i] : (made.empty() ? x[0] : made[i / 2 % made.size()]);
      const Term both = terms.both(a, !x[i % 40]);
      all.push_back(i % 3 == 0 ? terms.choose(x[i / 40 % 40], both, x[i * 7 % 40]) : terms.differ(both, x[i * 3 % 40]));
    }
    return all;
  };
  made = make();
  const auto again = make();
  const auto size = terms.size();
  CHECK(make() == again);
  CHECK(terms.size() == size);
  check_shape(terms);
}

TEST_CASE("the names of variables stay where they are") {
  Terms terms;
  const Term first = terms.variable("power(yard-1)");
  const std::string_view name = terms.name(first.node());
  for (int i = 0; i < 10'000; ++i) terms.variable("v");
  CHECK(name == "power(yard-1)");
  CHECK(terms.name(first.node()).data() == name.data());
  CHECK(terms.variable("v") != terms.variable("v"));
}

TEST_CASE("at least k of n: the bits of every assignment are counted") {
  for (std::size_t n = 0; n <= 9; ++n) {
    for (int k = -1; k <= static_cast<int>(n) + 1; ++k) {
      INFO(k << " of " << n);
      Terms terms;
      const auto x = variables(terms, n);
      const Term term = terms.at_least(x, k);
      for (Assignment a = 0; a < Assignment{1} << n; ++a) REQUIRE(worth(terms, x, term, a) == (std::popcount(a) >= k));
    }
  }
}

TEST_CASE("at least k of n shares: it takes no more than k(n - k + 1) nodes, and builds no others") {
  Terms terms;
  const auto x = variables(terms, 200);
  const std::size_t before = terms.size();
  const Term term = terms.at_least(x, 50);
  CHECK(cone_of(terms, {&term, 1}).size() <= 200 + 50 * 151);
  CHECK(terms.size() - before <= 50 * 151);
  CHECK(terms.at_least(x, std::int64_t{1} << 60) == never);
}

TEST_CASE("at most one of n, for every assignment; a term that is given twice does not hold") {
  for (std::size_t n = 0; n <= 9; ++n) {
    Terms terms;
    const auto x = variables(terms, n);
    const Term term = terms.at_most_one(x);
    for (Assignment a = 0; a < Assignment{1} << n; ++a) REQUIRE(worth(terms, x, term, a) == (std::popcount(a) <= 1));
  }
  Terms terms;
  const Term a = terms.variable("a");
  CHECK(terms.at_most_one(std::vector{a, a}) == !a);
  CHECK(terms.at_most_one(std::vector{a, !a}) == always);
}

TEST_CASE("a ladder stays a ladder: its length grows with its rungs, not with their square") {
  const auto length = [](std::size_t rungs) {
    Terms terms;
    const Term term = terms.at_most_one(variables(terms, rungs));
    std::size_t parts = 0;
    for (const auto node : cone_of(terms, {&term, 1})) parts += terms.parts(node).size();
    return parts;
  };
  CHECK(length(1000) <= 10 * 1000);
  CHECK(length(2000) <= 21 * length(1000) / 10);
}

TEST_CASE("substituting gives what is computed with the replaced values") {
  for (std::uint32_t seed = 1; seed <= 150; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 5);
    for (int i = 0; i < 40; ++i) garden.grow();
    Substitution substitution(garden.terms);
    std::vector<Garden::Plant> in_place(garden.plants.begin(), garden.plants.begin() + 5);
    for (std::size_t i = 0; i < 5; ++i) {
      if (garden.below(3) == 0) continue;  // this one stays
      in_place[i] = garden.pick();
      substitution.put(garden.inputs[i], in_place[i].term);
    }
    for (const auto& [term, table] : garden.plants) {
      const Term replaced = substitution(term);
      REQUIRE(substitution(!term) == !replaced);
      for (Assignment a = 0; a < garden.assignments(); ++a) {
        Assignment inner = 0;
        for (std::size_t i = 0; i < 5; ++i) inner |= static_cast<Assignment>(in_place[i].table[a]) << i;
        REQUIRE(worth(garden.terms, garden.inputs, replaced, a) == table[inner]);
      }
    }
  }
}

TEST_CASE("substitution is simultaneous, and folds") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  const Term c = terms.variable("c");
  Substitution swap(terms);
  swap.put(a, b);
  swap.put(b, !a);
  CHECK(swap(terms.choose(a, b, c)) == terms.choose(b, !a, c));
  CHECK(swap(always) == always);
  CHECK(swap(c) == c);
  Substitution fix(terms);
  fix.put(a, always);
  CHECK(fix(terms.both(a, terms.either(b, c))) == terms.either(b, c));
  CHECK(fix(terms.choose(a, b, c)) == b);
  CHECK(fix(terms.differ(a, b)) == !b);
}

TEST_CASE("a term 200,000 deep is built, swept and substituted") {
  Terms terms;
  const auto x = variables(terms, 50);
  const Term deep = chain(terms, x, 200'000);
  const auto cone = cone_of(terms, {&deep, 1});
  CHECK(cone.size() > 200'000);
  CHECK(std::ranges::is_sorted(cone));
  Substitution renamed(terms);
  std::vector<Term> y;
  for (const Term one : x) renamed.put(one, y.emplace_back(terms.variable("y")));
  const Term copy = renamed(deep);
  CHECK(copy == chain(terms, y, 200'000));
  CHECK(cone_of(terms, {&copy, 1}).size() == cone.size());
}

TEST_CASE("a cone has all that a term is built from, once, and nothing else") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  const Term unused = terms.both(a, terms.variable("c"));
  const Term both = terms.both(a, b);
  const Term differ = terms.differ(both, a);
  CHECK(cone_of(terms, std::vector{!differ, b}) == std::vector{a.node(), b.node(), both.node(), differ.node()});
  CHECK(cone_of(terms, std::vector{always}).empty());
  CHECK(cone_of(terms, {}).empty());
  CHECK(unused.node() < both.node());
}

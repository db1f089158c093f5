#include "system/term.hpp"

#include <algorithm>
#include <vector>

#include <doctest/doctest.h>

#include "system/random_terms.hpp"

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

}  // namespace

TEST_CASE("random terms are worth what they were built to be worth, under every assignment") {
  for (std::uint32_t seed = 1; seed <= 300; ++seed) {
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

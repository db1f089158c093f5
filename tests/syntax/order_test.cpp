#include "syntax/order.hpp"

#include <algorithm>

#include <doctest/doctest.h>

using namespace cairn::syntax;

namespace {

BlockItem step(std::size_t place) {
  BlockItem item;
  item.step = place;
  return item;
}

BlockItem any_order(std::vector<Block> branches) {
  BlockItem item;
  item.branches = std::move(branches);
  return item;
}

}  // namespace

TEST_CASE("steps follow one another in file order") {
  const auto order = file_order({{step(0), step(1), step(2)}}, 3);
  CHECK(*order == Predecessors{{}, {0}, {1}});
}

TEST_CASE("branches begin after what stands before them, and what follows waits for all") {
  const auto order = file_order({{step(0), any_order({{{step(1), step(2)}}, {{step(3)}}}), step(4)}}, 5);
  CHECK(*order == Predecessors{{}, {0}, {1}, {0}, {2, 3}});
}

TEST_CASE("any-order nests, and may stand first and last") {
  const auto order = file_order({{any_order({{{any_order({{{step(0)}}, {{step(1)}}}), step(2)}}, {{step(3)}}})}}, 4);
  CHECK(*order == Predecessors{{}, {}, {0, 1}, {}});
}

TEST_CASE("two groups one after the other wait each for each, within a bound") {
  std::vector<Block> first, second;
  for (std::size_t i = 0; i < 1001; ++i) {
    first.push_back({{step(i)}});
    second.push_back({{step(1001 + i)}});
  }
  CHECK(!file_order({{any_order(first), any_order(second)}}, 2002));
  second.resize(900);
  CHECK(file_order({{any_order(first), any_order(second)}}, 1901)->back().size() == 1001);
}

TEST_CASE("circles are found, disjoint, each told from its first step on") {
  CHECK(circles({{}, {0}, {1}}).empty());
  CHECK(circles({{0}}) == std::vector<std::vector<std::size_t>>{{0}});
  CHECK(circles({{2}, {0}, {1}, {2}}) == std::vector<std::vector<std::size_t>>{{0, 1, 2}});
  const auto two = circles({{1}, {0}, {3, 1}, {2}, {3}});
  REQUIRE(two.size() == 2);
  CHECK(two[0] == std::vector<std::size_t>{0, 1});
  CHECK(two[1] == std::vector<std::size_t>{2, 3});
}

TEST_CASE("in a circle every step waits for the one before it") {
  const Predecessors predecessors = {{3}, {0, 4}, {1}, {2, 5}, {}, {4}};
  const auto found = circles(predecessors);
  REQUIRE(found.size() == 1);
  const auto& circle = found.front();
  for (std::size_t i = 0; i < circle.size(); ++i) {
    const auto& before = predecessors[circle[i]];
    const auto expected = circle[(i + circle.size() - 1) % circle.size()];
    CHECK(std::find(before.begin(), before.end(), expected) != before.end());
  }
}

TEST_CASE("predecessors that follow from others are left out") {
  Predecessors predecessors = {{}, {0}, {1, 0, 1}, {}, {2, 3, 0}};
  leave_out_redundant(predecessors);
  CHECK(predecessors == Predecessors{{}, {0}, {1}, {}, {2, 3}});
}

TEST_CASE("leaving out changes no order: reachability stays what it was") {
  // A fixed pseudo-random graph in which every edge leads back.
  std::uint32_t seed = 7;
  const auto next = [&] { return (seed = seed * 1664525u + 1013904223u) >> 24u; };
  constexpr std::size_t count = 80;
  Predecessors before(count);
  for (std::size_t s = 1; s < count; ++s) {
    for (int i = 0; i < 4; ++i) before[s].push_back(next() % s);
  }
  auto after = before;
  leave_out_redundant(after);
  const auto closure = [](const Predecessors& p) {
    std::vector<std::vector<bool>> reached(count, std::vector<bool>(count));
    for (std::size_t s = 0; s < count; ++s) {
      for (const auto q : p[s]) {
        reached[s][q] = true;
        for (std::size_t r = 0; r < count; ++r) reached[s][r] = reached[s][r] || reached[q][r];
      }
    }
    return reached;
  };
  CHECK(closure(before) == closure(after));
  // Minimal: no predecessor is reached through another.
  const auto reached = closure(after);
  for (const auto& list : after) {
    for (const auto a : list) {
      for (const auto b : list) CHECK(!reached[a][b]);
    }
  }
}

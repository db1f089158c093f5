#include "explore/cycles.hpp"

#include <doctest/doctest.h>

#include <optional>

using namespace cairn;
using namespace cairn::explore;

namespace {

std::optional<Reason> no_limit() {
  return {};
}

}  // namespace

TEST_CASE("5.k starts that come together again close no cycle") {
  StartGraph graph;
  graph.begin_state();  // 0
  graph.add(1, false);
  graph.add(2, false);
  graph.begin_state();  // 1
  graph.add(3, false);
  graph.begin_state();  // 2
  graph.add(1, true);   // a state of the same layer, met before
  graph.add(3, false);
  graph.begin_state();  // 3
  CHECK(graph.find_cycle(no_limit).empty());
}

TEST_CASE("5.k starts that lead back close a cycle, however long") {
  StartGraph graph;
  const StateIndex length = 1000;
  for (StateIndex i = 0; i < length; ++i) {
    graph.begin_state();
    graph.add(i + 1 < length ? i + 1 : 0, i + 1 == length);
  }
  const std::vector<StateIndex> cycle = graph.find_cycle(no_limit);
  REQUIRE(cycle.size() == length);
  for (StateIndex i = 1; i < length; ++i) CHECK(cycle[i] == (cycle[i - 1] + 1) % length);
}

TEST_CASE("5.k a start that changes nothing is a cycle of one") {
  StartGraph graph;
  graph.begin_state();
  graph.add(0, true);
  CHECK(graph.find_cycle(no_limit) == std::vector<StateIndex>{0});
}

TEST_CASE("the search for cycles ends when a limit is met") {
  StartGraph graph;
  graph.begin_state();
  graph.add(0, true);
  CHECK_THROWS_AS((void)graph.find_cycle([] { return std::optional(Reason::time); }), Stopped);
}

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
  CHECK_FALSE(graph.has_cycle(no_limit));
}

TEST_CASE("5.k starts that lead back close a cycle, however long") {
  StartGraph graph;
  const StateIndex length = 1000;
  for (StateIndex i = 0; i < length; ++i) {
    graph.begin_state();
    graph.add(i + 1 < length ? i + 1 : 0, i + 1 == length);
  }
  CHECK(graph.has_cycle(no_limit));
}

TEST_CASE("5.k a start that changes nothing is a cycle of one") {
  StartGraph graph;
  graph.begin_state();
  graph.add(0, true);
  CHECK(graph.has_cycle(no_limit));
}

TEST_CASE("the search for cycles ends when a limit is met") {
  StartGraph graph;
  graph.begin_state();
  graph.add(0, true);
  CHECK_THROWS_AS((void)graph.has_cycle([] { return std::optional(Reason::time); }), Stopped);
}

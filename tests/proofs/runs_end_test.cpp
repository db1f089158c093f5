// proofs/runs-end.md on the concrete semantics: every event makes the measure smaller (5.k).
#include "proofs/any_graph.hpp"
#include "proofs/measure.hpp"
#include "spec/random_models.hpp"
#include "support/run.hpp"
#include "support/second_neighbour.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("runs-end: the measure falls with every event of random runs (5.k)") {
  Random random(51);
  int events = 0;
  std::size_t longest = 0;
  for (int i = 0; i < 12000; ++i) {
    Model model = random_model(random, {.most_devices = 7, .most_steps = 12, .faults = {2, 2, 1, 2, true}});
    if (model.platform.side_leads_to != SideLeadsTo::any) continue;
    Run run(std::move(model));
    run.settle();
    std::size_t length = 0;
    for (std::vector<Event> possible = run.events(); !possible.empty(); possible = run.events()) {
      const Measure before = measure_of(run.world(), run.state());
      run.take(possible[below(random, possible.size())]);
      REQUIRE(falls(before, measure_of(run.world(), run.state())));
      ++length;
    }
    longest = std::max(longest, length);
    events += static_cast<int>(length);
  }
  CHECK(events > 50000);
  CHECK(longest > 25);
}

TEST_CASE("runs-end: the measure falls with every start, from any settled state (5.k)") {
  Random random(52);
  const std::vector<std::vector<ElectionKey>> elections = {
      {}, {ElectionKey::tenure}, {ElectionKey::priority, ElectionKey::tenure}, {ElectionKey::number}};
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    for (const auto& election : elections) {
      AnyGraph graph(7, orphans, election);
      semantics::Scratch scratch;
      const semantics::Derived none;
      int contests = 0;
      for (int i = 0; i < 6000; ++i) {
        graph.draw(random);
        graph.draw_leaders_of_a_settled_state(random);
        const DeviceId x(below(random, graph.size()));
        if (graph.state[x].power != Power::starting) continue;
        const Measure before = measure_of(graph.world(), graph.state);
        semantics::take(graph.world(), graph.state, none, started(x));
        while (pass(graph.world(), graph.state, scratch)) {
          if (!scratch.plan.contests.empty()) ++contests;
        }
        REQUIRE(falls(before, measure_of(graph.world(), graph.state)));
      }
      CHECK(contests > 0);
    }
  }
}

// The hypothesis is needed: docs/semantics-questions.md, 2.
TEST_CASE("runs-end: the measure does not always fall where a side leads to one neighbour") {
  Run run(SecondNeighbour(Orphans::restart).b);
  run.settle();
  bool always_fell = true;
  for (int taken = 0; taken < 20; ++taken) {
    const std::vector<Event> possible = run.events();
    REQUIRE_FALSE(possible.empty());
    const Measure before = measure_of(run.world(), run.state());
    run.take(possible.front());
    always_fell = always_fell && falls(before, measure_of(run.world(), run.state()));
  }
  CHECK_FALSE(always_fell);
}

// What the variables can be worth: the ranges that are read off a model's text.
#include "system/domains.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "confront/course.hpp"
#include "confront/models.hpp"
#include "confront/states.hpp"
#include "semantics/state.hpp"
#include "system/build.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

/// Adds what the relation leads to, round by round.
system::Domains closed_the_slow_way(const Model& model, const FaultBudget& budget, system::Domains domains) {
  for (bool grown = true; grown;) {
    grown = false;
    const system::System system(model, budget, domains);
    for (system::VariableId v = 0; v < system.space.size(); ++v) {
      for (const system::Value::Case& each : system.next[v].cases()) {
        const auto at = std::lower_bound(domains[v].begin(), domains[v].end(), each.value);
        if (at != domains[v].end() && *at == each.value) continue;
        domains[v].insert(at, each.value);
        grown = true;
      }
    }
  }
  return domains;
}

system::Domains of_one_state(const system::Space& space, const State& s) {
  system::Domains domains;
  for (const std::int64_t value : values_of(space, s)) domains.push_back({value});
  return domains;
}

}  // namespace

// Hardly ever another: what folds depends on the order in which the ranges grow, so that either way may come to a few
// values that the other is spared.
TEST_CASE("the static domains hold the initial state, no event leaves them, and they are those of the plain closure") {
  std::size_t alike = 0, values = 0, values_slow = 0;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    Random random(seed);
    const Model model = random_model(random);
    const FaultBudget& budget = model.procedure.faults;
    const semantics::World world(model);
    State s = semantics::initial_state(world, budget);
    Course(world).settle(s);
    const system::Domains domains = system::static_domains(model, budget);
    system::System system(model, budget, domains);
    INFO("model " << seed);
    REQUIRE(within(system.space, domains, s));
    const system::Domains slow = closed_the_slow_way(model, budget, of_one_state(system.space, s));
    for (system::VariableId v = 0; v < system.space.size(); ++v) {
      REQUIRE(system.strays(v) == system::never);
      values += domains[v].size();
      values_slow += slow[v].size();
    }
    alike += domains == slow ? 1 : 0;
  }
  CHECK(alike >= 140);
  CHECK(values <= values_slow + values_slow / 100);
}

TEST_CASE("every state of a random run lies within the static domains and within the stated ones") {
  std::size_t states = 0;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    Random random(seed);
    const Model model = random_model(random);
    const FaultBudget& budget = model.procedure.faults;
    const semantics::World world(model);
    const system::Space space(model, budget);
    const system::Domains narrow = system::static_domains(model, budget);
    const system::Domains wide = system::stated_domains(model, budget);
    for (int run = 0; run < 10; ++run) {
      State s = semantics::initial_state(world, budget);
      Course course(world);
      course.settle(s);
      for (int taken = 0; taken < 25; ++taken) {
        INFO("model " << seed << ": " << told(space, s));
        REQUIRE(within(space, narrow, s));
        REQUIRE(within(space, wide, s));
        ++states;
        std::vector<Event> events;
        semantics::events_in(world, s, course.derived(), events);
        if (events.empty()) break;
        course.take(s, events[below(random, events.size())]);
      }
    }
  }
  CHECK(states > 10'000);
}

TEST_CASE("in the stated domains every number and every priority may be that of any device, and no event leaves them") {
  using Kind = system::Variable::Kind;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    Random random(seed);
    const Model model = random_model(random);
    const FaultBudget& budget = model.procedure.faults;
    const system::Space space(model, budget);
    const system::Domains wide = system::stated_domains(model, budget);
    INFO("model " << seed);
    for (const auto& [in_force, next] :
         {std::pair(Kind::number, Kind::next_number), std::pair(Kind::priority, Kind::startup_priority)}) {
      std::vector<std::int64_t> all;
      for (const Device& device : model.site.devices) {
        if (in_force == Kind::number) all.insert(all.end(), {device.number, device.next_number});
        if (in_force == Kind::priority) all.insert(all.end(), {device.priority, device.startup_priority});
      }
      for (std::uint32_t d = 0; d < space.devices(); ++d) {
        const std::vector<std::int64_t>& values = wide[space.of_device(in_force, DeviceId(d))];
        REQUIRE(values == wide[space.of_device(next, DeviceId(0))]);
        for (const std::int64_t value : all) REQUIRE(std::binary_search(values.begin(), values.end(), value));
      }
    }
    system::System system(model, budget, wide);
    for (system::VariableId v = 0; v < space.size(); ++v) REQUIRE(system.strays(v) == system::never);
  }
}

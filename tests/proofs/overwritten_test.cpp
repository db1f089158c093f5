// proofs/overwritten.md on the concrete semantics: random runs, beside which a second one has other settings of a
// device that is down.
#include "proofs/any_graph.hpp"
#include "semantics/events.hpp"
#include "semantics/settle.hpp"
#include "spec/random_models.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// Other values for what the next start of d overwrites (2.k).
void overwrite(const semantics::World& world, State& s, DeviceId d, Random& random) {
  const Platform& platform = world.platform();
  s[d].priority = platform.priorities.low + static_cast<std::int64_t>(below(random, 2));
  if (platform.settings_follow == SettingsFollow::device) s[d].number = platform.numbers.low;
  for (const PortId p : world.model()[d].ports) {
    s[p].enabled = below(random, 2) == 0;
    s[p].side = static_cast<Side>(below(random, 3));
    s[p].operational_side = static_cast<Side>(below(random, 3));
  }
}

/// The state, with what the next start of d overwrites as in another where d is down.
State with_settings_of(const semantics::World& world, State s, const State& other, DeviceId d) {
  if (s[d].power != Power::off && s[d].power != Power::starting) return s;
  s[d].priority = other[d].priority;
  if (world.platform().settings_follow == SettingsFollow::device) s[d].number = other[d].number;
  for (const PortId p : world.model()[d].ports) {
    s[p].enabled = other[p].enabled;
    s[p].side = other[p].side;
    s[p].operational_side = other[p].operational_side;
  }
  return s;
}

}  // namespace

TEST_CASE("overwritten: nothing depends on settings that the next start brings anew (2.k, 5.b, 5.f)") {
  Random random(65);
  semantics::Scratch scratch;
  int compared = 0;
  int started_anew = 0;
  for (int i = 0; i < 4000; ++i) {
    Run run(random_model(random, {.most_devices = 5, .most_steps = 8, .faults = {1, 1, 1, 1, true}}));
    const semantics::World& world = run.world();
    run.settle();
    // Where a side leads to one neighbour a run need not end (docs/semantics-questions.md, 2).
    for (int taken = 0; taken < 60; ++taken) {
      const std::vector<Event> possible = run.events();
      if (possible.empty()) break;
      const DeviceId d(below(random, world.device_count()));
      const bool down = run.power(d) == Power::off || run.power(d) == Power::starting;
      State other = run.state();
      if (down) overwrite(world, other, d, random);
      const Event event = possible[below(random, possible.size())];
      const semantics::Derived derived = semantics::derive(world, other);
      std::vector<Event> possible_there;
      semantics::events_in(world, other, derived, possible_there);
      REQUIRE(possible_there == possible);
      const Refusal refusal = run.take(event);
      REQUIRE(semantics::take(world, other, derived, event) == refusal);
      while (pass(world, other, scratch)) {
      }
      if (down) ++compared;
      if (down && run.power(d) != Power::off && run.power(d) != Power::starting) ++started_anew;
      REQUIRE(with_settings_of(world, run.state(), other, d) == other);
    }
  }
  CHECK(compared > 5000);
  CHECK(started_anew > 500);
}

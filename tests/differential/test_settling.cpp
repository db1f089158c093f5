// One pass of settling (semantics 4) on states made at random, most of which no short run reaches: classes with
// orphans of several stacks, fresh devices and several leaders at once.
#include <doctest/doctest.h>

#include "differential/compare.hpp"
#include "differential/generate.hpp"
#include "differential/random.hpp"
#include "differential/render.hpp"
#include "naive/settle.hpp"
#include "semantics/settle.hpp"

using namespace cairn;
using namespace cairn::differential;

namespace {

/// Levels of seniority among the devices that are up or held (2.a), as pairs.
void rank_seniority(Random& random, const std::vector<DeviceId>& devices, naive::World& world) {
  world.senior.clear();
  std::map<DeviceId, std::size_t> levels;
  for (const DeviceId d : devices) levels[d] = random.below(3);
  for (const DeviceId d : devices) {
    for (const DeviceId e : devices) {
      const bool both_run = world[d].power >= Power::up && world[e].power >= Power::up;
      if (both_run && levels[d] < levels[e]) world.senior.insert({d, e});
    }
  }
}

/// Leaders that lead themselves (6.d), or that have just gone down and left orphans.
void choose_leaders(Random& random, const std::vector<DeviceId>& devices, naive::World& world) {
  std::vector<DeviceId> leaders;
  for (const DeviceId d : devices) {
    const bool up = world[d].power == Power::up;
    world[d].leader = up && random.chance(40) ? d : DeviceId();
    if (world[d].leader || !up) leaders.push_back(d);
  }
  for (const DeviceId d : devices) {
    if (world[d].power != Power::up || world[d].leader || leaders.empty() || random.chance(30)) continue;
    world[d].leader = random.pick(leaders);
  }
}

naive::World random_world(Random& random, const Model& model) {
  naive::World world = naive::initial(model, {});
  const std::vector<DeviceId> devices = naive::all_devices(model);
  for (const DeviceId d : devices) {
    naive::Switch& s = world[d];
    s.power = random.chance(80) ? Power::up : static_cast<Power>(random.below(4));
    s.number = s.next_number = random.between(1, 2);
    s.priority = s.startup_priority = random.between(1, 3);
  }
  for (naive::Socket& socket : world.sockets) {
    socket.enabled = random.chance(90);
    if (random.chance(30)) socket.operational_side = random.coin() ? Side::east : Side::west;
  }
  for (naive::Wire& wire : world.wires) wire.broken = random.chance(10);
  choose_leaders(random, devices, world);
  rank_seniority(random, devices, world);
  return world;
}

}  // namespace

TEST_CASE("one pass is the same in both on states made at random") {
  Random random(11);
  std::size_t with_restarts = 0, with_holds = 0, with_both = 0;
  for (std::uint64_t seed = 0; seed < 2000; ++seed) {
    const auto model = read(generate(seed));
    if (!model) continue;
    const semantics::World tables(*model);
    for (int i = 0; i < 20; ++i) {
      const naive::World world = random_world(random, *model);
      const naive::Pass pass = naive::settle(*model, world).front();
      State state = naive::as_state(*model, world);
      semantics::PassPlan plan;
      semantics::plan_pass(tables, state, semantics::derive(tables, state), plan);
      semantics::carry_out(plan, state);
      with_restarts += pass.restarted.empty() ? 0 : 1;
      with_holds += pass.held.empty() ? 0 : 1;
      with_both += pass.restarted.empty() || pass.held.empty() ? 0 : 1;
      if (state == naive::as_state(*model, pass.after)) continue;
      FAIL("a pass differs on model seed " << seed << ", state " << i << ":\n" << render(generate(seed)));
    }
  }
  CHECK(with_restarts > 5000);
  CHECK(with_holds > 5000);
  CHECK(with_both > 500);
}

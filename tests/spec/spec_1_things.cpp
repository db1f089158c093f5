// Semantics 1, Things.
#include "support/platforms.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("1.a the address of a device is the last tie-break") {
  ModelBuilder b;
  const DeviceId high = b.device("high", {.address = 9});
  const DeviceId low = b.device("low", {.address = 8});
  b.chain({high, low});
  Run run(b);
  run.settle();
  CHECK(run.power(high) == Power::starting);
  CHECK(run.leader(low) == low);
}

TEST_CASE("1.b a port may have several cables, of which one is plugged") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c"});
  const CableId now = b.cable(b.east(d[0]), b.west(d[1]));
  const CableId later = b.cable(b.east(d[0]), b.west(d[2]), false);
  b.unordered();
  const StepId unplug = b.unplug(now);
  const StepId plug = b.plug(later, {.after = {unplug}});
  b.stack(d[0], {d[0], d[1]});
  Run run(b);
  run.settle();
  CHECK(run.linked(now));
  CHECK_FALSE(run.linked(later));
  run.take(step(unplug));
  CHECK(run.leave(step(plug)) == Refusal::none);
  CHECK_FALSE(run.linked(now));
  CHECK(run.linked(later));
}

TEST_CASE("1.c of the devices of a stack one is the primary, the others are followers") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c"});
  b.chain(d);
  b.stack(d[1], d);
  Run run(b);
  run.settle();
  CHECK(run.holds(when::primary(d[1])));
  for (const DeviceId follower : {d[0], d[2]}) {
    CHECK(run.holds(when::follower(follower)));
    CHECK_FALSE(run.holds(when::primary(follower)));
  }
  CHECK_FALSE(run.holds(when::follower(d[1])));
}

TEST_CASE("1.d on every platform the losers of a contest restart") {
  for_each_platform([](const Platform& platform) {
    ModelBuilder b;
    b.platform() = platform;
    const DeviceId winner = b.device("winner", {.number = 1, .priority = 9, .tenure = 2});
    const DeviceId loser = b.device("loser", {.number = 2, .priority = 1, .tenure = 1});
    b.chain({winner, loser});
    Run run(b);
    run.settle();
    CHECK(run.leader(winner) == winner);
    CHECK(run.power(loser) == Power::starting);
    CHECK_FALSE(run.leader(loser));
  });
}

TEST_CASE("1.d on every platform a device whose number clashes is held") {
  for_each_platform([](const Platform& platform) {
    ModelBuilder b;
    b.platform() = platform;
    const DeviceId leading = b.device("leading", {.number = 3, .priority = 1});
    const DeviceId newcomer = b.device("newcomer", {.on = false, .number = 3, .priority = 9});
    b.chain({leading, newcomer});
    const StepId on = b.power_on(newcomer);
    Run run(b);
    run.settle();
    run.take(step(on));
    run.take(started(newcomer));
    CHECK(run.power(newcomer) == Power::held);
    CHECK(run.leader(leading) == leading);
  });
}

TEST_CASE("1.d on every platform a fresh device never displaces a leader") {
  for_each_platform([](const Platform& platform) {
    ModelBuilder b;
    b.platform() = platform;
    const DeviceId leading = b.device("leading", {.number = 3, .priority = 1});
    const DeviceId newcomer = b.device("newcomer", {.on = false, .number = 2, .priority = 9});
    b.chain({leading, newcomer});
    const StepId on = b.power_on(newcomer);
    Run run(b);
    run.settle();
    run.take(step(on));
    run.take(started(newcomer));
    CHECK(run.leader(newcomer) == leading);
    CHECK(run.leader(leading) == leading);
  });
}

TEST_CASE("1.d on every platform configuration is kept by each device for itself") {
  for_each_platform([](const Platform& platform) {
    ModelBuilder b;
    b.platform() = platform;
    const auto d = b.devices({"a", "b"});
    b.chain(d);
    b.stack(d[0], d);
    b.unordered();
    const StepId set = b.set_priority(d[0], 8);
    const StepId save = b.save({d[0]});
    Run run(b);
    run.settle();
    const DeviceState other = run.state()[d[1]];
    run.take(step(set));
    run.take(step(save));
    CHECK(run.state()[d[1]] == other);
    CHECK(run.state()[d[0]].startup_priority == 8);
  });
}

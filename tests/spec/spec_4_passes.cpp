// Semantics 4.5 and 4.6: when a state is settled, and which states the properties look at.
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("4.5.a a pass that held or restarted a device is unsettled, and another pass follows") {
  // d0 beats d2 over d1. Once d2 is down, nothing more happens to d1; d3 behind d2 is cut off and leads itself.
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1", "d2", "d3"});
  b.chain(d);
  b.stack(d[0], {d[0], d[1]});
  Run run(b);
  run.state()[d[3]].leader = DeviceId();
  run.settle();
  CHECK(run.unsettled_passes() == 1);
  CHECK(run.power(d[2]) == Power::starting);
  // d3 was admitted in the first pass, by d0, and is an orphan in the second.
  CHECK(run.seen()[1][d[3]].leader == d[0]);
  CHECK(run.leader(d[3]) == d[3]);
  CHECK(run.plan().changes_nothing());
}

TEST_CASE("4.5.b a pass that only admits leaves a settled state") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.chain(d);
  Run run(b);
  run.state()[d[1]].leader = DeviceId();
  run.settle();
  CHECK(run.unsettled_passes() == 0);
  CHECK(run.seen().size() == 2);
  CHECK(run.plan().changes_nothing());
}

TEST_CASE("4.5.c there may be two unsettled passes in a row, with orphans: carry-on one") {
  // As in 4.5.a; where orphans restart, d3 restarts in a second unsettled pass.
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1", "d2", "d3"});
  b.chain(d);
  b.stack(d[0], {d[0], d[1]});
  b.platform().orphans = Orphans::restart;
  Run run(b);
  run.state()[d[3]].leader = DeviceId();
  run.settle();
  CHECK(run.unsettled_passes() == 2);
  CHECK(run.power(d[3]) == Power::starting);
}

TEST_CASE("4.6 the properties look at the state that an event leaves and at the one after each pass") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const CableId c = b.cable(b.east(d[0]), b.west(d[1]), false);
  const StepId plug = b.plug(c);
  Run run(b);
  run.settle();
  run.take(step(plug));
  REQUIRE(run.seen().size() == 2);
  CHECK(run.seen()[0][c].plugged);
  CHECK(run.seen()[0][d[1]].leader == d[1]);
  CHECK(run.seen()[1][d[1]].power == Power::starting);
}

TEST_CASE("4.6 a breach that settling mends at once is a breach") {
  // The numbers are equal from the moment of plugging until the loser is held.
  ModelBuilder b;
  const DeviceId x = b.device("x", {.number = 3});
  const DeviceId y = b.device("y", {.number = 3});
  const CableId c = b.cable(b.east(x), b.west(y), false);
  const StepId plug = b.plug(c);
  Run run(b);
  run.settle();
  CHECK_FALSE(run.broken(Property::no_clash));
  run.take(step(plug));
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Breach::Cause::same_number);
}

TEST_CASE("4.6 depth zero: the initial state counts, before and after it settles") {
  ModelBuilder b;
  const DeviceId x = b.device("x");
  const DeviceId y = b.device("y");
  b.stack(x, {x, y});  // without a link between them
  Run run(b);
  run.settle();
  REQUIRE(run.broken(Property::no_split));
  CHECK(run.broken(Property::no_split)->cause == Breach::Cause::cut_apart);
}

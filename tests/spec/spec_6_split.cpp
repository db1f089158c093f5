// Semantics 6, and 6.1, no-split.
#include "spec/trio.hpp"

using namespace cairn;
using namespace cairn::test;
using Cause = Breach::Cause;

TEST_CASE("6 the budget of the first four properties only, and keep of the first three") {
  for (int i = 0; i < property_count; ++i) {
    const auto property = static_cast<Property>(i);
    CHECK(asked_with_faults(property) == (i < 4));
    CHECK(speaks_of_keep(property) == (i < 3));
    CHECK(speaks_of_goal(property) == (i >= 5));
  }
}

// 6.1 no-split

TEST_CASE("6.1 an undisturbed stack is not split, and 6.2 to 6.5 hold of it as well") {
  const Trio t;
  Run run(t.b);
  run.settle();
  for (int i = 0; i < 5; ++i) CHECK_FALSE(run.broken(static_cast<Property>(i)));
}

TEST_CASE("6.1 a device of keep cut off from its stack, even before any pass") {
  const Trio t;
  Run run(t.b);
  run.settle();
  run.leave(broke(t.cables[1]));
  CHECK(run.leader(t.d[2]) == t.d[0]);
  run.settle();
  CHECK(broke_by(run, Property::no_split, Cause::cut_apart));
}

TEST_CASE("6.1 two of keep that follow different leaders") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.keep(d);
  Run run(b);
  run.settle();
  CHECK(broke_by(run, Property::no_split, Cause::two_leaders));
}

TEST_CASE("6.1 newcomers too: a device of keep is together with every device that follows the same leader") {
  Trio t;
  t.b.keep({t.d[0], t.d[1]});  // c is no device of keep, and follows a
  Run run(t.b);
  run.settle();
  run.take(broke(t.cables[1]));
  CHECK(broke_by(run, Property::no_split, Cause::cut_apart));
}

TEST_CASE("6.1 a device outside keep that follows another leader is no split") {
  Trio t;
  t.b.keep({t.d[0], t.d[1]});
  const DeviceId lone = t.b.device("lone");
  Run run(t.b);
  run.settle();
  CHECK(run.leader(lone) == lone);
  CHECK_FALSE(run.broken(Property::no_split));
}

TEST_CASE("6.1 the leader itself may be outside keep") {
  Trio t;
  t.b.keep({t.d[1], t.d[2]});
  Run run(t.b);
  run.settle();
  CHECK_FALSE(run.broken(Property::no_split));
  run.take(broke(t.cables[0]));
  // b and c are still together, but a, which both followed, is not with them.
  CHECK(broke_by(run, Property::no_split, Cause::cut_apart));
}

TEST_CASE("6.1 speaks of devices that are up and admitted: one that is off, starting or fresh splits nothing") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.chain(d);
  b.stack(d[0], d);
  b.unordered();
  const StepId off = b.power_off(d[1]);
  const StepId on = b.power_on(d[1], {.after = {off}});
  Run run(b);
  run.settle();
  run.take(step(off));
  run.take(step(on));
  run.leave(started(d[1]));
  CHECK_FALSE(run.leader(d[1]));
  run.settle();
  CHECK_FALSE(run.broken(Property::no_split));
  CHECK(run.leader(d[1]) == d[0]);
}

TEST_CASE("6.1 none of keep is held, newcomers may be") {
  for (const bool kept : {true, false}) {
    ModelBuilder b;
    const DeviceId a = b.device("a", {.number = 4});
    const DeviceId d = b.device("d", {.number = 4});
    const CableId c = b.cable(b.east(a), b.west(d), false);
    const StepId plug = b.plug(c);
    // Where both are kept they are split to begin with: keep the one that will be held, or the other.
    b.keep({kept ? d : a});
    Run run(b);
    run.settle();
    run.take(step(plug));
    REQUIRE(run.power(d) == Power::held);
    CHECK(broke_by(run, Property::no_split, Cause::kept_device_held) == kept);
    CHECK(run.broken(Property::no_split).has_value() == kept);
  }
}

// Semantics 6.4, no-clash, and 6.5, no-refusal.
#include "spec/trio.hpp"

using namespace cairn;
using namespace cairn::test;
using Cause = Breach::Cause;

TEST_CASE("6.4 no device is ever held, of keep or not") {
  ModelBuilder b;
  const DeviceId a = b.device("a", {.number = 4});
  const DeviceId d = b.device("d", {.on = false, .number = 4});
  b.chain({a, d});
  const StepId on = b.power_on(d);
  Run run(b);
  run.settle();
  run.take(step(on));
  run.leave(started(d));
  CHECK_FALSE(run.broken(Property::no_clash));  // it is fresh, not admitted
  run.settle();
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Cause::held);
  CHECK(run.broken(Property::no_clash)->a == d);
}

TEST_CASE("6.4 a fresh device clashes with nobody before it is admitted, wherever it stands in the file") {
  ModelBuilder b;
  const DeviceId d = b.device("d", {.on = false, .number = 4});
  const DeviceId a = b.device("a", {.number = 4});
  b.chain({a, d});
  const StepId on = b.power_on(d);
  Run run(b);
  run.settle();
  run.take(step(on));
  run.take(started(d));
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Cause::held);
}

TEST_CASE("6.4 no two admitted devices that are together have the same number") {
  Trio t;
  const StepId set = t.b.set_number(t.d[2], 1);
  Run run(t.b);
  run.settle();
  run.take(step(set));
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Cause::same_number);
  CHECK(run.broken(Property::no_clash)->a == t.d[0]);
  CHECK(run.broken(Property::no_clash)->b == t.d[2]);
  // They follow the same leader, so that none yields (4.1.e).
  CHECK(run.power(t.d[2]) == Power::up);
}

TEST_CASE("6.4 the same number apart is no clash, nor is a next number") {
  ModelBuilder b;
  b.device("a", {.number = 4});
  b.device("d", {.number = 4});
  Run run(b);
  run.settle();
  CHECK_FALSE(run.broken(Property::no_clash));
  Trio t;
  t.b.platform().number_takes = Takes::at_restart;
  const StepId set = t.b.set_number(t.d[2], 1);
  Run later(t.b);
  later.settle();
  later.take(step(set));
  CHECK_FALSE(later.broken(Property::no_clash));
}

// 6.5 no-refusal

TEST_CASE("6.5 no step is refused; a failed check is no refusal") {
  Trio t;
  const StepId check = t.b.check(when::never());
  Run run(t.b);
  run.settle();
  run.take(step(check));
  CHECK_FALSE(run.broken(Property::no_refusal));
  Trio other;
  const StepId on = other.b.power_on(other.d[0]);
  Run refusing(other.b);
  refusing.settle();
  refusing.take(step(on));
  REQUIRE(refusing.broken(Property::no_refusal));
  CHECK(refusing.broken(Property::no_refusal)->step == on);
  for (int i = 0; i < 4; ++i) CHECK_FALSE(refusing.broken(static_cast<Property>(i)));
}

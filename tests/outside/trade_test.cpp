// Facts of the trade: common practice, no source. Each as a short run.
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// A stack of two in service, and a switch that is cabled to it in the end. (Names of our own terminal.)
struct Yard {
  ModelBuilder b;
  DeviceId first, second, joiner;
  CableId splice;

  explicit Yard(DeviceIs is) {
    first = b.device("yard-1", {.number = 1, .priority = 9});
    second = b.device("yard-2", {.number = 2, .priority = 8});
    joiner = b.device("yard-3", std::move(is));
    b.chain({first, second});
    b.stack(first, {first, second});
    splice = b.cable(b.east(second), b.west(joiner), false);
    b.faults({.crashes = 1});
  }
};

}  // namespace

TEST_CASE("4.2.d common practice, no source: a running joiner with the lower priority loses the contest and restarts") {
  Yard yard({.number = 3, .priority = 2});
  const StepId plug = yard.b.plug(yard.splice);
  Run run(yard.b);
  run.settle();
  run.take(step(plug));
  CHECK(run.power(yard.joiner) == Power::starting);
  CHECK(run.leader(yard.second) == yard.first);
  run.take(started(yard.joiner));
  CHECK(run.leader(yard.joiner) == yard.first);
  CHECK_FALSE(run.broken(Property::members_stay));
}

TEST_CASE("4.2.d common practice, no source: a running joiner with the higher priority takes the stack down") {
  Yard yard({.number = 3, .priority = 12});
  const StepId plug = yard.b.plug(yard.splice);
  Run run(yard.b);
  run.settle();
  run.take(step(plug));
  CHECK(run.power(yard.first) == Power::starting);
  CHECK(run.power(yard.second) == Power::starting);
  CHECK(run.leader(yard.joiner) == yard.joiner);
}

TEST_CASE("5.4 common practice, no source: a member number changes at the next start") {
  Yard yard({.number = 3});
  yard.b.platform().number_takes = Takes::at_restart;
  const StepId set = yard.b.set_number(yard.joiner, 7);
  const StepId restart = yard.b.restart(yard.joiner);
  Run run(yard.b);
  run.settle();
  run.take(step(set));
  CHECK(run.state()[yard.joiner].number == 3);
  run.take(step(restart));
  CHECK(run.state()[yard.joiner].number == 3);
  run.take(started(yard.joiner));
  CHECK(run.state()[yard.joiner].number == 7);
}

TEST_CASE("5.7 5.9 common practice, no source: with two stages, a side that is set waits for apply") {
  Yard yard({.number = 3, .ports = {{.name = "w"}}});
  yard.b.platform().side_takes = SideTakes::on_apply;
  const StepId set = yard.b.set_side(yard.b.west(yard.joiner), Side::west);
  const StepId apply = yard.b.apply({yard.joiner});
  Run run(yard.b);
  run.settle();
  run.state()[yard.splice].plugged = true;
  run.leave(step(set));
  CHECK_FALSE(run.linked(yard.splice));
  run.leave(step(apply));
  CHECK(run.linked(yard.splice));
}

TEST_CASE("5.e common practice, no source: what is not saved is lost at a start") {
  for (const bool saved : {true, false}) {
    Yard yard({.number = 3, .ports = {{.name = "w"}}});
    const PortId p = yard.b.west(yard.joiner);
    yard.b.set_side(p, Side::west);
    if (saved) yard.b.save({yard.joiner});
    Run run(yard.b);
    run.settle();
    for (std::size_t i = 0; i < run.world().steps().size(); ++i) run.take(step(StepId(i)));
    CHECK(run.state()[p].operational_side == Side::west);
    run.take(crashed(yard.joiner));
    run.take(started(yard.joiner));
    CHECK(run.state()[p].operational_side == (saved ? Side::west : Side::none));
  }
}

TEST_CASE("6.4 common practice, no source: factory-new switches carry the same default number, and clash") {
  // What a site file leaves out is the platform's factory value.
  ModelBuilder b;
  const std::int64_t factory_number = b.platform().factory.number;
  const DeviceId x = b.device("new-1", {.on = false, .number = factory_number});
  const DeviceId y = b.device("new-2", {.on = false, .number = factory_number});
  b.chain({x, y});
  const StepId on_x = b.power_on(x);
  const StepId on_y = b.power_on(y);
  Run run(b);
  run.settle();
  run.take(step(on_x));
  run.take(started(x));
  run.take(step(on_y));
  run.take(started(y));
  CHECK(run.leader(x) == x);
  CHECK(run.power(y) == Power::held);
  CHECK(run.broken(Property::no_clash));
}

// Semantics 5.g, steps on several devices, and 5.h, reachable.
#include <utility>

#include "spec/yard.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("5.g apply and save may name several devices") {
  Yard yard;
  const StepId save = yard.b.save({yard.d, yard.held});
  const StepId apply = yard.b.apply({yard.d, yard.held});
  YardRun run(yard);
  for (const DeviceId d : {yard.a, yard.d, yard.held}) run.state()[yard.b.east(d)].side = Side::none;
  taken(run, save);
  for (const DeviceId d : {yard.d, yard.held}) CHECK(run.state()[yard.b.east(d)].startup_side == Side::none);
  CHECK(run.state()[yard.b.east(yard.a)].startup_side == Side::east);
  taken(run, apply);
  for (const DeviceId d : {yard.d, yard.held}) CHECK(run.state()[yard.b.east(d)].operational_side == Side::none);
}

TEST_CASE("5.g stack-of d: d itself and all devices together with it") {
  Yard yard;
  const StepId of_stack = yard.b.save_stack_of(yard.d);
  const StepId of_held = yard.b.apply_stack_of(yard.held);
  YardRun run(yard);
  for (const DeviceId d : {yard.a, yard.d, yard.held}) run.state()[yard.b.east(d)].startup_enabled = false;
  taken(run, of_stack);
  CHECK(run.state()[yard.b.east(yard.a)].startup_enabled);
  CHECK(run.state()[yard.b.east(yard.d)].startup_enabled);
  CHECK_FALSE(run.state()[yard.b.east(yard.held)].startup_enabled);
  // A held device is together with none, and is a stack of one here.
  run.state()[yard.b.east(yard.held)].side = Side::none;
  run.state()[yard.b.east(yard.a)].side = Side::none;
  taken(run, of_held);
  CHECK(run.state()[yard.b.east(yard.held)].operational_side == Side::none);
  CHECK(run.state()[yard.b.east(yard.a)].operational_side == Side::east);
}

TEST_CASE("5.g if one device cannot be reached, the whole step is refused") {
  Yard yard;
  const StepId save = yard.b.save({yard.d, yard.off});
  const StepId apply = yard.b.apply({yard.starting, yard.d});
  const StepId via = yard.b.save({yard.d, yard.held}, {.via = yard.a});
  const StepId of_off = yard.b.save_stack_of(yard.off);
  YardRun run(yard);
  run.state()[yard.b.east(yard.d)].startup_enabled = false;
  run.state()[yard.b.east(yard.d)].side = Side::west;
  refused(run, save, Refusal::not_reachable);
  refused(run, apply, Refusal::not_reachable);
  refused(run, via, Refusal::not_reachable);
  refused(run, of_off, Refusal::not_reachable);
}

TEST_CASE("5.h reachable via v: v up or held, and d = v, or d and v together") {
  Yard yard;
  YardRun run(yard);
  const auto reachable = [&](DeviceId d, DeviceId v) { return semantics::reachable(run.state(), run.derived(), d, v); };
  CHECK(reachable(yard.d, yard.d));
  CHECK(reachable(yard.d, yard.a));
  CHECK(reachable(yard.a, yard.d));
  CHECK(reachable(yard.held, yard.held));
  CHECK_FALSE(reachable(yard.held, yard.a));
  CHECK_FALSE(reachable(yard.a, yard.held));
  for (const DeviceId down : {yard.off, yard.starting}) {
    CHECK_FALSE(reachable(down, down));
    CHECK_FALSE(reachable(down, yard.a));
    CHECK_FALSE(reachable(yard.a, down));
  }
}

TEST_CASE("5.h every configuring step goes by its console") {
  Yard yard;
  auto& b = yard.b;
  const PortId p = b.east(yard.d);
  const StepIs by_stack{.via = yard.a};
  const StepIs by_stranger{.via = yard.held};
  std::vector<StepId> fine;
  std::vector<StepId> not_fine;
  for (const auto& [is, steps] : {std::pair{by_stack, &fine}, std::pair{by_stranger, &not_fine}}) {
    *steps = {b.set_number(yard.d, 9, is),   b.set_priority(yard.d, 4, is), b.disable(p, is),      b.enable(p, is),
              b.set_side(p, Side::east, is), b.clear_side(p, is),           b.apply({yard.d}, is), b.save({yard.d}, is),
              b.restart(yard.d, is)};
  }
  SUBCASE("reachable") {
    YardRun run(yard);
    for (const StepId id : fine) taken(run, id);
  }
  SUBCASE("not reachable") {
    YardRun run(yard);
    for (const StepId id : not_fine) refused(run, id, Refusal::not_reachable);
  }
}

TEST_CASE("5.h apply and save of several devices go by one console where it is given, else by each device's own") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "lone"});
  b.chain({d[0], d[1]});
  b.stack(d[0], {d[0], d[1]});
  b.unordered();
  const StepId own = b.save(d);
  const StepId via_a = b.save(d, {.via = d[0]});
  const StepId stack_via_b = b.apply_stack_of(d[0], {.via = d[1]});
  Run run(b);
  run.settle();
  taken(run, own);
  taken(run, stack_via_b);
  refused(run, via_a, Refusal::not_reachable);
}

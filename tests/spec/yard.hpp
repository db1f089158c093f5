/// \file
/// A site in which every device is in another state, and steps that are taken or refused in it (semantics 5.d).
#pragma once

#include "support/run.hpp"

namespace cairn::test {

/// a - b, led by a; c is off; h is held, beside a too but by a cable at a third port; s is starting.
/// Steps are added by the test before `run` and may be taken in any order.
struct Yard {
  ModelBuilder b;
  DeviceId a, d, off, held, starting;
  CableId joining, spare;

  Yard() {
    auto three = ring_ports();
    three.push_back({.name = "x", .side = Side::east});
    a = b.device("a", {.number = 1, .ports = three});
    d = b.device("d", {.number = 2});
    off = b.device("off", {.on = false, .number = 3});
    held = b.device("held", {.number = 1});
    starting = b.device("starting", {.number = 5});
    joining = b.cable(b.east(a), b.west(d));
    b.cable(b.port(a, "x"), b.west(held));
    spare = b.cable(b.east(d), b.west(off), false);
    b.stack(a, {a, d});
    b.platform().factory = {50, 40, false, Side::none};
    b.unordered();
  }
};

/// Settles the yard and lets its last device start anew.
struct YardRun : Run {
  explicit YardRun(const Yard& yard) : Run(yard.b) {
    settle();
    semantics::go_down(state(), yard.starting, Power::starting);
    REQUIRE(power(yard.held) == Power::held);
  }
};

/// Takes the step, which must be refused, and sees that it became done, changed nothing else and broke no-refusal.
inline void refused(Run& run, StepId id, Refusal why) {
  CAPTURE(id);
  State expected = run.state();
  expected.done[id.value] = 1;
  CHECK(run.take(step(id)) == why);
  CHECK(run.state() == expected);
  REQUIRE(run.broken(Property::no_refusal));
  CHECK(run.broken(Property::no_refusal)->cause == Breach::Cause::refused);
}

/// Takes the step, which must not be refused; what else changed than `done` is up to the test.
inline void taken(Run& run, StepId id) {
  CAPTURE(id);
  CHECK(run.take(step(id)) == Refusal::none);
  CHECK(run.state().is_done(id));
  CHECK_FALSE(run.broken(Property::no_refusal));
}

}  // namespace cairn::test

// Semantics 8, Conditions.
#include <functional>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// a leads b; c is held beside a; d is off; e starts.
struct Scene {
  ModelBuilder b;
  DeviceId a, follower, held, off, starting;
  CableId link, cable;

  Scene() {
    auto three = ring_ports();
    three.push_back({.name = "x", .side = Side::east});
    a = b.device("a", {.number = 4, .priority = 6, .startup_priority = 6, .ports = three});
    follower = b.device("follower", {.number = 5});
    held = b.device("held", {.number = 4});
    off = b.device("off", {.on = false});
    starting = b.device("starting");
    link = b.cable(b.east(a), b.west(follower));
    cable = b.cable(b.port(a, "x"), b.west(held));
    b.stack(a, {a, follower});
  }
};

struct SceneRun : Run {
  explicit SceneRun(const Scene& scene) : Run(scene.b) {
    settle();
    semantics::go_down(state(), scene.starting, Power::starting);
  }
};

}  // namespace

TEST_CASE("Semantics 8 up, held, starting, off") {
  const Scene scene;
  const SceneRun run(scene);
  const DeviceId devices[] = {scene.a, scene.held, scene.starting, scene.off};
  for (std::size_t i = 0; i < 4; ++i) {
    CAPTURE(i);
    CHECK(run.holds(when::up(devices[i])) == (i == 0));
    CHECK(run.holds(when::held(devices[i])) == (i == 1));
    CHECK(run.holds(when::starting(devices[i])) == (i == 2));
    CHECK(run.holds(when::off(devices[i])) == (i == 3));
  }
}

TEST_CASE("Semantics 8 primary: up and its own leader; follower: up and led by another") {
  const Scene scene;
  SceneRun run(scene);
  for (const DeviceId d : {scene.a, scene.follower, scene.held, scene.starting, scene.off}) {
    CAPTURE(d);
    CHECK(run.holds(when::primary(d)) == (d == scene.a));
    CHECK(run.holds(when::follower(d)) == (d == scene.follower));
  }
  run.state()[scene.follower].leader = DeviceId();  // up and fresh: neither
  CHECK_FALSE(run.holds(when::primary(scene.follower)));
  CHECK_FALSE(run.holds(when::follower(scene.follower)));
  // Neither without being up, should a leader stand there all the same.
  for (const Power power : {Power::off, Power::starting, Power::held}) {
    run.state()[scene.follower] = run.state()[scene.a] = DeviceState{.power = power, .leader = scene.a};
    CHECK_FALSE(run.holds(when::primary(scene.a)));
    CHECK_FALSE(run.holds(when::follower(scene.follower)));
  }
}

TEST_CASE("Semantics 8 linked and cable-up") {
  const Scene scene;
  const SceneRun run(scene);
  CHECK(run.holds(when::linked(scene.link)));
  CHECK(run.holds(when::cable_up(scene.link)));
  CHECK_FALSE(run.holds(when::linked(scene.cable)));
  CHECK(run.holds(when::cable_up(scene.cable)));
}

TEST_CASE("Semantics 8 together, of one, two and more; a device may stand twice") {
  const Scene scene;
  const SceneRun run(scene);
  CHECK(run.holds(when::together({scene.a})));
  CHECK(run.holds(when::together({scene.a, scene.follower, scene.a})));
  CHECK_FALSE(run.holds(when::together({scene.a, scene.held})));
  CHECK_FALSE(run.holds(when::together({scene.held})));
  CHECK_FALSE(run.holds(when::together({scene.off, scene.off})));
  CHECK_FALSE(run.holds(when::together({scene.a, scene.follower, scene.off})));
}

TEST_CASE("Semantics 8 number and priority, with six signs") {
  const Scene scene;
  SceneRun run(scene);
  run.state()[scene.a].next_number = 77;       // neither what comes
  run.state()[scene.a].startup_priority = 77;  // nor what is stored is meant
  struct Row {
    Sign sign;
    bool below, equal, above;  // of the value on the right: less than, equal to, more than what is in force
  };
  constexpr Row rows[] = {{Sign::equal, false, true, false},   {Sign::not_equal, true, false, true},
                          {Sign::less, false, false, true},    {Sign::less_or_equal, false, true, true},
                          {Sign::greater, true, false, false}, {Sign::greater_or_equal, true, true, false}};
  for (const Row& row : rows) {
    CAPTURE(static_cast<int>(row.sign));
    CHECK(run.holds(when::number(scene.a, row.sign, 3)) == row.below);
    CHECK(run.holds(when::number(scene.a, row.sign, 4)) == row.equal);
    CHECK(run.holds(when::number(scene.a, row.sign, 5)) == row.above);
    CHECK(run.holds(when::priority(scene.a, row.sign, 5)) == row.below);
    CHECK(run.holds(when::priority(scene.a, row.sign, 6)) == row.equal);
    CHECK(run.holds(when::priority(scene.a, row.sign, 7)) == row.above);
  }
}

TEST_CASE("Semantics 8 saved") {
  const Scene scene;
  const PortId p = scene.b.east(scene.a);
  const auto saved_after = [&](const std::function<void(State&)>& spoil) {
    SceneRun run(scene);
    spoil(run.state());
    return run.holds(when::saved(scene.a));
  };
  CHECK(saved_after([](State&) {}));
  CHECK_FALSE(saved_after([&](State& s) { s[scene.a].startup_priority = 1; }));
  CHECK_FALSE(saved_after([&](State& s) { s[scene.a].next_number = 9; }));
  CHECK_FALSE(saved_after([&](State& s) { s[p].startup_enabled = false; }));
  CHECK_FALSE(saved_after([&](State& s) { s[p].startup_side = Side::west; }));
  CHECK_FALSE(saved_after([&](State& s) { s[p].operational_side = Side::none; }));
  CHECK_FALSE(saved_after([&](State& s) { s[scene.b.port(scene.a, "x")].enabled = false; }));
  CHECK(saved_after([&](State& s) { s[scene.b.east(scene.follower)].enabled = false; }));
  // Whether the device runs does not matter (2.k).
  CHECK(saved_after([&](State& s) { semantics::go_down(s, scene.a, Power::off); }));
}

TEST_CASE("Semantics 8 enabled is running, side is operational") {
  const Scene scene;
  SceneRun run(scene);
  const PortId p = scene.b.east(scene.a);
  PortState& port = run.state()[p];
  port = {true, false, Side::none, Side::none, Side::east};
  CHECK(run.holds(when::enabled(p)));
  CHECK(run.holds(when::side(p, Sign::equal, Side::east)));
  CHECK_FALSE(run.holds(when::side(p, Sign::equal, Side::west)));
  CHECK_FALSE(run.holds(when::side(p, Sign::equal, Side::none)));
  CHECK_FALSE(run.holds(when::side(p, Sign::not_equal, Side::east)));
  CHECK(run.holds(when::side(p, Sign::not_equal, Side::none)));
  port = {false, true, Side::east, Side::east, Side::none};
  CHECK_FALSE(run.holds(when::enabled(p)));
  CHECK(run.holds(when::side(p, Sign::equal, Side::none)));
}

TEST_CASE("Semantics 8 done") {
  Scene scene;
  scene.b.unordered();
  const StepId x = scene.b.save({scene.a});
  const StepId y = scene.b.save({scene.a});
  SceneRun run(scene);
  CHECK_FALSE(run.holds(when::done(x)));
  run.take(step(y));
  CHECK_FALSE(run.holds(when::done(x)));
  CHECK(run.holds(when::done(y)));
}

TEST_CASE("Semantics 8 not, and, or, implies") {
  const Scene scene;
  const SceneRun run(scene);
  const Condition yes = when::up(scene.a);
  const Condition no = when::off(scene.a);
  CHECK(run.holds(yes));
  CHECK_FALSE(run.holds(no));
  CHECK(run.holds(when::no(no)));
  CHECK_FALSE(run.holds(when::no(yes)));
  for (const bool p : {true, false}) {
    for (const bool q : {true, false}) {
      const Condition a = p ? yes : no;
      const Condition b = q ? yes : no;
      CHECK(run.holds(when::all({a, b})) == (p && q));
      CHECK(run.holds(when::any({a, b})) == (p || q));
      CHECK(run.holds(when::implies(a, b)) == (!p || q));
    }
  }
  CHECK_FALSE(run.holds(when::all({yes, yes, no})));
  CHECK(run.holds(when::any({no, no, yes})));
  CHECK(run.holds(when::always()));
  CHECK_FALSE(run.holds(when::never()));
}

// Semantics 3, Derived.
#include <functional>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// Two devices and one cable between facing ports, which is up and linked until a test spoils one thing.
struct Pair {
  ModelBuilder b;
  DeviceId a, d;
  CableId c;

  explicit Pair(Side at_a = Side::east, Side at_d = Side::west) {
    a = b.device("a", {.ports = {{.name = "p", .side = at_a}}});
    d = b.device("d", {.ports = {{.name = "p", .side = at_d}}});
    c = b.cable(b.port(a, "p"), b.port(d, "p"));
  }
};

}  // namespace

TEST_CASE("3.a a cable is up when it is plugged, unbroken, its devices up or held, its ports enabled in running") {
  const Pair pair;
  const auto up_after = [&](const std::function<void(State&)>& spoil) {
    Run run(pair.b);
    spoil(run.state());
    return run.cable_up(pair.c);
  };
  CHECK(up_after([](State&) {}));
  CHECK_FALSE(up_after([&](State& s) { s[pair.c].plugged = false; }));
  CHECK_FALSE(up_after([&](State& s) { s[pair.c].broken = true; }));
  for (const DeviceId d : {pair.a, pair.d}) {
    CAPTURE(d);
    const PortId p = pair.b.port(d, "p");
    CHECK(up_after([&](State& s) { s[d].power = Power::held; }));
    CHECK_FALSE(up_after([&](State& s) { s[d].power = Power::starting; }));
    CHECK_FALSE(up_after([&](State& s) { s[d].power = Power::off; }));
    CHECK_FALSE(up_after([&](State& s) { s[p].enabled = false; }));
    // Neither what is in startup nor a side matters to a cable.
    CHECK(up_after([&](State& s) { s[p].startup_enabled = false; }));
    CHECK(up_after([&](State& s) { s[p].side = s[p].operational_side = Side::none; }));
  }
}

TEST_CASE("3.b no link without the cable up") {
  Pair pair;
  Run run(pair.b);
  CHECK(run.linked(pair.c));
  run.state()[pair.c].broken = true;
  CHECK_FALSE(run.linked(pair.c));
}

TEST_CASE("3.b both devices must be up: a held one forms no link") {
  for (const bool first : {true, false}) {
    Pair pair;
    Run run(pair.b);
    run.state()[first ? pair.a : pair.d].power = Power::held;
    CHECK(run.cable_up(pair.c));
    CHECK_FALSE(run.linked(pair.c));
  }
}

TEST_CASE("3.b facing: opposite wants one east and one west, any wants neither to be none") {
  constexpr Side sides[] = {Side::none, Side::east, Side::west};
  for (const Side at_a : sides) {
    for (const Side at_d : sides) {
      CAPTURE(at_a);
      CAPTURE(at_d);
      Pair pair(at_a, at_d);
      const bool one_of_each = (at_a == Side::east && at_d == Side::west) || (at_a == Side::west && at_d == Side::east);
      pair.b.platform().facing = Facing::opposite;
      CHECK(Run(pair.b).linked(pair.c) == one_of_each);
      pair.b.platform().facing = Facing::any;
      CHECK(Run(pair.b).linked(pair.c) == (at_a != Side::none && at_d != Side::none));
    }
  }
}

TEST_CASE("3.b the operational sides count, neither running nor startup") {
  Pair pair(Side::none, Side::west);
  Run run(pair.b);
  PortState& p = run.state()[pair.b.port(pair.a, "p")];
  p.side = p.startup_side = Side::east;
  CHECK_FALSE(run.linked(pair.c));
  p = {.enabled = true, .startup_enabled = true, .operational_side = Side::east};
  CHECK(run.linked(pair.c));
}

TEST_CASE("3.b software: must-match wants equal tags, any does not care") {
  ModelBuilder b;
  const DeviceId a = b.device("a", {.software = "9.2"});
  const DeviceId d = b.device("d", {.software = "9.20"});
  const DeviceId e = b.device("e", {.software = "9.20"});
  const auto cables = b.chain({a, d, e});
  b.platform().software = Software::must_match;
  CHECK_FALSE(Run(b).linked(cables[0]));
  CHECK(Run(b).linked(cables[1]));
  b.platform().software = Software::any;
  CHECK(Run(b).linked(cables[0]));
}

namespace {

/// c joins x and y; at x a second port of `other_side` leads to `third`.
struct Fork {
  ModelBuilder b;
  DeviceId x, y, third;
  CableId c, other;

  /// `turned`: x is the second end of its cables.
  Fork(Side other_side, bool to_third, bool turned = false) {
    b.platform().side_leads_to = SideLeadsTo::one_neighbour;
    const auto two_easts = std::vector<PortIs>{{.name = "p", .side = Side::east}, {.name = "q", .side = other_side}};
    const auto two_wests = std::vector<PortIs>{{.name = "p", .side = Side::west}, {.name = "q", .side = Side::west}};
    x = b.device("x", {.ports = two_easts});
    y = b.device("y", {.ports = two_wests});
    third = b.device("third", {.ports = two_wests});
    const PortId far = b.port(to_third ? third : y, "q");
    c = turned ? b.cable(b.port(y, "p"), b.port(x, "p")) : b.cable(b.port(x, "p"), b.port(y, "p"));
    other = turned ? b.cable(far, b.port(x, "q")) : b.cable(b.port(x, "q"), far);
  }
};

}  // namespace

TEST_CASE("3.b of a side that leads to two neighbours no link forms") {
  for (const bool turned : {false, true}) {
    CAPTURE(turned);
    Fork fork(Side::east, true, turned);
    CHECK_FALSE(Run(fork.b).linked(fork.c));
    CHECK_FALSE(Run(fork.b).linked(fork.other));
    fork.b.platform().side_leads_to = SideLeadsTo::any;
    CHECK(Run(fork.b).linked(fork.c));
    CHECK(Run(fork.b).linked(fork.other));
  }
}

TEST_CASE("3.b a side may lead to one neighbour by two cables") {
  Fork fork(Side::east, false);
  CHECK(Run(fork.b).linked(fork.c));
  CHECK(Run(fork.b).linked(fork.other));
}

TEST_CASE("3.b the other side of the device may lead elsewhere") {
  Fork fork(Side::west, true);
  CHECK(Run(fork.b).linked(fork.c));
  CHECK(Run(fork.b).linked(fork.other));
}

TEST_CASE("3.b one-neighbour looks at cables that are up, linked or not") {
  Fork fork(Side::east, true);
  Run run(fork.b);
  SUBCASE("the third device is held: the cable is up") {
    run.state()[fork.third].power = Power::held;
    CHECK_FALSE(run.linked(fork.c));
  }
  SUBCASE("the third device's side is none: no link can form, and yet the side leads there") {
    run.state()[fork.b.port(fork.third, "q")].operational_side = Side::none;
    CHECK_FALSE(run.linked(fork.c));
  }
  SUBCASE("the third device is off: the cable is not up") {
    run.state()[fork.third].power = Power::off;
    CHECK(run.linked(fork.c));
  }
  SUBCASE("its port is disabled: the cable is not up") {
    run.state()[fork.b.port(fork.third, "q")].enabled = false;
    CHECK(run.linked(fork.c));
  }
  SUBCASE("the operational side of the other port counts") {
    run.state()[fork.b.port(fork.x, "q")].operational_side = Side::west;
    CHECK(run.linked(fork.c));
    run.state()[fork.b.port(fork.x, "q")].operational_side = Side::none;
    CHECK(run.linked(fork.c));
  }
}

TEST_CASE("3.b one-neighbour looks at both devices of a cable") {
  // y's west also leads to a third device; x's east leads to y alone.
  ModelBuilder b;
  b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  const DeviceId x = b.device("x", {.ports = {{.name = "p", .side = Side::east}}});
  const DeviceId y = b.device("y", {.ports = {{.name = "p", .side = Side::west}, {.name = "q", .side = Side::west}}});
  const DeviceId third = b.device("third", {.ports = {{.name = "p", .side = Side::east}}});
  const CableId straight = b.cable(b.port(x, "p"), b.port(y, "p"));
  const CableId turned = b.cable(b.port(y, "q"), b.port(third, "p"));
  CHECK_FALSE(Run(b).linked(straight));
  CHECK_FALSE(Run(b).linked(turned));
}

TEST_CASE("3.c together: all up and connected, directly or by way of others") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c", "d"});
  const auto cables = b.chain({d[0], d[2], d[1]});
  Run run(b);
  CHECK(run.together(d[0], d[2]));
  CHECK(run.together(d[0], d[1]));
  CHECK(run.holds(when::together({d[0], d[1], d[2]})));
  CHECK_FALSE(run.together(d[0], d[3]));
  CHECK_FALSE(run.holds(when::together({d[0], d[1], d[3]})));
  run.state()[d[2]].power = Power::held;  // the way leads through a device that is not up
  CHECK_FALSE(run.together(d[0], d[1]));
  run.state()[d[2]].power = Power::up;
  run.state()[cables[1]].broken = true;
  CHECK(run.together(d[0], d[2]));
  CHECK_FALSE(run.together(d[0], d[1]));
}

TEST_CASE("3.c together(d) is up(d)") {
  ModelBuilder b;
  const DeviceId a = b.device("a");
  Run run(b);
  for (const Power power : {Power::off, Power::starting, Power::up, Power::held}) {
    run.state()[a].power = power;
    CHECK(run.holds(when::together({a})) == (power == Power::up));
    CHECK(run.together(a, a) == (power == Power::up));
  }
}

TEST_CASE("3.d a class is a maximal set of devices that are together, told by its first device") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c", "d", "e", "f"});
  b.chain({d[4], d[1], d[3]});
  b.chain({d[5], d[2]});
  Run run(b);
  run.state()[d[0]].power = Power::held;
  const semantics::Derived derived = run.derived();
  CHECK_FALSE(derived.class_of[0]);
  CHECK(derived.class_of[1] == d[1]);
  CHECK(derived.class_of[3] == d[1]);
  CHECK(derived.class_of[4] == d[1]);
  CHECK(derived.class_of[2] == d[2]);
  CHECK(derived.class_of[5] == d[2]);
  // From the head, every member once, in the site's order.
  std::vector<DeviceId> members;
  for (DeviceId m = d[1]; m; m = derived.next_in_class[m.value]) members.push_back(m);
  CHECK(members == std::vector<DeviceId>{d[1], d[3], d[4]});
  CHECK(derived.heads_class(d[2]));
  CHECK_FALSE(derived.heads_class(d[5]));
  CHECK_FALSE(derived.heads_class(d[0]));
}

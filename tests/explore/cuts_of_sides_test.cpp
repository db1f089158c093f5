// docs/reductions.md, Seniority: steps that change the side of a port, and by that may cut off whoever follows over it.
#include <doctest/doctest.h>

#include "explore/reduce/cuts.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// yard-1 and yard-2, joined at the ports "p" of both. That of yard-1 has the sides that the test says.
struct Yard {
  ModelBuilder b;
  DeviceId yard_1, yard_2;
  PortId port;

  explicit Yard(Side side) : Yard(side, side, side) {}
  Yard(Side running, Side startup, Side operational) {
    yard_1 =
        b.device("yard-1",
                 {.ports = {{.name = "p", .side = running, .startup_side = startup, .operational_side = operational}}});
    yard_2 = b.device("yard-2", {.ports = {{.name = "p", .side = Side::east}}});
    port = b.port(yard_1, "p");
    b.cable(port, b.port(yard_2, "p"));
  }

  [[nodiscard]] bool may_follow() const {
    Run run(b);
    run.settle();
    return explore::Cuts(run.world()).may_follow(run.state());
  }
};

}  // namespace

TEST_CASE("a side set at once cuts where it replaces another") {
  Yard west(Side::west);
  west.b.set_side(west.port, Side::east);
  CHECK(west.may_follow());

  Yard cleared(Side::west);
  cleared.b.clear_side(cleared.port);
  CHECK(cleared.may_follow());

  Yard none(Side::none);
  none.b.set_side(none.port, Side::east);
  CHECK_FALSE(none.may_follow());

  Yard same(Side::west);
  same.b.set_side(same.port, Side::west);
  CHECK_FALSE(same.may_follow());
}

TEST_CASE("a side that takes on apply cuts where it is applied") {
  Yard y(Side::west);
  y.b.platform().side_takes = SideTakes::on_apply;
  y.b.set_side(y.port, Side::east);
  CHECK_FALSE(y.may_follow());
  SUBCASE("to the device") {
    y.b.apply({y.yard_1});
    CHECK(y.may_follow());
  }
  SUBCASE("to a stack") {
    y.b.apply_stack_of(y.yard_2);
    CHECK(y.may_follow());
  }
  SUBCASE("to another device alone") {
    y.b.apply({y.yard_2});
    CHECK_FALSE(y.may_follow());
  }
}

TEST_CASE("a side that waits to be applied cuts where another is in operation") {
  const auto waiting = [](Side running, Side operational) {
    Yard y(running, operational, operational);
    y.b.apply({y.yard_1});
    return y.may_follow();
  };
  CHECK(waiting(Side::east, Side::west));
  CHECK(waiting(Side::none, Side::west));
  CHECK_FALSE(waiting(Side::west, Side::west));
  CHECK_FALSE(waiting(Side::west, Side::none));
}

TEST_CASE("a side that a start or an apply brings may be replaced by one that a step gives") {
  const auto given_east = [](Side running, Side startup) {
    Yard y(running, startup, Side::none);
    y.b.platform().side_takes = SideTakes::on_apply;
    y.b.set_side(y.port, Side::east);
    y.b.apply({y.yard_1});
    return y.may_follow();
  };
  CHECK_FALSE(given_east(Side::none, Side::none));
  CHECK(given_east(Side::none, Side::west));
  CHECK_FALSE(given_east(Side::none, Side::east));
  CHECK(given_east(Side::west, Side::none));
  CHECK_FALSE(given_east(Side::east, Side::none));
}

TEST_CASE("sides that steps give may replace one another") {
  Yard y(Side::none);
  y.b.set_side(y.port, Side::west);
  CHECK_FALSE(y.may_follow());
  y.b.set_side(y.port, Side::east);
  CHECK(y.may_follow());
}

TEST_CASE("5.f the factory's side may be replaced, where a reset brings it") {
  Yard y(Side::none);
  y.b.platform().factory.side = Side::west;
  y.b.set_side(y.port, Side::east);
  CHECK_FALSE(y.may_follow());
  y.b.platform().settings_follow = SettingsFollow::number;
  CHECK(y.may_follow());
  y.b.platform().factory.side = Side::none;
  CHECK_FALSE(y.may_follow());
}

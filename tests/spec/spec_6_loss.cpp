// Semantics 6.8, tolerates-loss.
#include "semantics/loss.hpp"
#include "spec/trio.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

constexpr auto never_interrupted = [] { return false; };

semantics::Loss loss_of(const ModelBuilder& b, std::int64_t k) {
  Run run(b);
  run.settle();
  return semantics::find_fatal_loss(run.world(), run.state(), k, never_interrupted);
}

struct Ring {
  ModelBuilder b;
  std::vector<DeviceId> d;
  std::vector<CableId> cables;

  Ring() {
    d = b.devices({"a", "b", "c", "d"});
    cables = b.ring(d);
    b.stack(d[0], d);
    b.goal(goal_of(d));
  }
};

}  // namespace

TEST_CASE("6.8 a ring tolerates the loss of any cable, not of any two; the first fatal set in the site's order") {
  const Ring ring;
  CHECK_FALSE(loss_of(ring.b, 1).fatal);
  const auto two = loss_of(ring.b, 2).fatal;
  REQUIRE(two);
  CHECK(*two == std::vector<CableId>{ring.cables[0], ring.cables[1]});
}

TEST_CASE("6.8 only the devices of goal.stack count") {
  Ring ring;
  ring.b.goal(goal_of({ring.d[0], ring.d[1]}));
  const auto two = loss_of(ring.b, 2).fatal;
  REQUIRE(two);
  CHECK(*two == std::vector<CableId>{ring.cables[0], ring.cables[1]});
  // a and b stay together whichever two of the others break.
  CHECK(two->front() == ring.cables[0]);
  ring.b.goal(goal_of({ring.d[0]}));
  CHECK_FALSE(loss_of(ring.b, 4).fatal);
}

TEST_CASE("6.8 all of the cables where there are fewer than k; none where none is plugged") {
  Trio t;
  t.b.goal(goal_of(t.d));
  const auto all = loss_of(t.b, 9).fatal;
  REQUIRE(all);
  CHECK(*all == t.cables);
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.goal(goal_of(d));
  const auto none = loss_of(b, 1).fatal;
  REQUIRE(none);
  CHECK(none->empty());
}

TEST_CASE("6.8 exactly k break: a loss of two may be survived where a loss of one is not") {
  // y and z have two cables each to x's east side; z is only in the way. One-neighbour: both links need the other gone.
  ModelBuilder b;
  b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  const DeviceId x = b.device("x", {.ports = {{.name = "p", .side = Side::east}, {.name = "q", .side = Side::east}}});
  const DeviceId y = b.device("y");
  const DeviceId z = b.device("z");
  b.cable(b.port(x, "p"), b.west(y));
  b.cable(b.port(x, "q"), b.west(z));
  b.cable(b.east(y), b.east(z));
  b.stack(x, {x, y});
  b.goal(goal_of({x, y}));
  Run run(b);
  // Before any loss x leads to two neighbours, so that x and y are not together.
  CHECK_FALSE(run.together(x, y));
  // Each single loss: of x-y leaves x-z-y; of x-z leaves x-y; of y-z leaves neither.
  const auto one = semantics::find_fatal_loss(run.world(), run.state(), 1, never_interrupted).fatal;
  REQUIRE(one);
  CHECK(*one == std::vector<CableId>{CableId(2)});
}

TEST_CASE("6.8 every set of k is tried") {
  // Of four cables the middle two, a pair between a and b, are the only two whose loss matters.
  ModelBuilder b;
  const auto side = [](std::string name) { return PortIs{.name = std::move(name), .side = Side::east}; };
  const DeviceId x = b.device("a", {.ports = {side("p"), side("q")}});
  const DeviceId y = b.device("b", {.ports = {side("p"), side("q"), side("r"), side("s")}});
  const DeviceId z = b.device("c", {.ports = {side("r"), side("s")}});
  b.cable(b.port(y, "r"), b.port(z, "r"));
  const CableId first = b.cable(b.port(x, "p"), b.port(y, "p"));
  const CableId second = b.cable(b.port(x, "q"), b.port(y, "q"));
  b.cable(b.port(y, "s"), b.port(z, "s"));
  b.stack(x, {x, y, z});
  b.goal(goal_of({x, y}));
  const auto two = loss_of(b, 2).fatal;
  REQUIRE(two);
  CHECK(*two == std::vector<CableId>{first, second});
}

TEST_CASE("6.8 only cables that are plugged and unbroken break") {
  Ring ring;
  ring.b.cable(ring.b.east(ring.d[0]), ring.b.west(ring.d[2]), false);
  Run run(ring.b);
  run.settle();
  run.state()[ring.cables[0]].broken = true;
  CHECK(semantics::breakable(run.state()) == std::vector<CableId>(ring.cables.begin() + 1, ring.cables.end()));
  const auto one = semantics::find_fatal_loss(run.world(), run.state(), 1, never_interrupted).fatal;
  REQUIRE(one);
  CHECK(*one == std::vector<CableId>{ring.cables[1]});
}

TEST_CASE("6.8 right after, before any pass") {
  // Where orphans carry on, the parts would each be a stack again; they are apart all the same.
  Trio t;
  t.b.goal(goal_of(t.d));
  const auto one = loss_of(t.b, 1).fatal;
  REQUIRE(one);
  CHECK(*one == std::vector<CableId>{t.cables[0]});
}

TEST_CASE("6.8 a search that is interrupted tells so") {
  const Ring ring;
  Run run(ring.b);
  run.settle();
  int asked = 0;
  const auto loss = semantics::find_fatal_loss(run.world(), run.state(), 1, [&] { return ++asked > 2; });
  CHECK(loss.interrupted);
  CHECK_FALSE(loss.fatal);
}

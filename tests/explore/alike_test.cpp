// docs/reductions.md, Alike: for each condition of the definition a model that a swap maps to itself, and one on which
// that condition fails. The models are the smallest found by thinking; no source.
#include <doctest/doctest.h>

#include <functional>
#include <optional>

#include "explore/reduce/automorphism.hpp"
#include "explore/reduce/find_swaps.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using test::DeviceIs;
using test::ModelBuilder;
namespace when = test::when;

namespace {

/// Two devices with nothing between them, powered on in any order.
struct TwoLanes {
  TwoLanes() {
    b.unordered();
    a = b.device("a", {.on = false});
    c = b.device("c", {.on = false});
    on_a = b.power_on(a);
    on_c = b.power_on(c);
    b.goal(test::goal_of({a, c}));
  }

  ModelBuilder b;
  DeviceId a, c;
  StepId on_a, on_c;
};

/// Two devices that are cabled to one another in the same way.
struct Neighbours {
  explicit Neighbours(const DeviceIs& a_is, const DeviceIs& c_is) {
    b.unordered();
    a = b.device("a", a_is);
    c = b.device("c", c_is);
    b.cable(b.east(a), b.east(c));
    b.keep({a, c});
    b.goal(test::goal_of({a, c}));
  }
  Neighbours() : Neighbours({.on = false}, {.on = false}) {}

  ModelBuilder b;
  DeviceId a, c;
};

bool are_alike(const ModelBuilder& b, bool cold_start = false) {
  const Model model = b.model();
  const semantics::World world(model);
  return !explore::find_swaps(world, cold_start).empty();
}

/// What exchanging the first two devices of `model` is guessed to be, with something changed, maps the model to itself.
bool maps_to_itself(const Model& model, const std::function<void(explore::Swap&)>& change) {
  const semantics::World world(model);
  std::optional<explore::Swap> swap = explore::SwapGuesser(world).guess(DeviceId(0), DeviceId(1));
  REQUIRE(swap.has_value());
  change(*swap);
  return explore::Automorphisms(world, false).contain(*swap);
}

const auto as_guessed = [](explore::Swap&) {};

}  // namespace

TEST_CASE("two devices with nothing between them are alike, whatever their numbers and addresses") {
  CHECK(are_alike(TwoLanes().b));
}

TEST_CASE("a renaming that does not undo itself is no swap") {
  TwoLanes lanes;
  const DeviceId e = lanes.b.device("e", {.on = false});
  lanes.b.power_on(e);
  lanes.b.goal(test::goal_of({lanes.a, lanes.c, e}));
  const Model model = lanes.b.model();
  CHECK(maps_to_itself(model, as_guessed));
  CHECK_FALSE(maps_to_itself(model, [&](explore::Swap& swap) { swap.devices[1] = e; }));
  CHECK_FALSE(maps_to_itself(model, [](explore::Swap& swap) { swap.steps[0] = StepId(0); }));
  CHECK_FALSE(maps_to_itself(model, [](explore::Swap& swap) { swap.cables.emplace_back(7); }));
  // A port of the third stands for one of the first.
  CHECK_FALSE(maps_to_itself(model, [](explore::Swap& swap) {
    swap.ports = {PortId(4), PortId(3), PortId(2), PortId(1), PortId(0), PortId(5)};
  }));
  CHECK_FALSE(maps_to_itself(model, [](explore::Swap& swap) { swap.numbers.emplace_back(1, 7); }));
}

TEST_CASE("ports go with their devices, and cables with their ports") {
  TwoLanes lanes;
  const DeviceId hub = lanes.b.device("hub", {.ports = {{"p", Side::west}, {"q", Side::west}}});
  const PortId p = lanes.b.port(hub, "p");
  const PortId q = lanes.b.port(hub, "q");
  lanes.b.platform().election = {ElectionKey::tenure};
  SUBCASE("each to a port of its own") {
    lanes.b.cable(lanes.b.east(lanes.a), p);
    lanes.b.cable(lanes.b.east(lanes.c), q);
    CHECK(are_alike(lanes.b));
    CHECK_FALSE(maps_to_itself(lanes.b.model(), [](explore::Swap& swap) { std::swap(swap.ports[0], swap.ports[1]); }));
    CHECK_FALSE(maps_to_itself(lanes.b.model(), [](explore::Swap& swap) { swap.cables = {CableId(0), CableId(1)}; }));
  }
  SUBCASE("to different ports of their own") {
    lanes.b.cable(lanes.b.east(lanes.a), p);
    lanes.b.cable(lanes.b.west(lanes.c), q);
    CHECK_FALSE(are_alike(lanes.b));
  }
  SUBCASE("one of them is not plugged") {
    lanes.b.cable(lanes.b.east(lanes.a), p);
    lanes.b.cable(lanes.b.east(lanes.c), q, false);
    CHECK_FALSE(are_alike(lanes.b));
  }
}

TEST_CASE("what the site gives one of them it gives the other") {
  const auto alike = [](const DeviceIs& of_a, const DeviceIs& of_c) {
    ModelBuilder b;
    b.device("a", of_a);
    b.device("c", of_c);
    return are_alike(b);
  };
  CHECK(alike({}, {}));
  CHECK_FALSE(alike({}, {.on = false}));
  CHECK_FALSE(alike({}, {.priority = 6}));
  CHECK_FALSE(alike({}, {.startup_priority = 6}));
  CHECK_FALSE(alike({}, {.software = "2"}));
  CHECK_FALSE(alike({}, {.tenure = 1}));
  CHECK_FALSE(alike({}, {.ports = {{"w", Side::west}, {"e", Side::east, true, false}}}));
  // Each number stands for one other: 1 and 2 for one another, and 3 for itself.
  CHECK(alike({.number = 1, .next_number = 2}, {.number = 2, .next_number = 1}));
  CHECK_FALSE(alike({.number = 1, .next_number = 3}, {.number = 2, .next_number = 1}));
}

TEST_CASE("steps do the same to devices that stand for one another") {
  const auto alike = [](const auto& add) {
    TwoLanes lanes;
    add(lanes);
    return are_alike(lanes.b);
  };
  CHECK(alike([](TwoLanes& l) { l.b.set_priority(l.a, 6), l.b.set_priority(l.c, 6); }));
  CHECK_FALSE(alike([](TwoLanes& l) { l.b.set_priority(l.a, 6); }));
  CHECK_FALSE(alike([](TwoLanes& l) { l.b.set_priority(l.a, 6), l.b.set_priority(l.c, 7); }));
  CHECK(alike([](TwoLanes& l) { l.b.set_priority(l.a, 6, {.via = l.c}), l.b.set_priority(l.c, 6, {.via = l.a}); }));
  CHECK_FALSE(alike([](TwoLanes& l) { l.b.set_priority(l.a, 6, {.via = l.c}), l.b.set_priority(l.c, 6); }));
  CHECK(alike([](TwoLanes& l) { l.b.enable(l.b.east(l.a)), l.b.enable(l.b.east(l.c)); }));
  CHECK_FALSE(alike([](TwoLanes& l) { l.b.enable(l.b.east(l.a)), l.b.enable(l.b.west(l.c)); }));
  CHECK_FALSE(
      alike([](TwoLanes& l) { l.b.set_side(l.b.east(l.a), Side::east), l.b.set_side(l.b.east(l.c), Side::west); }));
  CHECK(alike([](TwoLanes& l) { l.b.save({l.c, l.a}); }));
  CHECK_FALSE(alike([](TwoLanes& l) { l.b.save({l.c}); }));
  CHECK(alike([](TwoLanes& l) { l.b.apply_stack_of(l.a), l.b.apply_stack_of(l.c); }));
  CHECK_FALSE(alike([](TwoLanes& l) { l.b.apply_stack_of(l.a), l.b.apply({l.c}); }));
}

TEST_CASE("numbers that are set stand for one another, in the platform's range or out of it") {
  const auto alike = [](std::int64_t of_a, std::int64_t of_c) {
    TwoLanes lanes;
    lanes.b.set_number(lanes.a, of_a);
    lanes.b.set_number(lanes.c, of_c);
    return are_alike(lanes.b);
  };
  CHECK(alike(5, 5));
  CHECK(alike(5, 6));
  CHECK(alike(2, 1));
  CHECK_FALSE(alike(2, 6));
  CHECK_FALSE(alike(5, 1000));
  CHECK(alike(1001, 1000));
}

TEST_CASE("conditions ask the same of devices that stand for one another") {
  const auto alike = [](const auto& condition) {
    TwoLanes lanes;
    lanes.b.await(condition(lanes));
    return are_alike(lanes.b);
  };
  CHECK(alike([](const TwoLanes& l) { return when::together({l.c, l.a}); }));
  CHECK_FALSE(alike([](const TwoLanes& l) { return when::up(l.a); }));
  CHECK_FALSE(alike([](const TwoLanes& l) { return when::together({l.a, l.a}); }));
  CHECK_FALSE(alike([](const TwoLanes& l) { return when::no(when::off(l.a)); }));
  CHECK_FALSE(alike([](const TwoLanes& l) { return when::done(l.on_a); }));
  CHECK_FALSE(alike([](const TwoLanes& l) { return when::enabled(l.b.east(l.a)); }));
}

TEST_CASE("of numbers that stand for one another it is asked which they are, not which is less") {
  const auto alike = [](Sign sign, std::int64_t of_a, std::int64_t of_c, std::optional<std::int64_t> both) {
    ModelBuilder b;
    b.unordered();
    const DeviceId a = b.device("a", {.number = both ? *both : std::int64_t{1}});
    const DeviceId c = b.device("c", {.number = both ? *both : std::int64_t{2}});
    b.await(when::number(a, sign, of_a));
    b.await(when::number(c, sign, of_c));
    return are_alike(b);
  };
  CHECK(alike(Sign::equal, 1, 2, {}));
  CHECK(alike(Sign::not_equal, 3, 3, {}));
  CHECK_FALSE(alike(Sign::equal, 1, 1, {}));
  CHECK_FALSE(alike(Sign::less, 3, 3, {}));
  CHECK(alike(Sign::less, 3, 3, 1));
  CHECK_FALSE(alike(Sign::less, 3, 4, 1));
}

TEST_CASE("steps wait for steps that stand for those that the others wait for") {
  TwoLanes lanes;
  SUBCASE("each for the other's") {
    lanes.b.save({lanes.a}, {.after = {lanes.on_c}});
    lanes.b.save({lanes.c}, {.after = {lanes.on_a}});
    CHECK(are_alike(lanes.b));
  }
  SUBCASE("one for both") {
    lanes.b.save({lanes.a}, {.after = {lanes.on_a, lanes.on_c}});
    lanes.b.save({lanes.c}, {.after = {lanes.on_c}});
    CHECK_FALSE(are_alike(lanes.b));
    CHECK_FALSE(maps_to_itself(lanes.b.model(), [&](explore::Swap& swap) {
      swap.steps = {lanes.on_c, lanes.on_a, StepId(3), StepId(2)};
    }));
  }
}

TEST_CASE("who is kept, and what is to be reached, stand for themselves") {
  TwoLanes lanes;
  SUBCASE("keep") {
    lanes.b.keep({lanes.a});
    CHECK_FALSE(are_alike(lanes.b));
    lanes.b.keep({lanes.a, lanes.c});
    CHECK(are_alike(lanes.b));
  }
  SUBCASE("goal.stack") {
    lanes.b.goal(test::goal_of({lanes.a}));
    CHECK_FALSE(are_alike(lanes.b));
  }
  SUBCASE("goal.primary") {
    lanes.b.goal(test::goal_of({lanes.a, lanes.c}, lanes.a));
    CHECK_FALSE(are_alike(lanes.b));
  }
  SUBCASE("goal.where") {
    Goal goal = test::goal_of({lanes.a, lanes.c});
    goal.where = when::up(lanes.a);
    lanes.b.goal(goal);
    CHECK_FALSE(are_alike(lanes.b));
  }
}

TEST_CASE("rank must not tell apart devices that may meet") {
  SUBCASE("by address") {
    CHECK_FALSE(are_alike(Neighbours().b));
  }
  SUBCASE("by address, when nobody of the two is senior") {
    Neighbours off;
    off.b.platform().election = {ElectionKey::tenure};
    CHECK(are_alike(off.b));
    CHECK_FALSE(are_alike(off.b, true));  // 6.a
    Neighbours on({}, {});
    on.b.platform().election = {ElectionKey::tenure};
    CHECK_FALSE(are_alike(on.b));
  }
  SUBCASE("by number") {
    Neighbours off;
    off.b.platform().election = {ElectionKey::tenure, ElectionKey::number};
    CHECK(are_alike(off.b));
    off.b.platform().election = {ElectionKey::number, ElectionKey::tenure};
    CHECK_FALSE(are_alike(off.b));
    Neighbours same({.on = false, .number = 1}, {.on = false, .number = 1});
    same.b.platform().election = {ElectionKey::number};
    CHECK_FALSE(are_alike(same.b));  // their addresses are come to
  }
  SUBCASE("nor others, which one of them outranks by address and not the other") {
    const auto alike = [](std::uint64_t address, std::int64_t priority) {
      ModelBuilder b;
      const DeviceId a = b.device("a", {.address = 1});
      const DeviceId c = b.device("c", {.address = 3});
      const DeviceId e = b.device("e", {.on = false, .priority = priority, .address = address});
      const DeviceId g = b.device("g", {.on = false, .priority = priority, .address = 9});
      b.cable(b.east(a), b.east(e));
      b.cable(b.east(c), b.east(g));
      return are_alike(b);
    };
    CHECK(alike(2, 5));        // a before e, and c before g
    CHECK_FALSE(alike(0, 5));  // e before a, and c before g
    CHECK(alike(0, 6));        // by priority
  }
}

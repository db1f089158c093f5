// docs/reductions.md, Alike: for conditions of the definition a small model on which swapping devices all the same,
// where that condition does not hold, gives another answer. The models are the smallest found by thinking; no source.
#include <doctest/doctest.h>

#include <functional>
#include <optional>

#include "explore/other_answer.hpp"
#include "explore/reduce/automorphism.hpp"
#include "explore/reduce/find_swaps.hpp"

using namespace cairn;
using test::DeviceIs;
using test::ModelBuilder;
namespace when = test::when;

namespace {

/// The swap of the first two devices, which is none that maps the model to itself, gives another answer than `length`
/// (nothing: there is no refutation), which is found with the true reduction.
void expect_naive_to_fail(
    const ModelBuilder& b, Property property, std::optional<std::size_t> length,
    const std::function<void(explore::Swap&)>& change = [](explore::Swap&) {}) {
  const Model model = b.model();
  const semantics::World world(model);
  std::optional<explore::Swap> swap = explore::SwapGuesser(world).guess(DeviceId(0), DeviceId(1));
  REQUIRE(swap.has_value());
  change(*swap);
  CHECK_FALSE(explore::Automorphisms(world, false).contain(*swap));
  CHECK(test::plain_search(model, property, [](State&) {}) == length);
  for (const Reductions& reductions : {Reductions{false, false, false, false, true}, Reductions::all()}) {
    const auto found = test::refutation(model, property, reductions);
    CHECK(found.has_value() == length.has_value());
    if (found && length) CHECK(found->size() == *length);
  }
  const explore::Exchange exchange(*swap);
  const auto naively = [&](State& s) {
    if (exchange.lowers(s)) exchange.apply(s);
  };
  CHECK(test::plain_search(model, property, naively) != length);
}

/// a and c lead themselves, and meet when a cable is plugged. Who loses and was looked at before is handled wrongly: so
/// it matters whether the one that was looked at is the one that loses.
struct Meeting {
  explicit Meeting(std::vector<ElectionKey> election, const DeviceIs& a_is, const DeviceIs& c_is) {
    b.platform().election = std::move(election);
    b.unordered();
    const DeviceId a = b.device("a", a_is);
    const DeviceId c = b.device("c", c_is);
    const CableId cable = b.cable(b.east(a), b.east(c), false);
    b.keep({a, c});
    b.goal(test::goal_of({a, c}));
    const StepId look_at_a = b.await(when::all({when::up(a), when::no(when::cable_up(cable))}));
    const StepId look_at_c = b.await(when::all({when::up(c), when::no(when::cable_up(cable))}));
    const StepId plug = b.plug(cable);
    const StepId lost_a = b.await(when::follower(a), {.after = {look_at_a, plug}});
    const StepId lost_c = b.await(when::follower(c), {.after = {look_at_c, plug}});
    b.power_on(a, {.after = {lost_a}});  // refused
    b.power_on(c, {.after = {lost_c}});
  }
  ModelBuilder b;
};

}  // namespace

TEST_CASE("addresses are compared") {
  expect_naive_to_fail(Meeting({}, {.address = 9}, {.address = 1}).b, Property::no_refusal, 5);
}

TEST_CASE("addresses are compared where none of two is senior") {
  expect_naive_to_fail(Meeting({ElectionKey::tenure}, {.address = 9}, {.address = 1}).b, Property::no_refusal, 5);
}

TEST_CASE("numbers are compared") {
  const Meeting meeting({ElectionKey::number}, {.number = 2}, {.number = 1});
  expect_naive_to_fail(meeting.b, Property::no_refusal, 5);
}

namespace {

/// Two devices with nothing between them, powered on in any order; and a third, of which a step is refused.
struct Lanes {
  Lanes() {
    b.unordered();
    a = b.device("a", {.on = false});
    c = b.device("c", {.on = false});
    other = b.device("other");
    on_a = b.power_on(a);
    on_c = b.power_on(c);
    b.goal(test::goal_of({a, c}));
  }
  void refuse_after(StepId step) { b.set_priority(other, 1000, {.after = {step}}); }

  ModelBuilder b;
  DeviceId a, c, other;
  StepId on_a, on_c;
};

}  // namespace

TEST_CASE("a condition names one of two") {
  Lanes lanes;
  lanes.refuse_after(lanes.b.await(when::up(lanes.a)));
  expect_naive_to_fail(lanes.b, Property::no_refusal, 4);
}

TEST_CASE("a condition asks which number is greater") {
  ModelBuilder b;
  b.unordered();
  const DeviceId a = b.device("a", {.number = 1});
  const DeviceId c = b.device("c", {.number = 1});
  b.set_number(a, 7);  // 7 stands for 6, and 6 for 7
  b.set_number(c, 6);
  const StepId seen_a = b.await(when::number(a, Sign::greater, 6));
  const StepId seen_c = b.await(when::number(c, Sign::greater, 7));
  b.power_on(a, {.after = {seen_a}});  // refused
  b.power_on(c, {.after = {seen_c}});
  expect_naive_to_fail(b, Property::no_refusal, 3);
}

TEST_CASE("a step waits for that of one of two") {
  Lanes lanes;
  lanes.refuse_after(lanes.on_a);
  expect_naive_to_fail(lanes.b, Property::no_refusal, 2, [&](explore::Swap& swap) {
    swap.steps[lanes.on_a.value] = lanes.on_c;
    swap.steps[lanes.on_c.value] = lanes.on_a;
  });
}

TEST_CASE("one of two is kept") {
  ModelBuilder b;
  b.unordered();
  const DeviceId a = b.device("a");
  const DeviceId c = b.device("c");
  b.keep({a});
  b.goal(test::goal_of({a, c}));
  const StepId seen_a = b.await(when::up(a));
  const StepId seen_c = b.await(when::up(c));
  b.restart(a, {.after = {seen_a}});
  b.restart(c, {.after = {seen_c}});
  expect_naive_to_fail(b, Property::members_stay, 2);
}

TEST_CASE("the goal names one of two as primary") {
  ModelBuilder b;
  b.platform().election = {ElectionKey::tenure};
  b.unordered();
  const DeviceId a = b.device("a", {.on = false});
  const DeviceId c = b.device("c", {.on = false});
  b.cable(b.east(a), b.east(c));
  b.keep({a, c});
  b.goal(test::goal_of({a, c}, a));
  b.power_on(a);
  b.power_on(c);
  expect_naive_to_fail(b, Property::reaches_goal, 4);
}

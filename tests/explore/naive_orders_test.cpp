// docs/reductions.md, Orders: for the points that its argument has to cover a small model on which a naive reduction
// gives another answer. The naive ones take an event alone, and leave all others out, where no other that may happen
// now handles the same device: a step or a start, of which they believe that faults do not matter to it, or a fault.
#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "explore/explore.hpp"
#include "explore/plain_search.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using test::Choose;
using test::ModelBuilder;
namespace when = test::when;

namespace {

std::vector<DeviceId> ends_of(const Model& model, CableId c) {
  return {model[model[c].a].device, model[model[c].b].device};
}

/// What a step handles by its verb, and no more; of a start or a crash the device, of a cable both ends.
std::vector<DeviceId> handled(const Model& model, const Event& event) {
  if (event.kind == Event::Kind::broke || event.kind == Event::Kind::mended) return ends_of(model, event.cable());
  if (event.kind != Event::Kind::step && event.kind != Event::Kind::omitted) return {event.device()};
  const Step& step = model[event.step()];
  switch (step.verb) {
    case Verb::plug:
    case Verb::unplug:
      return ends_of(model, step.cable);
    case Verb::enable:
    case Verb::disable:
    case Verb::set_side:
    case Verb::clear_side:
      return {model[step.port].device};
    case Verb::apply:
    case Verb::save:
      return step.devices;
    case Verb::await:
    case Verb::check:
      return {};
    default:
      return {step.device};
  }
}

bool share(const std::vector<DeviceId>& some, const std::vector<DeviceId>& others) {
  return std::ranges::any_of(some, [&](DeviceId d) { return std::ranges::find(others, d) != others.end(); });
}

bool is_fault(const Event& event) {
  return actor_of(event.kind) == Actor::fault;
}

/// Which events are taken alone.
enum class Naive : std::uint8_t { steps, faults };

Choose naively(const Model& model, Naive naive) {
  return [&model, naive](const State&, std::vector<Event>& events) {
    const bool faults = naive == Naive::faults;
    for (const Event& event : events) {
      const bool alone = is_fault(event) == faults && std::ranges::none_of(events, [&](const Event& other) {
                           return other != event && (faults || !is_fault(other)) &&
                                  share(handled(model, event), handled(model, other));
                         });
      if (!alone) continue;
      const Event chosen = event;
      events.assign(1, chosen);
      return;
    }
  };
}

std::optional<std::size_t> length_with(const Model& model, Property property, const Reductions& reductions) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  const auto refutation =
      explore::explore(world, model.procedure.faults, {{property, 0}}, guard, {.reductions = reductions})
          .answers.front()
          .refutation;
  return refutation ? std::optional(refutation->size()) : std::nullopt;
}

/// The shortest refutation has `length` events (nothing: there is none), also where orders are left out; not where they
/// are left out naively.
void expect_naive_to_fail(const ModelBuilder& b, Property property, std::optional<std::size_t> length,
                          Naive naive = Naive::steps) {
  const Model model = b.model();
  const auto nothing_forgotten = [](State&) {};
  CHECK(test::plain_search(model, property, nothing_forgotten) == length);
  CHECK(length_with(model, property, Reductions::none()) == length);
  Reductions orders = Reductions::none();
  orders.orders = true;
  CHECK(length_with(model, property, orders) == length);
  CHECK(length_with(model, property, Reductions::all()) == length);
  CHECK(test::plain_search(model, property, nothing_forgotten, naively(model, naive)) != length);
}

}  // namespace

TEST_CASE("a shortest refutation begins in the lane that breaks something, not in the first") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  const DeviceId off = b.device("off", {.on = false});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.unordered();
  b.set_priority(d[1], 3);
  b.set_priority(off, 3);  // refused: the naive reduction comes to it second
  expect_naive_to_fail(b, Property::no_refusal, 1);
}

TEST_CASE("a fault strikes before a step that has nothing to do with others") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.faults({.crashes = 1});
  b.set_priority(d[1], 3);  // refused while d1 starts
  expect_naive_to_fail(b, Property::no_refusal, 2);
}

TEST_CASE("faults share a budget: one that has nothing to do with others leaves none for them") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.faults({.crashes = 1});
  b.set_priority(d[1], 3);  // refused while d1 starts; d0 crashes as well
  expect_naive_to_fail(b, Property::no_refusal, 2, Naive::faults);
}

TEST_CASE("a cable that mends takes back what a step would have met") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  b.chain(d);
  b.stack(d[0], d);
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.faults({.cable_breaks = 1, .mends = true});
  b.check(when::together(d));
  expect_naive_to_fail(b, Property::reaches_goal, 2, Naive::faults);
}

TEST_CASE("a step that unplugs a cable leaves nothing to break, and one that plugs it does") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  const CableId cable = b.chain(d).front();
  b.stack(d[0], d);
  b.keep({d[0]});
  b.goal(test::goal_of(d));
  b.faults({.cable_breaks = 1});
  b.unplug(cable);
  b.plug(cable);
  expect_naive_to_fail(b, Property::reaches_goal, 3);
}

TEST_CASE("a step that is done can no longer be omitted") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.faults({.omissions = 1});
  b.power_off(d[1]);
  b.power_on(d[1]);  // refused where it is not off
  expect_naive_to_fail(b, Property::no_refusal, 2);
}

// With the ring closed first nothing is ever split. Opened first, it splits in the state that the event leaves; who is
// cut off restarts in the pass that follows, so that no settled state shows it.
TEST_CASE("4.6 properties look before the passes, where events of other lanes count") {
  ModelBuilder b;
  b.platform().orphans = Orphans::restart;
  const auto d = b.devices({"d0", "d1", "d2", "d3"});
  const auto cables = b.chain({d[0], d[1], d[2]});
  b.chain({d[3], d[0]});
  const CableId last = b.cable(b.east(d[2]), b.west(d[3]), false);
  b.stack(d[0], d);
  b.keep({d[0], d[1]});
  b.goal(test::goal_of({d[0]}));
  b.unordered();
  b.plug(last);
  b.unplug(cables.front());
  expect_naive_to_fail(b, Property::no_split, 1);
}

TEST_CASE("a check that fails ends the other lanes as well") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.unordered();
  b.set_priority(d[1], 3);
  b.check(when::never());  // at rest after one event; the naive reduction has had two by then
  expect_naive_to_fail(b, Property::reaches_goal, 1);
}

TEST_CASE("done() reads the order of steps of different lanes") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1"});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.unordered();
  b.check(when::no(when::done(StepId(1))));
  b.set_priority(d[1], 3);
  expect_naive_to_fail(b, Property::reaches_goal, 2);
}

TEST_CASE("a condition reads links that a step of another lane takes") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1", "d2"});
  const CableId cable = b.cable(b.east(d[1]), b.west(d[2]));
  b.stack(d[1], {d[1], d[2]});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.unordered();
  b.check(when::linked(cable));
  b.unplug(cable);
  expect_naive_to_fail(b, Property::reaches_goal, 2);
}

TEST_CASE("a step reaches its device over links that a step of another lane takes") {
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1", "d2", "d3"});
  const auto cables = b.chain({d[1], d[2], d[3]});
  b.stack(d[1], {d[1], d[2], d[3]});
  b.keep({d[0]});
  b.goal(test::goal_of({d[0]}));
  b.unordered();
  b.set_priority(d[3], 3, {.via = d[1]});
  b.unplug(cables[0]);
  expect_naive_to_fail(b, Property::no_refusal, 2);
}

TEST_CASE("who of two came up first is asked when they meet") {
  ModelBuilder b;
  b.platform().election = {ElectionKey::priority, ElectionKey::tenure};
  const DeviceId d0 = b.device("d0", {.on = false});
  const DeviceId d1 = b.device("d1", {.on = false});
  const CableId cable = b.cable(b.east(d0), b.west(d1), false);
  b.keep({d0});
  b.goal(test::goal_of({d0, d1}));
  b.unordered();
  const StepId first = b.power_on(d0);
  const StepId second = b.power_on(d1);
  const StepId both = b.await(when::all({when::up(d0), when::up(d1)}), {.after = {first, second}});
  b.plug(cable, {.after = {both}});
  // Where d1 came up first, d0 loses the contest and restarts. The naive reduction always has d0 start first.
  expect_naive_to_fail(b, Property::primary_stays, 6);
}

// Several threads find what one finds, also where a question is answered in the middle of a layer.
#include <doctest/doctest.h>

#include "explore/explore.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

explore::Exploration explored(const Model& model, const std::vector<AskedProperty>& asked, unsigned jobs) {
  const semantics::World world(model);
  return explore::explore(world, model.procedure.faults, asked, explore::Guard({}, {}), {.jobs = jobs, .stretch = 1});
}

void check_same(const Model& model, const std::vector<AskedProperty>& asked) {
  const explore::Exploration alone = explored(model, asked, 1);
  for (const unsigned jobs : {2U, 5U}) {
    CAPTURE(jobs);
    const explore::Exploration together = explored(model, asked, jobs);
    CHECK(together.explored == alone.explored);
    CHECK(together.ties == alone.ties);
    CHECK(together.seen.rank_decided_anything() == alone.seen.rank_decided_anything());
    CHECK(together.a_run_completed == alone.a_run_completed);
    CHECK(together.a_kept_device_led == alone.a_kept_device_led);
    CHECK(together.endless == alone.endless);
    CHECK(together.every_state_visited == alone.every_state_visited);
    REQUIRE(together.answers.size() == alone.answers.size());
    for (std::size_t i = 0; i < alone.answers.size(); ++i) {
      CHECK(together.answers[i].refutation == alone.answers[i].refutation);
    }
  }
}

}  // namespace

TEST_CASE(
    "once a cold start is refuted, those that follow in the same layer are not looked at, nor what decides them") {
  ModelBuilder b;
  const DeviceId d = b.device("yard-1", {.priority = 2});
  const DeviceId e = b.device("yard-2", {.priority = 3});
  const DeviceId f = b.device("yard-3", {.priority = 1});
  const std::vector<DeviceId> all{d, e, f};
  b.chain(all);
  b.stack(d, all);
  b.goal({all, d, false, {}, {}});
  b.unordered();
  // Saved before it is set, yard-1 loses to yard-2; set before it is saved, both are of one priority, and the address
  // decides, which no site file states.
  b.save({d});
  b.set_priority(d, 3);
  b.save({f});
  b.set_priority(f, 0);
  const Model model = b.model();
  const std::vector<AskedProperty> asked{{Property::survives_cold_start, 0}, {Property::no_split, 0}};
  const explore::Exploration alone = explored(model, asked, 1);
  CHECK(alone.answers[0].refutation.has_value());
  CHECK_FALSE(alone.answers[1].refutation.has_value());
  CHECK(alone.ties.empty());
  check_same(model, asked);
}

TEST_CASE("several properties broken by one event are refuted alike") {
  ModelBuilder b;
  const std::vector<DeviceId> yard = b.devices({"yard-1", "yard-2", "yard-3", "yard-4"});
  const std::vector<CableId> cables = b.chain(yard);
  b.stack(yard[0], yard);
  b.goal({yard, {}, false, {}, {}});
  b.unordered();
  for (const DeviceId d : yard) b.save({d});
  b.unplug(cables[1]);
  b.restart(yard[2]);
  b.faults({.cable_breaks = 1, .crashes = 1});
  std::vector<AskedProperty> asked;
  for (int i = 0; i < property_count; ++i) {
    const auto property = static_cast<Property>(i);
    if (!speaks_of_goal(property)) asked.push_back({property, 0});
  }
  check_same(b.model(), asked);
}

TEST_CASE("losses to tolerate stay pending alike") {
  ModelBuilder b;
  const std::vector<DeviceId> yard = b.devices({"yard-1", "yard-2", "yard-3"});
  const std::vector<CableId> ring = b.ring(yard);
  b.stack(yard[0], yard);
  b.goal({yard, {}, false, {}, {}});
  b.unordered();
  for (const DeviceId d : yard) b.save({d});
  for (const DeviceId d : yard) b.set_priority(d, 7);
  check_same(b.model(), {{Property::tolerates_loss, 2}, {Property::reaches_goal, 0}});
  b.unplug(ring[0]);
  check_same(b.model(), {{Property::tolerates_loss, 1}, {Property::tolerates_loss, 2}, {Property::reaches_goal, 0}});
}

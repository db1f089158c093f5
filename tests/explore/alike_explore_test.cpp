// docs/reductions.md, Alike: what an exploration finds in which devices alike count once. The numbers of states are
// counted by hand.
#include <doctest/doctest.h>

#include <vector>

#include "explore/explore.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using test::ModelBuilder;
namespace when = test::when;

namespace {

Model three_lanes() {
  ModelBuilder b;
  b.unordered();
  for (const char* name : {"a", "c", "e"}) {
    const DeviceId d = b.device(name, {.on = false});
    const StepId on = b.power_on(d);
    b.await(when::up(d), {.after = {on}});
  }
  return b.model();
}

explore::Exploration explored(const Model& model, const Reductions& reductions) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  return explore::explore(world, model.procedure.faults, {}, guard, {.reductions = reductions});
}

Reductions alike_alone() {
  Reductions reductions = Reductions::none();
  reductions.alike = true;
  return reductions;
}

}  // namespace

TEST_CASE("of lanes alike it counts how many are how far, not which") {
  const Model model = three_lanes();
  Reductions reductions = Reductions::none();
  reductions.seniority = true;
  CHECK(explored(model, reductions).explored == 4 * 4 * 4);  // off, starting, up, seen to be up
  reductions.alike = true;
  const explore::Exploration all = explored(model, reductions);
  CHECK(all.explored == 4 * 5 * 6 / 6);  // multisets of 3 out of 4
  CHECK(all.leaves_states_out());
  CHECK(all.savings.by_alike > 0);
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) CHECK(all.seen.happened(StepId(i)));
  for (const std::size_t await : {1U, 3U, 5U}) CHECK(all.seen.waited(StepId(await)));
}

// Whoever checks second ends the procedure: of the two pairs one is joined in each run, and always the same in the
// states that are kept.
TEST_CASE("what was seen of one is told of all that stand for it") {
  ModelBuilder b;
  const auto d = b.devices({"a", "c", "e", "g"});
  b.unordered();
  for (const std::size_t pair : {0U, 2U}) {
    const StepId other(pair == 0 ? 3U : 0U);
    const StepId first = b.check(when::no(when::done(other)));
    const StepId plug = b.plug(b.cable(b.east(d[pair]), b.west(d[pair + 1]), false), {.after = {first}});
    b.await(when::follower(d[pair + 1]), {.after = {plug}});
  }
  const Model model = b.model();
  const explore::Exploration whole = explored(model, Reductions::none());
  const explore::Exploration alike = explored(model, alike_alone());
  REQUIRE(alike.leaves_states_out());
  CHECK(alike.explored < whole.explored);
  CHECK(whole.ties.size() == 2);
  CHECK(alike.ties == whole.ties);
  for (const std::size_t await : {2U, 5U}) {
    CHECK(whole.seen.waited(StepId(await)));
    CHECK(alike.seen.waited(StepId(await)));
  }
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) {
    CHECK(alike.seen.happened(StepId(i)) == whole.seen.happened(StepId(i)));
    CHECK(alike.seen.failed(StepId(i)) == whole.seen.failed(StepId(i)));
  }
}

TEST_CASE("where no two are alike the set of states is as closed as ever") {
  ModelBuilder b;
  b.keep({b.device("a")});
  b.device("c");
  CHECK_FALSE(explored(b.model(), alike_alone()).leaves_states_out());
}

TEST_CASE("a run without end that goes round with other devices in each other's places is told by all of them") {
  ModelBuilder b;  // that of docs/semantics-questions.md, 2, with both neighbours new
  b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  b.platform().orphans = Orphans::restart;
  b.platform().election = {ElectionKey::priority, ElectionKey::tenure};
  b.unordered();
  const DeviceId d =
      b.device("d", {.priority = 9, .ports = {{.name = "p", .side = Side::west}, {.name = "q", .side = Side::west}}});
  const DeviceId e = b.device("e", {.on = false});
  const DeviceId f = b.device("f", {.on = false});
  b.cable(b.east(e), b.port(d, "p"));
  b.cable(b.east(f), b.port(d, "q"));
  b.power_on(e);
  b.power_on(f);
  const Model model = b.model();
  const explore::Exploration whole = explored(model, Reductions::none());
  const explore::Exploration alike = explored(model, alike_alone());
  REQUIRE(alike.leaves_states_out());
  CHECK(alike.explored < whole.explored);
  CHECK(whole.endless == std::vector{e, f});
  CHECK(alike.endless == whole.endless);
}

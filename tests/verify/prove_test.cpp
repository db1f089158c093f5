#include "cairn/prove.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <string>

#include "cairn/load.hpp"
#include "support/model_builder.hpp"
#include "support/second_neighbour.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

ProveOptions asking(AskedProperty asked) {
  ProveOptions options;
  options.properties = {asked};
  return options;
}

Model ring_of_three() {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2", "yard-3"});
  b.ring(yard);
  b.stack(yard[0], yard);
  b.goal({yard, {}, false, {}, {}});
  Model model = b.model();
  model.procedure.properties = {{Property::no_split, 0}, {Property::reaches_goal, 0}};
  return model;
}

}  // namespace

TEST_CASE("the procedure's own properties and faults are asked, in its order") {
  Model model = ring_of_three();
  model.procedure.faults = {.cable_breaks = 1};
  const Report report = prove(model).value();
  CHECK(report.faults == model.procedure.faults);
  REQUIRE(report.properties.size() == 2);
  CHECK(report.properties[0].asked.property == Property::no_split);
  CHECK(report.properties[1].asked.property == Property::reaches_goal);
  CHECK(report.verdict() == Verdict::proved);
}

TEST_CASE("options take the place of the procedure's own question, one by one") {
  Model model = ring_of_three();
  model.procedure.faults = {.crashes = 0, .mends = true};
  ProveOptions options = asking({Property::no_split, 0});
  options.cable_breaks = 2;
  const Report report = prove(model, options).value();
  CHECK(report.faults == FaultBudget{.cable_breaks = 2, .mends = true});
  CHECK(report.verdict() == Verdict::refuted);  // two breaks cut a ring
  CHECK(report.properties.front().events.size() == 2);
}

TEST_CASE("6 properties of the goal and of the end are asked without faults") {
  Model model = ring_of_three();
  model.procedure.faults = {.cable_breaks = 3, .crashes = 3};
  CHECK(prove(model, asking({Property::reaches_goal, 0})).value().verdict() == Verdict::proved);
  CHECK(prove(model, asking({Property::survives_cold_start, 0})).value().verdict() == Verdict::proved);
  CHECK(prove(model, asking({Property::tolerates_loss, 1})).value().verdict() == Verdict::proved);
  CHECK(prove(model, asking({Property::tolerates_loss, 2})).value().verdict() == Verdict::refuted);
}

TEST_CASE("a question that the model cannot answer is an error") {
  Model model = ring_of_three();
  CHECK_FALSE(prove(model, asking({Property::tolerates_loss, 0})).ok());
  model.procedure.goal.reset();
  CHECK_FALSE(prove(model, asking({Property::reaches_goal, 0})).ok());
  CHECK(prove(model, asking({Property::no_clash, 0})).ok());
  model.procedure.keep.clear();
  CHECK_FALSE(prove(model, asking({Property::members_stay, 0})).ok());
  CHECK(prove(model, asking({Property::no_clash, 0})).ok());
}

TEST_CASE("what came from factory values is told per device") {
  Model model = ring_of_three();
  for (Device& device : model.site.devices) device.number_stated = device.priority_stated = true;
  for (Port& port : model.site.ports) port.enabled_stated = port.side_stated = true;
  CHECK(prove(model).value().rests_on.factory.empty());
  model.site.devices[1].priority_stated = false;
  model.site.ports[0].side_stated = false;
  const auto factory = prove(model).value().rests_on.factory;
  REQUIRE(factory.size() == 2);
  CHECK(factory[0].device == DeviceId(0));
  CHECK(factory[0].side == std::vector{PortId(0)});
  CHECK(factory[1].device == DeviceId(1));
  CHECK(factory[1].priority);
  CHECK_FALSE(factory[1].number);
}

// With constraints alone the seven properties of this procedure take far longer than that each.
TEST_CASE("the time of the call is that of all properties together") {
  const auto model = load_procedure(CAIRN_SOURCE_DIR "/models/procedures/two-technicians.yaml", DiskFiles());
  REQUIRE(model.ok());
  ProveOptions options;
  options.engine = Engine::solver;
  options.limits.seconds = 1;
  const auto start = std::chrono::steady_clock::now();
  const Report report = prove(model.value(), options).value();
  const std::chrono::duration<double> elapsed = std::chrono::steady_clock::now() - start;
  CHECK(elapsed.count() < static_cast<double>(report.properties.size()));
  const PropertyVerdict& last = report.properties.back();
  CHECK(last.verdict == Verdict::undecided);
  CHECK(last.reason == Reason::time);
}

// docs/semantics-questions.md, 2: e and f restart one another for ever.
TEST_CASE("5.k where a run need not end, nothing is claimed but what is refuted") {
  ProveOptions options;
  options.properties = {{Property::no_split, 0}, {Property::no_clash, 0}};
  const Report report = prove(SecondNeighbour(Orphans::restart).b.model(), options).value();
  CHECK(report.contradicted());
  CHECK(report.properties[0].verdict == Verdict::refuted);
  CHECK(report.properties[1].verdict == Verdict::undecided);
  CHECK(report.properties[1].reason == Reason::contradiction);
  CHECK(report.properties[1].contradiction.find("e and f restart one another") != std::string::npos);
}

// The contest of the two that are joined is over before the search is given up; those that follow are not asked for it
// any more, and where orders are left out they never see it.
TEST_CASE("what decided a contest is told although the search that saw it was given up") {
  ModelBuilder b;
  const auto joined = b.devices({"yard-1", "yard-2"});
  b.keep(joined);
  b.unordered();
  b.plug(b.cable(b.east(joined[0]), b.west(joined[1]), false));
  for (const char* name : {"shed-1", "shed-2", "shed-3"}) b.power_on(b.device(name, {.on = false}));
  const Model model = b.model();
  ProveOptions options;
  options.engine = Engine::explore;
  options.properties = {{Property::primary_stays, 0}, {Property::no_clash, 0}};
  options.stretch = 1;  // the limit is looked at after each state
  const Report whole = prove(model, options).value();
  REQUIRE(whole.rests_on.ties.size() == 1);
  options.confirm_limit = options.forgetting_limit = 12;
  const Report given_up = prove(model, options).value();
  CHECK(given_up.properties[0].verdict == Verdict::refuted);
  CHECK(given_up.properties[1].verdict == Verdict::proved);
  CHECK(given_up.properties[1].settled.reduced);
  CHECK(given_up.rests_on.ties == whole.rests_on.ties);
}

TEST_CASE("a proof from a set in which devices alike count once is not evaluated again: it is not closed") {
  ModelBuilder b;
  b.unordered();
  for (const char* name : {"shed-1", "shed-2", "shed-3", "shed-4"}) b.power_on(b.device(name, {.on = false}));
  ProveOptions options;
  options.engine = Engine::explore;
  options.properties = {{Property::no_clash, 0}};
  options.stretch = 1;  // the limit is looked at after each state
  const auto settled = [&] { return prove(b.model(), options).value().properties.front(); };
  options.confirm_limit = settled().explored - 1;
  const PropertyVerdict reduced = settled();
  CHECK(reduced.settled.reduced);
  CHECK(reduced.settled.confirmed);
  options.forgetting_limit = 0;
  options.reductions.orders = false;
  const PropertyVerdict alike = settled();
  CHECK(alike.verdict == Verdict::proved);
  CHECK(alike.settled.reduced);
  CHECK(alike.explored < reduced.explored);
  CHECK_FALSE(alike.settled.confirmed);
}

TEST_CASE("a proof from a reduced set is evaluated again, up to as many states as the call allows") {
  ModelBuilder b;
  b.platform().election = {ElectionKey::tenure};
  std::vector<DeviceId> yard;
  for (int i = 1; i <= 9; ++i) yard.push_back(b.device("yard-" + std::to_string(i), {.tenure = 10 - i}));
  b.keep({yard.front()});
  b.faults({.crashes = 3});
  ProveOptions options;
  options.engine = Engine::explore;
  options.properties = {{Property::no_clash, 0}};
  const auto settled = [&] { return prove(b.model(), options).value().properties.front(); };
  const PropertyVerdict whole = settled();
  REQUIRE(whole.verdict == Verdict::proved);
  CHECK_FALSE(whole.settled.reduced);
  CHECK(whole.settled.confirmed);
  options.confirm_limit = 0;
  const PropertyVerdict reduced = settled();
  CHECK(reduced.settled.reduced);
  CHECK_FALSE(reduced.settled.confirmed);
  REQUIRE(reduced.explored * 2 < whole.explored);
  options.confirm_limit = reduced.explored;
  const PropertyVerdict confirmed = settled();
  CHECK(confirmed.verdict == Verdict::proved);
  CHECK(confirmed.settled.reduced);
  CHECK(confirmed.settled.confirmed);
  CHECK_FALSE(confirmed.settled.unclear);
  options.confirm_limit = reduced.explored - 1;
  CHECK_FALSE(settled().settled.confirmed);
  SUBCASE("but not where orders were left out: those sets are not closed") {
    options.confirm_limit = reduced.explored;
    options.forgetting_limit = 0;
    const PropertyVerdict of_orders = settled();
    CHECK(of_orders.verdict == Verdict::proved);
    CHECK(of_orders.settled.reduced);
    CHECK_FALSE(of_orders.settled.confirmed);
  }
  SUBCASE("but where no devices are alike, that they might have counted once changes nothing") {
    options.confirm_limit = reduced.explored;
    options.forgetting_limit = 0;
    options.reductions.orders = false;
    CHECK(settled().settled.confirmed);
  }
}

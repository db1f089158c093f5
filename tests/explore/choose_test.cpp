// Which of the shortest refutations is told.
#include <doctest/doctest.h>

#include "cairn/prove.hpp"
#include "support/engines.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

Trace refutation_of(const Model& model, Property property) {
  ProveOptions options = test::exploring();
  options.properties = {{property, property == Property::tolerates_loss ? 1 : 0}};
  const Result<Report> report = prove(model, options);
  REQUIRE(report);
  REQUIRE(report.value().verdict() == Verdict::refuted);
  return report.value().properties.front().events;
}

constexpr Event step(std::uint32_t place) {
  return {Event::Kind::step, place};
}
constexpr Event started(std::uint32_t place) {
  return {Event::Kind::started, place};
}

}  // namespace

TEST_CASE("of two steps that break the property alike, the earlier in the file is told") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  b.unordered();
  b.power_on(yard[1]);
  b.power_on(yard[0]);
  CHECK(refutation_of(b.model(), Property::no_refusal) == Trace{step(0)});
}

TEST_CASE("a refutation without faults comes before one with a fault of the same length") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  const auto cables = b.chain(yard);
  b.stack(yard[0], yard);
  b.unplug(cables[0]);
  b.faults({.cable_breaks = 1, .crashes = 1});
  CHECK(refutation_of(b.model(), Property::no_split) == Trace{step(0)});
}

TEST_CASE("then the one in which the actors take turns least often is told") {
  ModelBuilder b;
  DeviceIs off;
  off.on = false;
  const DeviceId a = b.device("gate-1", off);
  const DeviceId c = b.device("gate-2", off);
  const DeviceId d = b.device("gate-3");
  b.unordered();
  b.power_on(a);
  b.power_on(c);
  b.keep({d});
  b.goal({{a, c}, {}, false, {}, {}});  // missed: nothing joins them
  CHECK(refutation_of(b.model(), Property::reaches_goal) == Trace{step(0), step(1), started(0), started(1)});
}

TEST_CASE("of the losses that take the goal apart, the first in the site's order is told") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2", "yard-3"});
  b.chain(yard);
  b.stack(yard[0], yard);
  b.goal({yard, {}, false, {}, {}});
  CHECK(refutation_of(b.model(), Property::tolerates_loss) == Trace{{Event::Kind::broke, 0}});
}

TEST_CASE("where no cable is plugged at the end, the loss is of none") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  const auto cables = b.chain(yard);
  b.stack(yard[0], yard);
  b.unplug(cables[0]);
  b.goal({yard, {}, false, {}, {}});
  CHECK(refutation_of(b.model(), Property::tolerates_loss) == Trace{step(0)});
}

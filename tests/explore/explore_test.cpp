#include "explore/explore.hpp"

#include <doctest/doctest.h>

#include "cairn/prove.hpp"
#include "explore/quayside.hpp"
#include "support/engines.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

struct Expected {
  int devices;
  FaultBudget faults;
  std::uint64_t states;
  std::size_t no_split;       ///< length of the shortest refutation; 0 where it is proved
  std::size_t primary_stays;  ///< the same
};

PropertyVerdict ask(const Model& model, Property property, std::int64_t k = 0) {
  ProveOptions options = test::exploring();
  options.properties = {{property, k}};
  const Result<Report> report = prove(model, options);
  REQUIRE(report);
  return report.value().properties.front();
}

/// Counts what an exploration lets it see.
class Counter final : public explore::Observer {
 public:
  void open(const State&, const semantics::Derived&, const std::vector<Event>& events) override {
    ++states;
    offered += events.size();
  }
  void taken(const State&, const Event&, Refusal, const State&) override { ++taken_events; }

  std::size_t states = 0;
  std::size_t offered = 0;
  std::size_t taken_events = 0;
};

}  // namespace

TEST_CASE("the states of a growing chain are those of the plain reference (bench/reference)") {
  const Expected table[] = {
      {2, {}, 20, 0, 0},
      {4, {.cable_breaks = 1}, 108, 1, 0},
      {8, {.cable_breaks = 1}, 216, 1, 0},
      {16, {.cable_breaks = 1}, 432, 1, 0},
      {8, {.cable_breaks = 2}, 881, 1, 0},
      {16, {.cable_breaks = 2}, 3477, 1, 0},
      {4, {.crashes = 1}, 473, 1, 2},
      {6, {.crashes = 1}, 2792, 1, 2},
      {8, {.omissions = 1}, 75, 0, 0},
      {8, {.late_starts = 1}, 38, 0, 0},
  };
  for (const Expected& row : table) {
    CAPTURE(row.devices);
    CAPTURE(row.states);
    Model model = append_to_chain(row.devices);
    model.procedure.faults = row.faults;
    ProveOptions options = test::exploring();
    options.properties = {{Property::no_split, 0}, {Property::primary_stays, 0}, {Property::no_clash, 0}};
    const Result<Report> report = prove(model, options);
    REQUIRE(report);
    const auto& verdicts = report.value().properties;
    CHECK(verdicts[0].events.size() == row.no_split);
    CHECK(verdicts[1].events.size() == row.primary_stays);
    CHECK(verdicts[2].verdict == Verdict::proved);
    for (const PropertyVerdict& verdict : verdicts) CHECK(verdict.explored == row.states);
  }
}

TEST_CASE("6.f the exploration ends as soon as everything that was asked is refuted") {
  Model model = append_to_chain(8);
  model.procedure.faults = {.crashes = 1};
  const PropertyVerdict verdict = ask(model, Property::no_split);
  CHECK(verdict.verdict == Verdict::refuted);
  CHECK(verdict.explored < 50);
}

TEST_CASE("4.6 what the initial state breaks is refuted by no event") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  b.stack(yard[0], yard);  // and no cable joins them
  const PropertyVerdict verdict = ask(b.model(), Property::no_split);
  CHECK(verdict.verdict == Verdict::refuted);
  CHECK(verdict.events.empty());
}

TEST_CASE("6.e a proof that holds of nothing says so") {
  ModelBuilder b;
  DeviceIs off;
  off.on = false;
  const DeviceId gate = b.device("gate-1", off);
  const DeviceId shed = b.device("shed-1");
  b.goal({{shed}, {}, false, {}, {}});

  SUBCASE("6.2 where no device of keep ever leads") {
    b.keep({gate});
    CHECK_FALSE(ask(b.model(), Property::primary_stays).vacuous.empty());
    b.keep({shed});
    CHECK(ask(b.model(), Property::primary_stays).vacuous.empty());
  }
  SUBCASE("6.5 without a step") {
    CHECK_FALSE(ask(b.model(), Property::no_refusal).vacuous.empty());
    b.power_on(gate);
    CHECK(ask(b.model(), Property::no_refusal).vacuous.empty());
  }
  SUBCASE("6.7 and 6.8 without a complete state at rest") {
    CHECK(ask(b.model(), Property::survives_cold_start).vacuous.empty());
    CHECK(ask(b.model(), Property::tolerates_loss, 1).vacuous.empty());
    b.await(when::never());
    CHECK_FALSE(ask(b.model(), Property::survives_cold_start).vacuous.empty());
    CHECK_FALSE(ask(b.model(), Property::tolerates_loss, 1).vacuous.empty());
  }
}

TEST_CASE("an observer sees every state once and every event that may happen in it") {
  const Model model = append_to_chain(4);
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  Counter counter;
  const explore::Exploration all =
      explore::explore(world, {.cable_breaks = 1}, {{Property::no_split, 0}}, guard, {.observer = &counter});
  CHECK(all.answers.front().refutation);
  CHECK(counter.states == all.explored);
  CHECK(counter.states == 108);
  CHECK(counter.taken_events == counter.offered);
}

TEST_CASE("ties that the site does not decide are told") {
  ModelBuilder b;
  b.platform().election = {ElectionKey::tenure};
  const auto yard = b.devices({"yard-1", "yard-2"});
  const auto cable = b.cable(b.east(yard[0]), b.west(yard[1]), false);
  b.plug(cable);
  b.keep(yard);
  Model model = b.model();
  ProveOptions options = test::exploring();
  options.properties = {{Property::primary_stays, 0}};
  const auto ties_of = [&] { return prove(model, options).value().rests_on.ties; };

  SUBCASE("neither tenure nor address is stated") {
    const UnstatedTie by_address{UnstatedTie::Key::address, yard[0], yard[1]};
    const UnstatedTie by_tenure{UnstatedTie::Key::tenure, yard[0], yard[1]};
    CHECK(ties_of() == std::vector{by_address, by_tenure});
  }
  SUBCASE("both are stated") {
    for (Device& device : model.site.devices) device.tenure_stated = device.address_stated = true;
    CHECK(ties_of().empty());
  }
  SUBCASE("the stated tenures decide before the address is asked") {
    model.site.devices[0].tenure = 2;
    for (Device& device : model.site.devices) device.tenure_stated = true;
    CHECK(ties_of().empty());
  }
}

// docs/reductions.md, Alike: a swap that maps a model to itself, which it does no longer where one thing is changed,
// whoever found the swap. The model is the smallest found by thinking; no source.
#include <doctest/doctest.h>

#include <functional>
#include <optional>

#include "explore/reduce/automorphism.hpp"
#include "explore/reduce/find_swaps.hpp"
#include "support/model_builder.hpp"

using namespace cairn;
using test::ModelBuilder;
namespace when = test::when;

namespace {

/// Two devices, each cabled to a third, to which everything is done in any order.
struct Handled {
  Handled() {
    b.platform().election = {ElectionKey::tenure};
    b.unordered();
    const DeviceId a = b.device("a", {.on = false});
    const DeviceId c = b.device("c", {.on = false});
    const DeviceId hub = b.device("hub", {.ports = {{"p", Side::west}, {"q", Side::west}}});
    const CableId of_a = b.cable(b.east(a), b.port(hub, "p"), false);
    const CableId of_c = b.cable(b.east(c), b.port(hub, "q"), false);
    b.keep({hub});
    b.goal(test::goal_of({hub}, hub));
    const auto steps_of = [&](DeviceId d, CableId cable) {
      const StepId set = b.set_priority(d, 6, {.via = hub});
      b.set_side(b.east(d), Side::east);
      b.plug(cable);
      b.save({d});
      b.apply_stack_of(d);
      b.await(when::all({when::up(d), when::enabled(b.east(d)), when::linked(cable), when::done(set),
                         when::priority(d, Sign::greater, 5), when::side(b.east(d), Sign::equal, Side::east)}));
    };
    steps_of(a, of_a);
    steps_of(c, of_c);
  }
  ModelBuilder b;
};

/// What maps `Handled` to itself still does so when something is changed about it.
bool still_maps_to_itself(const std::function<void(Model&)>& change) {
  Model model = Handled().b.model();
  std::optional<explore::Swap> swap;
  {
    const semantics::World world(model);
    swap = explore::SwapGuesser(world).guess(DeviceId(0), DeviceId(1));
    REQUIRE(swap.has_value());
    REQUIRE(explore::Automorphisms(world, false).contain(*swap));
  }
  change(model);
  const semantics::World world(model);
  return explore::Automorphisms(world, false).contain(*swap);
}

}  // namespace

TEST_CASE("the check relies on nothing that the guess has seen to") {
  const DeviceId a(0);
  const DeviceId hub(2);
  const auto of_site = [](const auto& change) { return still_maps_to_itself([&](Model& m) { change(m.site); }); };
  CHECK_FALSE(of_site([](Site& site) { site.devices[1].software = "2"; }));
  CHECK_FALSE(of_site([](Site& site) { site.devices[1].startup_priority = 6; }));
  CHECK_FALSE(of_site([](Site& site) { site.devices[1].next_number = 6; }));
  CHECK_FALSE(of_site([](Site& site) { site.devices[1].address_stated = !site.devices[1].address_stated; }));
  CHECK_FALSE(of_site([](Site& site) { site.devices[1].tenure_stated = !site.devices[1].tenure_stated; }));
  CHECK_FALSE(of_site([](Site& site) { site.ports[2].startup_side = Side::east; }));
  CHECK_FALSE(of_site([](Site& site) { site.cables[1].plugged = true; }));

  // Those of the second device are the steps from 6 on.
  const auto of_step = [](std::size_t place, const auto& change) {
    return still_maps_to_itself([&](Model& m) { change(m.procedure.steps[6 + place]); });
  };
  CHECK_FALSE(of_step(0, [&](Step& step) { step.device = hub; }));
  CHECK_FALSE(of_step(0, [&](Step& step) { step.via = a; }));
  CHECK_FALSE(of_step(0, [&](Step& step) { step.value = 7; }));
  CHECK_FALSE(of_step(1, [&](Step& step) { step.port = PortId(2); }));
  CHECK_FALSE(of_step(1, [&](Step& step) { step.side = Side::west; }));
  CHECK_FALSE(of_step(2, [&](Step& step) { step.cable = CableId(0); }));
  CHECK_FALSE(of_step(2, [&](Step& step) { step.verb = Verb::unplug; }));
  CHECK_FALSE(of_step(3, [&](Step& step) { step.devices = {a}; }));
  CHECK_FALSE(of_step(4, [&](Step& step) { step.stack_of = a; }));

  const auto of_condition = [](std::size_t place, const auto& change) {
    return still_maps_to_itself([&](Model& m) { change(m.procedure.steps[11].condition.parts[place]); });
  };
  CHECK_FALSE(of_condition(0, [&](Condition& up) { up.devices = {a}; }));
  CHECK_FALSE(of_condition(0, [&](Condition& up) { up.kind = Condition::Kind::off; }));
  CHECK_FALSE(of_condition(1, [&](Condition& enabled) { enabled.port = PortId(2); }));
  CHECK_FALSE(of_condition(2, [&](Condition& linked) { linked.cable = CableId(0); }));
  CHECK_FALSE(of_condition(3, [&](Condition& done) { done.step = StepId(0); }));
  CHECK_FALSE(of_condition(4, [&](Condition& priority) { priority.sign = Sign::less; }));
  CHECK_FALSE(of_condition(4, [&](Condition& priority) { priority.value = 4; }));
  CHECK_FALSE(of_condition(5, [&](Condition& side) { side.side = Side::west; }));
}

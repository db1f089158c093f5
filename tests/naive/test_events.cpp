// The reference by itself: section 5. Every expectation is worked out by hand from docs/semantics.md.
#include "naive/derived.hpp"
#include "naive/events.hpp"
#include "naive/small_models.hpp"

using namespace cairn;
using namespace cairn::naive;

namespace {

/// Takes the steps in file order and tells which of them were refused; starts complete when an await needs them.
struct Run {
  World world;
  std::set<std::string> refused;
};

Run run(const Model& model) {
  Run run{begin(model, {}).settled(), {}};
  while (true) {
    const auto possible = events(model, run.world);
    if (possible.empty()) return run;
    const Happening happening = happen(model, run.world, possible.front());
    if (happening.refused) run.refused.insert(model[possible.front().step()].id);
    run.world = happening.settled();
  }
}

std::size_t count(const std::vector<Event>& all, Event::Kind kind) {
  std::size_t n = 0;
  for (const Event& event : all) n += event.kind == kind ? 1 : 0;
  return n;
}

}  // namespace

TEST_CASE("5.1 to 5.12 what a device rejects is refused and changes nothing") {
  const Model model = small_model({{"side-needs-disabled", "true"}},
                                  "devices:\n"
                                  "  a: {ports: {p: {}, q: {enabled: false}}}\n"
                                  "  b: {power: off, number: 2, ports: {p: {}}}\n"
                                  "  c: {number: 3, ports: {p: {}}}\n"
                                  "cables: {a/p--b/p: {}, a/p--c/p: {plugged: false}}\n",
                                  "steps:\n"
                                  "  - power-on: {device: a, id: on-of-one-that-is-on}\n"
                                  "  - power-off: {device: b, id: off-of-one-that-is-off}\n"
                                  "  - restart: {device: b, id: restart-of-one-that-is-off}\n"
                                  "  - set-number: {device: a, to: 10, id: number-out-of-range}\n"
                                  "  - set-number: {device: a, to: 9}\n"
                                  "  - set-priority: {device: a, to: 0, id: priority-out-of-range}\n"
                                  "  - enable: {port: c/p, via: a, id: not-together-with-its-console}\n"
                                  "  - set-side: {port: a/p, side: east, id: side-of-an-enabled-port}\n"
                                  "  - clear-side: {port: a/p, id: clear-of-an-enabled-port}\n"
                                  "  - set-side: {port: a/q, side: east}\n"
                                  "  - apply: {devices: [a, b], id: apply-to-one-that-is-off}\n"
                                  "  - save: {devices: stack-of b, id: save-of-the-stack-of-one-that-is-off}\n"
                                  "  - plug: {cable: a/p--b/p, id: plug-of-a-plugged-one}\n"
                                  "  - plug: {cable: a/p--c/p, id: plug-into-a-taken-port}\n"
                                  "  - unplug: {cable: a/p--c/p, id: unplug-of-an-idle-one}\n"
                                  "  - unplug: a/p--b/p\n"
                                  "  - plug: a/p--c/p\n");
  const Run result = run(model);
  CHECK(result.refused ==
        std::set<std::string>{"on-of-one-that-is-on", "off-of-one-that-is-off", "restart-of-one-that-is-off",
                              "number-out-of-range", "priority-out-of-range", "not-together-with-its-console",
                              "side-of-an-enabled-port", "clear-of-an-enabled-port", "apply-to-one-that-is-off",
                              "save-of-the-stack-of-one-that-is-off", "plug-of-a-plugged-one", "plug-into-a-taken-port",
                              "unplug-of-an-idle-one"});
  CHECK(complete(model, result.world));
  CHECK(result.world[CableId(1)].plugged);
}

TEST_CASE("5.b, 5.e a start brings startup into force; what was not saved is lost") {
  const Model model = small_model({{"side-takes", "on-apply"}, {"priority-takes", "at-once"}},
                                  "devices: {a: {priority: 3, ports: {p: {}, q: {}}}}\n",
                                  "steps:\n"
                                  "  - set-priority: {device: a, to: 5}\n"
                                  "  - set-side: {port: a/p, side: east}\n"
                                  "  - save: a\n"
                                  "  - set-priority: {device: a, to: 6}\n"
                                  "  - set-side: {port: a/q, side: west}\n"
                                  "  - set-number: {device: a, to: 8}\n"
                                  "  - check: side(a/p) = none and number(a) = 1 and priority(a) = 6\n"
                                  "  - restart: a\n"
                                  "  - await: up(a)\n");
  const World world = run(model).world;
  CHECK_FALSE(world.halted);
  CHECK(world[PortId(0)].operational_side == Side::east);
  CHECK(world[PortId(1)].side == Side::none);
  CHECK(world[DeviceId(0)].priority == 5);
  CHECK(world[DeviceId(0)].number == 8);
}

TEST_CASE("5.f settings filed under the number are lost with it, at once or at the start") {
  const std::string site = "devices: {a: {number: 2, priority: 3, ports: {p: {side: east, enabled: false}}}}\n";
  const Rules filed = {{"settings-follow", "number"}, {"number-takes", "at-once"}};
  const auto after = [&](const Rules& rules, const std::string& steps) {
    const Model model = small_model(rules, site, "steps: [" + steps + "]\n");
    return run(model).world;
  };
  World world = after(filed, "{set-number: {device: a, to: 4}}");
  CHECK(world[DeviceId(0)].priority == 7);
  CHECK(world[DeviceId(0)].startup_priority == 7);
  CHECK(world[PortId(0)] == Socket{true, true, Side::none, Side::none, Side::none});
  world = after(filed, "{set-number: {device: a, to: 2}}");  // the number in force
  CHECK(world[DeviceId(0)].priority == 3);
  const Rules later = {{"settings-follow", "number"}};
  world = after(later, "{set-number: {device: a, to: 4}}");
  CHECK(world[DeviceId(0)].priority == 3);
  world = after(later, "{set-number: {device: a, to: 4}}, {save: a}, {restart: a}, {await: up(a)}");
  CHECK(world[DeviceId(0)].priority == 7);
  CHECK(world[PortId(0)] == Socket{true, true, Side::none, Side::none, Side::none});
  world = after({}, "{set-number: {device: a, to: 4}}, {restart: a}, {await: up(a)}");  // filed under the device
  CHECK(world[PortId(0)].side == Side::east);
}

TEST_CASE("5.c faults happen while their budget lasts, mends at no cost") {
  const Model model = small_model({}, chain("ab"), "steps: [{save: a}, {await: off(a)}]\n");
  const FaultBudget budget{.cable_breaks = 1, .crashes = 1, .omissions = 1, .late_starts = 1, .mends = true};
  World world = begin(model, budget).settled();
  auto possible = events(model, world);
  CHECK(count(possible, Event::Kind::broke) == 1);
  CHECK(count(possible, Event::Kind::crashed) == 2);
  CHECK(count(possible, Event::Kind::omitted) == 1);
  CHECK(count(possible, Event::Kind::mended) == 0);
  world = happen(model, world, {Event::Kind::broke, 0}).settled();
  possible = events(model, world);
  CHECK(count(possible, Event::Kind::broke) == 0);
  CHECK(count(possible, Event::Kind::mended) == 1);
  CHECK(count(possible, Event::Kind::started_late) == 1);  // b, an orphan, restarts
  world = happen(model, world, {Event::Kind::mended, 0}).settled();
  CHECK(world.left.cable_breaks == 0);
  world = happen(model, world, {Event::Kind::omitted, 0}).settled();
  CHECK(world.done.size() == 1);
  CHECK(count(events(model, world), Event::Kind::omitted) == 0);  // an await is never omitted
}

TEST_CASE("5.c.5 a late start makes a party to the contest") {
  const Model model = small_model({}, chain("ab", {{'b', "startup: {priority: 15}"}}), "");
  const DeviceId a = device(model, "a");
  const DeviceId b = device(model, "b");
  World world = begin(model, {.crashes = 1, .late_starts = 1}).settled();
  world = happen(model, world, {Event::Kind::crashed, b.value}).settled();
  world = happen(model, world, {Event::Kind::started_late, b.value}).settled();
  CHECK(world[b].leader == b);
  CHECK(world[a].power == Power::starting);
}

TEST_CASE("5.h a held device is reached on its own console alone; 5.g one out of reach refuses the whole step") {
  const Model model = small_model({}, chain("ab"), "");
  World world = begin(model, {}).settled();
  const DeviceId a = device(model, "a");
  const DeviceId b = device(model, "b");
  CHECK(reachable(model, world, b, a));
  world[b].power = Power::held;
  CHECK_FALSE(reachable(model, world, b, a));
  CHECK_FALSE(reachable(model, world, a, b));
  CHECK(reachable(model, world, b, b));
  world[b].power = Power::starting;
  CHECK_FALSE(reachable(model, world, b, b));
}

TEST_CASE("5.14, 5.i a check that fails halts the procedure; starts still complete") {
  const Model model = small_model({}, "devices: {a: {}, b: {power: off, number: 2}}\n",
                                  "steps: [{power-on: b}, {check: off(b)}, {save: a}]\n");
  World world = begin(model, {}).settled();
  world = happen(model, world, {Event::Kind::step, 0}).settled();
  world = happen(model, world, {Event::Kind::step, 1}).settled();
  CHECK(world.halted);
  CHECK(world.done.size() == 2);
  CHECK(events(model, world) == std::vector<Event>{{Event::Kind::started, 1}});
  world = happen(model, world, {Event::Kind::started, 1}).settled();
  CHECK(at_rest(model, world));
  CHECK_FALSE(complete(model, world));
}

TEST_CASE("6.a after a cold start nobody is senior, and who is off stays off") {
  const Model model = small_model({{"election", "[tenure, priority]"}},
                                  "devices:\n"
                                  "  a: {number: 1, priority: 3, tenure: 9, ports: {p: {side: east}}}\n"
                                  "  b: {number: 2, priority: 4, ports: {p: {side: west}}}\n"
                                  "  c: {number: 3, power: off}\n"
                                  "cables: {a/p--b/p: {}}\nstack: {primary: a, members: [a, b]}\n",
                                  "");
  const World world = cold_start(model, begin(model, {}).settled()).settled();
  CHECK(world[DeviceId(0)].leader == DeviceId(1));
  CHECK(world[DeviceId(1)].leader == DeviceId(1));
  CHECK(world[DeviceId(2)].power == Power::off);
}

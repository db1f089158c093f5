#include "syntax/resolve_procedure.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// "ID<PREDECESSORS" of every step.
std::string order(const std::string& steps) {
  const auto m = model("steps:\n" + steps);
  std::string out;
  for (const auto& step : m.procedure.steps) {
    out += (out.empty() ? "" : " ") + step.id + '<';
    for (const auto p : step.after) out += (out.back() == '<' ? "" : ",") + m[p].id;
  }
  return out;
}

const std::string lone_devices = "site: x\nplatform: harbour.yaml\ndevices: {a: , b: {power: off}, c: }\n";

}  // namespace

TEST_CASE("places count depth first, awaits and steps with an id included, any-order not") {
  CHECK(order("  - power-on: yard-3\n"
              "  - any-order:\n"
              "      - - await: up(yard-3)\n"
              "        - save: {devices: yard-3, id: kept}\n"
              "      - plug: splice\n"
              "  - check: up(yard-1)\n") == "s1< s2<s1 kept<s2 s4<s1 s5<kept,s4");
}

TEST_CASE("after: by id, or by place where there is none, on top of the order in the file") {
  CHECK(order("  - any-order:\n"
              "      - - power-on: yard-3\n"
              "        - await: {condition: up(yard-3), id: ready}\n"
              "      - - plug: {cable: splice, after: [ready, s1]}\n"
              "      - unplug: {cable: splice, after: s3}\n") == "s1< ready<s1 s3<ready s4<s3");
}

TEST_CASE("after may name a later step, and what the order implies is left out") {
  CHECK(order("  - any-order:\n"
              "      - power-on: {device: yard-3, after: s2}\n"
              "      - plug: splice\n"
              "  - save: {devices: yard-1, after: [s1, s2]}\n") == "s1<s2 s2< s3<s1");
  CHECK(order("  - power-on: {device: yard-3, after: []}\n") == "s1<");
}

TEST_CASE("a circle is an error, told once") {
  CHECK(problems("steps:\n  - power-on: {device: yard-3, after: s2}\n  - plug: splice\n") ==
        "p.yaml:5:39 the steps wait for each other in a circle: s1, then s2, then s1 again");
  CHECK(problems("steps:\n  - power-on: {device: yard-3, after: s1}\n") == "p.yaml:5:39 s1 waits for itself");
  CHECK(problems("steps:\n  - any-order:\n      - plug: {cable: splice, id: a, after: b}\n      - power-on: {device: "
                 "yard-3, id: b, after: a}\n  - save: yard-1\n") ==
        "p.yaml:6:45 the steps wait for each other in a circle: a, then b, then a again");
}

TEST_CASE("ids differ from each other and from the places in use") {
  const auto two = [](const std::string& first, const std::string& second) {
    return problems("steps:\n  - power-on: {device: yard-3" + first + "}\n  - power-on: {device: yard-3" + second +
                    "}\n");
  };
  CHECK(two(", id: a", ", id: a") == "p.yaml:6:36 the id `a` stands twice");
  CHECK(two("", ", id: s1") == "p.yaml:6:36 the id `s1` is the place of another step, which has no id of its own");
  CHECK(two(", id: s2", "") == "p.yaml:5:36 the id `s2` is the place of another step, which has no id of its own");
  CHECK(two(", id: s2", ", id: s1").empty());
  CHECK(two(", id: s1", "").empty());
  CHECK(two(", id: s3", "").empty());
}

TEST_CASE("a step with an id is called by that alone") {
  CHECK(problems("steps:\n  - power-on: {device: yard-3, id: on}\n  - plug: {cable: splice, after: s1}\n") ==
        "p.yaml:6:34 the step at `s1` has an id, and is called by that alone (on)");
  CHECK(problems("steps:\n  - plug: {cable: splice, after: s7}\n").find("p.yaml:5:34 there is no step `s7`") == 0);
}

TEST_CASE("semantics 6: by default keep is the running stack's members, or every device that is on") {
  CHECK(model("").procedure.keep == std::vector{DeviceId(0), DeviceId(1)});
  CHECK(!model("").procedure.keep_stated);
  CHECK(model("", lone_devices).procedure.keep == std::vector{DeviceId(0), DeviceId(2)});
  const auto stated = model("keep: [yard-3, yard-1]\n").procedure;
  CHECK(stated.keep == std::vector{DeviceId(0), DeviceId(2)});
  CHECK(stated.keep_stated);
}

TEST_CASE("semantics 6: keep is in the site's order whatever the order of the stack's members") {
  const auto site = with(yard, "members: [yard-1, yard-2]", "members: [yard-2, yard-1]");
  CHECK(model("", site).procedure.keep == std::vector{DeviceId(0), DeviceId(1)});
  CHECK(model("", site).site.stack->members == std::vector{DeviceId(1), DeviceId(0)});
}

TEST_CASE("semantics 6: an empty keep is an error where 6.1, 6.2 or 6.3 is asked") {
  const std::string dark = "site: x\nplatform: harbour.yaml\ndevices: {a: {power: off}}\n";
  for (const char* asked : {"no-split", "primary-stays", "members-stay"}) {
    CHECK(told(load(title + "properties: [no-clash, " + asked + "]\n", dark)) ==
          "p.yaml:3:24 " + std::string(asked) + " speaks of the devices to keep, and no device is on");
  }
  CHECK(load(title + "properties: [no-clash]\n", dark).ok());
  CHECK(load(title + "properties: [no-split]\nkeep: [a]\n", dark).ok());
}

TEST_CASE("by default all properties are asked but tolerates-loss") {
  const auto m = load(title + "goal: {stack: [yard-1]}\n");
  REQUIRE_MESSAGE(m.ok(), told(m));
  const auto& asked = m.value().procedure.properties;
  REQUIRE(asked.size() == 7);
  for (std::size_t i = 0; i < asked.size(); ++i) CHECK(asked[i] == AskedProperty{static_cast<Property>(i), 0});
}

TEST_CASE("semantics 6.b: goal.stack is required where the goal is asked for, and the primary is one of it") {
  CHECK(told(load(title)) == "p.yaml:1:1 reaches-goal is asked for by default, and there is no `goal.stack`");
  CHECK(told(load(title + "goal: {saved: true}\n")) ==
        "p.yaml:3:7 reaches-goal is asked for by default, and there is no `goal.stack`");
  for (const char* asked : {"reaches-goal", "survives-cold-start", "{tolerates-loss: 1}"}) {
    CHECK(told(load(title + "properties: [no-split, " + asked + "]\n"))
              .find("is asked for, and there is no `goal.stack`") != std::string::npos);
  }
  CHECK(!model("goal: {saved: true}\n").procedure.goal);
  CHECK(problems("goal: {stack: [yard-1], primary: yard-2}\n") ==
        "p.yaml:4:34 the goal's primary `yard-2` is not in its stack");
  CHECK(problems("goal: {primary: yard-2}\n") == "p.yaml:4:17 the goal's primary `yard-2` is not in its stack");
}

TEST_CASE("no problem follows from another: an unknown device is told where it is named") {
  CHECK(problems("goal: {stack: [yard-1, yard-7], primary: yard-7}\n") ==
        "p.yaml:4:24 there is no device `yard-7` (yard-1)\np.yaml:4:42 there is no device `yard-7` (yard-1)");
  CHECK(problems("goal: {stack: [yard-1, yard-7], primary: yard-2}\n") ==
        "p.yaml:4:24 there is no device `yard-7` (yard-1)");
}

#include "syntax/read_step.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

Step only_step(const std::string& step) {
  return model("steps:\n  - " + step + "\n").procedure.steps.at(0);
}
std::string step_problem(const std::string& step) {
  return problems("steps:\n  - " + step + "\n");
}

}  // namespace

TEST_CASE("semantics 5.1 to 5.14: every verb, shortest and as a mapping") {
  CHECK(only_step("power-on: yard-3").verb == Verb::power_on);
  CHECK(only_step("power-off: {device: yard-3}").verb == Verb::power_off);
  CHECK(only_step("restart: yard-3").device == DeviceId(2));
  const auto number = only_step("set-number: {device: yard-3, to: -12}");
  CHECK(number.verb == Verb::set_number);
  CHECK(number.value == -12);  // the device refuses it; the file may ask for it
  CHECK(only_step("set-priority: {device: yard-3, to: 99}").value == 99);
  CHECK(only_step("enable: yard-2/t2").port == PortId(3));
  CHECK(only_step("disable: {port: yard-2/t2}").device == DeviceId(1));
  const auto side = only_step("set-side: {port: yard-2/t2, side: east, via: yard-1}");
  CHECK(side.verb == Verb::set_side);
  CHECK(side.side == Side::east);
  CHECK(side.via == DeviceId(0));
  CHECK(only_step("clear-side: yard-2/t2").side == Side::none);
  CHECK(only_step("apply: yard-1").devices == std::vector{DeviceId(0)});
  CHECK(only_step("save: [yard-2, yard-1]").devices == std::vector{DeviceId(1), DeviceId(0)});
  CHECK(only_step("save: {devices: [yard-2, yard-1]}").devices.size() == 2);
  const auto all = only_step("save: stack-of yard-2");
  CHECK(all.devices.empty());
  CHECK(all.stack_of == DeviceId(1));
  CHECK(only_step("apply: {devices: \"stack-of   yard-2\", via: yard-1}").stack_of == DeviceId(1));
  CHECK(only_step("plug: splice").cable == CableId(1));
  CHECK(only_step("plug: yard-3/t1--yard-2/t2").cable == CableId(1));
  CHECK(only_step("unplug: {cable: yard-1/t2--yard-2/t1}").cable == CableId(0));
  const auto await = only_step("await: up(yard-3) and number(yard-3) = 9  # comment");
  CHECK(await.condition.kind == Condition::Kind::all);
  CHECK(await.condition_text == "up(yard-3) and number(yard-3) = 9");
  CHECK(only_step("check: {condition: up(yard-1), note: still up}").note == "still up");
}

TEST_CASE("semantics 5.h: the console is by default that of the device that is configured") {
  for (const char* step : {"restart: yard-2", "set-number: {device: yard-2, to: 1}",
                           "set-priority: {device: yard-2, to: 1}", "enable: yard-2/t1", "disable: yard-2/t1",
                           "set-side: {port: yard-2/t1, side: west}", "clear-side: yard-2/t1"}) {
    CHECK_MESSAGE(only_step(step).via == DeviceId(1), step);
  }
  for (const char* step : {"power-on: yard-2", "power-off: yard-2", "apply: yard-2", "save: yard-2", "plug: splice",
                           "await: up(yard-2)"}) {
    CHECK_MESSAGE(!only_step(step).via, step);
  }
}

TEST_CASE("a device called stack-of") {
  const auto site = with(yard, "  yard-3:", "  stack-of: {ports: {}}\n  yard-3:");
  CHECK(model("steps: [{save: stack-of}]\n", site).procedure.steps[0].devices == std::vector{DeviceId(2)});
}

TEST_CASE("the place of a step is its verb") {
  const auto span = only_step("power-on: yard-3").span;
  CHECK(span.file == "p.yaml");
  CHECK(span.line == 5);
  CHECK(span.column == 5);
  CHECK(span.length == 8);
}

TEST_CASE("what is no step") {
  CHECK(step_problem("powr-on: yard-3") == "p.yaml:5:5 `powr-on` is no verb of a step (power-on)");
  CHECK(step_problem("power-on yard-3") == "p.yaml:5:5 a step is `power-on yard-3`");
  CHECK(step_problem("") == "p.yaml:5:3 a step is empty");
  CHECK(step_problem("{}") == "p.yaml:5:5 a step is a mapping");
  CHECK(step_problem("{power-on: yard-3, note: x}") == "p.yaml:5:24 a second key in one step");
  CHECK(problems("steps: {power-on: yard-3}\n") == "p.yaml:4:8 `steps` is a mapping");
  CHECK(problems("steps:\n") == "p.yaml:4:1 `steps` is empty");
  CHECK(problems("steps: []\n").empty());
}

TEST_CASE("what a verb does not take") {
  CHECK(step_problem("power-on: {device: yard-3, via: yard-1}") == "p.yaml:5:32 `via` is no key of power-on");
  CHECK(step_problem("plug: {cable: splice, via: yard-1}") == "p.yaml:5:27 `via` is no key of plug");
  CHECK(step_problem("enable: yard-1") == "p.yaml:5:13 `port` is `yard-1`");
  CHECK(step_problem("power-on: [yard-3]") == "p.yaml:5:15 the argument of power-on is a list");
  CHECK(step_problem("power-on:") == "p.yaml:5:5 the argument of power-on is empty");
  CHECK(step_problem("set-number: yard-3") == "p.yaml:5:17 the argument of set-number is `yard-3`");
  CHECK(step_problem("set-number: {device: yard-3}") == "p.yaml:5:17 `to` is missing: set-number needs it");
  CHECK(step_problem("set-number: {device: yard-3, to: nine}") == "p.yaml:5:38 `to` is `nine`");
  CHECK(step_problem("set-side: {port: yard-1/t1, side: none}") == "p.yaml:5:39 `side` is `none`");
  CHECK(step_problem("save: []") == "p.yaml:5:11 `devices` is an empty list");
  CHECK(step_problem("save: [yard-1, yard-1]") == "p.yaml:5:20 `yard-1` stands twice in `devices`");
  CHECK(step_problem("save: [stack-of yard-1]") == "p.yaml:5:12 there is no device `stack-of yard-1`");
  CHECK(step_problem("plug: yard-1/t1") == "p.yaml:5:11 `cable` is `yard-1/t1`");
  CHECK(step_problem("await: {condition: up(yard-9)}") == "p.yaml:5:27 there is no device `yard-9` (yard-1)");
}

TEST_CASE("any-order: at least one branch, and no branch is empty") {
  CHECK(step_problem("any-order: []") == "p.yaml:5:16 `any-order` has no branches");
  CHECK(step_problem("any-order: yard-1") == "p.yaml:5:16 `any-order` is `yard-1`");
  CHECK(step_problem("any-order:") == "p.yaml:5:5 `any-order` is empty");
  CHECK(step_problem("any-order: [[], {power-on: yard-3}]") == "p.yaml:5:17 a branch is empty");
  CHECK(step_problem("any-order: [{any-order: []}]") == "p.yaml:5:29 `any-order` has no branches");
  CHECK(step_problem("any-order: [{power-on: yard-3}, ]").empty());
}

TEST_CASE("a step with an unknown verb keeps its place and its id") {
  CHECK(problems(
            "steps:\n  - powr-on: {device: yard-3, id: first}\n  - power-on: {device: yard-3, after: [first, s2]}\n") ==
        "p.yaml:5:5 `powr-on` is no verb of a step (power-on)\n"
        "p.yaml:6:47 s2 waits for itself");
}

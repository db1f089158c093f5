// Format "Template": what is read, and what is wrong in it. Its meaning is for tests/unknowns.
#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("parameters, assumptions and open addresses are read") {
  const Model read = model(
      "parameters: {n: [1, 12], p: [-5, 255]}\n"
      "assume: $n != 4 and $p < 180 and address(yard-1) < address(yard-2)\n"
      "steps:\n"
      "  - set-number: {device: yard-3, to: $n}\n"
      "  - await: number(yard-3) = $n or priority(yard-3) >= $p\n"
      "goal: {stack: [yard-1], where: number(yard-3) = $n}\n",
      with(yard, "{number: 4,", "{number: 4, address: any,"));
  CHECK(read.unknowns.parameters == std::vector<Parameter>{{"n", {1, 12}}, {"p", {-5, 255}}});
  CHECK(read.unknowns.addresses == std::vector{DeviceId(0)});
  CHECK(read.unknowns.assume->parts.size() == 3);
  const Quantity n = unknown(UnknownId(0));
  CHECK(read.procedure.steps[0].value == n);
  CHECK(read.procedure.steps[1].condition.parts[1].value == unknown(UnknownId(1)));
  CHECK(read.procedure.goal->where->value == n);
  CHECK(read.address(DeviceId(0)) == unknown(UnknownId(2)));
  CHECK_FALSE(model("").unknowns.any());
  CHECK(model("assume: 1 < 2\n").unknowns.any());
}

TEST_CASE("parameters may stand for numbers, priorities and tenure of the site") {
  const auto site =
      with(yard, "yard-3: {power: off,",
           "yard-3: {power: off, number: $n, next-number: $n, priority: $n, startup: {priority: $n}, tenure: $n,");
  const Device device = model("parameters: {n: [1, 9]}\n", site).site.devices[2];
  for (const Quantity q :
       {device.number, device.next_number, device.priority, device.startup_priority, device.tenure}) {
    CHECK(q == unknown(UnknownId(0)));
  }
  CHECK(told(load(title + asks, site)).find("yard.yaml:6:32 there is no parameter `n`") == 0);
}

TEST_CASE("a site that is read alone declares its parameters by naming them") {
  const auto site = with(yard, "yard-3: {power: off,", "yard-3: {power: off, number: $n, priority: $p,");
  const auto document = load_document("yard.yaml", MemoryFiles({{"yard.yaml", site}, {"harbour.yaml", harbour}}));
  REQUIRE(document.ok());
  CHECK(document.value().model.unknowns.parameters.size() == 2);
}

TEST_CASE("integers below all that can be told apart are read as the lowest that can") {
  const Model read = model(
      "parameters: {n: [-9223372036854775808, 3]}\n"
      "steps: [{set-number: {device: yard-3, to: -9223372036854775808}}]\n");
  CHECK(read.unknowns.parameters[0].range.low == least_known);
  CHECK(read.procedure.steps[0].value == least_known);
}

TEST_CASE("no parameters, no template") {
  CHECK(problems("parameters:\n").empty());
}

TEST_CASE("what is wrong in a template is told instead") {
  CHECK(problems("parameters: {n: [1, 12]}\nsteps: [{set-number: {device: yard-3, to: $m}}]\n") ==
        "p.yaml:5:43 there is no parameter `m`");
  CHECK(problems("parameters: {num: [1, 12]}\nsteps: [{set-number: {device: yard-3, to: $nun}}]\n") ==
        "p.yaml:5:43 there is no parameter `nun` (num)");
  CHECK(problems("parameters: {n: [12, 1]}\n") == "p.yaml:4:22 the highest of the range of `n` is `1`");
  CHECK(problems("parameters: {n: 4}\n") == "p.yaml:4:17 the range of `n` is `4`");
  CHECK(problems("parameters: {-n: [1, 2]}\n") == "p.yaml:4:14 `-n` is no name");
  CHECK(problems("parameters: {n: [1, 2]}\nassume: $n < $m and address(yard-7) = address(yard-1)\n") ==
        "p.yaml:5:14 there is no parameter `m`\np.yaml:5:29 there is no device `yard-7` (yard-1)");
  CHECK(problems("parameters: {n: [1, 2]}\nassume: up(yard-1)\n") ==
        "p.yaml:5:9 `up` cannot stand here in a condition");
}

TEST_CASE("a parameter stands nowhere else") {
  CHECK(problems("parameters: {n: [1, 2]}\nfaults: {crashes: $n}\n") == "p.yaml:5:19 `crashes` is `$n`");
  CHECK(problems("parameters: {n: [1, 2]}\nsteps: [{power-on: $n}]\n") == "p.yaml:5:20 there is no device `$n`");
  CHECK(told(load(title + asks + "parameters: {n: [1, 2]}\n", yard, with(harbour, "[1, 9]", "[1, $n]")))
            .find("harbour.yaml:2:14 the highest of `numbers` is `$n`") == 0);
}

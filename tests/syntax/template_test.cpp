// Format "Template": read and checked, then refused.
#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {
const std::string refused = " templates are read and checked, but this version cannot prove them yet";
}

TEST_CASE("a template that is right is refused at its first open place") {
  CHECK(problems("parameters: {n: [1, 12]}\n") == "p.yaml:4:1" + refused);
  CHECK(problems("assume: 1 < 2\n") == "p.yaml:4:1" + refused);
  CHECK(problems("parameters: {n: [1, 12], p: [-5, 255]}\n"
                 "assume: $n != 4 and $p < 180 and address(yard-1) < address(yard-2)\n"
                 "steps:\n"
                 "  - set-number: {device: yard-3, to: $n}\n"
                 "  - await: number(yard-3) = $n or priority(yard-3) >= $p\n"
                 "goal: {stack: [yard-1], where: number(yard-3) = $n}\n") == "p.yaml:4:1" + refused);
  CHECK(told(load(title + asks, with(yard, "{number: 4,", "{number: 4, address: any,"))) == "yard.yaml:4:32" + refused);
}

TEST_CASE("parameters may stand for numbers, priorities and tenure of the site") {
  const auto site =
      with(yard, "yard-3: {power: off,",
           "yard-3: {power: off, number: $n, next-number: $n, priority: $n, startup: {priority: $n}, tenure: $n,");
  CHECK(told(load(title + asks + "parameters: {n: [1, 9]}\n", site)) == "p.yaml:4:1" + refused);
  CHECK(told(load(title + asks, site)).find("yard.yaml:6:32 there is no parameter `n`") == 0);
  CHECK(told(load_document("yard.yaml", MemoryFiles({{"yard.yaml", site}, {"harbour.yaml", harbour}}))) ==
        "yard.yaml:6:32" + refused);
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

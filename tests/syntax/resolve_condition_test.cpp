#include "syntax/resolve_condition.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;
using Kind = Condition::Kind;

namespace {

Condition condition(const std::string& text) {
  return model("steps: [{check: \"" + text + "\"}]\n").procedure.steps.at(0).condition;
}
std::string wrong(const std::string& text) {
  return problems("steps:\n- check: " + text + "\n");
}

}  // namespace

TEST_CASE("names become ids") {
  CHECK(condition("together(yard-3, yard-1, yard-3)").devices == std::vector{DeviceId(2), DeviceId(0), DeviceId(2)});
  CHECK(condition("side(yard-2/t2) = west").port == PortId(3));
  CHECK(condition("side(yard-2/t2) = west").side == Side::west);
  CHECK(condition("number(yard-2) >= 99").value == 99);
  CHECK(condition("number(yard-2) >= 99").sign == Sign::greater_or_equal);
  CHECK(condition("done(s1)").step == StepId(0));
}

TEST_CASE("a cable is named by its id or by its ends, in either order") {
  for (const char* name : {"splice", "yard-2/t2--yard-3/t1", "yard-3/t1--yard-2/t2", "yard-3 / t1 -- yard-2 / t2"}) {
    CHECK(condition("linked(" + std::string(name) + ")").cable == CableId(1));
  }
}

TEST_CASE("joins") {
  const auto c = condition("not up(yard-1) or up(yard-2) implies up(yard-3)");
  CHECK(c.kind == Kind::implies);
  CHECK(c.parts.at(0).kind == Kind::any);
  CHECK(c.parts.at(0).parts.at(0).kind == Kind::negation);
  CHECK(c.parts.at(1).devices.at(0) == DeviceId(2));
}

TEST_CASE("every unknown name of a condition is reported, where it stands") {
  CHECK(wrong("up(yard-7) and linked(slice) or enabled(yard-1/t7) and done(s9)") ==
        "p.yaml:5:13 there is no device `yard-7` (yard-1)\n"
        "p.yaml:5:32 there is no cable `slice` (splice)\n"
        "p.yaml:5:57 `yard-1` has no port `t7` (t1)\n"
        "p.yaml:5:70 there is no step `s9` (s1)");
  CHECK(wrong("linked(yard-1/t1--yard-2/t2)") ==
        "p.yaml:5:17 there is no cable `yard-1/t1--yard-2/t2` (yard-3/t1--yard-2/t2)");
  CHECK(wrong("linked(yard-1/t2--yard-7/t1)") == "p.yaml:5:28 there is no device `yard-7` (yard-1)");
  CHECK(wrong("number(yard-1) = $n") == "p.yaml:5:27 there is no parameter `n`");
}

TEST_CASE("a number out of the platform's range may be compared with") {
  CHECK(wrong("number(yard-1) < 10000").empty());
}

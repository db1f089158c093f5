#include "syntax/read_procedure.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("`procedure` and `site` are required; missing steps mean none") {
  CHECK(model("").procedure.steps.empty());
  CHECK(model("").procedure.title == "Append");
  CHECK(told(load("site: yard.yaml\n" + asks + "steps: []\n")) ==
        "p.yaml:1:1 `procedure` is missing: a procedure needs it");
  CHECK(told(load("procedure: x\n" + asks)) == "p.yaml:1:1 `site` is missing: a procedure needs it");
  CHECK(told(load("procedure: [x]\nsite: yard.yaml\n" + asks)) == "p.yaml:1:12 `procedure` is a list");
}

TEST_CASE("faults: not negative, mends a boolean; none by default") {
  CHECK(model("").procedure.faults == FaultBudget{});
  CHECK(model("faults:\n").procedure.faults == FaultBudget{});
  CHECK(model("faults: {cable-breaks: 1, crashes: 2, omissions: 3, late-starts: 4, mends: true}\n").procedure.faults ==
        FaultBudget{1, 2, 3, 4, true});
  CHECK(problems("faults: {crashes: -1}\n") == "p.yaml:4:19 `crashes` is `-1`");
  CHECK(problems("faults: {mends: 1}\n") == "p.yaml:4:17 `mends` is `1`");
  CHECK(problems("faults: {crash: 1}\n") == "p.yaml:4:10 `crash` is no key of `faults`");
  CHECK(problems("faults: {crashes: 1, crashes: 1}\n") == "p.yaml:4:22 the key `crashes` stands twice");
}

TEST_CASE("properties, in the order asked for") {
  const auto asked = [](const std::string& list) {
    std::string out;
    for (const auto& p : model("properties: " + list + "\ngoal: {stack: [yard-1]}\n").procedure.properties) {
      out += std::string(out.empty() ? "" : " ") + std::string(name_of(p.property)) +
             (p.k > 0 ? '=' + std::to_string(p.k) : "");
    }
    return out;
  };
  CHECK(asked("[reaches-goal, {tolerates-loss: 1}, no-split]") == "reaches-goal tolerates-loss=1 no-split");
  CHECK(asked("[{tolerates-loss: 1}, {tolerates-loss: 2}]") == "tolerates-loss=1 tolerates-loss=2");
}

TEST_CASE("what is no list of properties") {
  const auto wrong = [](const std::string& list) {
    return told(load(title + "properties: " + list + "\ngoal: {stack: [yard-1]}\n"));
  };
  CHECK(wrong("[]") == "p.yaml:3:13 `properties` is an empty list");
  CHECK(wrong("no-split") == "p.yaml:3:13 `properties` is `no-split`");
  CHECK(wrong("[no-slit]") == "p.yaml:3:14 a property is `no-slit` (no-split)");
  CHECK(wrong("[no-split, no-split]") == "p.yaml:3:24 no-split stands twice in `properties`");
  CHECK(wrong("[{tolerates-loss: 2}, {tolerates-loss: 2}]") ==
        "p.yaml:3:36 tolerates-loss stands twice in `properties`");
  CHECK(wrong("[tolerates-loss]") == "p.yaml:3:14 tolerates-loss needs a number");
  CHECK(wrong("[{tolerates-loss: 0}]") == "p.yaml:3:31 `tolerates-loss` is `0`");
  CHECK(wrong("[{no-split: 1}]") == "p.yaml:3:15 no-split takes no number");
  CHECK(wrong("[{}]") == "p.yaml:3:14 a property is a mapping");
}

TEST_CASE("the goal") {
  const auto goal =
      model("goal: {stack: [yard-3, yard-1], primary: yard-1, saved: true, where: up(yard-3)}\n").procedure.goal;
  REQUIRE(goal);
  CHECK(goal->stack == std::vector{DeviceId(2), DeviceId(0)});
  CHECK(goal->primary == DeviceId(0));
  CHECK(goal->saved);
  CHECK(goal->where->kind == Condition::Kind::up);
  CHECK(goal->where_text == "up(yard-3)");
  CHECK(!model("goal: {stack: [yard-3]}\n").procedure.goal->primary);
  CHECK(problems("goal: {stack: []}\n") == "p.yaml:4:15 `stack` is an empty list");
  CHECK(problems("goal: {stack: [yard-1], saved: yes}\n") == "p.yaml:4:32 `saved` is `yes`");
  CHECK(problems("goal: {stack: [yard-1], wher: x}\n") == "p.yaml:4:25 `wher` is no key of `goal` (where)");
  CHECK(problems("goal: {stack: yard-1}\n") == "p.yaml:4:15 `stack` is `yard-1`");
}

TEST_CASE("keep is a list of devices, not empty") {
  CHECK(problems("keep: []\n") == "p.yaml:4:7 `keep` is an empty list");
  CHECK(problems("keep: yard-1\n") == "p.yaml:4:7 `keep` is `yard-1`");
  CHECK(problems("keep: [yard-1, yard-9, yard-1]\n") ==
        "p.yaml:4:16 there is no device `yard-9` (yard-1)\np.yaml:4:24 `yard-1` stands twice in `keep`");
}

#include "report/quay.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

std::string walked(const std::string& rest, const QuayRules& rules = {}) {
  const Model model = quay(rest, rules);
  return render_walk(model, walk(model));
}

}  // namespace

TEST_CASE("a run that goes well says so, with the goal and who leads") {
  const std::string text = walked(
      "  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: {cable: run, note: Gently.}\n  - await: "
      "follower(quay-3)\n"
      "goal: {stack: [quay-1, quay-2, quay-3]}\n");
  CHECK(text.starts_with("At the quay\n"));
  CHECK(has(text, "   1  operator  switches on quay-3 (s1)\n"));
  CHECK(has(text, "                - s2 waits for up(quay-3): quay-3 is still starting\n"));
  CHECK(has(text, "                Note: Gently.\n"));
  CHECK(has(text, "                quay-1 ========= quay-2 ========== quay-3\n"));
  CHECK(has(text, "Complete    Every step is done.\nGoal        It holds.\nLeads       quay-1.\n"));
}

TEST_CASE("a run that ends early says where, and what it waits for") {
  const std::string stuck = walked("  - await: up(quay-3)\n  - save: quay-1\n");
  CHECK(has(stuck,
            "Stuck       The run ends early: 2 steps are not done.\n"
            "            s1 waits for ever for up(quay-3), because quay-3 is off.\n"));
  const std::string halted = walked("  - check: up(quay-3)\n  - save: quay-1\n");
  CHECK(has(halted, "Halted      A check failed, and 1 step is not done.\n"));
  CHECK(has(walked("  - check: up(quay-3)\n"), "Halted      A check failed.\n"));
}

TEST_CASE("refused steps are counted, and a missed goal is told") {
  const std::string text = walked("  - save: quay-3\n  - plug: span\ngoal: {stack: [quay-1, quay-3]}\n");
  CHECK(has(text, "refused, quay-3 is off"));
  CHECK(has(text, "Refused     2 steps were refused.\n"));
  CHECK(has(text, "Goal        The procedure ends and its goal is missed: quay-3 is off.\n"));
}

TEST_CASE("a refutation ends with what broke") {
  const Model model = quay("  - unplug: span\n");
  const Walk walk = refuted(model, Property::no_split);
  const std::string text = render_walk(model, walk, AskedProperty{Property::no_split, 0});
  CHECK(has(text, "A run that breaks no-split.\n"));
  CHECK(has(text, "What broke  When the operator unplugs cable span"));
  CHECK(!has(text, "Complete"));
}

TEST_CASE("side by side: what may come in any order, and what still waits for another step") {
  const std::string text = walked(
      "  - any-order:\n      - {save: {devices: quay-1, id: one}}\n      - {save: {devices: quay-2, id: two}}\n"
      "  - disable: quay-1/w\n");
  CHECK(has(text, "                - next, in any order: one and two\n"));
  CHECK(has(text, "                - s3 waits for two\n"));
}

// docs/semantics-questions.md, 2.
TEST_CASE("a run that never ends says who restarts whom") {
  const Model model = model_of(run_without_end);
  const Walk endless = walk(model);
  CHECK(endless.end == Walk::End::endless);
  const std::string text = render_walk(model, endless);
  CHECK(has(text, "Endless     The run comes back to where it was:"));
  CHECK(has(text, "quay-2"));
  CHECK(has(text, "quay-3"));
  CHECK_FALSE(has(text, "Complete"));
}

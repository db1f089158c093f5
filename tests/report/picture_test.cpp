#include "report/picture.hpp"

#include "report/quay.hpp"
#include "semantics/world.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

using Lines = std::vector<std::string>;

Lines drawn(const Model& model, const State& s) {
  const semantics::World world(model);
  return report::draw(world, {{"now", &s}});
}

// A site of devices n1 to nN, all up, with these cables between their ports a and b.
Model site(int devices, const std::string& cables, const std::string& prefix = "n") {
  std::string text =
      "procedure: Drawn\nsite:\n  site: Drawn\n  platform: {platform: P, numbers: [1, 30], priorities: [0, 9], "
      "factory: {number: 1, priority: 1, enabled: true, side: east}, number-takes: at-once, priority-takes: at-once, "
      "settings-follow: device, side-takes: at-once, side-needs-disabled: false, facing: any, side-leads-to: any, "
      "software: any, orphans: carry-on, election: [priority]}\n  devices:\n";
  std::string members;
  for (int i = 1; i <= devices; ++i) {
    const std::string name = prefix + std::to_string(i);
    text += "    " + name + ": {number: " + std::to_string(i) + ", ports: {a: {}, b: {}, c: {}}}\n";
    members += (i > 1 ? ", " : "") + name;
  }
  text += "  cables: " + cables + "\n  stack: {primary: " + prefix + "1, members: [" + members + "]}\n";
  return model_of(text + "properties: [no-split]\n");
}

}  // namespace

TEST_CASE("a chain is a row; a device that is not cabled stands by itself") {
  const Model model = quay("");
  CHECK(drawn(model, walk(model).initial) == Lines{"  now      quay-1 ========= quay-2            quay-3",
                                                   "           #1 primary       #2 follower       #3 off"});
}

TEST_CASE("a cable without a link and a broken one look different") {
  const Model model = quay("  - plug: run\n");
  State s = walk(model).last();
  CHECK(drawn(model, s)[0] == "  now      quay-1 ========= quay-2 . . . . .  quay-3");
  s.cables[1].broken = true;
  CHECK(drawn(model, s)[0] == "  now      quay-1 ========= quay-2 -----x---- quay-3");
}

TEST_CASE("a ring comes back to its first device") {
  const Model model = site(3, "{n1/b--n2/a: {}, n2/b--n3/a: {}, n3/b--n1/a: {}}");
  CHECK(drawn(model, walk(model).initial) ==
        Lines{"  now      n1 ============= n2 ============== n3 ============== (n1)",
              "           #1 primary       #2 follower       #3 follower"});
}

TEST_CASE("what fits no row is drawn below") {
  // A ring of four with a chord.
  const Model model = site(4, "{n1/b--n2/a: {}, n2/b--n3/a: {}, n3/b--n4/a: {}, n4/b--n1/a: {}, n1/c--n3/c: {}}");
  const Lines lines = drawn(model, walk(model).initial);
  REQUIRE(!lines.empty());
  CHECK(lines.back() == "           n1 ===== n3");
}

TEST_CASE("a long row goes on below, within 80 columns") {
  std::string cables;
  for (int i = 1; i < 12; ++i) {
    cables += (i > 1 ? ", " : "") + ("n" + std::to_string(i)) + "/b--n" + std::to_string(i + 1) + "/a: {}";
  }
  const Model model = site(12, "{" + cables + "}");
  const Lines lines = drawn(model, walk(model).initial);
  CHECK(lines.size() == 8);
  CHECK(lines[0].ends_with("=="));
  CHECK(lines[2].find("===== n") != std::string::npos);
  for (const auto& line : lines) CHECK(line.size() <= 80);
}

TEST_CASE("long names are shortened in the drawing") {
  const Model model = site(2,
                           "{very-long-names-of-switches-in-the-north-yard-1/b--"
                           "very-long-names-of-switches-in-the-north-yard-2/a: {}}",
                           "very-long-names-of-switches-in-the-north-yard-");
  for (const auto& line : drawn(model, walk(model).initial)) CHECK(line.size() <= 80);
  CHECK(drawn(model, walk(model).initial)[0].find("very-long-..rth-yard-1") != std::string::npos);
}

TEST_CASE("with two leaders each follower says whom it follows") {
  const Model model = quay("  - power-on: quay-3\n  - await: up(quay-3)\n");
  CHECK(drawn(model, walk(model).last())[1] == "           #1 primary       #2 follows quay-1       #3 primary");
}

TEST_CASE("states that look alike are drawn once") {
  const Model model = quay("");
  const semantics::World world(model);
  const State s = walk(model).initial;
  CHECK(report::draw(world, {{"before", &s}, {"after", &s}}).size() == 2);
  CHECK(report::look_alike(world, s, s));
}

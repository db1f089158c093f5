#include "cairn/load.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

std::string in_place(const std::string& text) {
  std::string out = "  ";
  for (const char c : text) {
    out += c;
    if (c == '\n') out += "  ";
  }
  return out.substr(0, out.find_last_not_of(' ') + 1);
}

Result<Model> load_from(const std::string& path, const std::map<std::string, std::string>& files) {
  return load_procedure(path, MemoryFiles(files));
}

}  // namespace

TEST_CASE("files are named relative to the file that names them") {
  const auto m = load_from("models/procedures/p.yaml",
                           {{"models/procedures/p.yaml", with(title, "yard.yaml", "../sites/yard.yaml") + asks},
                            {"models/sites/yard.yaml", with(yard, "harbour.yaml", "../platforms/harbour.yaml")},
                            {"models/platforms/harbour.yaml", harbour}});
  REQUIRE_MESSAGE(m.ok(), told(m));
  CHECK(m.value().files == std::vector<std::string>{"models/procedures/p.yaml", "models/sites/yard.yaml",
                                                    "models/platforms/harbour.yaml"});
}

TEST_CASE("names in standard input are relative to the current directory; absolute ones stay what they are") {
  CHECK(load_from("-", {{"-", title + asks}, {"yard.yaml", yard}, {"harbour.yaml", harbour}}).ok());
  CHECK(load_from("d/p.yaml", {{"d/p.yaml", with(title, "yard.yaml", "/s/yard.yaml") + asks},
                               {"/s/yard.yaml", yard},
                               {"/s/harbour.yaml", harbour}})
            .ok());
}

TEST_CASE("a file that is called - is no standard input") {
  const auto m = load_from(
      "p.yaml", {{"p.yaml", with(title, "yard.yaml", "\"-\"") + asks}, {"-", yard}, {"harbour.yaml", harbour}});
  REQUIRE_MESSAGE(m.ok(), told(m));
  CHECK(m.value().files.at(1) == "./-");
}

TEST_CASE("site and platform in place") {
  const auto site = with(yard, "platform: harbour.yaml\n", "platform:\n" + in_place(harbour));
  const auto m = load_from("p.yaml", {{"p.yaml", with(title, "site: yard.yaml\n", "site:\n" + in_place(site)) + asks}});
  REQUIRE_MESSAGE(m.ok(), told(m));
  CHECK(m.value().files == std::vector<std::string>{"p.yaml"});
  CHECK(m.value().platform.title == "Harbour family");
  CHECK(m.value().site.devices.size() == 3);
}

TEST_CASE("all problems of all three files in one go, by file, then by line") {
  const auto result = load(title + asks + "keep: [yard-9]\nstep: []\n", with(yard, "number: 7", "number: 70"),
                           with(harbour, "facing: any", "facing: all"));
  CHECK(told(result) ==
        "p.yaml:4:8 there is no device `yard-9` (yard-1)\n"
        "p.yaml:5:1 `step` is no key of a procedure (steps)\n"
        "yard.yaml:5:20 `number` is 70\n"
        "harbour.yaml:10:9 `facing` is `all`");
  CHECK(result.problems()[0].source_line == "keep: [yard-9]");
}

TEST_CASE("what cannot be read") {
  CHECK(told(load_from("p.yaml", {})) == "p.yaml:0:0 cannot be read: there is no such file");
  CHECK(told(load_from("p.yaml", {{"p.yaml", title + asks + "keep: [a, a]\n"}})) ==
        "p.yaml:2:7 `yard.yaml` cannot be read: there is no such file\n"
        "p.yaml:4:11 `a` stands twice in `keep`");
  CHECK(told(load_from("p.yaml", {{"p.yaml", title + asks}, {"yard.yaml", "a: [\n"}})) ==
        "yard.yaml:1:4 this `[` is never closed, or a comma is missing before here");
  CHECK(told(load("procedure: x\nsite: [yard.yaml]\n" + asks)) == "p.yaml:2:7 `site` is a list");
  CHECK(told(load("procedure: x\nsite: \"\"\n" + asks)) == "p.yaml:2:7 the path is empty");
  CHECK(told(load("procedure: x\nsite:\n" + asks)).find("`site` is empty") != std::string::npos);
}

TEST_CASE("a file that names itself") {
  CHECK(told(load_from("d/p.yaml", {{"d/p.yaml", with(title, "yard.yaml", "../d/./p.yaml") + asks}})) ==
        "d/p.yaml:2:7 `d/p.yaml` is being read already: it cannot be its own site");
  CHECK(told(load_from("p.yaml", {{"p.yaml", title + asks}, {"yard.yaml", with(yard, "harbour.yaml", "p.yaml")}})) ==
        "yard.yaml:2:11 `p.yaml` is being read already: it cannot be its own platform");
}

TEST_CASE("a document of another kind") {
  CHECK(told(load_procedure("yard.yaml", MemoryFiles({{"yard.yaml", yard}}))) ==
        "yard.yaml:1:1 `yard.yaml` is a site, and a procedure is wanted");
  CHECK(told(load(title + asks, harbour)) == "yard.yaml:1:1 `yard.yaml` is a platform, and a site is wanted");
  CHECK(told(load("a: b\n")) == "p.yaml:1:1 `p.yaml` is no model, and a procedure is wanted");
  CHECK(told(load("- a\n")) == "p.yaml:1:1 `p.yaml` is a list, and a procedure is wanted");
}

TEST_CASE("a document of any kind is told by its keys") {
  const MemoryFiles files({{"p.yaml", title + asks},
                           {"yard.yaml", yard},
                           {"harbour.yaml", harbour},
                           {"x.yaml", "a: b\n"},
                           {"y.yaml", "a\n"}});
  CHECK(load_document("p.yaml", files).value().kind == DocumentKind::procedure);
  CHECK(load_document("yard.yaml", files).value().kind == DocumentKind::site);
  CHECK(load_document("harbour.yaml", files).value().kind == DocumentKind::platform);
  CHECK(told(load_document("x.yaml", files)) == "x.yaml:1:1 this is no model");
  CHECK(told(load_document("y.yaml", files)) == "y.yaml:1:1 the document is `a`");
}

TEST_CASE("the example of the format") {
  // docs/format.md, "Platform", "Site" and "Procedure", with the numbers brought into one platform's ranges.
  const auto site =
      "site: Quayside terminal, yard distribution\nplatform: harbour.yaml\ndevices:\n"
      "  yard-1:\n    address: 02:00:00:00:01:0a\n    number: 4\n    priority: 12\n    software: \"9.2\"\n    tenure: "
      "2                      # optional\n"
      "    ports:\n      t1: {side: west, enabled: true}\n      t2: {side: east, enabled: true}\n"
      "  yard-2: {address: 02:00:00:00:01:0b, number: 7, priority: 10, software: \"9.2\",\n"
      "           ports: {t1: {side: west, enabled: true}, t2: {}}}\n"
      "  yard-3: {address: 02:00:00:00:01:0c, power: off, software: \"9.2\", ports: {t1: {}, t2: {}}}\n"
      "cables:\n  yard-1/t2--yard-2/t1: {}                     # plugged\n  yard-2/t2--yard-3/t1: {plugged: false, id: "
      "splice}\n"
      "stack: {primary: yard-1, members: [yard-1, yard-2]}\n";
  const auto procedure =
      "procedure: Append yard-3 at the east end\nsite: yard.yaml\nkeep: [yard-1, yard-2]\nsteps:\n"
      "  - power-on: yard-3\n  - await: up(yard-3)\n  - set-number: {device: yard-3, to: 9}\n  - restart: yard-3\n  - "
      "await: up(yard-3)\n"
      "  - any-order:\n      - - set-side: {port: yard-3/t1, side: west}\n        - enable: yard-3/t1\n        - save: "
      "yard-3\n      - plug: splice\n"
      "  - set-priority: {device: yard-3, to: 90, id: lower, via: yard-3}\n  - save: {devices: yard-3}\n  - apply: "
      "yard-3\n"
      "  - set-side: {port: yard-2/t2, side: east, via: yard-1}\n  - enable: {port: yard-2/t2, via: yard-1}\n"
      "  - apply: {devices: stack-of yard-1, via: yard-1}\n  - await: follower(yard-3)\n  - save: {devices: stack-of "
      "yard-1, via: yard-1}\n"
      "goal:\n  stack: [yard-1, yard-2, yard-3]\n  primary: yard-1\n  saved: true\n  where: number(yard-3) = 9\n"
      "faults: {cable-breaks: 1, crashes: 0, omissions: 0, late-starts: 0, mends: false}\n"
      "properties: [no-split, primary-stays, reaches-goal, {tolerates-loss: 1}]\n";
  const auto m = load(procedure, site);
  REQUIRE_MESSAGE(m.ok(), told(m));
  CHECK(m.value().procedure.steps.size() == 17);
  CHECK(m.value().procedure.steps[9].id == "lower");
  CHECK(m.value().procedure.steps[9].after == std::vector{StepId(7), StepId(8)});
}

// Every report on every model of the project: it fits, it explains, and it can be read back and walked.
#include <filesystem>
#include <sstream>

#include "report/advice.hpp"
#include "report/layout.hpp"
#include "report/quay.hpp"
#include "semantics/world.hpp"
#include "support/engines.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

namespace fs = std::filesystem;

std::vector<std::string> procedures() {
  std::vector<std::string> found;
  for (const auto& entry : fs::directory_iterator(CAIRN_SOURCE_DIR "/models/procedures")) {
    found.push_back(entry.path().string());
  }
  return found;
}

void check_layout(const std::string& text) {
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) {
    CAPTURE(line);
    CHECK(report::width_of(line) <= report::page_width);
    CHECK((line.empty() || line.back() != ' '));
  }
}

void check_report(const Model& model, const Report& report) {
  check_layout(render_text(model, report));
  const std::string json = render_json(model, report);
  const semantics::World world(model);
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict != Verdict::refuted) continue;
    const auto read = read_refutation(model, json, "v.json", p.asked.property);
    REQUIRE(read);
    const auto walked = replay(model, read.value().faults, read.value().asked, read.value().events);
    REQUIRE(std::holds_alternative<Walk>(walked));
    const Walk& walk = std::get<Walk>(walked);
    check_layout(render_walk(model, walk, p.asked));
    const std::string why = explain(model, *walk.breach, walk);
    CAPTURE(why);
    CHECK(why.ends_with('.'));
    CHECK(why.find("  ") == std::string::npos);
    for (const auto& way : report::ways_out(world, walk, *walk.breach)) CHECK(way.ends_with('.'));
  }
}

}  // namespace

TEST_CASE("every model of the project can be reported on, with its own faults and with more") {
  const DiskFiles disk;
  const auto all = procedures();
  REQUIRE(all.size() >= 20);
  ProveOptions more = test::exploring();
  more.cable_breaks = more.crashes = more.omissions = more.late_starts = 1;
  more.mends = true;
  more.limits.megabytes = 4;
  for (const std::string& path : all) {
    CAPTURE(path);
    const auto model = load_procedure(path, disk);
    REQUIRE(model);
    check_report(model.value(), proved(model.value(), test::exploring()));
    check_report(model.value(), proved(model.value(), more));
    check_layout(render_walk(model.value(), walk(model.value())));
  }
}

// Each kind of finding on a model that has it, and on the nearest one that has not.
#include <doctest/doctest.h>

#include <algorithm>
#include <cairn/cairn.hpp>
#include <string>

#include "report/quay.hpp"

using namespace cairn;
using namespace cairn::test;
using Kind = Finding::Kind;

namespace {

LintReport linted(const std::string& rest, const QuayRules& rules = {}, const Limits& limits = {}) {
  const MemoryFiles files({{"quay.yaml", quay_text(rest, rules)}});
  return lint("quay.yaml", files, limits);
}

std::vector<std::string> messages(const LintReport& report, Kind kind) {
  CHECK(report.problems.empty());
  std::vector<std::string> found;
  for (const Finding& finding : report.findings) {
    if (finding.kind == kind) found.push_back(finding.message);
  }
  return found;
}

std::vector<std::string> of(Kind kind, const std::string& rest, const QuayRules& rules = {}) {
  return messages(linted(rest, rules), kind);
}

using Found = std::vector<std::string>;

}  // namespace

TEST_CASE("never-reached: only the first step of what is out of reach, and what is in the way") {
  CHECK(of(Kind::never_reached, "  - await: up(quay-3)\n  - save: quay-1\n  - save: quay-2\n") ==
        Found{"step s2 is never reached, nor 1 step after it: step s1 waits for ever for up(quay-3)"});
  CHECK(of(Kind::never_reached, "  - check: up(quay-3)\n  - save: quay-1\n") ==
        Found{"step s2 is never reached: step s1 stops every run"});
  CHECK(of(Kind::never_reached, "  - power-on: quay-3\n  - await: up(quay-3)\n  - save: quay-1\n").empty());
  // Reached in some order is reached.
  CHECK(of(Kind::never_reached, "  - any-order: [plug: run, check: not cable-up(run)]\n  - save: quay-1\n").empty());
}

TEST_CASE("never-waits: an await that holds whenever its turn comes") {
  CHECK(of(Kind::never_waits, "  - await: up(quay-1)\n") ==
        Found{"step s1 never waits: up(quay-1) holds whenever its turn comes"});
  CHECK(of(Kind::never_waits, "  - power-on: quay-3\n  - await: up(quay-3)\n").empty());
  // Under the procedure's own faults it may have to wait.
  CHECK(of(Kind::never_waits, "  - await: up(quay-1)\nfaults: {crashes: 1}\n").empty());
}

TEST_CASE("cannot-fail: a check that holds whenever its turn comes") {
  CHECK(of(Kind::cannot_fail, "  - check: up(quay-1)\n") ==
        Found{"step s1 cannot fail: up(quay-1) holds whenever its turn comes"});
  CHECK(of(Kind::cannot_fail, "  - check: up(quay-3)\n").empty());
  CHECK(of(Kind::cannot_fail, "  - check: up(quay-1)\nfaults: {crashes: 1}\n").empty());
}

TEST_CASE("changes-nothing: done already, or always refused") {
  CHECK(of(Kind::changes_nothing, "  - save: quay-1\n") ==
        Found{"step s1 changes nothing in any run: all is already as it asks for"});
  CHECK(of(Kind::changes_nothing, "  - enable: quay-3/w\n") ==
        Found{"step s1 changes nothing in any run: it is always refused"});
  CHECK(of(Kind::changes_nothing, "  - disable: quay-1/w\n  - save: quay-1\n").empty());
  CHECK(of(Kind::changes_nothing, "  - restart: quay-2\n  - await: up(quay-2)\n").empty());
}

TEST_CASE("never-applied: a side that never comes into force") {
  CHECK(of(Kind::never_applied, "  - set-side: {port: quay-1/w, side: west}\n") ==
        Found{"the side that step s1 sets on quay-1/w never comes into force"});
  CHECK(of(Kind::never_applied, "  - clear-side: quay-2/e\n").size() == 1);
  CHECK(of(Kind::never_applied, "  - set-side: {port: quay-1/w, side: west}\n  - apply: quay-1\n").empty());
  // A start brings a saved side into force (semantics 5.b).
  CHECK(of(Kind::never_applied,
           "  - set-side: {port: quay-2/e, side: west}\n  - save: quay-2\n  - restart: quay-2\n"
           "  - await: up(quay-2)\n")
            .empty());
  QuayRules at_once;
  at_once.side_takes = "at-once";
  CHECK(of(Kind::never_applied, "  - set-side: {port: quay-1/w, side: west}\n", at_once).empty());
}

TEST_CASE("goal-from-the-start") {
  CHECK(of(Kind::goal_from_the_start, "  - save: quay-1\ngoal: {stack: [quay-1, quay-2]}\n") ==
        Found{"the goal holds before the first step"});
  CHECK(of(Kind::goal_from_the_start, "  - save: quay-1\ngoal: {stack: [quay-1, quay-2, quay-3]}\n").empty());
}

TEST_CASE("number-in-use: a number of another device that takes part") {
  CHECK(of(Kind::number_in_use, "  - set-number: {device: quay-2, to: 1}\n") ==
        Found{"step s1 gives quay-2 number 1, which quay-1 has too"});
  CHECK(of(Kind::number_in_use, "  - set-number: {device: quay-2, to: 7}\n").empty());
  // quay-3 is off and stays so, or it is switched on later.
  CHECK(of(Kind::number_in_use, "  - set-number: {device: quay-2, to: 3}\n").empty());
  CHECK(of(Kind::number_in_use, "  - set-number: {device: quay-2, to: 3}\n  - power-on: quay-3\n").size() == 1);
}

TEST_CASE("out-of-range: a value that the platform does not have") {
  CHECK(of(Kind::out_of_range, "  - set-number: {device: quay-2, to: 10}\n") ==
        Found{"step s1 asks for number 10, which the platform does not have"});
  CHECK(of(Kind::out_of_range, "  - set-priority: {device: quay-2, to: 0}\n") ==
        Found{"step s1 asks for priority 0, which the platform does not have"});
  CHECK(of(Kind::out_of_range, "  - set-number: {device: quay-2, to: 9}\n").empty());
}

TEST_CASE("console-lost: a step that may come while its console is down") {
  CHECK(of(Kind::console_lost, "  - power-on: quay-3\n  - disable: quay-3/w\n  - disable: quay-3/e\n") ==
        Found{"step s2 may come while its console, quay-3, is off or still starting"});
  CHECK(of(Kind::console_lost, "  - power-on: quay-3\n  - save: quay-3\n").size() == 1);
  CHECK(of(Kind::console_lost, "  - power-on: quay-3\n  - await: up(quay-3)\n  - save: quay-3\n").empty());
  // Without faults: that a device may crash is no fault of the procedure.
  CHECK(of(Kind::console_lost, "  - disable: quay-1/w\nfaults: {crashes: 1}\n").empty());
}

TEST_CASE("findings come in file order, with their place") {
  const LintReport report = linted("  - save: quay-1\n  - check: up(quay-1)\n  - await: up(quay-2)\n");
  REQUIRE(report.findings.size() == 3);
  CHECK(report.findings[0].kind == Kind::changes_nothing);
  CHECK(report.findings[1].kind == Kind::cannot_fail);
  CHECK(report.findings[2].kind == Kind::never_waits);
  CHECK(report.findings[0].span.file == "quay.yaml");
  CHECK(report.findings[0].span.line + 1 == report.findings[1].span.line);
}

TEST_CASE("a limit that is met leaves out what needs every run, and says so") {
  Limits limits;
  limits.seconds = 0;
  const LintReport report = linted("  - save: quay-1\n  - set-number: {device: quay-2, to: 10}\n", {}, limits);
  CHECK(report.cut_short == Reason::time);
  CHECK(messages(report, Kind::changes_nothing).empty());
  CHECK(messages(report, Kind::out_of_range).size() == 1);
}

TEST_CASE("5.k a run without end is no clean bill") {
  const MemoryFiles files({{"quay.yaml", run_without_end}});
  CHECK(lint("quay.yaml", files).cut_short == Reason::contradiction);
}

TEST_CASE("problems leave no room for findings") {
  const std::map<std::string, std::string> content{{"a.yaml", "procedure: A\nsite: nowhere.yaml\n"}};
  const MemoryFiles files(content);
  CHECK(!lint("a.yaml", files).problems.empty());
  CHECK(!lint("b.yaml", files).problems.empty());
}

TEST_CASE("a site or a platform by itself") {
  const std::string platform =
      "platform: P\nnumbers: [1, 9]\npriorities: [1, 9]\nfactory: {number: 1, priority: 1, enabled: true, side: none}\n"
      "number-takes: at-once\npriority-takes: at-once\nsettings-follow: device\nside-takes: at-once\n"
      "side-needs-disabled: false\nfacing: any\nside-leads-to: any\nsoftware: any\norphans: restart\nelection: []\n";
  const std::map<std::string, std::string> content{
      {"platform.yaml", platform},
      {"fine.yaml", "site: S\nplatform: platform.yaml\ndevices: {a: {number: 2}, b: {number: 3}, c: {}, d: {}}\n"},
      {"clash.yaml", "site: S\nplatform: platform.yaml\ndevices: {a: {number: 2}, b: {number: 2}}\n"}};
  const MemoryFiles files(content);
  CHECK(messages(lint("platform.yaml", files), Kind::number_in_use).empty());
  // Factory-new devices have the same number all of them: common practice, no source.
  CHECK(messages(lint("fine.yaml", files), Kind::number_in_use).empty());
  CHECK(messages(lint("clash.yaml", files), Kind::number_in_use) == Found{"devices a and b both have number 2"});
}

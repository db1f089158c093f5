#include <sstream>

#include "report/layout.hpp"
#include "report/quay.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

std::string without_colours(std::string text) {
  for (std::size_t at = text.find('\x1b'); at != std::string::npos; at = text.find('\x1b')) {
    text.erase(at, text.find('m', at) - at + 1);
  }
  return text;
}

// Without regard to where lines break.
bool tells(const std::string& text, const std::string& part) {
  return has(flowing(text), part);
}

const std::string outranks =
    "  - power-on: quay-3\n  - await: up(quay-3)\n  - set-priority: {device: quay-3, to: 220}\n"
    "  - restart: quay-3\n  - await: up(quay-3)\n  - plug: run\n"
    "goal: {stack: [quay-1, quay-2, quay-3], primary: quay-1}\n";

}  // namespace

TEST_CASE("the verdict comes first, then one line for each property") {
  const Model model = quay(outranks);
  const auto lines = lines_of(render_text(model, proved(model)));
  CHECK(lines[0] == "REFUTED      At the quay");
  CHECK(lines[1].empty());
  CHECK(lines[2] == "  proved     no-split             what is to be kept stays one stack");
  CHECK(lines[3] == "  refuted    primary-stays        by 8 events, no fault among them");
}

TEST_CASE("everything fits into 80 columns, and no line ends in blanks") {
  const Model model =
      quay(outranks + "faults: {cable-breaks: 1, crashes: 1, omissions: 1, late-starts: 1, mends: true}\n");
  for (const auto& line : lines_of(render_text(model, proved(model)))) {
    CAPTURE(line);
    CHECK(report::width_of(line) <= report::page_width);
    CHECK((line.empty() || line.back() != ' '));
  }
}

TEST_CASE("colour adds nothing that the words do not say") {
  const Model model = quay(outranks);
  const Report report = proved(model);
  const std::string plain = render_text(model, report);
  const std::string coloured = render_text(model, report, {true, false, false});
  CHECK(plain.find('\x1b') == std::string::npos);
  CHECK(coloured != plain);
  CHECK(without_colours(coloured) == plain);
}

TEST_CASE("same input, same bytes; times only where they are asked for") {
  const Model model = quay(outranks);
  CHECK(render_text(model, proved(model)) == render_text(model, proved(model)));
  CHECK(!has(render_text(model, proved(model)), "What it cost"));
}

TEST_CASE("the cost is told property by property, with what solvers did and what reductions spared") {
  const Model model = quay(outranks);
  Report report = proved(model);
  report.properties[0].explored = 12345;
  report.properties[0].cost = {{1.5, 0.25, 2, 3.125}, {}};
  report.properties[1].cost = {{}, {1234, 5, 678}};
  report.timing = {2.5, 0.25, 4, 3.125};
  const std::string whole = render_text(model, report, {false, true, false});
  CHECK(has(whole, "  no-split                   12,345      1.500      0.250      2.000      3.125\n"));
  CHECK(has(whole, "  in all                                 2.500      0.250      4.000      3.125\n"));
  CHECK(has(whole, "  primary-stays               1,234                     5                   678\n"));
  CHECK(!has(whole, "seniority"));
  report.savings = {.outcomes = 2000, .by_seniority = 1999, .by_alike = 1998};
  const std::string reduced = render_text(model, report, {false, true, true});
  CHECK(has(reduced, "Events taken in the reduced explorations: 2,000."));
  CHECK(has(reduced, "    seniority   1,999\n"));
  CHECK(has(reduced, "    alike       1,998\n"));
  CHECK(!has(reduced, "orders"));
  report.savings.states_left = 1;
  CHECK(
      has(render_text(model, report, {false, true, true}), "orders      events not taken: 0; states left as they are"));
}

TEST_CASE("properties that break by the same events are told once") {
  const Model model = quay(outranks);
  const std::string text = render_text(model, proved(model));
  CHECK(has(text, "How primary-stays and members-stay break: 8 events, no fault among them"));
  CHECK(!has(text, "How members-stay breaks"));
}

TEST_CASE("a beginning that was told is not told again") {
  const Model model = quay(outranks);
  const std::string text = render_text(model, proved(model));
  CHECK(has(text, "  1 to 8 as above, where primary-stays and members-stay break."));
}

TEST_CASE("brief is the verdicts alone") {
  const Model model = quay(outranks);
  const auto lines = lines_of(render_text(model, proved(model), {false, false, true}));
  CHECK(lines.size() == 9);
}

TEST_CASE("a report says what it rests on") {
  const Model model = quay(outranks + "faults: {cable-breaks: 2, crashes: 1}\n");
  const std::string text = render_text(model, proved(model));
  CHECK(tells(text, "What this rests on"));
  CHECK(tells(text, "Up to 2 cable breaks and 1 crash, at any moment, for no-split,"));
  CHECK(tells(text, "None for the"));
  CHECK(tells(text, "starts so late that a device leads by itself"));
  CHECK(tells(text, "power that returns to one device after another"));
  CHECK(tells(text, "Losers of a contest restart; a device whose number clashes is"));
  CHECK(tells(text, "docs/limits-of-the-model.md"));
  CHECK(tells(text, "Confirm the platform's rules"));
  CHECK(tells(
      text, "quay-1: w and e enabled, no side on w; quay-2: w and e enabled; quay-3: w and e enabled, no side on e."));
}

TEST_CASE("ties that the site does not state are named") {
  const Model model = quay("  - save: quay-1\n");
  Report report = proved(model, asking(Property::no_split));
  report.rests_on.ties = {{UnstatedTie::Key::address, DeviceId(0), DeviceId(2)},
                          {UnstatedTie::Key::tenure, DeviceId(1), DeviceId(2)}};
  const std::string text = render_text(model, report);
  CHECK(tells(text, "quay-1 before quay-3 by address and quay-2 before quay-3 by time up."));
}

TEST_CASE("proved of nothing says so") {
  const Model model = quay("  - await: up(quay-3)\ngoal: {stack: [quay-1]}\nproperties: [survives-cold-start]\n");
  CHECK(has(render_text(model, proved(model)), "  proved     survives-cold-start  of nothing: no run is complete"));
}

TEST_CASE("an open question says what ended the search") {
  const Model model = quay(outranks);
  ProveOptions options;
  options.limits.seconds = 0;
  const std::string text = render_text(model, proved(model, options));
  CHECK(text.starts_with("UNDECIDED"));
  CHECK(has(text, "  undecided  no-split             the time limit was met first"));
}

TEST_CASE("a contradiction claims nothing") {
  const Model model = quay(outranks);
  Report report = proved(model);
  report.properties[0].verdict = Verdict::undecided;
  report.properties[0].reason = Reason::contradiction;
  report.properties[0].contradiction = "the replay sees no breach";
  const std::string text = render_text(model, report);
  CHECK(text.starts_with("NO ANSWER"));
  CHECK(has(text, "Nothing is claimed"));
  CHECK(!has(text, "How primary-stays"));
}

TEST_CASE("a summary is one line, whatever the title says") {
  Model model = quay(outranks);
  CHECK(render_summary_line("q.yaml", model, proved(model)) ==
        "refuted    q.yaml: primary-stays, members-stay, reaches-goal and survives-cold-start\n");
  model.procedure.title = "Two\nlines";
  const Report report = proved(model, asking(Property::no_split));
  CHECK(render_summary_line("q.yaml", model, report) == "proved     q.yaml: Two lines\n");
}

TEST_CASE("a title cannot drive the terminal") {
  Model model = quay(outranks);
  model.procedure.title = "red \x1b[31m";
  CHECK(render_text(model, proved(model)).find('\x1b') == std::string::npos);
}

TEST_CASE("of a proof by states it is told whether they were reduced, and whether they were evaluated again") {
  const Model model = quay("  - save: quay-1\n");
  Report report = proved(model, asking(Property::no_split));
  Settled& settled = report.properties[0].settled;
  settled = {};
  CHECK(tells(render_text(model, report), "no-split: every state visited; not evaluated again with the formulas."));
  settled.confirmed = true;
  CHECK(tells(render_text(model, report), "no-split: every state visited, and evaluated again with the formulas."));
  settled.reduced = true;
  CHECK(tells(render_text(model, report),
              "every state visited, but for those that make no difference; evaluated again with the formulas, each for "
              "all that differ from it in what is never asked."));
  settled.confirmed = false;
  CHECK(tells(render_text(model, report),
              "every state visited, but for those that make no difference; not evaluated again with the formulas."));
  settled.unclear = true;
  CHECK(tells(render_text(model, report),
              "every state visited, but for those that make no difference; evaluated again with the formulas, which "
              "could not tell of all of them."));
}

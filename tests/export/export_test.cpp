// The whole of an export: what is asked of a verdict, what is left out, and that the index tells all of it.
#include "cairn/export.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <atomic>
#include <set>

#include "cairn/render.hpp"
#include "support/model_builder.hpp"
#include "support/solver_programs.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

Export exported(const Model& model, const AskedProperty& asked, const ProveOptions& options = {}) {
  auto all = export_questions(model, asked, options);
  REQUIRE(all);
  return std::move(all).value();
}

std::vector<std::string> names_of(const Export& all) {
  std::vector<std::string> names;
  for (const ExportedQuestion& question : all.questions) names.push_back(question.name);
  return names;
}

/// Two stacks of one switch each, and a cable between them that a step plugs in: the primary with the lower priority
/// goes down.
Model merge() {
  ModelBuilder b;
  DeviceIs high;
  high.priority = 8;
  const DeviceId one = b.device("quay-1");
  const DeviceId two = b.device("quay-2", high);
  b.keep({one});
  const CableId span = b.cable(b.east(one), b.west(two), false);
  b.save({two});
  b.plug(span);
  b.goal(goal_of({one, two}));
  return b.model();
}

constexpr AskedProperty primary_stays{Property::primary_stays, 0};
constexpr AskedProperty no_refusal{Property::no_refusal, 0};

}  // namespace

TEST_CASE("refuted: a run of that length, and no shorter one") {
  const Export all = exported(merge(), primary_stays);
  CHECK(all.report.verdict() == Verdict::refuted);
  CHECK(all.verdict().events.size() == 2);
  // That one event does not do is plain: the only one that can come first is no plug.
  CHECK(names_of(all) == std::vector<std::string>{"run-of-2-events-breaks-primary-stays"});
  CHECK(all.questions.front().satisfiable);
  CHECK(all.left_out == std::vector<std::string>{
                            "whether a shorter run breaks it: no, as is plain from the formulas without a solver"});
}

TEST_CASE("refuted by the start itself") {
  ModelBuilder b;
  b.devices({"gate-1", "gate-2"});  // two leaders, apart
  const Export all = exported(b.model(), {Property::no_split, 0});
  CHECK(names_of(all) == std::vector<std::string>{"start-breaks-no-split"});
  CHECK(all.left_out.empty());
}

TEST_CASE("proved: the proof by facts, and the runs as long as the plain one") {
  const Export all = exported(merge(), no_refusal);
  CHECK(all.report.verdict() == Verdict::proved);
  CHECK(all.verdict().settled.by == Settled::By::facts);
  const std::vector<std::string> names = names_of(all);
  CHECK(std::ranges::count(names, "facts-exclude-a-breach-of-no-refusal") == 1);
  CHECK(std::ranges::count(names, "there-are-runs-of-3-events") == 1);  // quay-1 starts anew
  const auto kept = static_cast<std::size_t>(
      std::ranges::count_if(names, [](const std::string& name) { return name.starts_with("event-keeps-"); }));
  CHECK(kept == all.verdict().settled.facts.size());
  CHECK(std::set<std::string>(names.begin(), names.end()).size() == names.size());
}

TEST_CASE("every question is answered as expected by both programs, and says so itself") {
  for (const AskedProperty& asked : {primary_stays, no_refusal}) {
    for (const ExportedQuestion& question : exported(merge(), asked).questions) {
      CAPTURE(question.name);
      const std::string answer = question.satisfiable ? "sat" : "unsat";
      CHECK(answer_of(SolverProgram::z3, question.script) == answer + "\n");
      CHECK(answer_of(SolverProgram::cvc5, question.script) == answer + "\n");
      CHECK(has(question.script, "(set-info :status " + answer + ")"));
      CHECK(question.script.starts_with("; " + std::string(export_mark) + "\n"));
    }
  }
}

TEST_CASE("undecided: no question") {
  const std::atomic<bool> interrupt = true;
  ProveOptions options;
  options.limits.interrupt = &interrupt;
  const Export all = exported(merge(), no_refusal, options);
  CHECK(all.report.verdict() == Verdict::undecided);
  CHECK(all.report.interrupted());
  CHECK(all.questions.empty());
}

TEST_CASE("an error where prove has one") {
  ModelBuilder b;
  b.device("gate-1");
  const auto all = export_questions(b.model(), {Property::reaches_goal, 0});
  REQUIRE_FALSE(all);
  CHECK(has(all.problems().front().message, "states no goal"));
}

TEST_CASE("same call, same questions") {
  const Export one = exported(merge(), no_refusal);
  const Export other = exported(merge(), no_refusal);
  REQUIRE(one.questions.size() == other.questions.size());
  for (std::size_t i = 0; i < one.questions.size(); ++i) CHECK(one.questions[i].script == other.questions[i].script);
}

TEST_CASE("the index tells the verdict, every question with its answer, every fact, and what is left out") {
  const Model model = merge();
  for (const AskedProperty& asked : {primary_stays, no_refusal}) {
    const Export all = exported(model, asked);
    const std::string index = render_export_index(model, all);
    CHECK(index.starts_with(std::string(export_mark) + "\n"));
    CHECK(has(index, asked == no_refusal ? "verdict: proved." : "verdict: refuted by 2 events"));
    for (const ExportedQuestion& question : all.questions) {
      CHECK(has(index, (question.satisfiable ? "  sat    " : "  unsat  ") + question.name + ".smt2\n"));
    }
    for (const std::string& fact : all.verdict().settled.facts) CHECK(has(index, fact.substr(0, 40)));
    CHECK(has(index, "Not asked") == !all.left_out.empty());
    CHECK(has(index, "What the answers do not show"));
    const std::string summary = render_export_summary(model, all, "questions");
    for (const std::string& name : names_of(all)) CHECK(has(summary, name + ".smt2\n"));
    CHECK(has(summary, "written to questions"));
  }
}

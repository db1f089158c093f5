// Exported questions of the models of the project and of random ones, put to the programs z3 and cvc5 with their
// strictest reading of SMT-LIB 2.6: each gives the answer that is expected. Of each model one property is asked, a
// different one from model to model, and of its questions the shortest of either answer and one more; the time of the
// whole is bounded, and so is what has to be reached within.
#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>

#include "cairn/export.hpp"
#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "models/shelf.hpp"
#include "spec/random_models.hpp"
#include "support/solver_programs.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

constexpr std::size_t longest_script = 100'000;
constexpr std::size_t most_steps = 16;

/// Asks both programs, and counts.
class Campaign {
 public:
  void put(const Model& model, const AskedProperty& asked) {
    const auto all = export_questions(model, asked);
    REQUIRE(all);
    CHECK(all.value().report.verdict() != Verdict::undecided);
    const std::vector<const ExportedQuestion*> chosen = choose(all.value().questions);
    for (const ExportedQuestion* question : chosen) {
      CAPTURE(model.procedure.title);
      CAPTURE(name_of(asked.property));
      CAPTURE(question->name);
      const std::string answer = question->satisfiable ? "sat\n" : "unsat\n";
      CHECK(answer_of(SolverProgram::z3, question->script) == answer);
      CHECK(answer_of(SolverProgram::cvc5, question->script) == answer);
      ++(question->satisfiable ? satisfiable : unsatisfiable);
    }
    models += chosen.empty() ? 0 : 1;
    const PropertyVerdict& verdict = all.value().verdict();
    by_facts += verdict.verdict == Verdict::proved && verdict.settled.by == Settled::By::facts ? 1 : 0;
  }

  int models = 0, by_facts = 0, satisfiable = 0, unsatisfiable = 0;

 private:
  // The shortest of either answer, and one that differs from model to model.
  [[nodiscard]] std::vector<const ExportedQuestion*> choose(const std::vector<ExportedQuestion>& questions) const {
    std::vector<const ExportedQuestion*> fit;
    for (const ExportedQuestion& question : questions) {
      if (question.script.size() <= longest_script) fit.push_back(&question);
    }
    std::ranges::sort(fit, {}, [](const ExportedQuestion* question) { return question->script.size(); });
    std::vector<const ExportedQuestion*> chosen;
    for (const bool answer : {true, false}) {
      const auto first =
          std::ranges::find_if(fit, [&](const ExportedQuestion* question) { return question->satisfiable == answer; });
      if (first != fit.end()) chosen.push_back(*first);
    }
    if (!fit.empty()) {
      const ExportedQuestion* other = fit[static_cast<std::size_t>(models) % fit.size()];
      if (std::ranges::find(chosen, other) == chosen.end()) chosen.push_back(other);
    }
    return chosen;
  }
};

double seconds_since(std::chrono::steady_clock::time_point start) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace

TEST_CASE("both programs answer as expected, for at least 60 models") {
  const auto start = std::chrono::steady_clock::now();
  const auto time_is_left = [&](double until) { return seconds_since(start) < until; };
  Campaign campaign;
  std::size_t turn = 0;
  for (const std::string& path : model_files()) {
    if (!is_procedure(path)) continue;
    const Heading heading = read_heading(model_text(path));
    if (heading.expectations.empty()) continue;
    const auto model = load_procedure(model_path(path), DiskFiles());
    REQUIRE(model);
    if (model.value().procedure.steps.size() > most_steps) continue;
    campaign.put(model.value(), heading.expectations[turn++ % heading.expectations.size()].asked);
  }
  Random random(60);
  for (int round = 0; campaign.models < 90 && time_is_left(60); ++round) {
    RandomModelIs is{4, 5};
    if (round % 2 == 0) is.faults = {.cable_breaks = 1, .crashes = 1};
    const Model model = random_model(random, is);
    const auto property = static_cast<Property>(round % 5);
    if (speaks_of_keep(property) && model.procedure.keep.empty()) continue;
    campaign.put(model, {property, 0});
  }
  MESSAGE(campaign.models << " models, " << campaign.by_facts << " proofs by facts, " << campaign.unsatisfiable
                          << " questions without and " << campaign.satisfiable << " with an answer");
  CHECK(campaign.models >= 60);
  CHECK(campaign.by_facts >= 20);
  CHECK(campaign.satisfiable >= 60);
  CHECK(campaign.unsatisfiable >= 60);
}

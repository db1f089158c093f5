#include "cairn/export.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "base/contradiction.hpp"
#include "base/text.hpp"
#include "cairn/prove.hpp"
#include "cairn/walk.hpp"
#include "solver/clauses.hpp"
#include "solver/z3_solver.hpp"
#include "verify/audit.hpp"
#include "verify/export_facts.hpp"
#include "verify/export_runs.hpp"
#include "verify/told_proofs.hpp"

namespace cairn {

namespace {

using solver::Outcome;
using verify::Draft;

// A question that takes more than this is of no use to a reader, and of little to a solver. Both are counted, so that
// the same call writes the same files on every machine.
constexpr std::size_t most_nodes = 1'000'000;
constexpr std::uint64_t most_effort = 40'000'000;

/// Asks cairn's own solver.
Outcome answer_of(const system::System& system, const Draft& draft, const Limits& limits, std::string& complaint) {
  const auto z3 = solver::make_z3_solver(limits.interrupt);
  solver::Clauses clauses(system.terms, *z3);
  for (const system::Assertion& assertion : draft.assertions) clauses.require(assertion.term);
  const Outcome outcome = z3->check({}, {limits.seconds, most_effort, {}});
  if (outcome == Outcome::unknown && z3->cause() == solver::Cause::failed) complaint = z3->complaint();
  return outcome;
}

class Exporter {
 public:
  /// \param proofs  those by facts that the report tells of
  Exporter(const Model& model, const AskedProperty& asked, const ProveOptions& options, Report report,
           const std::vector<verify::ToldProof>& proofs)
      : model_(model), asked_(asked), options_(options), proofs_(proofs) {
    if (asked_with_faults(asked.property)) faults_ = report.faults;
    out_.report = std::move(report);
  }

  Export run() {
    try {
      ask();
    } catch (const Contradiction& contradiction) {
      verify::claim_nothing(contradiction.what(), out_.report.properties.front());
      out_.questions.clear();
    }
    return std::move(out_);
  }

 private:
  void ask() {
    if (out_.verdict().verdict == Verdict::proved) {
      ask_about_facts();
      ask_about_plain_runs();
    } else if (out_.verdict().verdict == Verdict::refuted) {
      ask_about_refutation();
    }
  }

  void ask_about_facts() {
    if (proofs_.empty()) return leave_out("the obligations of a proof by facts", "no such proof was found");
    const auto counting = out_.verdict().settled.any_number ? system::Counting::uncounted : system::Counting::counted;
    system::System system(model_, faults_, system::stated_domains(model_, faults_), counting);
    for (const Draft& draft : verify::questions_of_facts(system, asked_, proofs_.front().facts)) add(system, draft);
  }

  void ask_about_plain_runs() {
    const std::size_t plain = walk(model_).moments.size();
    Runs runs(model_, faults_, asked_);
    add(runs.system, runs.questions.exists(plain), fmt::format("whether there are runs of {}", events(plain)));
    const std::size_t most = plain + runs.questions.after_rest();
    add(runs.system, runs.questions.does_not_break(most),
        fmt::format("whether a run of at most {} breaks it", events(most)));
  }

  void ask_about_refutation() {
    Runs runs(model_, faults_, asked_);
    const std::size_t length = out_.verdict().events.size();
    if (length == 0 && !speaks_of_goal(asked_.property)) {
      add(runs.system, verify::question_of_start(runs.system, asked_, true));
      return;
    }
    add(runs.system, runs.questions.breaks(out_.verdict().events),
        fmt::format("whether a run of {} breaks it", events(length)));
    if (length == 0) return;
    add(runs.system, runs.questions.does_not_break(length - 1), "whether a shorter run breaks it");
  }

  /// Runs over domains as small as the text of the model allows.
  struct Runs {
    Runs(const Model& model, const FaultBudget& faults, const AskedProperty& asked)
        : system(model, faults, system::static_domains(model, faults)),
          unroller(system),
          questions(unroller, asked, most_nodes) {}
    system::System system;
    solver::Unroller unroller;
    verify::RunQuestions questions;
  };

  static std::string events(std::size_t n) { return counted(n, "event"); }

  void leave_out(const std::string& what, const std::string& why) {
    out_.left_out.push_back(fmt::format("{}: {}", what, why));
  }

  void add(const system::System& system, const std::optional<Draft>& draft, const std::string& what) {
    if (!draft) {
      leave_out(what, fmt::format("the question has more than {} nodes", most_nodes));
    } else if (!draft->satisfiable && is_plain(*draft)) {
      leave_out(what, "no, as is plain from the formulas without a solver");
    } else {
      add(system, *draft);
    }
  }

  // Nothing is left to ask where folding the formulas has given the answer.
  static bool is_plain(const Draft& draft) {
    return std::ranges::any_of(draft.assertions,
                               [](const system::Assertion& each) { return each.term == system::never; });
  }

  // No claim unaudited.
  void add(const system::System& system, const Draft& draft) {
    std::string complaint;
    const Outcome outcome = answer_of(system, draft, options_.limits, complaint);
    if (outcome == Outcome::unknown) {
      leave_out(draft.name, complaint.empty() ? "cairn's own solver needs too long for it" : complaint);
    } else if ((outcome == Outcome::satisfiable) != draft.satisfiable) {
      throw Contradiction(fmt::format("the question {} has not the answer that is expected of it", draft.name));
    } else {
      out_.questions.push_back(verify::written(system, asked_, draft));
    }
  }

  const Model& model_;
  AskedProperty asked_;
  const ProveOptions& options_;
  const std::vector<verify::ToldProof>& proofs_;
  FaultBudget faults_;
  Export out_;
};

}  // namespace

Result<Export> export_questions(const Model& model, const AskedProperty& asked, const ProveOptions& options) {
  if (Diagnostics problems = objections_to_template(model, "`cairn export`"); !problems.empty()) return problems;
  ProveOptions of_one = options;
  of_one.properties = {asked};
  std::vector<verify::ToldProof> proofs;
  Result<Report> report = verify::prove(model, of_one, proofs);
  if (!report) return report.problems();
  return Exporter(model, asked, options, std::move(report).value(), proofs).run();
}

}  // namespace cairn

#include "cairn/export.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "base/contradiction.hpp"
#include "base/text.hpp"
#include "cairn/prove.hpp"
#include "cairn/walk.hpp"
#include "explore/explore.hpp"
#include "solver/clauses.hpp"
#include "solver/z3_solver.hpp"
#include "verify/audit.hpp"
#include "verify/by_facts.hpp"
#include "verify/export_facts.hpp"
#include "verify/export_runs.hpp"

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
  Exporter(const Model& model, const AskedProperty& asked, const ProveOptions& options, Report report)
      : model_(model), asked_(asked), options_(options) {
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
    if (out_.verdict().settled.by != Settled::By::facts) {
      leave_out("the obligations of a proof by facts", "no such proof was found");
      return;
    }
    const auto proof = proof_by_facts();
    if (!proof) {
      leave_out("the obligations of the proof by facts", "a limit was met first");
      return;
    }
    system::System system(model_, faults_, system::stated_domains(model_, faults_),
                          proof->any_number ? system::Counting::uncounted : system::Counting::counted);
    for (const Draft& draft : verify::questions_of_facts(system, asked_, proof->facts)) add(system, draft);
  }

  // In the same way as `prove` has found it, so that it is the same.
  std::optional<solver::FactsProof> proof_by_facts() {
    const semantics::World world(model_);
    const explore::Exploration all = explore::explore(world, faults_, {asked_}, explore::Guard(options_.limits, {}),
                                                      nullptr, options_.confirm_limit);
    verify::ByFacts facts(model_, faults_, options_.limits);
    facts.see(all);
    auto answer = facts.prove(asked_);
    if (auto* proof = std::get_if<solver::FactsProof>(&answer)) return std::move(*proof);
    return std::nullopt;
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
  FaultBudget faults_;
  Export out_;
};

}  // namespace

Result<Export> export_questions(const Model& model, const AskedProperty& asked, const ProveOptions& options) {
  ProveOptions of_one = options;
  of_one.properties = {asked};
  Result<Report> report = prove(model, of_one);
  if (!report) return report.problems();
  return Exporter(model, asked, options, std::move(report).value()).run();
}

}  // namespace cairn

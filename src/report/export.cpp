// What `cairn export` wrote: an index beside the questions, and a few lines for the one who asked.
#include "cairn/export.hpp"

#include <fmt/format.h>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/layout.hpp"
#include "report/outcomes.hpp"
#include "report/refutation.hpp"
#include "report/words.hpp"

namespace cairn {

namespace {

using report::Page;
using report::Tone;

// ", under at most 1 crash", or nothing.
std::string faults_in_words(const FaultBudget& faults) {
  std::vector<std::string> all;
  const auto add = [&](std::int64_t n, const char* one, const char* many) {
    if (n > 0) all.push_back(fmt::format("{} {}", n, n == 1 ? one : many));
  };
  add(faults.cable_breaks, "cable break", "cable breaks");
  add(faults.crashes, "crash", "crashes");
  add(faults.omissions, "omission", "omissions");
  add(faults.late_starts, "late start", "late starts");
  return all.empty() ? "" : ", under at most " + report::listed(all);
}

std::string verdict_in_words(const Export& all) {
  const PropertyVerdict& verdict = all.verdict();
  const bool with_faults = asked_with_faults(verdict.asked.property);
  const std::string under = with_faults ? faults_in_words(all.report.faults) : "";
  if (verdict.verdict == Verdict::undecided) return "undecided: " + report::reason_in_words(verdict);
  if (verdict.verdict == Verdict::refuted) {
    return fmt::format("refuted by {}{}", report::length_in_words(verdict.asked.property, verdict.events), under);
  }
  const std::string nothing = verdict.vacuous.empty() ? "" : fmt::format(", of nothing: {}", verdict.vacuous);
  return fmt::format("proved{}{}", nothing, under);
}

const char* answer(const ExportedQuestion& question) {
  return question.satisfiable ? "sat" : "unsat";
}

void tell_facts(Page& page, const Settled& proof) {
  page.heading("The proof");
  page.line();
  page.paragraph(
      0, fmt::format("In every settled state that the procedure can lead to, {} hold{}. The first such state has "
                     "them, each event keeps them, and where they hold the property is not broken. The files whose "
                     "names do not tell a number of events ask just that: when each answer is the expected one, the "
                     "property is proved for runs of any length.{}",
                     proof.facts.size() == 1 ? "this fact" : "these facts", proof.facts.size() == 1 ? "s" : "",
                     proof.any_number ? " Faults are not counted in them: the proof holds for any number of "
                                        "faults of the kinds that may strike at all."
                                      : ""));
  page.line();
  for (std::size_t i = 0; i < proof.facts.size(); ++i) page.entry(2, std::to_string(i + 1), 4, proof.facts[i]);
}

}  // namespace

std::string render_export_index(const Model& model, const Export& all) {
  Page page({});
  page.line(export_mark);
  page.line();
  page.paragraph(0, fmt::format("Questions on {} of the procedure \"{}\".", report::name_with_k(all.verdict().asked),
                                model.procedure.title));
  page.paragraph(0, fmt::format("cairn's verdict: {}.", verdict_in_words(all)));
  page.line();
  page.paragraph(
      0,
      "Each file is one question in SMT-LIB 2.6, logic QF_UF, for any program that reads it. It tells at its "
      "top what it asks and how to read it, and the answer that is expected. For instance:");
  page.line();
  page.line("    for question in *.smt2; do echo \"$(z3 \"$question\")  $question\"; done");
  const PropertyVerdict& verdict = all.verdict();
  const bool by_facts = verdict.verdict == Verdict::proved && verdict.settled.by == Settled::By::facts;
  if (by_facts) tell_facts(page, verdict.settled);
  page.heading("The questions");
  for (const ExportedQuestion& question : all.questions) {
    page.line();
    page.line(fmt::format("  {}  {}.smt2", report::padded(answer(question), 5), question.name));
    page.paragraph(9, question.says);
  }
  if (!all.left_out.empty()) {
    page.heading("Not asked");
    for (const std::string& one : all.left_out) {
      page.line();
      page.paragraph(2, one + ".");
    }
  }
  page.heading("What the answers do not show");
  page.line();
  page.paragraph(
      0,
      "That the formulas say what docs/semantics.md of cairn says: cairn compares them with a second writing "
      "of it, on random states and on every state of its models. That the few lemmas hold which the formulas "
      "lean on: proofs/ has them. That no event leads to a value for which there is no variable: the formulas "
      "are built so that it cannot. And that the devices behave as the platform file says: confirm that with "
      "their documentation and in a lab.");
  return page.take();
}

std::string render_export_summary(const Model& model, const Export& all, const std::string& folder,
                                  const TextStyle& style) {
  Page page(style);
  page.paragraph(0, fmt::format("{} of \"{}\" is {}.", report::name_with_k(all.verdict().asked), model.procedure.title,
                                verdict_in_words(all)));
  if (all.questions.empty()) {
    page.paragraph(0, "Nothing was written.");
    return page.take();
  }
  page.line();
  for (const ExportedQuestion& question : all.questions) {
    page.line(fmt::format("  {}  {}.smt2", report::padded(answer(question), 5), question.name));
  }
  page.line();
  page.paragraph(0, fmt::format("{} written to {}, each with the answer that is expected of it; README.txt there tells "
                                "what they show.",
                                counted(all.questions.size(), "question"), folder));
  for (const std::string& one : all.left_out) page.paragraph(0, fmt::format("Not asked: {}.", one));
  return page.take();
}

}  // namespace cairn

// Problems and findings of one file, for a person.
#include <fmt/format.h>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/layout.hpp"
#include "report/words.hpp"

namespace cairn {

namespace {

using report::Page;
using report::Tone;

std::string place_of(const Span& span) {
  if (span.line == 0) return span.file;
  return span.column == 0 ? fmt::format("{}:{}", span.file, span.line)
                          : fmt::format("{}:{}:{}", span.file, span.line, span.column);
}

void tell_finding(Page& page, const Finding& finding) {
  page.line();
  page.line(fmt::format("{}  {}", page.painted(report::in_one_line(place_of(finding.span)), Tone::heading),
                        page.painted(name_of(finding.kind), Tone::open)));
  page.paragraph(4, report::capitalised(finding.message) + ".");
  if (!finding.advice.empty()) page.paragraph(4, report::capitalised(finding.advice) + ".", Tone::faint);
}

std::string cut_short(Reason reason) {
  const std::string_view why = reason == Reason::time          ? "the time limit was met"
                               : reason == Reason::memory      ? "the memory limit was met"
                               : reason == Reason::interrupted ? "it was interrupted"
                                                               : "cairn contradicts itself here: please report it";
  return fmt::format("Not every run was looked at, since {}: what never happens is not told.", why);
}

}  // namespace

std::string render_lint(const std::string& path, const LintReport& report, const TextStyle& style) {
  if (!report.problems.empty()) return render_diagnostics(report.problems, style);
  Page page(style);
  const bool clean = report.findings.empty();
  const std::string sum = clean ? (report.cut_short ? "nothing found so far" : "nothing suspicious")
                                : counted(report.findings.size(), "finding");
  page.line(fmt::format("{}: {}", report::in_one_line(path), page.painted(sum, clean ? Tone::good : Tone::open)));
  for (const Finding& finding : report.findings) tell_finding(page, finding);
  if (report.cut_short) {
    page.line();
    page.paragraph(4, cut_short(*report.cut_short));
  }
  return page.take();
}

}  // namespace cairn

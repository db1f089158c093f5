#include <algorithm>
#include <array>

#include "cairn/files.hpp"
#include "cairn/lint.hpp"
#include "cairn/render.hpp"
#include "cli/commands.hpp"
#include "cli/exit_status.hpp"
#include "cli/interrupt.hpp"

namespace cairn::cli {

namespace {

// What one file tells: problems count more than an answer that was not found, that more than an end that was met too
// early, and that more than findings.
int status_of(const LintReport& report) {
  if (!report.problems.empty()) return wrong_input;
  if (report.cut_short == Reason::contradiction) return no_answer;
  if (report.cut_short == Reason::interrupted) return interrupted;
  if (report.cut_short) return some_undecided;
  return report.findings.empty() ? all_proved : some_refuted;
}

int worse(int a, int b) {
  constexpr std::array order{wrong_input, no_answer, interrupted, some_undecided, some_refuted, all_proved};
  const auto rank = [&](int status) { return std::find(order.begin(), order.end(), status); };
  return rank(a) < rank(b) ? a : b;
}

}  // namespace

int lint_command(const LintCall& call, Output& out) {
  const DiskFiles disk;
  const InterruptGuard interrupt;
  Limits limits = call.limits;
  limits.interrupt = interrupt.flag();
  int status = all_proved;
  for (std::size_t i = 0; i < call.files.size(); ++i) {
    const LintReport report = lint(call.files[i], disk, limits);
    const bool wrong = !report.problems.empty();
    const std::string text =
        render_lint(call.files[i], report, {wrong ? colours_on_errors() : colours_on_output(), false, false});
    if (wrong) {
      complain(text);
    } else {
      out.write((i > 0 ? "\n" : "") + text);
    }
    status = worse(status, status_of(report));
  }
  return status;
}

}  // namespace cairn::cli

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/render.hpp"
#include "cairn/why.hpp"
#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/exit_status.hpp"
#include "cli/interrupt.hpp"

namespace cairn::cli {

namespace {

int wrong(const Diagnostics& problems) {
  complain(render_diagnostics(problems, {colours_on_errors(), false, false}));
  return wrong_input;
}

}  // namespace

int why_command(const WhyCall& call, Output& out) {
  const DiskFiles disk;
  const auto model = load_procedure(call.file, disk);
  if (!model) return wrong(model.problems());
  const InterruptGuard interrupt;
  ProveOptions options = call.options;
  options.limits.interrupt = interrupt.flag();
  const auto answer = [&] {
    ProgressLine line(true);
    if (line.shown()) options.progress = [&](const Progress& progress) { line.draw(progress); };
    return why(model.value(), options);
  }();
  if (!answer) return wrong(answer.problems());
  out.write(call.json ? render_why_json(model.value(), answer.value()) + "\n"
                      : render_why_text(model.value(), answer.value(), {colours_on_output(), false, false}));
  cry_out(call.file, answer.value().report);
  const int status = status_of(answer.value().report);
  // The verdicts may have been settled before it.
  return status != no_answer && interrupt.flag()->load() ? interrupted : status;
}

}  // namespace cairn::cli

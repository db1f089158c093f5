#include "cairn/drop_one.hpp"
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

std::string told(const WhyCall& call, const Model& model, const Why& answer) {
  return call.json ? render_why_json(model, answer) + "\n"
                   : render_why_text(model, answer, {colours_on_output(), false, false});
}

std::string told(const WhyCall& call, const Model& model, const DropOne& answer) {
  return call.json ? render_drop_one_json(model, answer) + "\n"
                   : render_drop_one_text(model, answer, {colours_on_output(), false, false});
}

int wrong(const Diagnostics& problems) {
  complain(render_diagnostics(problems, {colours_on_errors(), false, false}));
  return wrong_input;
}

/// Asks while a line shows the progress, and tells the answer.
template <class Answer>
int ask(const WhyCall& call, const Model& model, Result<Answer> (*question)(const Model&, const ProveOptions&),
        Output& out) {
  const InterruptGuard interrupt;
  ProveOptions options = call.options;
  options.limits.interrupt = interrupt.flag();
  const auto answer = [&] {
    ProgressLine line(true);
    if (line.shown()) options.progress = [&](const Progress& progress) { line.draw(progress); };
    return question(model, options);
  }();
  if (!answer) return wrong(answer.problems());
  out.write(told(call, model, answer.value()));
  const Report& report = answer.value().report;
  cry_out(call.file, report);
  const int status = status_of(report);
  // The verdicts may have been settled before it.
  return status != no_answer && interrupt.flag()->load() ? interrupted : status;
}

}  // namespace

int why_command(const WhyCall& call, Output& out) {
  const DiskFiles disk;
  const auto model = load_procedure(call.file, disk);
  if (!model) return wrong(model.problems());
  return call.drop_one ? ask(call, model.value(), drop_one, out) : ask(call, model.value(), why, out);
}

}  // namespace cairn::cli

#include "cairn/export.hpp"

#include <utility>
#include <vector>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "cairn/render.hpp"
#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/exit_status.hpp"
#include "cli/folder.hpp"
#include "cli/interrupt.hpp"

namespace cairn::cli {

namespace {

int wrong(const Diagnostics& problems) {
  complain(render_diagnostics(problems, {colours_on_errors(), false, false}));
  return wrong_input;
}

// The index last: where it is, all is there.
std::vector<std::pair<std::string, std::string>> files_of(const Model& model, const Export& all) {
  std::vector<std::pair<std::string, std::string>> files;
  for (const ExportedQuestion& question : all.questions) files.emplace_back(question.name + ".smt2", question.script);
  files.emplace_back("README.txt", render_export_index(model, all));
  return files;
}

}  // namespace

int export_command(const ExportCall& call, Output& out) {
  const DiskFiles disk;
  const auto model = load_procedure(call.file, disk);
  if (!model) return wrong(model.problems());
  if (const Diagnostics problems = objections(model.value(), call.options); !problems.empty()) return wrong(problems);
  const Folder folder(call.folder, export_mark, "; ");
  if (const std::string why = folder.prepare(); !why.empty()) {
    complain("cairn: --to: " + why + "\n");
    return wrong_input;
  }
  const InterruptGuard interrupt;
  ProveOptions options = call.options;
  options.limits.interrupt = interrupt.flag();
  const auto answer = [&] {
    ProgressLine line(true);
    if (line.shown()) options.progress = [&](const Progress& progress) { line.draw(progress); };
    return export_questions(model.value(), call.options.properties.front(), options);
  }();
  const Export& all = answer.value();
  cry_out(call.file, all.report);
  if (all.report.verdict() != Verdict::undecided) {
    if (const std::string why = folder.fill(files_of(model.value(), all)); !why.empty()) {
      complain("cairn: " + why + "\n");
      return no_answer;
    }
  }
  out.write(render_export_summary(model.value(), all, call.folder, {colours_on_output(), false, false}));
  return all.report.verdict() == Verdict::undecided ? status_of(all.report) : all_proved;
}

}  // namespace cairn::cli

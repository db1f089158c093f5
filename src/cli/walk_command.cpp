#include <algorithm>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "cairn/render.hpp"
#include "cli/commands.hpp"
#include "cli/exit_status.hpp"

namespace cairn::cli {

namespace {

int refuse(const Diagnostics& problems) {
  complain(render_diagnostics(problems, {colours_on_errors(), false, false}));
  return wrong_input;
}

Diagnostics problem_of(const std::string& file, std::string message, std::string expected = {}) {
  Diagnostic problem;
  problem.span.file = file;
  problem.message = std::move(message);
  problem.expected = std::move(expected);
  return {problem};
}

bool ends_well(const Walk& walk) {
  return walk.end == Walk::End::complete &&
         std::none_of(walk.moments.begin(), walk.moments.end(),
                      [](const Moment& moment) { return moment.refusal != Refusal::none; });
}

int walk_refutation(const Model& model, const WalkCall& call, const Files& files, Output& out) {
  const std::string& file = *call.verdict;
  if (file == "-" && call.file == "-") return refuse(problem_of(file, "standard input cannot be both files at once"));
  const auto content = files.read(file);
  if (const auto* unreadable = std::get_if<Unreadable>(&content))
    return refuse(problem_of(file, "cannot be read: " + unreadable->reason));
  const auto refutation = read_refutation(model, std::get<std::string>(content), file, call.property, call.k);
  if (!refutation) return refuse(refutation.problems());
  const Refutation& read = refutation.value();
  const auto walked = replay(model, read.faults, read.asked, read.events);
  if (const auto* not_one = std::get_if<NotARefutation>(&walked)) {
    const std::string where =
        not_one->event < read.events.size() ? "event " + std::to_string(not_one->event + 1) : "the end";
    return refuse(problem_of(file,
                             "the refutation of " + std::string(name_of(read.asked.property)) +
                                 " does not fit this procedure, at " + where + ": " + not_one->why,
                             "a verdict on the procedure as it is now"));
  }
  out.write(render_walk(model, std::get<Walk>(walked), read.asked, {colours_on_output(), false, false}));
  return all_proved;
}

}  // namespace

int walk_command(const WalkCall& call, Output& out) {
  const DiskFiles disk;
  const auto model = load_procedure(call.file, disk);
  if (!model) return refuse(model.problems());
  if (const Diagnostics no = objections_to_template(model.value(), "`cairn walk`"); !no.empty()) return refuse(no);
  if (call.verdict) return walk_refutation(model.value(), call, disk, out);
  const Walk walked = walk(model.value());
  out.write(render_walk(model.value(), walked, {}, {colours_on_output(), false, false}));
  return ends_well(walked) ? all_proved : some_refuted;
}

}  // namespace cairn::cli

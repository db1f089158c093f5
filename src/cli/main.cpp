// The program cairn: reads the call, runs the command, and sees to it that a failed write is no verdict.
#include <exception>
#include <string>
#include <variant>

#include "cli/call.hpp"
#include "cli/commands.hpp"
#include "cli/exit_status.hpp"
#include "cli/interrupt.hpp"
#include "cli/terminal.hpp"

namespace {

using namespace cairn::cli;

struct Run {
  Output& out;

  int operator()(const ProveCall& call) const { return prove_command(call, out); }
  int operator()(const WhyCall& call) const { return why_command(call, out); }
  int operator()(const ExportCall& call) const { return export_command(call, out); }
  int operator()(const WalkCall& call) const { return walk_command(call, out); }
  int operator()(const LintCall& call) const { return lint_command(call, out); }
  int operator()(const Show& show) const {
    out.write(show.text);
    return all_proved;
  }
  int operator()(const Misuse& misuse) const {
    complain(misuse.text);
    return wrong_input;
  }
};

}  // namespace

int main(int argc, char** argv) {
  ignore_closed_pipes();
  try {
    Output out;
    const int status = std::visit(Run{out}, read_call(argc, argv));
    if (out.failure().empty()) return status;
    complain("cairn: could not write the answer: " + out.failure() + "\n");
  } catch (const std::exception& error) {
    complain("cairn: no answer: " + std::string(error.what()) + "\n");
  }
  return no_answer;
}

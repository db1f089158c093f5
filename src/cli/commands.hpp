/// \file
/// The commands, one function each. They print, and answer the exit status.
#pragma once

#include "cli/call.hpp"
#include "cli/terminal.hpp"

namespace cairn::cli {

int prove_command(const ProveCall& call, Output& out);
int why_command(const WhyCall& call, Output& out);
int export_command(const ExportCall& call, Output& out);
int walk_command(const WalkCall& call, Output& out);
int lint_command(const LintCall& call, Output& out);

}  // namespace cairn::cli

/// \file
/// What --help says before the list of options: what a command is for, and examples first of all.
#pragma once

namespace cairn::cli {

extern const char* const program_help;
extern const char* const prove_help;
extern const char* const why_help;
extern const char* const export_help;
extern const char* const walk_help;
extern const char* const lint_help;

}  // namespace cairn::cli

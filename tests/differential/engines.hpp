/// \file
/// Two ways to a verdict confronted on one model: states alone, and constraints alone (docs/trust.md).
#pragma once

#include "differential/compare.hpp"

namespace cairn::differential {

/// Asks `--engine explore` and `--engine solver` what the procedure asks for, and compares verdicts, lengths, the
/// refutations that were chosen (docs/decisions/which-refutation.md) and vacuity. Larger models than `most_states` are
/// left out, so that the constraints come to an end.
Comparison compare_engines(const Model& model);

/// Reads the draft first.
Comparison compare_engines(const Draft& draft);

}  // namespace cairn::differential

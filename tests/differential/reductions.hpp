/// \file
/// Explorations that leave out what makes no difference, confronted with one that leaves out nothing
/// (docs/reductions.md).
#pragma once

#include "differential/compare.hpp"

namespace cairn::differential {

/// Explores with no reduction, with each alone and with all, and compares what every property gets: verdict, length,
/// the refutation chosen, vacuity; the states at rest; what was seen to happen, and which ties decided. No exploration
/// may visit more states than the whole one.
Comparison compare_reductions(const Model& model);

/// Reads the draft first.
Comparison compare_reductions(const Draft& draft);

}  // namespace cairn::differential

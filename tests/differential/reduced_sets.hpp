/// \file
/// The sets of explorations that forget, put to the formulas (docs/reductions.md, What a reduced set proves).
#pragma once

#include "differential/compare.hpp"

namespace cairn::differential {

/// Explores with each reduction that forgets, alone and together, and puts the set to the formulas for what is not
/// refuted. They disagree where the formulas speak against a set, and, where `strict`, where they leave it open.
Comparison confirm_reduced_sets(const Model& model, bool strict);

}  // namespace cairn::differential

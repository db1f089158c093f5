/// \file
/// What the reader should make of a draft, worked out a second time from docs/format.md: names resolved, defaults
/// filled in.
#pragma once

#include <string>

#include "differential/draft.hpp"

namespace cairn::differential {

/// The model that the draft means. Demands a draft that the reader takes.
Model resolve(const Draft& draft);

/// The first difference between two models in what a verdict depends on; empty where there is none. (Which steps a
/// step waits for is compared by differential/order.hpp.)
std::string model_difference(const Model& ours, const Model& theirs);

}  // namespace cairn::differential

/// \file
/// The main job: from a Model to a Report.
#pragma once

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/result.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

/// Settles every asked property. Every refutation has been replayed by the concrete semantics before it is returned.
/// An error only where the options ask for something that the model cannot answer: a property of the goal without a
/// goal, a property of `keep` with an empty one.
[[nodiscard]] Result<Report> prove(const Model& model, const ProveOptions& options = {});

}  // namespace cairn

/// \file
/// The main job: from a Model to a Report.
#pragma once

#include <string_view>

#include "cairn/diagnostic.hpp"
#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/result.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

/// Why the model cannot answer what the options ask, without answering it; empty where it can.
[[nodiscard]] Diagnostics objections(const Model& model, const ProveOptions& options = {});

/// Why `what` ("`cairn walk`"), which takes a plain model, cannot be done with a template; empty where it is none.
[[nodiscard]] Diagnostics objections_to_template(const Model& model, std::string_view what);

/// Settles every asked property. Every refutation has been replayed by the concrete semantics before it is returned.
/// An error only where there are objections: a property of the goal without a goal, a property of `keep` with an empty
/// one.
[[nodiscard]] Result<Report> prove(const Model& model, const ProveOptions& options = {});

}  // namespace cairn

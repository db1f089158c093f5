/// \file
/// From the draft of a procedure to a Procedure: names to ids, defaults filled in, order, goal and questions checked.
#pragma once

#include "syntax/draft.hpp"
#include "syntax/names.hpp"

namespace cairn::syntax {

/// Adds the names of the parameters to `names`.
[[nodiscard]] std::vector<Parameter> declare_parameters(const ProcedureDraft& draft, Names& names);

/// The procedure with what could be resolved; whole when no problem was added. `site` is what `names` speaks of; where
/// it could not be read (`names.devices` is absent), nothing is said about what depends on it.
[[nodiscard]] Procedure resolve_procedure(const ProcedureDraft& draft, const Site& site, Names& names,
                                          Problems& problems);

}  // namespace cairn::syntax

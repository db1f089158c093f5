/// \file
/// From a condition as read to a Condition.
#pragma once

#include "cairn/condition.hpp"
#include "cairn/model.hpp"
#include "syntax/condition_parser.hpp"
#include "syntax/names.hpp"

namespace cairn::syntax {

/// The condition with ids; every unknown name in it is reported.
[[nodiscard]] Condition resolve_condition(const ConditionDraft& draft, const Names& names, Problems& problems);

/// The same of an assumption. The model has its site, and all that is open in it.
[[nodiscard]] Assumption resolve_assumption(const AssumptionDraft& draft, const Model& model, const Names& names,
                                            Problems& problems);

}  // namespace cairn::syntax

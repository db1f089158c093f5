/// \file
/// From a condition as read to a Condition.
#pragma once

#include "cairn/condition.hpp"
#include "syntax/condition_parser.hpp"
#include "syntax/names.hpp"

namespace cairn::syntax {

/// The condition with ids; every unknown name in it is reported.
[[nodiscard]] Condition resolve_condition(const ConditionDraft& draft, const Names& names, Problems& problems);

/// Reports every unknown name in an assumption.
void check_assumption(const AssumptionDraft& draft, const Names& names, Problems& problems);

}  // namespace cairn::syntax

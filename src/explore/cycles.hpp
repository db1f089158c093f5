/// \file
/// Semantics 5.k: every run ends, so that no cycle is among the states.
#pragma once

#include <functional>
#include <vector>

#include "explore/expander.hpp"
#include "explore/store.hpp"

namespace cairn::explore {

/// True when a cycle can be reached from one of `suspects`.
///
/// Steps stay done (5.d), budgets only shrink and so do, once no break is left, the broken cables (5.c): an event of
/// these kinds lies on no cycle. A cycle would consist of starts alone (5.b), and one of them would lead to a state of
/// the same layer or of an earlier one. The targets of such starts are the suspects; only starts are followed.
/// \throws Interrupted
[[nodiscard]] bool cycle_among(Expander& expander, const Store& store, const std::vector<StateIndex>& suspects,
                               const std::function<bool()>& interrupted);

}  // namespace cairn::explore

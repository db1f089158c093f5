/// \file
/// Which steps wait for which (format.md, Procedure), worked out a second time from the draft.
#pragma once

#include <set>
#include <vector>

#include "differential/draft.hpp"

namespace cairn::differential {

/// Per step, in file order, the places of all steps that must be done before it. Demands a draft that the reader takes.
std::vector<std::set<std::size_t>> waits_of(const Draft& draft);

/// The loaded procedure lets its steps happen in exactly the orders that the draft says.
bool same_order(const Draft& draft, const Model& model);

}  // namespace cairn::differential

/// \file
/// A model of the unrolled constraints as a run.
#pragma once

#include <cstddef>
#include <vector>

#include "cairn/verdict.hpp"
#include "solver/clauses.hpp"
#include "solver/unroller.hpp"

namespace cairn::solver {

/// After `satisfiable`: the event that happens at each depth below `length`, as a place in System::events. Demands that
/// Unroller::one_event is demanded at each of them.
[[nodiscard]] std::vector<std::size_t> decode(Unroller& unroller, const Clauses& clauses, std::size_t length);

/// The events at these places.
[[nodiscard]] Trace trace_of(const system::System& system, const std::vector<std::size_t>& places);

}  // namespace cairn::solver

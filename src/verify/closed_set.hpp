/// \file
/// No claim unaudited: the closed set of an exploration is evaluated again by the formulas before a proof is told.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "explore/explore.hpp"
#include "semantics/world.hpp"
#include "solver/closed_set.hpp"

namespace cairn::verify {

/// Confirms that `visited`, found under `faults`, is closed, and that none of it breaks one of `asked`.
/// \param most  states, and losses of 6.8, that may be looked at
[[nodiscard]] solver::SetConfirmation confirm_closed_set(const semantics::World& world, const FaultBudget& faults,
                                                         const std::vector<AskedProperty>& asked,
                                                         const explore::Visited& visited, std::uint64_t most,
                                                         const explore::Guard& guard);

/// The same of `visited`, found with `reductions`, that left out nothing but what is forgotten: each of its states
/// stands for all that differ in what was forgotten alone, and that these are closed and break nothing is asked of them
/// all.
[[nodiscard]] solver::SetConfirmation confirm_reduced_set(const semantics::World& world, const FaultBudget& faults,
                                                          const std::vector<AskedProperty>& asked,
                                                          const explore::Visited& visited, const Reductions& reductions,
                                                          std::uint64_t most, const explore::Guard& guard);

/// The difference in words, for a bug report: what either writing says, and in which state.
[[nodiscard]] std::string told(const semantics::World& world, const FaultBudget& faults,
                               const solver::Difference& difference);

}  // namespace cairn::verify

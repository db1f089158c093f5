/// \file
/// A refutation put to the formulas: no claim rests on one writing of the semantics alone.
#pragma once

#include <string>

#include "cairn/verdict.hpp"
#include "system/space.hpp"

namespace cairn::solver {

/// Puts `events` in for the unknowns of the unrolled constraints: the initial state, one transition an event, and what
/// is bad at the end. Since every transition is a function of its state and event, all else follows and the formulas
/// fold to true or false.
/// \param faults  the budget in force; it is not spent on properties that are asked without faults
/// \returns empty where the constraints are satisfied; else, in one sentence, which of them is not
[[nodiscard]] std::string unsatisfied_by(const Model& model, const FaultBudget& faults, const AskedProperty& asked,
                                         const Trace& events);

}  // namespace cairn::solver

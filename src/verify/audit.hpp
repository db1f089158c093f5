/// \file
/// No claim unaudited: what the exploration found is walked again by the concrete semantics before it is told.
#pragma once

#include "cairn/model.hpp"
#include "cairn/verdict.hpp"

namespace cairn::verify {

/// Turns a refutation that was found into a verdict: refuted where the replay sees the property break at its last
/// event; else undecided by contradiction, with the disagreement in words.
void judge_refutation(const Model& model, const FaultBudget& faults, Trace events, PropertyVerdict& verdict);

/// Puts the refutation that stands in `verdict` to the formulas as well: confirmed where they are satisfied; else
/// undecided by contradiction, with what they say in words.
void confirm_refutation(const Model& model, const FaultBudget& faults, PropertyVerdict& verdict);

/// Two answers of different engines on one property: `verdict` is confirmed where they agree on verdict, length and
/// vacuity, and claims nothing where they do not. Where `other` alone has an answer, it is taken; where neither has,
/// none is.
void reconcile(const PropertyVerdict& other, PropertyVerdict& verdict);

/// No verdict on this property, since two ways to it disagree.
void claim_nothing(std::string disagreement, PropertyVerdict& verdict);

}  // namespace cairn::verify

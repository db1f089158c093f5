/// \file
/// Which rules of the platform the verdicts lean on, found by putting other values in their place.
#pragma once

#include <vector>

#include "cairn/why.hpp"
#include "verify/why_trials.hpp"

namespace cairn::verify {

/// Every rule with every other value that it may have (semantics 7), and for the election its list with each key left
/// out; the verdicts are not filled in. Ranges, factory values and max-members are amounts, not rules in this sense.
[[nodiscard]] std::vector<OtherRule> other_rules(const Platform& platform);

/// The same, each with the verdicts that are others than those of `report`, the one on `model` itself. What is
/// undecided there is not asked again.
[[nodiscard]] std::vector<OtherRule> try_rules(const Model& model, const Report& report, const Trials& trials);

}  // namespace cairn::verify

/// \file
/// Semantics 6.e: a proof that holds of nothing is told so.
#pragma once

#include <string>

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "verify/by_unrolling.hpp"

namespace cairn::verify {

/// What is met in any of the runs that a property is asked of.
struct Met {
  bool kept_device_led = false;  ///< a device of `keep` leads
  bool run_completed = false;    ///< a complete state at rest
};

/// Why a proof of the property holds of nothing; empty where it holds of something.
[[nodiscard]] std::string vacuity(const Model& model, Property property, const Met& met);

/// Settles by constraints whether the proof in `verdict` holds of nothing. Where a limit ends the search before that is
/// known, the verdict is undecided by this limit: a proof whose worth is not known is not told as one.
/// \throws Contradiction  where two solvers disagree
void settle_vacuity(ByUnrolling& unrolling, const Limits& limits, PropertyVerdict& verdict);

}  // namespace cairn::verify

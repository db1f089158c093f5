/// \file
/// What would happen otherwise: the verdicts on a variant of the model, in words.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cairn/verdict.hpp"

namespace cairn::report {

/// Why a verdict is undecided, as a clause: "the time limit was met first".
[[nodiscard]] std::string reason_in_words(const PropertyVerdict& verdict);

/// What is told of a refutation.
enum class Telling : std::uint8_t {
  breach,  ///< how long the run is, and what breaks
  run,     ///< also the run itself, each event by a name
};

/// The verdicts on `variant` under `faults`, in sentences. Those that are refuted come first: the first of them with
/// what breaks ("primary-stays and members-stay are refuted by 5 events, no fault among them. When the operator …"),
/// the others by name. None where there are no verdicts.
[[nodiscard]] std::vector<std::string> outcomes_in_words(const Model& variant, const FaultBudget& faults,
                                                         const std::vector<PropertyVerdict>& verdicts,
                                                         Telling telling = Telling::breach);

}  // namespace cairn::report

/// \file
/// What a proof by facts takes from the procedure, found by putting the same facts to the procedure without a part.
#pragma once

#include <optional>
#include <vector>

#include "cairn/why.hpp"
#include "verify/told_proofs.hpp"

namespace cairn::verify {

/// The parts that one proof uses.
struct Uses {
  AskedProperty asked;
  std::vector<Part> parts;                 ///< without one of these the proof does not stand
  std::vector<std::vector<Part>> by_fact;  ///< per fact: the parts that it speaks of, or without which it is lost
};

/// Goes through all parts of the procedure; nothing where a limit was met, or the effort used up, before all was known.
[[nodiscard]] std::optional<Uses> uses_of(const Model& model, const ToldProof& proof, const Limits& limits);

}  // namespace cairn::verify

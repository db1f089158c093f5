/// \file
/// `prove`, for those who want the proofs by facts as facts and not only in words.
#pragma once

#include <vector>

#include "cairn/prove.hpp"
#include "solver/fact.hpp"

namespace cairn::verify {

/// A proof by facts that a report tells of.
struct ToldProof {
  AskedProperty asked;
  FaultBudget faults;  ///< under which it was asked
  std::vector<solver::Fact> facts;
};

/// \param proofs  gets one a property that was proved by facts
[[nodiscard]] Result<Report> prove(const Model& model, const ProveOptions& options, std::vector<ToldProof>& proofs);

}  // namespace cairn::verify

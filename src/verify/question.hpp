/// \file
/// What is asked, after the options had their say: the properties, and the faults that may strike.
#pragma once

#include <vector>

#include "cairn/diagnostic.hpp"
#include "cairn/model.hpp"
#include "cairn/options.hpp"

namespace cairn::verify {

struct Question {
  std::vector<AskedProperty> properties;  ///< In the order asked for.
  FaultBudget faults;
};

/// The procedure's own question, with what the options put in its place.
[[nodiscard]] Question question_of(const Model& model, const ProveOptions& options);

/// Why the model cannot answer the question; empty where it can.
[[nodiscard]] Diagnostics objections(const Model& model, const Question& question);

}  // namespace cairn::verify

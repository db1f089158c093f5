/// \file
/// What is asked, after the options had their say: the properties, and the faults that may strike.
#pragma once

#include <string_view>
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

/// Why what is asked of a plain model cannot be asked of a template; empty where it is none.
/// \param what  is asked: "`cairn walk`"
[[nodiscard]] Diagnostics objections_to_template(const Model& model, std::string_view what);

}  // namespace cairn::verify

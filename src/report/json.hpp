/// \file
/// What the JSON documents have in common.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "cairn/model.hpp"
#include "cairn/verdict.hpp"

namespace cairn::report {

using Json = nlohmann::ordered_json;

/// The faults of a verdict.
[[nodiscard]] Json json_of(const FaultBudget& faults);

/// The verdict on one property, with the events of a refutation; steps are named as `model` names them.
[[nodiscard]] Json json_of(const Model& model, const PropertyVerdict& p);

/// What a verdict is empty of.
[[nodiscard]] Json json_of(const Model& model, const std::vector<Emptiness>& findings);

/// The contests that something unstated decided.
[[nodiscard]] Json json_of(const Model& model, const std::vector<UnstatedTie>& ties);

/// What every document on a report begins with: schema, procedure, verdict, faults, and the properties as told.
[[nodiscard]] Json document_of(const char* schema, const Model& model, const Report& report, Json properties);

/// The document, without a line break in it or at its end.
[[nodiscard]] std::string in_one_line(const Json& json);

}  // namespace cairn::report

#include "verify/question.hpp"

#include <fmt/format.h>

#include "cairn/prove.hpp"

namespace cairn::verify {

Question question_of(const Model& model, const ProveOptions& options) {
  const Procedure& procedure = model.procedure;
  Question question;
  question.properties = options.properties.empty() ? procedure.properties : options.properties;
  const FaultBudget& own = procedure.faults;
  question.faults = {options.cable_breaks.value_or(own.cable_breaks), options.crashes.value_or(own.crashes),
                     options.omissions.value_or(own.omissions), options.late_starts.value_or(own.late_starts),
                     options.mends.value_or(own.mends)};
  return question;
}

namespace {

Diagnostic objection(const Model& model, std::string message, std::string expected) {
  Diagnostic problem;
  if (!model.files.empty()) problem.span.file = model.files.front();
  problem.message = std::move(message);
  problem.expected = std::move(expected);
  return problem;
}

}  // namespace

Diagnostics objections(const Model& model, const Question& question) {
  Diagnostics problems;
  for (const AskedProperty& asked : question.properties) {
    const auto name = name_of(asked.property);
    if (speaks_of_goal(asked.property) && !model.procedure.goal) {
      problems.push_back(objection(model, fmt::format("{} is asked, and the procedure states no goal", name),
                                   "`goal:` with `stack:`, the devices that shall run as one in the end"));
    }
    // Semantics 6: "An empty keep is an error where 6.1, 6.2 or 6.3 is asked."
    if (speaks_of_keep(asked.property) && model.procedure.keep.empty()) {
      problems.push_back(
          objection(model, fmt::format("{} is asked, and there is no device to keep", name),
                    "`keep:` with the devices that must be undisturbed, or a site where a device is on"));
    }
    if (asked.property == Property::tolerates_loss && asked.k < 1) {
      problems.push_back(objection(model, "tolerates-loss is asked without a number of cables",
                                   "a number of 1 or more, as in tolerates-loss=1"));
    }
  }
  return problems;
}

}  // namespace cairn::verify

namespace cairn {

Diagnostics objections_to_template(const Model& model, std::string_view what) {
  if (!model.unknowns.any()) return {};
  return {verify::objection(model, fmt::format("this is a template, and {} takes a plain procedure", what),
                            "a procedure without `parameters`, `assume`, `$` and `address: any`")};
}

}  // namespace cairn

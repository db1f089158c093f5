#include "cairn/why.hpp"

#include "cairn/prove.hpp"
#include "verify/why_parts.hpp"
#include "verify/why_repairs.hpp"
#include "verify/why_rules.hpp"
#include "verify/why_trials.hpp"
#include "verify/why_uses.hpp"

namespace cairn {

std::string_view name_of(Standing standing) {
  switch (standing) {
    case Standing::needed:
      return "needed";
    case Standing::vacuous:
      return "vacuous";
    case Standing::used:
      return "used";
    case Standing::idle:
      return "idle";
    case Standing::unknown:
      return "unknown";
  }
  return {};
}

Result<Why> why(const Model& model, const ProveOptions& options) {
  if (Diagnostics problems = objections_to_template(model, "`cairn why`"); !problems.empty()) return problems;
  const verify::Trials trials(options);
  std::vector<verify::ToldProof> proofs;
  auto report = verify::prove(model, options, proofs);
  if (!report) return report.problems();
  Why why;
  why.report = std::move(report).value();
  for (const PropertyVerdict& p : why.report.properties) why.properties.push_back({p.asked, p.verdict, {}, {}, {}});
  verify::try_parts(model, why.report, trials, why.properties);
  why.rules = verify::try_rules(model, why.report, trials);
  why.repairs = verify::find_repairs(model, why.report, trials);
  // What a proof uses is worth less to know than what it needs, and comes last where there is a limit.
  for (const verify::ToldProof& proof : proofs) {
    if (const auto uses = uses_of(model, proof, trials.left())) verify::tell_uses(*uses, why.properties);
  }
  return why;
}

}  // namespace cairn

#include "cairn/drop_one.hpp"

#include <algorithm>

#include "cairn/prove.hpp"
#include "verify/why_proved.hpp"
#include "verify/why_trials.hpp"

namespace cairn {

std::vector<Part> protections_of(const Model& model) {
  std::vector<Part> parts = parts_of(model);
  std::erase_if(parts,
                [&](const Part& part) { return part.kind == Part::Kind::step && model[part.step].verb != Verb::save; });
  return parts;
}

Standing Dropped::standing() const {
  for (const Standing standing : {Standing::needed, Standing::vacuous, Standing::unknown}) {
    if (std::ranges::find(proofs, standing, &LeftOut::standing) != proofs.end()) return standing;
  }
  return Standing::idle;
}

Result<DropOne> drop_one(const Model& model, const ProveOptions& options) {
  if (Diagnostics problems = objections_to_template(model, "`cairn why`"); !problems.empty()) return problems;
  const verify::Trials trials(options);
  auto report = prove(model, options);
  if (!report) return report.problems();
  DropOne answer;
  answer.report = std::move(report).value();
  const verify::ProvedOnes proved(model, answer.report.properties, trials);
  if (proved.empty()) return answer;
  for (const Part& part : protections_of(model)) answer.dropped.push_back({part, proved.leave_out({part})});
  return answer;
}

}  // namespace cairn

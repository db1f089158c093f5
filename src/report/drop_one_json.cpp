// What becomes of the verdicts without each protection, as JSON (docs/cli.md, why).
#include "cairn/drop_one.hpp"
#include "cairn/render.hpp"
#include "cairn/version.hpp"
#include "report/parts.hpp"
#include "report/parts_json.hpp"

namespace cairn {

namespace {

using report::Json;

Json json_of(const Model& model, const Dropped& dropped) {
  Json json = report::json_of(model, dropped.part);
  json["part"] = report::kind_of(model, dropped.part);
  json["lines"] = report::lines_of(model, dropped.part);
  json["standing"] = name_of(dropped.standing());
  const Model variant = without(model, {dropped.part});
  Json proofs = Json::array();
  for (const LeftOut& proof : dropped.proofs) {
    Json one{{"name", name_of(proof.outcome.asked.property)}};
    if (proof.outcome.asked.property == Property::tolerates_loss) one["k"] = proof.outcome.asked.k;
    report::add_outcome(one, variant, proof);
    proofs.push_back(std::move(one));
  }
  json["properties"] = std::move(proofs);
  return json;
}

}  // namespace

std::string render_drop_one_json(const Model& model, const DropOne& answer) {
  Json properties = Json::array();
  for (const PropertyVerdict& p : answer.report.properties) properties.push_back(report::json_of(model, p));
  Json dropped = Json::array();
  for (const Dropped& one : answer.dropped) dropped.push_back(json_of(model, one));
  Json json = report::document_of(why_schema, model, answer.report, std::move(properties));
  json["drop-one"] = std::move(dropped);
  json["unstated-ties"] = report::json_of(model, answer.report.rests_on.ties);
  if (answer.report.findings) json["findings"] = report::json_of(model, *answer.report.findings);
  return report::in_one_line(json);
}

}  // namespace cairn

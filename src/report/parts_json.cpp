#include "report/parts_json.hpp"

namespace cairn::report {

Json json_of(const Model& model, const Part& part) {
  Json json{{"part", cairn::name_of(part.kind)}};
  if (part.kind == Part::Kind::ordering) {
    json["first"] = model[part.before].id;
    json["then"] = model[part.step].id;
  } else {
    json["id"] = model[part.step].id;
  }
  return json;
}

void add_outcome(Json& json, const Model& variant, const LeftOut& left_out) {
  json["standing"] = cairn::name_of(left_out.standing);
  const Json outcome = json_of(variant, left_out.outcome);
  for (const char* key : {"vacuous", "events", "reason", "contradiction"}) {
    if (outcome.contains(key)) json[key] = outcome[key];
  }
}

}  // namespace cairn::report

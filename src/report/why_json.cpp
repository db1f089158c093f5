// Why the verdicts are what they are, as JSON (docs/cli.md, why).
#include "cairn/render.hpp"
#include "cairn/version.hpp"
#include "report/parts_json.hpp"

namespace cairn {

namespace {

using report::add_outcome;
using report::Json;
using report::json_of;

Json parts_of(const Model& model, const PropertyWhy& p) {
  Json parts = Json::array();
  for (const LeftOut& left_out : p.parts) {
    Json json = json_of(model, left_out.parts.front());
    add_outcome(json, without(model, left_out.parts), left_out);
    parts.push_back(std::move(json));
  }
  return parts;
}

Json facts_of(const Model& model, const Settled& settled, const PropertyWhy& p) {
  Json facts = Json::array();
  for (std::size_t i = 0; i < settled.facts.size(); ++i) {
    Json fact{{"fact", settled.facts[i]}};
    if (!p.facts.empty()) {
      Json parts = Json::array();
      for (const Part& part : p.facts[i]) parts.push_back(json_of(model, part));
      fact["parts"] = std::move(parts);
    }
    facts.push_back(std::move(fact));
  }
  return facts;
}

Json one_of(const Model& model, const PropertyWhy& p) {
  Json sets = Json::array();
  for (const LeftOut& set : p.one_of) {
    Json awaits = Json::array();
    for (const Part& part : set.parts) awaits.push_back(model[part.step].id);
    Json json{{"awaits", std::move(awaits)}};
    add_outcome(json, without(model, set.parts), set);
    sets.push_back(std::move(json));
  }
  return sets;
}

Json json_of(const Model& model, const OtherRule& other) {
  Model variant = model;
  variant.platform = other.platform;
  Json turned = Json::array();
  for (const PropertyVerdict& p : other.turned) turned.push_back(report::json_of(variant, p));
  return {{"rule", other.rule}, {"value", other.value}, {"turned", std::move(turned)}};
}

Json json_of(const Model& model, const Change& change) {
  const std::string& id = model[change.step].id;
  switch (change.kind) {
    case Change::Kind::value:
      return {{"change", "value"}, {"id", id}, {"to", change.value}};
    case Change::Kind::move:
      return {{"change", "move"}, {"id", id}, {change.behind ? "behind" : "before", model[change.anchor].id}};
    case Change::Kind::remove:
      return {{"change", "remove"}, {"id", id}};
  }
  return {};
}

// The verdicts by name alone: there may be hundreds of repairs.
Json json_of(const Model& model, const Repair& repair) {
  Json changes = Json::array();
  for (const Change& change : repair.changes) changes.push_back(json_of(model, change));
  Json properties = Json::array();
  for (const PropertyVerdict& p : repair.verdicts) {
    Json json = report::json_of(model, p);
    for (const char* key : {"events", "settled", "contradiction"}) json.erase(key);
    properties.push_back(std::move(json));
  }
  return {{"changes", std::move(changes)}, {"all-proved", repair.all_proved}, {"properties", std::move(properties)}};
}

Json json_of(const Model& model, const Repairs& repairs) {
  Json found = Json::array();
  for (const Repair& repair : repairs.found) found.push_back(json_of(model, repair));
  return {{"found", std::move(found)},
          {"elsewhere", repairs.elsewhere},
          {"tried", repairs.tried},
          {"all-tried", repairs.all_tried}};
}

}  // namespace

std::string render_why_json(const Model& model, const Why& why) {
  Json properties = Json::array();
  for (std::size_t i = 0; i < why.properties.size(); ++i) {
    const PropertyWhy& p = why.properties[i];
    Json json = report::json_of(model, why.report.properties[i]);
    if (p.verdict == Verdict::proved) {
      json["parts"] = parts_of(model, p);
      json["one-of"] = one_of(model, p);
      const Settled& settled = why.report.properties[i].settled;
      if (settled.by == Settled::By::facts) json["facts"] = facts_of(model, settled, p);
    }
    properties.push_back(std::move(json));
  }
  Json rules = Json::array();
  for (const OtherRule& other : why.rules) rules.push_back(json_of(model, other));
  Json json = report::document_of(why_schema, model, why.report, std::move(properties));
  json["rules"] = std::move(rules);
  json["unstated-ties"] = json_of(model, why.report.rests_on.ties);
  if (why.report.findings) json["findings"] = report::json_of(model, *why.report.findings);
  if (why.report.verdict() == Verdict::refuted) json["repairs"] = json_of(model, why.repairs);
  return report::in_one_line(json);
}

}  // namespace cairn

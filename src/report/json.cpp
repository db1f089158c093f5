// The verdict as JSON (docs/format.md, "The verdict as JSON").
#include "report/json.hpp"

#include "cairn/render.hpp"
#include "cairn/version.hpp"
#include "unknowns/words.hpp"

namespace cairn {

namespace report {

Json json_of(const FaultBudget& faults) {
  return {{"cable-breaks", faults.cable_breaks},
          {"crashes", faults.crashes},
          {"omissions", faults.omissions},
          {"late-starts", faults.late_starts},
          {"mends", faults.mends}};
}

namespace {

// The key of a budget that lets this kind of fault strike.
std::string_view budget_key(Event::Kind fault) {
  switch (fault) {
    case Event::Kind::broke:
      return "cable-breaks";
    case Event::Kind::crashed:
      return "crashes";
    case Event::Kind::omitted:
      return "omissions";
    case Event::Kind::started_late:
      return "late-starts";
    default:
      return "mends";
  }
}

Json json_of(const Model& model, const Event& event) {
  Json json{{"event", name_of(event.kind)}};
  switch (event.kind) {
    case Event::Kind::step:
    case Event::Kind::omitted:
      json["id"] = model[event.step()].id;
      break;
    case Event::Kind::started:
    case Event::Kind::started_late:
    case Event::Kind::crashed:
      json["device"] = model[event.device()].name;
      break;
    case Event::Kind::broke:
    case Event::Kind::mended:
      json["cable"] = model[event.cable()].name;
      break;
    case Event::Kind::cold_start:
      break;
  }
  return json;
}

Json json_of(const Settled& settled, std::uint64_t explored) {
  Json json{{"by", name_of(settled.by)}};
  if (settled.by == Settled::By::facts) {
    json["facts"] = settled.facts.size();
    json["any-number"] = settled.any_number;
  }
  if (settled.by == Settled::By::unrolling) json["length"] = settled.length;
  if (!settled.not_by_facts.empty()) json["not-by-facts"] = settled.not_by_facts;
  if (!settled.not_compared.empty()) json["not-compared"] = settled.not_compared;
  if (settled.reduced) json["reduced"] = true;
  json["explored"] = explored;
  json["confirmed"] = settled.confirmed;
  return json;
}

// Format, "The verdict as JSON": "One of a template also gives the instance".
void add_instance(Json& json, const Model& model, const Instance& instance) {
  const Unknowns& unknowns = model.unknowns;
  Json parameters = Json::object();
  for (std::size_t i = 0; i < unknowns.parameters.size(); ++i) {
    parameters[unknowns.parameters[i].name] = instance.values[i];
  }
  Json addresses = Json::object();
  for (std::size_t i = 0; i < unknowns.addresses.size(); ++i) {
    const auto address = static_cast<std::uint64_t>(instance.values[unknowns.address(i).value]);
    addresses[model[unknowns.addresses[i]].name] = unknowns::address_in_words(address);
  }
  json["parameters"] = std::move(parameters);
  json["addresses"] = std::move(addresses);
}

}  // namespace

Json json_of(const Model& model, const PropertyVerdict& p) {
  Json json{{"name", name_of(p.asked.property)}};
  if (p.asked.property == Property::tolerates_loss) json["k"] = p.asked.k;
  json["verdict"] = name_of(p.verdict);
  switch (p.verdict) {
    case Verdict::proved:
      if (!p.vacuous.empty()) json["vacuous"] = p.vacuous;
      json["settled"] = json_of(p.settled, p.explored);
      break;
    case Verdict::refuted: {
      Json events = Json::array();
      for (const Event& event : p.events) events.push_back(json_of(model, event));
      json["events"] = std::move(events);
      if (p.instance) add_instance(json, model, *p.instance);
      json["settled"] = json_of(p.settled, p.explored);
      break;
    }
    case Verdict::undecided:
      json["reason"] = name_of(p.reason);
      if (!p.contradiction.empty()) json["contradiction"] = p.contradiction;
      break;
  }
  return json;
}

Json json_of(const Model& model, const std::vector<Emptiness>& findings) {
  Json all = Json::array();
  for (const Emptiness& finding : findings) {
    Json json{{"finding", name_of(finding.kind)}};
    if (finding.step) json["id"] = model[finding.step].id;
    if (finding.kind == Emptiness::Kind::never_strikes) json["fault"] = budget_key(finding.fault);
    all.push_back(std::move(json));
  }
  return all;
}

Json json_of(const Model& model, const std::vector<UnstatedTie>& ties) {
  Json all = Json::array();
  for (const UnstatedTie& tie : ties) {
    all.push_back({{"winner", model[tie.winner].name},
                   {"loser", model[tie.loser].name},
                   {"by", tie.key == UnstatedTie::Key::address ? "address" : "tenure"}});
  }
  return all;
}

Json document_of(const char* schema, const Model& model, const Report& report, Json properties) {
  return {{"schema", schema},
          {"procedure", model.procedure.title},
          {"verdict", cairn::name_of(report.verdict())},
          {"faults", json_of(report.faults)},
          {"properties", std::move(properties)}};
}

std::string in_one_line(const Json& json) {
  // The reader lets no other text in than UTF-8; a Model made by a program may hold anything.
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace report

namespace {

using report::Json;

Json seconds_of(const Timing& timing) {
  return {{"exploring", timing.exploring},
          {"replaying", timing.replaying},
          {"solving", timing.solving},
          {"confirming", timing.confirming}};
}

// In the order of the properties.
Json costs_of(const Report& answer) {
  Json all = Json::array();
  for (const PropertyVerdict& p : answer.properties) {
    Json json = seconds_of(p.cost.timing);
    json["states"] = p.explored;
    json["questions"] = p.cost.solving.questions;
    json["conflicts"] = p.cost.solving.conflicts;
    json["judging"] = p.cost.solving.judging;
    all.push_back(std::move(json));
  }
  return all;
}

Json counts_of(const Savings& savings) {
  return {{"outcomes", savings.outcomes},       {"by-seniority", savings.by_seniority},
          {"by-settings", savings.by_settings}, {"by-budgets", savings.by_budgets},
          {"by-alike", savings.by_alike},       {"events-left-out", savings.events_left_out},
          {"states-left", savings.states_left}, {"states-alone", savings.states_alone}};
}

}  // namespace

std::string render_json(const Model& model, const Report& answer, bool timing) {
  report::Json properties = report::Json::array();
  for (const PropertyVerdict& p : answer.properties) properties.push_back(report::json_of(model, p));
  report::Json json = report::document_of(verdict_schema, model, answer, std::move(properties));
  if (answer.findings) json["findings"] = report::json_of(model, *answer.findings);
  if (timing) {
    json["timing"] = seconds_of(answer.timing);
    json["costs"] = costs_of(answer);
    json["savings"] = counts_of(answer.savings);
  }
  return report::in_one_line(json);
}

}  // namespace cairn

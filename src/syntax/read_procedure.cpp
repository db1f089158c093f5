#include "syntax/read_procedure.hpp"

#include <set>
#include <utility>

#include <fmt/format.h>

#include "base/text.hpp"
#include "syntax/read_step.hpp"

namespace cairn::syntax {

namespace {

constexpr std::int64_t lowest = std::numeric_limits<std::int64_t>::min();

std::vector<ParameterDraft> read_parameters(const Node& node, Problems& problems) {
  std::vector<ParameterDraft> parameters;
  for (const auto& entry : read_entries(node, "`parameters`", problems)) {
    read_name(*entry.key, "a parameter", false, problems);
    const auto range =
        read_range(*entry.value, fmt::format("the range of {}", quoted(entry.name.value)), lowest, problems);
    parameters.push_back({entry.name, range.value_or(Range{})});
  }
  return parameters;
}

GoalDraft read_goal(const Node& node, Problems& problems) {
  GoalDraft goal;
  goal.place = node.place;
  Fields fields(node, "`goal`", {"stack", "primary", "saved", "where"}, problems);
  if (const Node* n = fields.find("stack")) {
    goal.stack_place = n->place;
    goal.stack = read_names(*n, "`stack`", "device", false, problems).value_or(std::vector<Name>{});
  }
  if (const Node* n = fields.find("primary")) goal.primary = read_mention(*n, "`primary`", problems);
  if (const Node* n = fields.find("saved")) goal.saved = read_boolean(*n, "`saved`", problems).value_or(false);
  if (const Node* n = fields.find("where")) {
    goal.where = parse_condition(*n, "`where`", problems);
    goal.where_text = trimmed(n->text);
  }
  return goal;
}

FaultBudget read_faults(const Node& node, Problems& problems) {
  FaultBudget faults;
  Fields fields(node, "`faults`", {"cable-breaks", "crashes", "omissions", "late-starts", "mends"}, problems);
  const auto read_count = [&](std::string_view key, std::int64_t& into) {
    if (const Node* n = fields.find(key))
      into = read_integer(*n, fmt::format("`{}`", key), {0, no_limit}, problems).value_or(0);
  };
  read_count("cable-breaks", faults.cable_breaks);
  read_count("crashes", faults.crashes);
  read_count("omissions", faults.omissions);
  read_count("late-starts", faults.late_starts);
  if (const Node* n = fields.find("mends")) faults.mends = read_boolean(*n, "`mends`", problems).value_or(false);
  return faults;
}

std::optional<Property> read_property_name(const Node& node, Problems& problems) {
  std::array<std::string_view, property_count> names;
  for (std::size_t i = 0; i < names.size(); ++i) names[i] = name_of(static_cast<Property>(i));
  const auto index = read_word_index(node, "a property", names, problems);
  if (!index) return std::nullopt;
  return static_cast<Property>(*index);
}

/// `tolerates-loss` is asked for with a number, the others by their name alone (semantics 6.8).
std::optional<PropertyDraft> read_property(const Node& node, Problems& problems) {
  constexpr std::string_view shape = "{tolerates-loss: K}, where K is how many cables break at once, at least 1";
  const bool with_number = node.kind == Node::Kind::mapping && node.entries.size() == 1;
  if (!node.is_scalar() && !with_number) {
    wrong(node, "a property", fmt::format("the name of a property, or {}", shape), problems);
    return std::nullopt;
  }
  const Node& name = with_number ? node.entries.front().key : node;
  const auto property = read_property_name(name, problems);
  if (!property) return std::nullopt;
  if ((*property == Property::tolerates_loss) != with_number) {
    problems.add(
        name.place,
        with_number ? fmt::format("{} takes no number", name.text) : fmt::format("{} needs a number", name.text),
        with_number ? "the name alone" : std::string(shape));
    return std::nullopt;
  }
  PropertyDraft draft{{*property, 0}, name.place};
  if (!with_number) return draft;
  const auto k = read_integer(node.entries.front().value, "`tolerates-loss`", {1, no_limit}, problems);
  if (!k) return std::nullopt;
  draft.asked.k = *k;
  return draft;
}

std::vector<PropertyDraft> read_properties(const Node& node, Problems& problems) {
  std::vector<PropertyDraft> properties;
  if (node.kind != Node::Kind::sequence) {
    wrong(node, "`properties`", "a list of properties", problems);
    return properties;
  }
  if (node.items.empty()) problems.add(node.place, "`properties` is an empty list", "at least one property");
  std::set<std::pair<Property, std::int64_t>> asked;
  for (const auto& item : node.items) {
    const auto property = read_property(item, problems);
    if (!property) continue;
    if (asked.emplace(property->asked.property, property->asked.k).second) {
      properties.push_back(*property);
    } else {
      problems.add(property->place, fmt::format("{} stands twice in `properties`", name_of(property->asked.property)),
                   "each property once");
    }
  }
  return properties;
}

void read_template(const Fields& fields, ProcedureDraft& procedure, Problems& problems) {
  if (const Node* n = fields.find("parameters")) {
    procedure.parameters = read_parameters(*n, problems);
  }
  if (const Node* n = fields.find("assume")) {
    procedure.assume = parse_assumption(*n, problems);
    procedure.assume_place = fields.place_of("assume");
  }
}

}  // namespace

ProcedureDraft read_procedure(const Node& node, Problems& problems) {
  ProcedureDraft procedure;
  Fields fields(node, "a procedure",
                {"procedure", "site", "parameters", "assume", "keep", "steps", "goal", "faults", "properties"},
                problems);
  procedure.place = fields.place_of("procedure");
  if (const Node* n = fields.require("procedure")) {
    procedure.title = read_text(*n, "`procedure`", problems).value_or(Name{}).value;
  }
  procedure.site = fields.require("site");
  read_template(fields, procedure, problems);
  if (const Node* n = fields.find("keep")) {
    auto names = read_names(*n, "`keep`", "device", false, problems);
    procedure.keep = Located<std::vector<Name>>{std::move(names).value_or(std::vector<Name>{}), n->place};
  }
  if (const Node* n = fields.find("steps")) procedure.order = read_steps(*n, procedure.steps, problems);
  if (const Node* n = fields.find("goal")) procedure.goal = read_goal(*n, problems);
  if (const Node* n = fields.find("faults")) procedure.faults = read_faults(*n, problems);
  if (const Node* n = fields.find("properties")) procedure.properties = read_properties(*n, problems);
  return procedure;
}

}  // namespace cairn::syntax

#include "differential/conditions.hpp"

namespace cairn::differential {

namespace {

std::vector<std::string> step_ids(Draft& draft) {
  std::vector<std::string> ids;
  for (const StepDraft* step : all_steps(draft.steps)) {
    if (step->id) ids.push_back(*step->id);
  }
  return ids;
}

/// A cable by its id or its ends, these in either order (semantics 8).
std::string name_cable(Random& random, const CableDraft& cable) {
  if (cable.id && random.coin()) return *cable.id;
  return random.coin() ? cable.ends() : cable.b + "--" + cable.a;
}

}  // namespace

ConditionDraft atom(const std::string& word, const std::vector<std::string>& names, const std::string& sign,
                    const std::string& value) {
  return {.word = word, .names = names, .sign = sign, .value = value, .parts = {}};
}

ConditionDraft random_atom(Random& random, Draft& draft) {
  static const std::vector<std::string> of_device = {"up", "held", "starting", "off", "primary", "follower", "saved"};
  static const std::vector<std::string> signs = {"=", "!=", "<", "<=", ">", ">="};
  static const std::vector<std::string> sides = {"none", "east", "west"};
  const auto ports = port_names(draft);
  const auto ids = step_ids(draft);
  // Every draw has a statement of its own: the order in which arguments are evaluated is the compiler's choice.
  const std::string device = random.pick(draft.devices).name;
  const std::string sign = random.pick(signs);
  const bool coin = random.coin();
  switch (random.below(9)) {
    case 0: {
      std::vector<std::string> names = {device};
      for (std::size_t more = random.below(3); more > 0; --more) names.push_back(random.pick(draft.devices).name);
      return atom("together", names);
    }
    case 1: {
      const Range& range = draft.platform.numbers;
      return atom("number", {device}, sign, std::to_string(random.between(range.low, range.high)));
    }
    case 2: {
      const Range& range = draft.platform.priorities;
      return atom("priority", {device}, sign, std::to_string(random.between(range.low, range.high)));
    }
    case 3:
      if (draft.cables.empty()) break;
      return atom(coin ? "linked" : "cable-up", {name_cable(random, random.pick(draft.cables))});
    case 4: {
      if (ports.empty()) break;
      const std::string port = random.pick(ports);
      return coin ? atom("enabled", {port}) : atom("side", {port}, sign == "=" ? "=" : "!=", random.pick(sides));
    }
    case 5:
      if (ids.empty()) break;
      return atom("done", {random.pick(ids)});
    default:
      break;
  }
  return atom(random.pick(of_device), {device});
}

ConditionDraft random_condition(Random& random, Draft& draft, int depth) {
  if (depth == 0 || random.chance(40)) return random_atom(random, draft);
  ConditionDraft whole;
  whole.word = random.pick(std::vector<std::string>{"not", "and", "or", "implies"});
  std::size_t parts = whole.word == "not" ? 1 : 2;
  if ((whole.word == "and" || whole.word == "or") && random.chance(20)) parts = 3;
  for (std::size_t i = 0; i < parts; ++i) whole.parts.push_back(random_condition(random, draft, depth - 1));
  return whole;
}

}  // namespace cairn::differential

#include "syntax/read_step.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

/// What a verb handles.
enum class Handles : std::uint8_t { device, port, cable, devices, condition };

struct VerbRule {
  std::string_view word;
  Verb verb;
  Handles handles;
  bool takes_to = false;
  bool takes_side = false;
  bool takes_via = true;

  /// Its argument may be the handled thing alone.
  [[nodiscard]] bool says_everything() const { return !takes_to && !takes_side; }
};

constexpr std::array<VerbRule, 15> verb_rules = {{
    {.word = "power-on", .verb = Verb::power_on, .handles = Handles::device, .takes_via = false},
    {.word = "power-off", .verb = Verb::power_off, .handles = Handles::device, .takes_via = false},
    {.word = "restart", .verb = Verb::restart, .handles = Handles::device},
    {.word = "set-number", .verb = Verb::set_number, .handles = Handles::device, .takes_to = true},
    {.word = "set-priority", .verb = Verb::set_priority, .handles = Handles::device, .takes_to = true},
    {.word = "enable", .verb = Verb::enable, .handles = Handles::port},
    {.word = "disable", .verb = Verb::disable, .handles = Handles::port},
    {.word = "set-side", .verb = Verb::set_side, .handles = Handles::port, .takes_side = true},
    {.word = "clear-side", .verb = Verb::clear_side, .handles = Handles::port},
    {.word = "apply", .verb = Verb::apply, .handles = Handles::devices},
    {.word = "save", .verb = Verb::save, .handles = Handles::devices},
    {.word = "plug", .verb = Verb::plug, .handles = Handles::cable, .takes_via = false},
    {.word = "unplug", .verb = Verb::unplug, .handles = Handles::cable, .takes_via = false},
    {.word = "await", .verb = Verb::await, .handles = Handles::condition, .takes_via = false},
    {.word = "check", .verb = Verb::check, .handles = Handles::condition, .takes_via = false},
}};

constexpr std::string_view any_order = "any-order";

std::string_view key_of(Handles handles) {
  switch (handles) {
    case Handles::device:
      return "device";
    case Handles::port:
      return "port";
    case Handles::cable:
      return "cable";
    case Handles::devices:
      return "devices";
    case Handles::condition:
      return "condition";
  }
  return {};
}

/// "stack-of NAME": the name, with its place.
std::optional<Name> stack_of(const Node& node) {
  constexpr std::string_view word = "stack-of";
  if (!node.is_scalar() || !node.text.starts_with(word)) return std::nullopt;
  const auto start = node.text.find_first_not_of(" \t\n", word.size());
  if (start == word.size() || start == std::string::npos) return std::nullopt;
  return Name{node.text.substr(start), Positions(node).at(start, node.text.size() - start)};
}

/// A name, a list of names, or `stack-of NAME`.
void read_devices(const Node& node, StepDraft& step, Problems& problems) {
  if (node.kind == Node::Kind::sequence) {
    step.devices = read_names(node, "`devices`", "device", false, problems).value_or(std::vector<Name>{});
  } else if (auto of = stack_of(node)) {
    step.stack_of = std::move(of);
  } else if (node.is_scalar()) {
    step.devices = {Name{node.text, node.place}};
  } else {
    wrong(node, "`devices`", "a device, a list of devices, or stack-of DEVICE", problems);
  }
}

void read_handled(const Node& node, Handles handles, StepDraft& step, Problems& problems) {
  const auto what = fmt::format("`{}`", key_of(handles));
  switch (handles) {
    case Handles::device:
      step.device = read_mention(node, what, problems);
      break;
    case Handles::port:
      step.port = read_port(node, what, problems);
      break;
    case Handles::cable:
      step.cable = read_cable(node, what, problems);
      break;
    case Handles::devices:
      read_devices(node, step, problems);
      break;
    case Handles::condition:
      step.condition = parse_condition(node, what, problems);
      step.condition_text = trimmed(node.text);
      break;
  }
}

/// `after`: one step or a list of steps.
void read_after(const Node& node, StepDraft& step, Problems& problems) {
  if (node.is_scalar()) {
    step.after = {Name{node.text, node.place}};
  } else if (node.kind == Node::Kind::sequence) {
    step.after = read_names(node, "`after`", "step", true, problems).value_or(std::vector<Name>{});
  } else {
    wrong(node, "`after`", "a step or a list of steps", problems);
  }
}

/// The keys that a verb takes when its argument is a mapping.
std::vector<std::string_view> keys_of(const VerbRule& rule) {
  std::vector<std::string_view> keys = {key_of(rule.handles)};
  if (rule.takes_to) keys.push_back("to");
  if (rule.takes_side) keys.push_back("side");
  if (rule.takes_via) keys.push_back("via");
  keys.insert(keys.end(), {"id", "after", "note"});
  return keys;
}

void read_mapping(const Node& node, const VerbRule& rule, StepDraft& step, Problems& problems) {
  static constexpr std::array<Word<Side>, 2> set_side_words = {{{"east", Side::east}, {"west", Side::west}}};
  Fields fields(node, rule.word, keys_of(rule), problems);
  if (const Node* n = fields.require(key_of(rule.handles))) read_handled(*n, rule.handles, step, problems);
  if (const Node* n = rule.takes_to ? fields.require("to") : nullptr) step.value = read_value(*n, "`to`", problems);
  if (const Node* n = rule.takes_side ? fields.require("side") : nullptr) {
    step.side = read_word(*n, "`side`", set_side_words, problems).value_or(Side::none);
  }
  if (const Node* n = rule.takes_via ? fields.find("via") : nullptr) step.via = read_mention(*n, "`via`", problems);
  if (const Node* n = fields.find("id")) step.id = read_name(*n, "`id`", false, problems);
  if (const Node* n = fields.find("after")) read_after(*n, step, problems);
  if (const Node* n = fields.find("note")) step.note = read_text(*n, "`note`", problems).value_or(Name{}).value;
}

/// What may stand after the verb, for messages.
std::string shape_of(const VerbRule& rule) {
  switch (rule.handles) {
    case Handles::device:
      return rule.takes_to ? "a mapping: {device: DEVICE, to: INTEGER}" : "a device, or a mapping: {device: DEVICE}";
    case Handles::port:
      return rule.takes_side ? "a mapping: {port: DEVICE/PORT, side: east or west}"
                             : "a port, or a mapping: {port: DEVICE/PORT}";
    case Handles::cable:
      return "a cable, or a mapping: {cable: CABLE}";
    case Handles::devices:
      return "a device, a list of devices, stack-of DEVICE, or a mapping: {devices: …}";
    case Handles::condition:
      return "a condition, or a mapping: {condition: …}";
  }
  return {};
}

void read_argument(const Node& node, const VerbRule& rule, StepDraft& step, Problems& problems) {
  const bool alone = node.is_scalar() || (node.kind == Node::Kind::sequence && rule.handles == Handles::devices);
  if (node.kind == Node::Kind::mapping) {
    read_mapping(node, rule, step, problems);
  } else if (alone && rule.says_everything()) {
    read_handled(node, rule.handles, step, problems);
  } else {
    wrong(node, fmt::format("the argument of {}", rule.word), shape_of(rule), problems);
  }
}

class StepReader {
 public:
  StepReader(std::vector<StepDraft>& steps, Problems& problems) : steps_(steps), problems_(problems) {}

  Block list(const Node& node) {
    Block block;
    for (const auto& item : node.items) block.items.push_back(this->item(item));
    return block;
  }

 private:
  BlockItem item(const Node& node) {
    if (node.kind != Node::Kind::mapping || node.entries.size() != 1 || !node.entries.front().key.is_scalar()) {
      return unreadable(node);
    }
    const auto& [key, value] = node.entries.front();
    if (key.text == any_order) return branches(value);
    return step(key, value);
  }

  /// A step that is none keeps its place, so that the places of those after it stay what they are.
  BlockItem unreadable(const Node& node) {
    const bool many = node.kind == Node::Kind::mapping && node.entries.size() > 1;
    problems_.add(many ? node.entries[1].key.place : node.place,
                  many ? "a second key in one step" : fmt::format("a step is {}", describe(node)),
                  "a mapping with one key, the verb (a new step begins with `- `)");
    StepDraft step;
    step.place = node.place;
    return append(std::move(step));
  }

  BlockItem append(StepDraft step) {
    steps_.push_back(std::move(step));
    BlockItem item;
    item.step = steps_.size() - 1;
    return item;
  }

  BlockItem step(const Node& key, const Node& value) {
    StepDraft step;
    step.place = key.place;
    const auto rule =
        std::find_if(verb_rules.begin(), verb_rules.end(), [&](const VerbRule& r) { return r.word == key.text; });
    if (rule != verb_rules.end()) {
      step.verb = rule->verb;
      read_argument(value, *rule, step, problems_);
    } else {
      report_unknown_verb(key);
      keep_id(value, step);
    }
    return append(std::move(step));
  }

  void report_unknown_verb(const Node& key) {
    std::vector<std::string_view> words;
    words.reserve(verb_rules.size() + 1);
    for (const auto& rule : verb_rules) words.push_back(rule.word);
    words.push_back(any_order);
    problems_.add(key.place, fmt::format("{} is no verb of a step", quoted(key.text)), one_of(words),
                  problems_.nearest_to(key.text, words));
  }

  /// Of a step with an unknown verb the id still counts, so that those who wait for it are not reported too.
  static void keep_id(const Node& value, StepDraft& step) {
    for (const auto& [key, id] : value.entries) {
      if (key.text == "id" && id.is_scalar()) step.id = Name{id.text, id.place};
    }
  }

  BlockItem branches(const Node& value) {
    BlockItem item;
    if (value.kind != Node::Kind::sequence) {
      wrong(value, "`any-order`", "a list of branches, each a step or a list of steps", problems_);
      return nothing();
    }
    if (value.items.empty()) {
      problems_.add(value.place, "`any-order` has no branches", "at least one branch, a step or a list of steps");
      return nothing();
    }
    for (const auto& branch : value.items) {
      if (branch.kind == Node::Kind::sequence) {
        if (branch.items.empty()) problems_.add(branch.place, "a branch is empty", "at least one step");
        item.branches.push_back(list(branch));
      } else {
        Block block;
        block.items.push_back(this->item(branch));
        item.branches.push_back(std::move(block));
      }
    }
    return item;
  }

  /// `any-order` is not counted among the steps: one that is unreadable leaves one empty branch.
  static BlockItem nothing() {
    BlockItem item;
    item.branches.emplace_back();
    return item;
  }

  std::vector<StepDraft>& steps_;
  Problems& problems_;
};

}  // namespace

Block read_steps(const Node& node, std::vector<StepDraft>& steps, Problems& problems) {
  if (node.kind != Node::Kind::sequence) {
    wrong(node, "`steps`", "a list of steps", problems);
    return {};
  }
  return StepReader(steps, problems).list(node);
}

}  // namespace cairn::syntax

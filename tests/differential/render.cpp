#include "differential/render.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <array>

namespace cairn::differential {

namespace {

std::string written(Quantity q) {
  return is_known(q) ? std::to_string(q) : fmt::format("$p{}", unknown_of(q).value);
}

/// Collects the entries of a mapping in flow style.
class Flow {
 public:
  void add(const std::string& key, const std::string& value) { entries_.push_back(key + ": " + value); }
  void add(const std::string& key, bool value) { add(key, std::string(value ? "true" : "false")); }
  void add(const std::string& key, std::int64_t value) { add(key, written(value)); }
  template <class T>
  void add(const std::string& key, const std::optional<T>& value) {
    if (value) add(key, *value);
  }
  [[nodiscard]] bool empty() const { return entries_.empty(); }
  [[nodiscard]] std::string text() const { return fmt::format("{{{}}}", fmt::join(entries_, ", ")); }

 private:
  std::vector<std::string> entries_;
};

std::string word(Side side) {
  return std::array<const char*, 3>{"none", "east", "west"}[static_cast<std::size_t>(side)];
}

std::optional<std::string> word(const std::optional<Side>& side) {
  if (!side) return std::nullopt;
  return word(*side);
}

std::string word(Verb verb) {
  return std::array<const char*,
                    15>{"power-on", "power-off", "restart",  "set-number", "set-priority",
                        "enable",   "disable",   "set-side", "clear-side", "apply",
                        "save",     "plug",      "unplug",   "await",      "check"}[static_cast<std::size_t>(verb)];
}

std::string word(Takes takes) {
  return takes == Takes::at_restart ? "at-restart" : "at-once";
}

std::string list(const std::vector<std::string>& names) {
  return fmt::format("[{}]", fmt::join(names, ", "));
}

std::string render_platform(const Draft& draft, const std::string& indent) {
  const Platform& p = draft.platform;
  std::string text;
  const auto line = [&](const std::string& key, const std::string& value) {
    text += fmt::format("{}{}: {}\n", indent, key, value);
  };
  Flow factory;
  factory.add("number", p.factory.number);
  factory.add("priority", p.factory.priority);
  factory.add("enabled", p.factory.enabled);
  factory.add("side", word(p.factory.side));
  std::vector<std::string> election;
  for (const ElectionKey key : p.election) {
    election.emplace_back(std::array<const char*, 3>{"priority", "tenure", "number"}[static_cast<std::size_t>(key)]);
  }
  line("platform", "Random rules");
  line("numbers", fmt::format("[{}, {}]", p.numbers.low, p.numbers.high));
  line("priorities", fmt::format("[{}, {}]", p.priorities.low, p.priorities.high));
  line("factory", factory.text());
  line("number-takes", word(p.number_takes));
  line("priority-takes", word(p.priority_takes));
  line("settings-follow", p.settings_follow == SettingsFollow::device ? "device" : "number");
  line("side-takes", p.side_takes == SideTakes::on_apply ? "on-apply" : "at-once");
  line("side-needs-disabled", p.side_needs_disabled ? "true" : "false");
  line("facing", p.facing == Facing::opposite ? "opposite" : "any");
  line("side-leads-to", p.side_leads_to == SideLeadsTo::one_neighbour ? "one-neighbour" : "any");
  line("software", p.software == Software::must_match ? "must-match" : "any");
  line("orphans", p.orphans == Orphans::carry_on ? "carry-on" : "restart");
  line("election", list(election));
  if (draft.max_members_stated) line("max-members", std::to_string(p.max_members));
  return text;
}

std::string render_port(const PortDraft& port) {
  Flow startup;
  startup.add("enabled", port.startup_enabled);
  startup.add("side", word(port.startup_side));
  Flow flow;
  flow.add("side", word(port.side));
  flow.add("enabled", port.enabled);
  if (!startup.empty()) flow.add("startup", startup.text());
  flow.add("operational", word(port.operational));
  return flow.text();
}

std::string render_device(const DeviceDraft& device) {
  Flow flow;
  flow.add("address", device.address);
  if (device.on) flow.add("power", std::string(*device.on ? "up" : "off"));
  flow.add("number", device.number);
  flow.add("next-number", device.next_number);
  flow.add("priority", device.priority);
  if (device.startup_priority) flow.add("startup", fmt::format("{{priority: {}}}", written(*device.startup_priority)));
  flow.add("tenure", device.tenure);
  if (device.software) flow.add("software", '"' + *device.software + '"');
  Flow ports;
  for (const PortDraft& port : device.ports) {
    ports.add(port.name.substr(port.name.find('/') + 1), render_port(port));
  }
  if (!ports.empty()) flow.add("ports", ports.text());
  return flow.text();
}

/// `platform` is the path of the platform file; empty where the platform is written in place.
std::string render_site(const Draft& draft, const std::string& indent, const std::string& platform) {
  std::string text = indent + "site: Random site\n";
  if (platform.empty()) {
    text += indent + "platform:\n" + render_platform(draft, indent + "  ");
  } else {
    text += indent + "platform: " + platform + "\n";
  }
  text += indent + "devices:\n";
  for (const DeviceDraft& device : draft.devices) {
    text += fmt::format("{}  {}: {}\n", indent, device.name, render_device(device));
  }
  if (!draft.cables.empty()) text += indent + "cables:\n";
  for (const CableDraft& cable : draft.cables) {
    Flow flow;
    flow.add("plugged", cable.plugged);
    flow.add("id", cable.id);
    text += fmt::format("{}  {}: {}\n", indent, cable.ends(), flow.text());
  }
  if (draft.stack) {
    text += fmt::format("{}stack: {{primary: {}, members: {}}}\n", indent, draft.stack->primary,
                        list(draft.stack->members));
  }
  return text;
}

/// The argument in its short form; empty where the verb has none.
std::string short_argument(const StepDraft& step) {
  switch (step.verb) {
    case Verb::set_number:
    case Verb::set_priority:
    case Verb::set_side:
      return "";
    case Verb::apply:
    case Verb::save:
      if (step.stack_of) return "stack-of " + step.devices.front();
      return step.devices.size() == 1 ? step.devices.front() : list(step.devices);
    case Verb::await:
    case Verb::check:
      return '"' + render(step.condition) + '"';
    default:
      return step.subject;
  }
}

std::string subject_key(Verb verb) {
  switch (verb) {
    case Verb::enable:
    case Verb::disable:
    case Verb::set_side:
    case Verb::clear_side:
      return "port";
    case Verb::apply:
    case Verb::save:
      return "devices";
    case Verb::plug:
    case Verb::unplug:
      return "cable";
    case Verb::await:
    case Verb::check:
      return "condition";
    default:
      return "device";
  }
}

std::string render_step(const StepDraft& step) {
  const std::string argument = short_argument(step);
  const bool more = step.via || step.id || !step.after.empty() || step.as_mapping;
  if (!argument.empty() && !more) return word(step.verb) + ": " + argument;
  Flow flow;
  flow.add(subject_key(step.verb), argument.empty() ? step.subject : argument);
  if (step.verb == Verb::set_number || step.verb == Verb::set_priority) flow.add("to", step.to);
  if (step.verb == Verb::set_side) flow.add("side", word(step.side));
  flow.add("via", step.via);
  flow.add("id", step.id);
  if (step.after.size() == 1) flow.add("after", step.after.front());
  if (step.after.size() > 1) flow.add("after", list(step.after));
  return word(step.verb) + ": " + flow.text();
}

void render_items(const std::vector<Item>& items, const std::string& indent, std::string& text) {
  for (const Item& item : items) {
    if (item.branches.empty()) {
      text += indent + "- " + render_step(item.step) + "\n";
      continue;
    }
    text += indent + "- any-order:\n";
    for (const auto& branch : item.branches) {
      text += indent + "    -\n";
      render_items(branch, indent + "      ", text);
    }
  }
}

std::string render_goal(const GoalDraft& goal) {
  Flow flow;
  flow.add("stack", list(goal.stack));
  flow.add("primary", goal.primary);
  flow.add("saved", goal.saved);
  if (goal.where) flow.add("where", '"' + render(*goal.where) + '"');
  return flow.text();
}

std::string render(const AssumedDraft& side) {
  return side.address_of.empty() ? written(side.quantity) : fmt::format("address({})", side.address_of);
}

std::string render_template(const Draft& draft) {
  std::string text;
  Flow parameters;
  for (std::size_t i = 0; i < draft.parameters.size(); ++i) {
    parameters.add(fmt::format("p{}", i), fmt::format("[{}, {}]", draft.parameters[i].low, draft.parameters[i].high));
  }
  if (!parameters.empty()) text += "parameters: " + parameters.text() + "\n";
  std::vector<std::string> clauses;
  for (const auto& clause : draft.assume) {
    std::vector<std::string> parts;
    for (const AssumptionDraft& part : clause) {
      parts.push_back(fmt::format("{} {} {}", render(part.left), part.sign, render(part.right)));
    }
    clauses.push_back(fmt::format("({})", fmt::join(parts, " or ")));
  }
  if (!clauses.empty()) text += fmt::format("assume: {}\n", fmt::join(clauses, " and "));
  return text;
}

/// `site` is the path of the site file; empty where the site is written in place.
std::string render_procedure(const Draft& draft, const std::string& site) {
  std::string text = "procedure: Random procedure\n" + render_template(draft);
  text += site.empty() ? "site:\n" + render_site(draft, "  ", "") : "site: " + site + "\n";
  if (draft.keep) text += "keep: " + list(*draft.keep) + "\n";
  if (!draft.steps.empty()) {
    text += "steps:\n";
    render_items(draft.steps, "  ", text);
  }
  if (draft.goal) text += "goal: " + render_goal(*draft.goal) + "\n";
  Flow faults;
  if (draft.faults.cable_breaks != 0) faults.add("cable-breaks", draft.faults.cable_breaks);
  if (draft.faults.crashes != 0) faults.add("crashes", draft.faults.crashes);
  if (draft.faults.omissions != 0) faults.add("omissions", draft.faults.omissions);
  if (draft.faults.late_starts != 0) faults.add("late-starts", draft.faults.late_starts);
  if (draft.faults.mends) faults.add("mends", true);
  if (!faults.empty()) text += "faults: " + faults.text() + "\n";
  std::vector<std::string> properties;
  for (const AskedProperty& asked : draft.properties) {
    const std::string name(name_of(asked.property));
    properties.push_back(asked.property == Property::tolerates_loss ? fmt::format("{{{}: {}}}", name, asked.k) : name);
  }
  if (!properties.empty()) text += "properties: " + list(properties) + "\n";
  return text;
}

}  // namespace

std::string render(const ConditionDraft& condition) {
  if (condition.word == "not") return "not (" + render(condition.parts.front()) + ")";
  if (!condition.parts.empty()) {
    std::vector<std::string> parts;
    for (const ConditionDraft& part : condition.parts) parts.push_back("(" + render(part) + ")");
    return fmt::format("{}", fmt::join(parts, " " + condition.word + " "));
  }
  std::string text = fmt::format("{}({})", condition.word, fmt::join(condition.names, ", "));
  if (!condition.sign.empty()) text += " " + condition.sign + " " + condition.value;
  return text;
}

std::string render(const Draft& draft) {
  return render_procedure(draft, "");
}

std::map<std::string, std::string> render_files(const Draft& draft) {
  return {{procedure_path, render_procedure(draft, "../sites/random.yaml")},
          {"sites/random.yaml", render_site(draft, "", "../platforms/random.yaml")},
          {"platforms/random.yaml", render_platform(draft, "")}};
}

}  // namespace cairn::differential

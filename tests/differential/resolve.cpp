#include "differential/resolve.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "differential/order.hpp"
#include "differential/render.hpp"

namespace cairn::differential {

namespace {

class Resolver {
 public:
  explicit Resolver(const Draft& draft) : draft_(draft), steps_(all_steps(draft_.steps)) {}

  Model run() {
    model_.platform = draft_.platform;
    if (!draft_.max_members_stated) {
      model_.platform.max_members = draft_.platform.numbers.high - draft_.platform.numbers.low + 1;
    }
    for (const DeviceDraft& device : draft_.devices) add_device(device);
    for (const CableDraft& cable : draft_.cables) {
      model_.site.cables.push_back(
          {cable.name(), cable.ends(), port(cable.a), port(cable.b), cable.plugged.value_or(true)});
    }
    if (draft_.stack) model_.site.stack = RunningStack{device(draft_.stack->primary), devices(draft_.stack->members)};
    add_keep();
    const auto waits = waits_of(draft_);
    for (std::size_t i = 0; i < steps_.size(); ++i) add_step(i, waits[i]);
    add_goal();
    model_.procedure.faults = draft_.faults;
    model_.procedure.properties = draft_.properties;
    for (int i = 0; draft_.properties.empty() && i < property_count; ++i) {
      const auto property = static_cast<Property>(i);
      if (property != Property::tolerates_loss) model_.procedure.properties.push_back({property, 0});
    }
    return model_;
  }

 private:
  template <class Id, class Things, class Name>
  static Id find(const Things& things, const Name& is_it) {
    return Id(static_cast<std::size_t>(std::find_if(things.begin(), things.end(), is_it) - things.begin()));
  }

  [[nodiscard]] DeviceId device(const std::string& name) const {
    return find<DeviceId>(draft_.devices, [&](const DeviceDraft& d) { return d.name == name; });
  }
  [[nodiscard]] PortId port(const std::string& name) const {
    return find<PortId>(port_names(draft_), [&](const std::string& p) { return p == name; });
  }
  [[nodiscard]] CableId cable(const std::string& name) const {
    return find<CableId>(draft_.cables, [&](const CableDraft& c) {
      return c.id == name || c.ends() == name || c.b + "--" + c.a == name;
    });
  }
  [[nodiscard]] StepId step(const std::string& name) const {
    for (std::size_t i = 0; i < steps_.size(); ++i) {
      if (step_id(i) == name) return StepId(i);
    }
    return {};
  }
  [[nodiscard]] std::string step_id(std::size_t place) const {
    return steps_[place]->id.value_or("s" + std::to_string(place + 1));
  }
  [[nodiscard]] std::vector<DeviceId> devices(const std::vector<std::string>& names) const {
    std::vector<DeviceId> ids;
    for (const std::string& name : names) ids.push_back(device(name));
    return ids;
  }

  void add_device(const DeviceDraft& draft) {
    const Factory& factory = draft_.platform.factory;
    Device d;
    d.name = draft.name;
    d.on = draft.on.value_or(true);
    d.address = draft.address ? parse_address(*draft.address) : 0x020000000000 + (++unaddressed_ << 24U);
    d.number = draft.number.value_or(factory.number);
    d.next_number = draft.next_number.value_or(d.number);
    d.priority = draft.priority.value_or(factory.priority);
    d.startup_priority = draft.startup_priority.value_or(d.priority);
    d.tenure = draft.tenure.value_or(0);
    d.software = draft.software.value_or("1");
    const DeviceId id(model_.site.devices.size());
    for (const PortDraft& port_draft : draft.ports) {
      Port p;
      p.name = port_draft.name;
      p.device = id;
      p.enabled = port_draft.enabled.value_or(factory.enabled);
      p.startup_enabled = port_draft.startup_enabled.value_or(p.enabled);
      p.side = port_draft.side.value_or(factory.side);
      p.startup_side = port_draft.startup_side.value_or(p.side);
      p.operational_side = port_draft.operational.value_or(p.side);
      d.ports.emplace_back(model_.site.ports.size());
      model_.site.ports.push_back(p);
    }
    model_.site.devices.push_back(d);
  }

  static std::uint64_t parse_address(const std::string& text) {
    std::string digits = text;
    std::erase(digits, ':');
    return std::stoull(digits, nullptr, 16);
  }

  void add_keep() {
    std::vector<DeviceId>& keep = model_.procedure.keep;
    for (std::size_t i = 0; i < model_.site.devices.size(); ++i) {
      const std::string& name = draft_.devices[i].name;
      const auto in = [&](const std::vector<std::string>& names) {
        return std::find(names.begin(), names.end(), name) != names.end();
      };
      const bool by_default = draft_.stack ? in(draft_.stack->members) : model_.site.devices[i].on;
      if (draft_.keep ? in(*draft_.keep) : by_default) keep.emplace_back(i);
    }
  }

  void add_step(std::size_t place, const std::set<std::size_t>& waits) {
    const StepDraft& draft = *steps_[place];
    Step s;
    s.id = step_id(place);
    s.verb = draft.verb;
    switch (draft.verb) {
      case Verb::enable:
      case Verb::disable:
      case Verb::set_side:
      case Verb::clear_side:
        s.port = port(draft.subject);
        s.device = model_[s.port].device;
        s.side = draft.verb == Verb::set_side ? draft.side : Side::none;
        break;
      case Verb::plug:
      case Verb::unplug:
        s.cable = cable(draft.subject);
        break;
      case Verb::apply:
      case Verb::save:
        if (draft.stack_of) {
          s.stack_of = device(draft.devices.front());
        } else {
          s.devices = devices(draft.devices);
        }
        break;
      case Verb::await:
      case Verb::check:
        s.condition = condition(draft.condition);
        break;
      default:
        s.device = device(draft.subject);
        break;
    }
    if (draft.verb == Verb::set_number || draft.verb == Verb::set_priority) s.value = draft.to;
    const bool own_console = draft.verb >= Verb::restart && draft.verb <= Verb::clear_side;
    if (own_console) s.via = s.device;
    if (draft.via) s.via = device(*draft.via);
    for (const std::size_t other : waits) s.after.emplace_back(other);
    model_.procedure.steps.push_back(s);
  }

  void add_goal() {
    if (!draft_.goal) return;
    Goal goal;
    goal.stack = devices(draft_.goal->stack);
    if (draft_.goal->primary) goal.primary = device(*draft_.goal->primary);
    goal.saved = draft_.goal->saved.value_or(false);
    if (draft_.goal->where) goal.where = condition(*draft_.goal->where);
    model_.procedure.goal = goal;
  }

  [[nodiscard]] Condition condition(const ConditionDraft& draft) const {
    static const std::map<std::string, Condition::Kind> kinds = {{"up", Condition::Kind::up},
                                                                 {"held", Condition::Kind::held},
                                                                 {"starting", Condition::Kind::starting},
                                                                 {"off", Condition::Kind::off},
                                                                 {"linked", Condition::Kind::linked},
                                                                 {"cable-up", Condition::Kind::cable_up},
                                                                 {"together", Condition::Kind::together},
                                                                 {"primary", Condition::Kind::primary},
                                                                 {"follower", Condition::Kind::follower},
                                                                 {"number", Condition::Kind::number},
                                                                 {"priority", Condition::Kind::priority},
                                                                 {"saved", Condition::Kind::saved},
                                                                 {"enabled", Condition::Kind::enabled},
                                                                 {"side", Condition::Kind::side},
                                                                 {"done", Condition::Kind::done},
                                                                 {"not", Condition::Kind::negation},
                                                                 {"and", Condition::Kind::all},
                                                                 {"or", Condition::Kind::any},
                                                                 {"implies", Condition::Kind::implies}};
    static const std::map<std::string, Sign> signs = {{"=", Sign::equal},   {"!=", Sign::not_equal},
                                                      {"<", Sign::less},    {"<=", Sign::less_or_equal},
                                                      {">", Sign::greater}, {">=", Sign::greater_or_equal}};
    static const std::map<std::string, Side> sides = {{"none", Side::none}, {"east", Side::east}, {"west", Side::west}};
    Condition c;
    c.kind = kinds.at(draft.word);
    for (const ConditionDraft& part : draft.parts) c.parts.push_back(condition(part));
    if (!draft.sign.empty()) c.sign = signs.at(draft.sign);
    switch (c.kind) {
      case Condition::Kind::linked:
      case Condition::Kind::cable_up:
        c.cable = cable(draft.names.front());
        break;
      case Condition::Kind::enabled:
        c.port = port(draft.names.front());
        break;
      case Condition::Kind::side:
        c.port = port(draft.names.front());
        c.side = sides.at(draft.value);
        break;
      case Condition::Kind::done:
        c.step = step(draft.names.front());
        break;
      case Condition::Kind::number:
      case Condition::Kind::priority:
        c.value = std::stoll(draft.value);
        [[fallthrough]];
      default:
        c.devices = devices(draft.names);
        break;
    }
    return c;
  }

  Draft draft_;
  std::vector<StepDraft*> steps_;
  Model model_;
  std::uint64_t unaddressed_ = 0;
};

/// A condition as text in which an `and` of an `and` is one `and`, and so with `or`.
std::string flat(const Condition& c, bool inside = false) {
  std::string parts;
  for (const Condition& part : c.parts) {
    const bool same = part.kind == c.kind && (c.kind == Condition::Kind::all || c.kind == Condition::Kind::any);
    parts += flat(part, same);
  }
  if (inside) return parts;
  std::string devices;
  for (const DeviceId d : c.devices) devices += fmt::format(" {}", d.value);
  const bool compares =
      c.kind == Condition::Kind::number || c.kind == Condition::Kind::priority || c.kind == Condition::Kind::side;
  const std::string sign =
      compares ? fmt::format(" {} {} {}", static_cast<int>(c.sign), c.value, static_cast<int>(c.side)) : "";
  return fmt::format("({}{} {} {} {}{} {})", static_cast<int>(c.kind), devices, c.port.value, c.cable.value,
                     c.step.value, sign, parts);
}

std::string flat(const Platform& p) {
  std::string election;
  for (const ElectionKey key : p.election) election += std::to_string(static_cast<int>(key));
  return fmt::format("{}-{} {}-{} {} {} {} {} {}{}{}{}{}{}{}{}{} {} {}", p.numbers.low, p.numbers.high,
                     p.priorities.low, p.priorities.high, p.factory.number, p.factory.priority, p.factory.enabled,
                     static_cast<int>(p.factory.side), static_cast<int>(p.number_takes),
                     static_cast<int>(p.priority_takes), static_cast<int>(p.settings_follow),
                     static_cast<int>(p.side_takes), p.side_needs_disabled, static_cast<int>(p.facing),
                     static_cast<int>(p.side_leads_to), static_cast<int>(p.orphans), static_cast<int>(p.software),
                     election, p.max_members);
}

std::string flat(const std::vector<DeviceId>& devices) {
  std::string text;
  for (const DeviceId d : devices) text += fmt::format("{} ", d.value);
  return text;
}

std::string flat(const Device& d) {
  std::string ports;
  for (const PortId p : d.ports) ports += fmt::format("{} ", p.value);
  return fmt::format("{} {:012x} {} number {} {} priority {} {} tenure {} software {} ports {}", d.name, d.address,
                     d.on, d.number, d.next_number, d.priority, d.startup_priority, d.tenure, d.software, ports);
}

std::string flat(const Port& p) {
  return fmt::format("{} {} {} {} {} {} {}", p.name, p.device.value, p.enabled, p.startup_enabled,
                     static_cast<int>(p.side), static_cast<int>(p.startup_side), static_cast<int>(p.operational_side));
}

std::string flat(const Cable& c) {
  return fmt::format("{} {} {} {} {}", c.name, c.ends, c.a.value, c.b.value, c.plugged);
}

std::string flat(const Step& s) {
  return fmt::format("{} verb {} of {} via {} port {} cable {} value {} side {} devices {} stack-of {} {}", s.id,
                     static_cast<int>(s.verb), s.device.value, s.via.value, s.port.value, s.cable.value, s.value,
                     static_cast<int>(s.side), flat(s.devices), s.stack_of.value, flat(s.condition));
}

std::string flat(const Goal& g) {
  return fmt::format("{} {} {} {}", flat(g.stack), g.primary.value, g.saved, g.where ? flat(*g.where) : "");
}

std::string flat(const FaultBudget& f) {
  return fmt::format("{} {} {} {} {}", f.cable_breaks, f.crashes, f.omissions, f.late_starts, f.mends);
}

std::string flat(const AskedProperty& a) {
  return fmt::format("{} {}", name_of(a.property), a.k);
}

class Differ {
 public:
  void compare(const std::string& what, const std::string& ours, const std::string& theirs) {
    if (first_.empty() && ours != theirs) first_ = fmt::format("{}: \"{}\" expected, \"{}\" read", what, ours, theirs);
  }

  template <class Things>
  void compare_all(const std::string& what, const Things& ours, const Things& theirs) {
    compare("number of " + what, std::to_string(ours.size()), std::to_string(theirs.size()));
    for (std::size_t i = 0; i < std::min(ours.size(), theirs.size()); ++i) {
      compare(what + " " + std::to_string(i), flat(ours[i]), flat(theirs[i]));
    }
  }

  [[nodiscard]] const std::string& first() const { return first_; }

 private:
  std::string first_;
};

}  // namespace

Model resolve(const Draft& draft) {
  return Resolver(draft).run();
}

std::string model_difference(const Model& ours, const Model& theirs) {
  Differ differ;
  differ.compare("platform", flat(ours.platform), flat(theirs.platform));
  differ.compare_all("devices", ours.site.devices, theirs.site.devices);
  differ.compare_all("ports", ours.site.ports, theirs.site.ports);
  differ.compare_all("cables", ours.site.cables, theirs.site.cables);
  const auto stack = [](const Model& m) {
    return m.site.stack ? fmt::format("{} of {}", m.site.stack->primary.value, flat(m.site.stack->members)) : "none";
  };
  differ.compare("stack", stack(ours), stack(theirs));
  differ.compare("keep", flat(ours.procedure.keep), flat(theirs.procedure.keep));
  differ.compare_all("steps", ours.procedure.steps, theirs.procedure.steps);
  const auto goal = [](const Model& m) { return m.procedure.goal ? flat(*m.procedure.goal) : "none"; };
  differ.compare("goal", goal(ours), goal(theirs));
  differ.compare("faults", flat(ours.procedure.faults), flat(theirs.procedure.faults));
  differ.compare_all("properties", ours.procedure.properties, theirs.procedure.properties);
  return differ.first();
}

}  // namespace cairn::differential

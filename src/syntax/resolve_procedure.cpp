#include "syntax/resolve_procedure.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "base/text.hpp"
#include "syntax/order.hpp"
#include "syntax/resolve_condition.hpp"

namespace cairn::syntax {

namespace {

/// What a step without an id is called by: its place, from 1.
std::string place_name(std::size_t step) {
  return fmt::format("s{}", step + 1);
}

class ProcedureResolver {
 public:
  ProcedureResolver(const ProcedureDraft& draft, const Site& site, Names& names, Problems& problems)
      : draft_(draft), site_(site), names_(names), problems_(problems) {}

  Procedure run() {
    procedure_.title = draft_.title;
    procedure_.faults = draft_.faults;
    name_steps();
    for (const auto& step : draft_.steps) procedure_.steps.push_back(resolve_step(step));
    order_steps();
    resolve_properties();
    resolve_keep();
    resolve_goal();
    return std::move(procedure_);
  }

 private:
  // ---- Steps

  /// All step ids differ, also from the places in use.
  void name_steps() {
    auto& table = names_.steps.emplace("there is no step");
    for (std::size_t s = 0; s < draft_.steps.size(); ++s) {
      if (!draft_.steps[s].id) table.add(place_name(s), s);
    }
    for (std::size_t s = 0; s < draft_.steps.size(); ++s) {
      const auto& id = draft_.steps[s].id;
      if (!id || table.add(id->value, s)) continue;
      const bool is_place = !draft_.steps[*table.find(id->value)].id;
      problems_.add(id->place,
                    is_place ? fmt::format("the id {} is the place of another step, which has no id of its own",
                                           quoted(id->value))
                             : fmt::format("the id {} stands twice", quoted(id->value)),
                    "step ids that all differ, also from the places in use");
    }
  }

  Step resolve_step(const StepDraft& draft) {
    Step step;
    step.id = draft.id ? draft.id->value : place_name(procedure_.steps.size());
    step.verb = draft.verb.value_or(Verb::await);
    step.side = draft.side;
    step.note = draft.note;
    step.condition_text = draft.condition_text;
    step.span = draft.place.span();
    if (draft.device) step.device = names_.device(*draft.device, problems_).value_or(DeviceId());
    if (draft.port) resolve_port(*draft.port, step);
    if (draft.cable) step.cable = names_.cable(*draft.cable, problems_).value_or(CableId());
    step.devices = names_.all_devices(draft.devices, problems_);
    if (draft.stack_of) step.stack_of = names_.device(*draft.stack_of, problems_).value_or(DeviceId());
    if (draft.condition) step.condition = resolve_condition(*draft.condition, names_, problems_);
    if (draft.value) step.value = names_.quantity(*draft.value, problems_);
    resolve_console(draft, step);
    return step;
  }

  void resolve_port(const Reference& reference, Step& step) {
    const auto port = names_.port(reference, problems_);
    if (!port) return;
    step.port = *port;
    step.device = site_.ports[port->value].device;
  }

  /// Semantics 5.h: the console is by default that of the device that is configured.
  void resolve_console(const StepDraft& draft, Step& step) {
    if (draft.via) step.via = names_.device(*draft.via, problems_).value_or(DeviceId());
    switch (step.verb) {
      case Verb::restart:
      case Verb::set_number:
      case Verb::set_priority:
      case Verb::enable:
      case Verb::disable:
      case Verb::set_side:
      case Verb::clear_side:
        if (!draft.via) step.via = step.device;
        break;
      default:
        break;
    }
  }

  void order_steps() {
    auto predecessors = file_order(draft_.order, draft_.steps.size());
    if (!predecessors) {
      problems_.add(draft_.place, fmt::format("the steps wait for each other in more than {} ways", most_waits),
                    "fewer branches one group after the other");
      return;
    }
    add_after(*predecessors);
    const auto found = circles(*predecessors);
    for (const auto& circle : found) report_circle(circle);
    if (!found.empty()) return;
    leave_out_redundant(*predecessors);
    for (std::size_t s = 0; s < procedure_.steps.size(); ++s) {
      for (const auto p : (*predecessors)[s]) procedure_.steps[s].after.emplace_back(p);
    }
  }

  void add_after(Predecessors& predecessors) {
    for (std::size_t s = 0; s < draft_.steps.size(); ++s) {
      for (const auto& name : draft_.steps[s].after) {
        if (const auto step = look_up_after(name)) predecessors[s].push_back(step->value);
      }
    }
  }

  /// A step with an id is not called by its place: then the id is what was meant.
  std::optional<StepId> look_up_after(const Name& name) {
    const auto place = name.value.starts_with('s') ? to_integer(std::string_view(name.value).substr(1)) : std::nullopt;
    const bool is_place = place && *place >= 1 && static_cast<std::size_t>(*place) <= draft_.steps.size();
    if (!is_place || names_.steps->find(name.value)) return names_.step(name, problems_);
    const auto& called = draft_.steps[static_cast<std::size_t>(*place) - 1].id;
    problems_.add(name.place, fmt::format("the step at {} has an id, and is called by that alone", quoted(name.value)),
                  "the id of a step, or the place of one without", called ? called->value : std::string());
    return std::nullopt;
  }

  void report_circle(const std::vector<std::size_t>& circle) {
    constexpr std::size_t most_shown = 12;
    std::string path;
    for (std::size_t i = 0; i < std::min(circle.size(), most_shown); ++i)
      path += fmt::format("{}, then ", procedure_.steps[circle[i]].id);
    if (circle.size() > most_shown) path += "…, then ";
    const auto& place = place_of_circle(circle);
    const bool alone = circle.size() == 1;
    problems_.add(place,
                  alone ? fmt::format("{} waits for itself", procedure_.steps[circle.front()].id)
                        : fmt::format("the steps wait for each other in a circle: {}{} again", path,
                                      procedure_.steps[circle.front()].id),
                  "an `after` that leads back to an earlier step only");
  }

  /// The `after` to point at: one that closes the circle.
  const Place& place_of_circle(const std::vector<std::size_t>& circle) {
    for (std::size_t i = 0; i < circle.size(); ++i) {
      const auto before = circle[(i + circle.size() - 1) % circle.size()];
      for (const auto& name : draft_.steps[circle[i]].after) {
        if (names_.steps->find(name.value) == before) return name.place;
      }
    }
    return draft_.steps[circle.front()].place;
  }

  // ---- Questions, keep and goal

  void resolve_properties() {
    if (draft_.properties) {
      for (const auto& property : *draft_.properties) procedure_.properties.push_back(property.asked);
      return;
    }
    for (int i = 0; i < property_count; ++i) {
      const auto property = static_cast<Property>(i);
      if (property != Property::tolerates_loss) procedure_.properties.push_back({property, 0});
    }
  }

  /// The first property that is asked for and for which `needs` holds: its name, and where it is asked for.
  std::optional<Located<std::string>> asked(bool (*needs)(Property)) {
    for (std::size_t i = 0; i < procedure_.properties.size(); ++i) {
      const auto property = procedure_.properties[i].property;
      if (!needs(property)) continue;
      return Located<std::string>{std::string(name_of(property)),
                                  draft_.properties ? (*draft_.properties)[i].place : draft_.place};
    }
    return std::nullopt;
  }

  /// Semantics 6: the running stack's members, or every device that is on.
  void resolve_keep() {
    auto& keep = procedure_.keep;
    procedure_.keep_stated = draft_.keep.has_value();
    if (draft_.keep) {
      keep = names_.all_devices(draft_.keep->value, problems_);
    } else if (site_.stack) {
      keep = site_.stack->members;
    } else {
      for (std::size_t d = 0; d < site_.devices.size(); ++d) {
        if (site_.devices[d].on) keep.emplace_back(d);
      }
    }
    std::sort(keep.begin(), keep.end());
    if (draft_.keep || site_.stack || !names_.devices || !keep.empty()) return;
    if (const auto property = asked([](Property p) { return speaks_of_keep(p); })) {
      problems_.add(property->place,
                    fmt::format("{} speaks of the devices to keep, and no device is on", property->value),
                    "`keep`, a list of devices");
    }
  }

  void resolve_goal() {
    const auto needed = asked([](Property p) { return speaks_of_goal(p); });
    if (!draft_.goal || !draft_.goal->stack_place) {
      if (needed) {
        problems_.add(draft_.goal && !draft_.properties ? draft_.goal->place : needed->place,
                      fmt::format("{} is asked for{}, and there is no `goal.stack`", needed->value,
                                  draft_.properties ? "" : " by default"),
                      "`goal` with `stack`, the devices that shall run as one at the end");
      }
      if (!draft_.goal) return;
    }
    const auto& draft = *draft_.goal;
    Goal goal;
    goal.stack = names_.all_devices(draft.stack, problems_);
    if (draft.primary) resolve_primary(draft, goal);
    goal.saved = draft.saved;
    if (draft.where) goal.where = resolve_condition(*draft.where, names_, problems_);
    goal.where_text = draft.where_text;
    if (draft.stack_place) procedure_.goal = std::move(goal);
  }

  void resolve_primary(const GoalDraft& draft, Goal& goal) {
    const auto primary = names_.device(*draft.primary, problems_);
    if (!primary) return;
    goal.primary = *primary;
    // A stack that was not readable, or of which a name is unknown, was reported; the primary may be meant by that.
    const bool whole = !draft.stack.empty() && goal.stack.size() == draft.stack.size();
    const bool listed = std::find(goal.stack.begin(), goal.stack.end(), *primary) != goal.stack.end();
    if (!listed && (whole || !draft.stack_place)) {
      problems_.add(draft.primary->place,
                    fmt::format("the goal's primary {} is not in its stack", quoted(draft.primary->value)),
                    "one of `goal.stack`");
    }
  }

  const ProcedureDraft& draft_;
  const Site& site_;
  Names& names_;
  Problems& problems_;
  Procedure procedure_;
};

}  // namespace

std::vector<Parameter> declare_parameters(const ProcedureDraft& draft, Names& names) {
  auto& table = names.parameters.emplace("there is no parameter");
  std::vector<Parameter> parameters;
  for (std::size_t i = 0; i < draft.parameters.size(); ++i) {
    table.add(draft.parameters[i].name.value, i);
    // Integers so low that codes begin there are out of every range, like the lowest that is none.
    const auto [low, high] = draft.parameters[i].range;
    parameters.push_back({draft.parameters[i].name.value, {std::max(low, least_known), std::max(high, least_known)}});
  }
  return parameters;
}

Procedure resolve_procedure(const ProcedureDraft& draft, const Site& site, Names& names, Problems& problems) {
  return ProcedureResolver(draft, site, names, problems).run();
}

}  // namespace cairn::syntax

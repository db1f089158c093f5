#include "report/narrate.hpp"

#include <fmt/format.h>

#include "report/why.hpp"
#include "report/words.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"

namespace cairn::report {

namespace {

// A verb as an order and as a report: "switch on", "switches on".
struct Deed {
  std::string_view order;
  std::string_view report;
  std::string rest;
};

std::string cable_named(const Model& model, CableId c) {
  const Cable& cable = model[c];
  return cable.name == cable.ends ? "cable " + cable.name : fmt::format("cable {} ({})", cable.name, cable.ends);
}

std::string handled_devices(const Model& model, const Step& step) {
  if (step.stack_of) return fmt::format("{} and all that is stacked with it", model[step.stack_of].name);
  return listed(names_of(model, step.devices));
}

// Where a configuring step is typed.
std::string at_console(const Model& model, const Step& step, const std::vector<DeviceId>& configured) {
  if (!step.via) return configured.size() > 1 || step.stack_of ? ", at each one's own console" : ", at its console";
  if (configured.size() == 1 && configured.front() == step.via) return ", at its console";
  return fmt::format(", at the console of {}", model[step.via].name);
}

Deed deed_of(const Model& model, const Step& step) {
  const auto device = [&] { return model[step.device].name; };
  const auto port = [&] { return model[step.port].name; };
  const auto console = [&] { return at_console(model, step, {step.device}); };
  const auto consoles = [&] { return at_console(model, step, step.devices); };
  switch (step.verb) {
    case Verb::power_on:
      return {"switch on", "switches on", device()};
    case Verb::power_off:
      return {"switch off", "switches off", device()};
    case Verb::restart:
      return {"restart", "restarts", device() + console()};
    case Verb::set_number:
      return {"set", "sets", fmt::format("the number of {} to {}{}", device(), step.value, console())};
    case Verb::set_priority:
      return {"set", "sets", fmt::format("the priority of {} to {}{}", device(), step.value, console())};
    case Verb::enable:
      return {"enable", "enables", fmt::format("port {}{}", port(), console())};
    case Verb::disable:
      return {"disable", "disables", fmt::format("port {}{}", port(), console())};
    case Verb::set_side:
      return {"set", "sets", fmt::format("the side of {} to {}{}", port(), name_of(step.side), console())};
    case Verb::clear_side:
      return {"clear", "clears", fmt::format("the side of {}{}", port(), console())};
    case Verb::apply:
      return {"apply", "applies", fmt::format("the sides of {}{}", handled_devices(model, step), consoles())};
    case Verb::save:
      return {"save", "saves", fmt::format("the settings of {}{}", handled_devices(model, step), consoles())};
    case Verb::plug:
      return {"plug in", "plugs in", cable_named(model, step.cable)};
    case Verb::unplug:
      return {"unplug", "unplugs", cable_named(model, step.cable)};
    case Verb::await:
      return {"wait for", "has waited for", step.condition_text};
    case Verb::check:
      return {"check", "checks", step.condition_text};
  }
  return {};
}

std::string step_happens(const Model& model, const Moment& moment) {
  const Step& step = model[moment.event.step()];
  const Deed deed = deed_of(model, step);
  if (moment.refusal != Refusal::none) {
    return fmt::format("tries to {} {} ({}): refused, {}", deed.order, deed.rest, step.id, why_refused(model, moment));
  }
  std::string out = fmt::format("{} {} ({})", deed.report, deed.rest, step.id);
  if (step.verb == Verb::check) {
    out += moment.left.halted ? ": it does not hold, and the procedure stops here" : ": it holds";
  }
  return out;
}

// 5.h, 5.g: the console that is down, or the devices that cannot be reached from it.
std::string why_unreachable(const Model& model, const Step& step, const State& before) {
  if (step.via && !semantics::running(before, step.via)) return standing(model, before, step.via);
  const bool group = step.verb == Verb::apply || step.verb == Verb::save;
  const std::vector<DeviceId> devices = !group          ? std::vector{step.device}
                                        : step.stack_of ? std::vector{step.stack_of}
                                                        : step.devices;
  const semantics::World world(model);
  const semantics::Derived derived = derive(world, before);
  std::vector<std::string> reasons;
  for (const DeviceId d : devices) {
    if (semantics::reachable(before, derived, d, step.via ? step.via : d)) continue;
    reasons.push_back(semantics::running(before, d)
                          ? fmt::format("{} cannot be reached from {}", model[d].name, model[step.via].name)
                          : standing(model, before, d));
  }
  return listed(reasons);
}

}  // namespace

std::string_view name_of(Actor actor) {
  switch (actor) {
    case Actor::operator_:
      return "operator";
    case Actor::device:
      return "device";
    case Actor::fault:
      return "fault";
  }
  return {};
}

std::string what_to_do(const Model& model, const Step& step) {
  const Deed deed = deed_of(model, step);
  return fmt::format("{} {}", deed.order, deed.rest);
}

std::string why_refused(const Model& model, const Moment& moment) {
  const Step& step = model[moment.event.step()];
  switch (moment.refusal) {
    case Refusal::none:
      return {};
    case Refusal::not_off:
      return fmt::format("{} is not off", model[step.device].name);
    case Refusal::already_off:
      return fmt::format("{} is off already", model[step.device].name);
    case Refusal::not_reachable:
      return why_unreachable(model, step, moment.before);
    case Refusal::out_of_range: {
      const Range& range = step.verb == Verb::set_number ? model.platform.numbers : model.platform.priorities;
      return fmt::format("this platform takes {} to {}", range.low, range.high);
    }
    case Refusal::port_enabled:
      return fmt::format("{} is enabled", model[step.port].name);
    case Refusal::already_plugged:
      return "it is plugged in already";
    case Refusal::port_occupied:
      return "another cable is in one of its ports";
    case Refusal::not_plugged:
      return "it is not plugged in";
  }
  return {};
}

std::string what_happens(const Model& model, const Moment& moment) {
  const Event& event = moment.event;
  switch (event.kind) {
    case Event::Kind::step:
      return step_happens(model, moment);
    case Event::Kind::started:
      return fmt::format("{} completes its start", model[event.device()].name);
    case Event::Kind::broke:
      return fmt::format("{} breaks", cable_named(model, event.cable()));
    case Event::Kind::mended:
      return fmt::format("{} works again", cable_named(model, event.cable()));
    case Event::Kind::crashed:
      return fmt::format("{} crashes and starts again", model[event.device()].name);
    case Event::Kind::omitted: {
      const Step& step = model[event.step()];
      return fmt::format("the operator forgets to {} ({})", what_to_do(model, step), step.id);
    }
    case Event::Kind::started_late:
      return fmt::format("{} completes its start late, and by then leads itself", model[event.device()].name);
    case Event::Kind::cold_start:
      return "power fails and returns, for all devices at once";
  }
  return {};
}

std::string as_clause(const Model& model, const Moment& moment) {
  const std::string happens = what_happens(model, moment);
  return moment.event.kind == Event::Kind::step ? "the operator " + happens : happens;
}

}  // namespace cairn::report

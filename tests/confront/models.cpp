#include "confront/models.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace cairn::confront {

bool chance(Random& random, std::size_t percent) {
  return below(random, 100) < percent;
}

namespace {

DeviceId any_device(Random& random, const Model& model) {
  return DeviceId(below(random, model.site.devices.size()));
}

PortId any_port(Random& random, const Model& model) {
  return PortId(below(random, model.site.ports.size()));
}

CableId any_cable(Random& random, const Model& model) {
  return CableId(below(random, model.site.cables.size()));
}

Side any_side(Random& random) {
  return static_cast<Side>(below(random, 3));
}

// Not empty, in the site's order.
std::vector<DeviceId> some_devices(Random& random, const Model& model) {
  std::vector<DeviceId> some{any_device(random, model)};
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
    if (DeviceId(i) != some.front() && chance(random, 40)) some.emplace_back(i);
  }
  std::sort(some.begin(), some.end());
  return some;
}

Condition random_atom(Random& random, const Model& model) {
  using Kind = Condition::Kind;
  Condition atom;
  atom.kind = static_cast<Kind>(below(random, static_cast<std::size_t>(Kind::done) + 1));
  atom.devices = {any_device(random, model)};
  if (atom.kind == Kind::together) atom.devices = some_devices(random, model);
  atom.port = any_port(random, model);
  atom.cable = any_cable(random, model);
  atom.step = StepId(below(random, model.procedure.steps.size()));
  atom.sign = static_cast<Sign>(below(random, atom.kind == Kind::side ? 2 : 6));
  atom.value = static_cast<std::int64_t>(below(random, 5));
  atom.side = any_side(random);
  return atom;
}

// Small ranges, so that values meet, and some that steps set lie outside.
void narrow(Random& random, Model& model) {
  const auto number = [&] { return static_cast<std::int64_t>(1 + below(random, 3)); };
  model.platform.numbers = {1, 3};
  model.platform.priorities = {0, 2};
  model.platform.factory.number = number();
  model.platform.software = chance(random, 70) ? Software::any : Software::must_match;
  model.platform.max_members = static_cast<std::int64_t>(1 + below(random, model.site.devices.size()));
  std::vector<std::uint64_t> addresses;
  for (Device& device : model.site.devices) {
    device.number = number();
    device.next_number = chance(random, 70) ? device.number : number();
    device.software = chance(random, 80) ? "1" : "2";
    addresses.insert(addresses.begin() + static_cast<std::ptrdiff_t>(below(random, addresses.size() + 1)),
                     device.address);
  }
  for (Port& port : model.site.ports) {
    if (chance(random, 25)) port.operational_side = any_side(random);
  }
  for (std::size_t i = 0; i < addresses.size(); ++i) model.site.devices[i].address = addresses[i];
}

void name_devices(Random& random, const Model& model, Step& step) {
  if (chance(random, 50)) {
    step.stack_of = any_device(random, model);
  } else {
    step.devices = some_devices(random, model);
  }
  if (chance(random, 50)) step.via = any_device(random, model);
}

Step random_step(Random& random, const Model& model, Verb verb) {
  Step step;
  step.id = "s" + std::to_string(model.procedure.steps.size() + 1);
  step.verb = verb;
  step.device = any_device(random, model);
  switch (verb) {
    case Verb::power_on:
    case Verb::power_off:
      return step;
    case Verb::set_number:
    case Verb::set_priority:
      step.value = static_cast<std::int64_t>(below(random, 5));
      break;
    case Verb::enable:
    case Verb::disable:
    case Verb::set_side:
    case Verb::clear_side:
      step.port = any_port(random, model);
      step.device = model[step.port].device;
      if (verb == Verb::set_side) step.side = any_side(random);
      break;
    case Verb::apply:
    case Verb::save:
      step.device = {};
      name_devices(random, model, step);
      return step;
    case Verb::plug:
    case Verb::unplug:
      step.device = {};
      step.cable = any_cable(random, model);
      return step;
    case Verb::restart:
    case Verb::await:
    case Verb::check:
      break;
  }
  step.via = chance(random, 60) ? step.device : any_device(random, model);
  return step;
}

void draw_steps(Random& random, Model& model) {
  std::vector<Step>& steps = model.procedure.steps;
  constexpr std::size_t verbs = static_cast<std::size_t>(Verb::check) + 1;
  const std::size_t count = 1 + below(random, 7);
  for (std::size_t i = 0; i < count; ++i) {
    Step step = random_step(random, model, static_cast<Verb>(below(random, verbs)));
    for (std::size_t before = 0; before < i; ++before) {
      if (chance(random, 20)) step.after.emplace_back(before);
    }
    steps.push_back(std::move(step));
  }
  for (Step& step : steps) {
    if (step.verb == Verb::await || step.verb == Verb::check) step.condition = random_condition(random, model, 2);
  }
}

Goal random_goal(Random& random, const Model& model) {
  Goal goal;
  goal.stack = some_devices(random, model);
  if (chance(random, 50)) goal.stack.resize(1);
  if (chance(random, 30)) goal.primary = goal.stack[below(random, goal.stack.size())];
  goal.saved = chance(random, 30);
  if (chance(random, 30)) goal.where = random_condition(random, model, 2);
  return goal;
}

FaultBudget random_budget(Random& random) {
  const auto some = [&] { return static_cast<std::int64_t>(chance(random, 40) ? 0 : 1 + below(random, 2)); };
  return {some(), some(), some(), some(), chance(random, 50)};
}

}  // namespace

Condition random_condition(Random& random, const Model& model, int depth) {
  using Kind = Condition::Kind;
  if (depth == 0 || chance(random, 30)) return random_atom(random, model);
  Condition condition;
  condition.kind = static_cast<Kind>(static_cast<std::size_t>(Kind::negation) + below(random, 4));
  const std::size_t parts = condition.kind == Kind::negation  ? 1
                            : condition.kind == Kind::implies ? 2
                                                              : 1 + below(random, 3);
  for (std::size_t i = 0; i < parts; ++i) condition.parts.push_back(random_condition(random, model, depth - 1));
  return condition;
}

Model random_model(Random& random) {
  Model model = test::random_model(random, {.most_devices = 5, .most_steps = 0});
  narrow(random, model);
  draw_steps(random, model);
  if (chance(random, 50)) model.procedure.keep = some_devices(random, model);
  model.procedure.goal = random_goal(random, model);
  model.procedure.faults = random_budget(random);
  return model;
}

}  // namespace cairn::confront

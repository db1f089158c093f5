#include "verify/why_variants.hpp"

#include <algorithm>
#include <functional>

#include "cairn/why.hpp"
#include "semantics/precedence.hpp"

namespace cairn {

namespace {

using semantics::Precedence;

bool contains(const std::vector<StepId>& steps, StepId step) {
  return std::find(steps.begin(), steps.end(), step) != steps.end();
}

void add(std::vector<StepId>& steps, const std::vector<StepId>& more) {
  steps.insert(steps.end(), more.begin(), more.end());
  std::sort(steps.begin(), steps.end());
  steps.erase(std::unique(steps.begin(), steps.end()), steps.end());
}

/// Lets `change` see every atom done(step) of every condition.
void for_each_done(Condition& condition, const std::function<void(Condition&)>& change) {
  for (Condition& part : condition.parts) for_each_done(part, change);
  if (condition.kind == Condition::Kind::done) change(condition);
}

void for_each_done(Procedure& procedure, const std::function<void(Condition&)>& change) {
  for (Step& step : procedure.steps) for_each_done(step.condition, change);
  if (procedure.goal && procedure.goal->where) for_each_done(*procedure.goal->where, change);
}

// Without the step: whether all that it followed is done.
void ask_those_before(Condition& done, const std::vector<StepId>& before) {
  done = Condition();
  for (const StepId s : before) {
    Condition& part = done.parts.emplace_back();
    part.kind = Condition::Kind::done;
    part.step = s;
  }
}

Part::Kind kind_of(const Step& step) {
  if (step.verb == Verb::await) return Part::Kind::await;
  return step.verb == Verb::check ? Part::Kind::check : Part::Kind::step;
}

}  // namespace

namespace verify {

Order order_of(const Procedure& procedure) {
  Order order;
  order.reserve(procedure.steps.size());
  for (const Step& step : procedure.steps) order.push_back(step.after);
  return order;
}

void set_order(Procedure& procedure, Order order) {
  for (std::size_t i = 0; i < order.size(); ++i) procedure.steps[i].after = std::move(order[i]);
}

void take_out(Order& order, StepId step) {
  const std::vector<StepId> before = std::move(order[step.value]);
  order[step.value].clear();
  for (std::vector<StepId>& after : order) {
    if (std::erase(after, step) > 0) add(after, before);
  }
}

void drop_step(Procedure& procedure, StepId step) {
  const std::vector<StepId> before = procedure.steps[step.value].after;
  Order order = order_of(procedure);
  take_out(order, step);
  set_order(procedure, std::move(order));
  for_each_done(procedure, [&](Condition& done) {
    if (done.step == step) ask_those_before(done, before);
  });
  procedure.steps.erase(procedure.steps.begin() + static_cast<std::ptrdiff_t>(step.value));
  const auto renumber = [&](StepId& id) {
    if (id > step) --id.value;
  };
  for (Step& other : procedure.steps) std::for_each(other.after.begin(), other.after.end(), renumber);
  for_each_done(procedure, [&](Condition& done) { renumber(done.step); });
}

void drop_ordering(Procedure& procedure, StepId earlier, StepId later) {
  std::erase(procedure.steps[later.value].after, earlier);
  add(procedure.steps[later.value].after, procedure.steps[earlier.value].after);
  for (Step& other : procedure.steps) {
    if (contains(other.after, later)) add(other.after, {earlier});
  }
}

}  // namespace verify

std::string_view name_of(Part::Kind kind) {
  switch (kind) {
    case Part::Kind::step:
      return "step";
    case Part::Kind::await:
      return "await";
    case Part::Kind::check:
      return "check";
    case Part::Kind::ordering:
      return "ordering";
  }
  return {};
}

std::vector<Part> parts_of(const Model& model) {
  const Precedence precedence(model.procedure);
  std::vector<Part> parts;
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) {
    const Step& step = model.procedure.steps[i];
    parts.push_back({kind_of(step), StepId(i), {}});
    for (const StepId before : step.after) {
      if (precedence.directly_before(before, StepId(i))) parts.push_back({Part::Kind::ordering, StepId(i), before});
    }
  }
  return parts;
}

Model without(const Model& model, const std::vector<Part>& parts) {
  Model variant = model;
  std::vector<StepId> steps;
  for (const Part& part : parts) {
    if (part.kind == Part::Kind::ordering) {
      verify::drop_ordering(variant.procedure, part.before, part.step);
    } else {
      steps.push_back(part.step);
    }
  }
  // The last first, so that the others keep their places until it is their turn.
  std::sort(steps.rbegin(), steps.rend());
  for (const StepId step : steps) verify::drop_step(variant.procedure, step);
  return variant;
}

}  // namespace cairn

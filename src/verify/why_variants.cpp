#include "verify/why_variants.hpp"

#include <algorithm>
#include <functional>

#include "cairn/why.hpp"

namespace cairn {

namespace {

using verify::Precedence;

bool waits_for(const Step& step, StepId earlier) {
  return std::find(step.after.begin(), step.after.end(), earlier) != step.after.end();
}

void wait_for(Step& step, const std::vector<StepId>& earlier) {
  step.after.insert(step.after.end(), earlier.begin(), earlier.end());
  std::sort(step.after.begin(), step.after.end());
  step.after.erase(std::unique(step.after.begin(), step.after.end()), step.after.end());
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

Precedence::Precedence(const Procedure& procedure)
    : earlier_(procedure.steps.size(), std::vector<bool>(procedure.steps.size(), false)) {
  const std::size_t count = procedure.steps.size();
  for (std::size_t s = 0; s < count; ++s) {
    for (const StepId p : procedure.steps[s].after) earlier_[s][p.value] = true;
  }
  for (std::size_t via = 0; via < count; ++via) {
    for (std::size_t s = 0; s < count; ++s) {
      if (!earlier_[s][via]) continue;
      for (std::size_t p = 0; p < count; ++p) earlier_[s][p] = earlier_[s][p] || earlier_[via][p];
    }
  }
}

bool Precedence::directly_before(StepId earlier, StepId later) const {
  if (!before(earlier, later)) return false;
  for (std::size_t s = 0; s < earlier_.size(); ++s) {
    if (before(earlier, StepId(s)) && before(StepId(s), later)) return false;
  }
  return true;
}

void take_out_of_order(Procedure& procedure, StepId step) {
  const std::vector<StepId> before = std::move(procedure.steps[step.value].after);
  procedure.steps[step.value].after.clear();
  for (Step& other : procedure.steps) {
    if (!waits_for(other, step)) continue;
    std::erase(other.after, step);
    wait_for(other, before);
  }
}

void drop_step(Procedure& procedure, StepId step) {
  const std::vector<StepId> before = procedure.steps[step.value].after;
  take_out_of_order(procedure, step);
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
  wait_for(procedure.steps[later.value], procedure.steps[earlier.value].after);
  for (Step& other : procedure.steps) {
    if (waits_for(other, later)) wait_for(other, {earlier});
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

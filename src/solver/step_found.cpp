#include "solver/step_found.hpp"

#include <set>

namespace cairn::solver {

using system::Lanes;
using system::System;
using system::Term;
using system::VariableId;

namespace {

std::vector<Term> inputs_of(const System& system) {
  std::vector<Term> inputs = system.now.booleans;
  for (const system::Occurrence& each : system.events) inputs.push_back(each.happens);
  return inputs;
}

std::vector<Term> outputs_of(const System& system) {
  std::vector<Term> outputs;
  for (VariableId v = 0; v < system.space.size(); ++v) {
    for (const system::Value::Case& each : system.next[v].cases()) outputs.push_back(each.holds);
  }
  return outputs;
}

}  // namespace

StepReader::StepReader(Obligations& obligations)
    : obligations_(obligations), inputs_(inputs_of(obligations.system())) {}

StepReader::Step StepReader::read(bool with_event) const {
  const System& system = obligations_.system();
  const Clauses& clauses = obligations_.clauses();
  Step step;
  step.with_event = with_event;
  for (const Term input : inputs_) step.inputs.push_back(clauses.value_of(input) ? ~Lanes{0} : 0);
  step.before.resize(system.space.size());
  for (VariableId v = 0; v < system.space.size(); ++v) {
    for (const system::Value::Case& each : system.now.state[v].cases()) {
      if (each.holds == system::always || clauses.value_of(each.holds)) step.before[v] = each.value;
    }
  }
  return step;
}

Values StepReader::after(const Step& step) {
  const System& system = obligations_.system();
  if (!next_) next_.emplace(system.terms, inputs_, outputs_of(system));
  std::vector<Lanes> results(next_->outputs());
  next_->run(step.inputs, results, scratch_);
  Values values(system.space.size());
  std::size_t i = 0;
  for (VariableId v = 0; v < system.space.size(); ++v) {
    for (const system::Value::Case& each : system.next[v].cases()) {
      if (results[i++] != 0) values[v] = each.value;
    }
  }
  return values;
}

std::vector<Literal> StepReader::denial(const Step& step, Term target) {
  System& system = obligations_.system();
  const std::size_t booleans = system.now.booleans.size();
  std::vector<Literal> assumed;
  for (std::size_t i = 0; i < (step.with_event ? inputs_.size() : booleans); ++i) {
    const bool holds = step.inputs[i] != 0;
    assumed.push_back(obligations_.literal_of(holds ? inputs_[i] : !inputs_[i]));
    // That the event may happen is part of the reason.
    if (i >= booleans && holds) target = system.terms.both(target, system.events[i - booleans].may_happen);
  }
  assumed.push_back(obligations_.literal_of(!target));
  return assumed;
}

Known StepReader::told(const std::vector<Literal>& core) {
  const std::set<Literal> needed(core.begin(), core.end());
  const System& system = obligations_.system();
  Known known;
  for (VariableId v = 0; v < system.space.size(); ++v) {
    const std::vector<system::Value::Case>& cases = system.now.state[v].cases();
    std::vector<std::int64_t> possible;
    for (const system::Value::Case& each : cases) {
      if (each.holds == system::always) {
        possible = {each.value};
        break;
      }
      const Literal holds = obligations_.literal_of(each.holds);
      if (needed.contains(holds)) {
        possible = {each.value};
        break;
      }
      if (!needed.contains(!holds)) possible.push_back(each.value);
    }
    if (cases.size() == 1 || possible.size() < cases.size()) known[v] = std::move(possible);
  }
  return known;
}

}  // namespace cairn::solver

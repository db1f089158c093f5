#include "syntax/resolve_condition.hpp"

namespace cairn::syntax {

namespace {

using Kind = Condition::Kind;
using Join = ConditionDraft::Join;

Kind kind_of(Join join) {
  switch (join) {
    case Join::negation:
      return Kind::negation;
    case Join::all:
      return Kind::all;
    case Join::any:
      return Kind::any;
    default:
      return Kind::implies;
  }
}

Condition resolve_atom(const AtomDraft& atom, const Names& names, Problems& problems) {
  Condition condition;
  condition.kind = atom.kind;
  condition.sign = atom.sign;
  condition.value = names.quantity(atom.value, problems);
  condition.side = atom.side;
  const auto& first = atom.references.front();
  switch (atom.kind) {
    case Kind::linked:
    case Kind::cable_up:
      condition.cable = names.cable(first, problems).value_or(CableId());
      break;
    case Kind::enabled:
    case Kind::side:
      condition.port = names.port(first, problems).value_or(PortId());
      break;
    case Kind::done:
      condition.step = names.step(first.names[0], problems).value_or(StepId());
      break;
    default:
      for (const auto& reference : atom.references) {
        if (const auto device = names.device(reference.names[0], problems)) condition.devices.push_back(*device);
      }
  }
  return condition;
}

Assumption::Kind assumed_kind_of(AssumptionDraft::Join join) {
  using Draft = AssumptionDraft::Join;
  switch (join) {
    case Draft::atom:
      return Assumption::Kind::comparison;
    case Draft::negation:
      return Assumption::Kind::negation;
    case Draft::all:
      return Assumption::Kind::all;
    case Draft::any:
      return Assumption::Kind::any;
    case Draft::implies:
      return Assumption::Kind::implies;
  }
  return Assumption::Kind::all;
}

Operand resolve_operand(const OperandDraft& draft, const Model& model, const Names& names, Problems& problems) {
  if (draft.value) return {names.quantity(*draft.value, problems), {}};
  const auto device = names.device(*draft.address, problems);
  return device ? Operand{model.address(*device), *device} : Operand{};
}

}  // namespace

Condition resolve_condition(const ConditionDraft& draft, const Names& names, Problems& problems) {
  if (draft.join == Join::atom) return resolve_atom(draft.atom, names, problems);
  Condition condition;
  condition.kind = kind_of(draft.join);
  for (const auto& part : draft.parts) condition.parts.push_back(resolve_condition(part, names, problems));
  return condition;
}

Assumption resolve_assumption(const AssumptionDraft& draft, const Model& model, const Names& names,
                              Problems& problems) {
  Assumption assumption;
  assumption.kind = assumed_kind_of(draft.join);
  if (assumption.kind == Assumption::Kind::comparison) {
    assumption.left = resolve_operand(draft.atom.left, model, names, problems);
    assumption.sign = draft.atom.sign;
    assumption.right = resolve_operand(draft.atom.right, model, names, problems);
  }
  for (const auto& part : draft.parts) {
    assumption.parts.push_back(resolve_assumption(part, model, names, problems));
  }
  return assumption;
}

}  // namespace cairn::syntax

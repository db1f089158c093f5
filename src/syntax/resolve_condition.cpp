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
  condition.value = atom.value.number;
  condition.side = atom.side;
  names.check_parameter(atom.value, problems);
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

void check_operand(const Operand& operand, const Names& names, Problems& problems) {
  if (operand.value) names.check_parameter(*operand.value, problems);
  if (operand.address) names.device(*operand.address, problems);
}

}  // namespace

Condition resolve_condition(const ConditionDraft& draft, const Names& names, Problems& problems) {
  if (draft.join == Join::atom) return resolve_atom(draft.atom, names, problems);
  Condition condition;
  condition.kind = kind_of(draft.join);
  for (const auto& part : draft.parts) condition.parts.push_back(resolve_condition(part, names, problems));
  return condition;
}

void check_assumption(const AssumptionDraft& draft, const Names& names, Problems& problems) {
  if (draft.join == AssumptionDraft::Join::atom) {
    check_operand(draft.atom.left, names, problems);
    check_operand(draft.atom.right, names, problems);
  }
  for (const auto& part : draft.parts) check_assumption(part, names, problems);
}

}  // namespace cairn::syntax

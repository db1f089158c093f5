#include "solver/set_programs.hpp"

#include <algorithm>

#include "system/properties.hpp"

namespace cairn::solver {

using system::RowProgram;
using system::Term;

namespace {

// In every state on the way, and by what settling does next.
Breaches breaches_on_the_way(system::Moves& moves, const std::vector<AskedProperty>& asked) {
  Breaches breaches;
  for (const AskedProperty& a : asked) {
    breaches.add(a, broken_in(moves.terms, moves.now.state, moves.now_derived, a.property));
    breaches.add(a, broken_by(moves.terms, moves.now.state, moves.pass, a.property));
  }
  return breaches;
}

Breaches breaches_in_place(system::Moves& moves, const std::vector<AskedProperty>& asked) {
  Breaches breaches;
  for (const AskedProperty& a : asked) {
    breaches.add(a, broken_in(moves.terms, moves.now.state, moves.now_derived, a.property));
    if (a.property != Property::reaches_goal) continue;
    breaches.add(a, broken_at_rest(moves.terms, moves.now.state, moves.now_derived, a, 0).broken);
  }
  return breaches;
}

RowProgram pass_program(system::Moves& moves, const system::Coding& coding, const Breaches& on_the_way) {
  std::vector<Term> flags{moves.pass.unsettled};
  flags.insert(flags.end(), on_the_way.terms.begin(), on_the_way.terms.end());
  return {moves.terms, moves.now, coding, flags, &moves.passed};
}

Term pass_changes(system::Moves& moves) {
  std::vector<Term> changes;
  for (system::VariableId v = 0; v < moves.space.size(); ++v) {
    changes.push_back(!equal(moves.terms, moves.passed[v], moves.now.state[v]));
  }
  return moves.terms.any(changes);
}

RowProgram look_program(system::Moves& moves, const system::Coding& coding, const std::vector<AskedProperty>& asked,
                        const Breaches& in_place, RowKind kind) {
  const bool partial = kind == RowKind::partial;
  std::vector<Term> flags{partial ? moves.pass.unsettled : pass_changes(moves), system::never};
  if (std::any_of(asked.begin(), asked.end(), asks_complete_at_rest)) {
    flags.back() = moves.terms.both(at_rest(moves.terms, moves.now.state, moves.now_derived),
                                    complete(moves.terms, moves.now.state));
  }
  flags.insert(flags.end(), in_place.terms.begin(), in_place.terms.end());
  for (const system::Move& move : moves.events) flags.push_back(move.may_happen);
  return {moves.terms, moves.now, coding, flags, partial ? &moves.passed : nullptr};
}

}  // namespace

void Breaches::add(const AskedProperty& property, Term broken) {
  if (broken == system::never) return;
  asked.push_back(property);
  terms.push_back(broken);
}

SetPrograms::SetPrograms(system::Moves& moves, const system::Coding& coding, const std::vector<AskedProperty>& asked,
                         RowKind kind)
    : events_(event_programs(moves, coding, asked)),
      on_the_way_(breaches_on_the_way(moves, asked)),
      in_place_(breaches_in_place(moves, asked)),
      pass_(pass_program(moves, coding, on_the_way_)),
      look_(look_program(moves, coding, asked, in_place_, kind)) {}

std::vector<EventProgram> SetPrograms::event_programs(system::Moves& moves, const system::Coding& coding,
                                                      const std::vector<AskedProperty>& asked) {
  std::vector<EventProgram> events;
  for (const system::Move& move : moves.events) {
    Breaches breaches;
    for (const AskedProperty& a : asked) {
      breaches.add(a, broken_by(moves.terms, moves.now.state, moves.now_derived, move.event, a.property));
    }
    RowProgram taken{moves.terms, moves.now, coding, breaches.terms, &move.after};
    events.push_back({std::move(breaches), std::move(taken)});
  }
  return events;
}

}  // namespace cairn::solver

#include "system/moves.hpp"

#include <algorithm>
#include <utility>

namespace cairn::system {

namespace {

// Of constants: settling goes on for as long as it takes. An unsettled pass takes down or holds a device that was up,
// and none comes up.
int passes_of_constants(const Space& space) {
  return static_cast<int>(space.devices()) + 2;
}

std::vector<Move> moves_from(Terms& terms, const SymbolicState& now, const Derived& derived) {
  std::vector<Move> moves;
  for (const Event& event : events_of(now.space())) {
    const Term guard = may_happen(terms, now, derived, event);
    if (guard != never) moves.push_back({event, guard, take(terms, now, derived, event)});
  }
  return moves;
}

// True where a value was added.
bool widen(std::vector<std::int64_t>& values, std::int64_t value) {
  const auto place = std::lower_bound(values.begin(), values.end(), value);
  if (place != values.end() && *place == value) return false;
  values.insert(place, value);
  return true;
}

bool widen(Domains& domains, const SymbolicState& s) {
  bool grown = false;
  for (VariableId v = 0; v < domains.size(); ++v) {
    for (const Value::Case& each : s[v].cases()) grown = widen(domains[v], each.value) || grown;
  }
  return grown;
}

// By all that the parts lead to; true where a value was added.
bool widen_by_all(Domains& domains, const Moves& moves) {
  bool grown = widen(domains, moves.passed);
  for (const Move& move : moves.events) grown = widen(domains, move.after) || grown;
  if (moves.cold) grown = widen(domains, *moves.cold) || grown;
  return grown;
}

}  // namespace

Moves::Moves(const Model& model, const FaultBudget& budget, const Domains& ranges, bool with_cold_start)
    : space(model, budget),
      domains(ranges),
      first(settle(terms, initial_state(space), passes_of_constants(space))),
      now(free_state(terms, space, domains, "")),
      now_derived(derive(terms, now.state)),
      events(moves_from(terms, now.state, now_derived)),
      pass(plan_pass(terms, now.state, now_derived)),
      passed(carry_out(terms, now.state, now_derived, pass)) {
  if (with_cold_start) cold = system::cold_start(terms, now.state);
}

std::unique_ptr<Moves> take_apart(const Model& model, const FaultBudget& budget, const Domains& seed,
                                  bool with_cold_start) {
  Domains domains = seed;
  for (std::vector<std::int64_t>& values : domains) {
    std::sort(values.begin(), values.end());
    values.erase(std::unique(values.begin(), values.end()), values.end());
  }
  const Space space(model, budget);
  domains.resize(space.size());
  widen(domains, initial_state(space));
  while (true) {
    auto moves = std::make_unique<Moves>(model, budget, domains, with_cold_start);
    bool grown = widen(domains, moves->first.end);
    grown = widen_by_all(domains, *moves) || grown;
    if (!grown) return moves;
  }
}

}  // namespace cairn::system

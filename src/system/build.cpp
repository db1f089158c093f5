#include "system/build.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace cairn::system {

std::string event_name(const Model& model, const Event& event) {
  const auto of = [&]() -> const std::string& {
    switch (event.kind) {
      case Event::Kind::step:
      case Event::Kind::omitted:
        return model[event.step()].id;
      case Event::Kind::broke:
      case Event::Kind::mended:
        return model[event.cable()].name;
      default:
        return model[event.device()].name;
    }
  };
  return fmt::format("{} {}", name_of(event.kind), of());
}

namespace {

/// A state that an event leaves, where its term holds.
struct Outcome {
  Term happens;
  SymbolicState state;
};

// Of the outcomes the one that happens; a variable that none of them touches keeps its value.
SymbolicState merge(Terms& terms, const SymbolicState& base, const std::vector<Outcome>& outcomes) {
  SymbolicState merged = base;
  for (VariableId v = 0; v < base.space().size(); ++v) {
    for (const Outcome& outcome : outcomes) {
      if (outcome.state[v] != base[v]) merged[v] = choose(terms, outcome.happens, outcome.state[v], merged[v]);
    }
  }
  return merged;
}

// Powers, leaders and links are those of a settled state, in which a pass changes nothing, whatever numbers and ranks
// have become: nobody yields to a device of the same leader (4.1.e), and there is no contest (4.2). proofs/, the lemma
// of quiet events.
bool is_quiet(Terms& terms, const SymbolicState& before, const Derived& derived, const SymbolicState& after) {
  bool same = true;
  for_each_device(before.space(), [&](DeviceId d) {
    for (const Variable::Kind kind : {Variable::Kind::power, Variable::Kind::leader}) {
      same = same && before.of(kind, d) == after.of(kind, d);
    }
  });
  return same && derive_links(terms, after).linked == derived.linked;
}

/// The events that may happen in a free state, and what they leave.
struct Effects {
  std::vector<Occurrence> events;
  std::vector<Outcome> quiet;
  std::vector<Outcome> stirring;
};

Effects effects_in(Terms& terms, const SymbolicState& now, const Derived& derived) {
  Effects all;
  for (const Event& event : events_of(now.space())) {
    const Term guard = may_happen(terms, now, derived, event);
    if (guard == never) continue;
    SymbolicState after = take(terms, now, derived, event);
    const Term happens = terms.variable(event_name(now.space().model(), event));
    const bool quiet = is_quiet(terms, now, derived, after);
    all.events.push_back({event, happens, guard, !quiet});
    (quiet ? all.quiet : all.stirring).push_back({happens, std::move(after)});
  }
  return all;
}

Term exactly_one_that_may(Terms& terms, const std::vector<Occurrence>& events) {
  std::vector<Term> happens;
  std::vector<Term> demands;
  for (const Occurrence& each : events) {
    happens.push_back(each.happens);
    demands.push_back(terms.implies(each.happens, each.may_happen));
  }
  demands.push_back(terms.any(happens));
  demands.push_back(terms.at_most_one(happens));
  return terms.all(demands);
}

Term any_of(Terms& terms, const std::vector<Outcome>& outcomes) {
  std::vector<Term> happens;
  happens.reserve(outcomes.size());
  for (const Outcome& outcome : outcomes) happens.push_back(outcome.happens);
  return terms.any(happens);
}

SymbolicState choose(Terms& terms, Term condition, const SymbolicState& then, const SymbolicState& otherwise) {
  SymbolicState chosen = otherwise;
  for (VariableId v = 0; v < chosen.space().size(); ++v) {
    chosen[v] = choose(terms, condition, then[v], otherwise[v]);
  }
  return chosen;
}

}  // namespace

System::System(const Model& model, const FaultBudget& budget, const Domains& ranges, Counting counting)
    : space(model, budget, counting),
      domains(ranges),
      passes(passes_enough(model.platform)),
      first(settle_to_the_end(terms, initial_state(space))),
      now(free_state(terms, space, domains, "")),
      now_derived(derive(terms, now.state)),
      settled(system::settled(terms, now.state, now_derived)),
      quiet(now.state),
      quiet_derived(now_derived),
      stirred{{}, now.state, now_derived, never},
      next(now.state) {
  Effects effects = effects_in(terms, now.state, now_derived);
  events = std::move(effects.events);
  one_event = exactly_one_that_may(terms, events);
  stirs = any_of(terms, effects.stirring);
  quiet = merge(terms, now.state, effects.quiet);
  quiet_derived = derive(terms, quiet);
  if (effects.stirring.empty()) {
    next = quiet;
    return;
  }
  stirred = settle(terms, merge(terms, now.state, effects.stirring), passes);
  if (!stirred.bounded()) unfinished = terms.both(stirs, stirred.unfinished);
  next = choose(terms, stirs, stirred.end, quiet);
}

Term System::strays(VariableId v) {
  std::vector<Term> outside;
  for (const Value::Case& each : next[v].cases()) {
    if (!std::binary_search(domains[v].begin(), domains[v].end(), each.value)) outside.push_back(each.holds);
  }
  return terms.any(outside);
}

Term System::broken_on_the_way(Property property) {
  std::vector<Term> cases;
  for (const Occurrence& each : events) {
    cases.push_back(terms.both(each.happens, broken_by(terms, now.state, now_derived, each.event, property)));
  }
  cases.push_back(terms.both(!stirs, broken_in(terms, quiet, quiet_derived, property)));
  for (const Stage& stage : stirred.stages) {
    cases.push_back(terms.both(stirs, broken_in(terms, stage.state, stage.derived, property)));
    cases.push_back(terms.both(stirs, broken_by(terms, stage.state, stage.pass, property)));
  }
  cases.push_back(terms.both(stirs, broken_in(terms, stirred.end, stirred.end_derived, property)));
  return terms.any(cases);
}

Term System::broken_at_first(Property property) {
  std::vector<Term> cases;
  for (const Stage& stage : first.stages) {
    cases.push_back(broken_in(terms, stage.state, stage.derived, property));
    cases.push_back(broken_by(terms, stage.state, stage.pass, property));
  }
  cases.push_back(broken_in(terms, first.end, first.end_derived, property));
  return terms.any(cases);
}

Term System::kept_device_leads_on_the_way() {
  std::vector<Term> cases{terms.both(!stirs, a_kept_device_leads(terms, quiet))};
  for (const Stage& stage : stirred.stages) cases.push_back(terms.both(stirs, a_kept_device_leads(terms, stage.state)));
  cases.push_back(terms.both(stirs, a_kept_device_leads(terms, stirred.end)));
  return terms.any(cases);
}

Term System::kept_device_leads_at_first() {
  std::vector<Term> cases{a_kept_device_leads(terms, first.end)};
  for (const Stage& stage : first.stages) cases.push_back(a_kept_device_leads(terms, stage.state));
  return terms.any(cases);
}

RestBreach System::broken_at_rest(const AskedProperty& asked) {
  return system::broken_at_rest(terms, now.state, now_derived, asked, passes);
}

Term System::complete_at_rest() {
  return terms.both(at_rest(terms, now.state, now_derived), complete(terms, now.state));
}

}  // namespace cairn::system

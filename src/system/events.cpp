#include "system/events.hpp"

#include "system/conditions.hpp"
#include "system/steps.hpp"

namespace cairn::system {

using Kind = Variable::Kind;

Term has_turn(Terms& terms, const SymbolicState& s, StepId step) {
  std::vector<Term> demands{!s.done(step), !s.halted()};  // 5.i
  for (const StepId before : s.space().model()[step].after) demands.push_back(s.done(before));
  return terms.all(demands);
}

Term ready(Terms& terms, const SymbolicState& s, const Derived& derived, StepId step) {
  const Step& what = s.space().model()[step];
  const Term turn = has_turn(terms, s, step);
  return what.verb == Verb::await ? terms.both(turn, holds(terms, s, derived, what.condition)) : turn;
}

namespace {

bool can_be_omitted(const Space& space, StepId step) {
  const Verb verb = space.model()[step].verb;
  return verb != Verb::await && verb != Verb::check;
}

}  // namespace

std::vector<Event> events_of(const Space& space) {
  std::vector<Event> events;
  const auto add = [&](Event::Kind kind, std::uint32_t count) {
    for (std::uint32_t i = 0; i < count; ++i) events.push_back({kind, i});
  };
  const FaultBudget& budget = space.budget();
  add(Event::Kind::step, space.steps());
  add(Event::Kind::started, space.devices());
  if (budget.cable_breaks > 0) add(Event::Kind::broke, space.cables());
  if (budget.mends) add(Event::Kind::mended, space.cables());
  if (budget.crashes > 0) add(Event::Kind::crashed, space.devices());
  if (budget.omissions > 0) {
    for (std::uint32_t i = 0; i < space.steps(); ++i) {
      if (can_be_omitted(space, StepId(i))) events.push_back({Event::Kind::omitted, i});
    }
  }
  if (budget.late_starts > 0) add(Event::Kind::started_late, space.devices());
  return events;
}

std::optional<Fault> spends(const Event& event) {
  switch (event.kind) {
    case Event::Kind::broke:
      return Fault::cable_break;
    case Event::Kind::crashed:
      return Fault::crash;
    case Event::Kind::omitted:
      return Fault::omission;
    case Event::Kind::started_late:
      return Fault::late_start;
    default:
      return std::nullopt;
  }
}

Term may_happen(Terms& terms, const SymbolicState& s, const Derived& derived, const Event& event) {
  const std::optional<Fault> fault = spends(event);
  const Term budget = fault && s.space().counts_faults() ? s.lasts(*fault) : always;
  switch (event.kind) {
    case Event::Kind::step:  // 5.a
      return ready(terms, s, derived, event.step());
    case Event::Kind::started:       // 5.b
    case Event::Kind::started_late:  // 5.c.5
      return terms.both(budget, s.power_is(event.device(), Power::starting));
    case Event::Kind::broke:  // 5.c.1
      return terms.all({budget, s.plugged(event.cable()), !s.broken(event.cable())});
    case Event::Kind::mended:  // 5.c.3
      return s.broken(event.cable());
    case Event::Kind::crashed:  // 5.c.2, 4.3.c
      return terms.both(budget, s.up(event.device()));
    case Event::Kind::omitted:  // 5.c.4
      return terms.both(budget, ready(terms, s, derived, event.step()));
    case Event::Kind::cold_start:
      return never;
  }
  return never;
}

namespace {

// 5.d: a step that happens becomes done; refused, it changes nothing else.
SymbolicState take_step(Terms& terms, const SymbolicState& s, const Derived& derived, StepId step) {
  const Term no = refused(terms, s, derived, step);
  SymbolicState after = effect(terms, s, derived, step);
  for (VariableId v = 0; v < s.space().size(); ++v) {
    if (after[v] != s[v]) after[v] = choose(terms, no, s[v], after[v]);
  }
  after[s.space().done(step)] = Value(1);
  return after;
}

}  // namespace

SymbolicState take(Terms& terms, const SymbolicState& before, const Derived& derived, const Event& event) {
  if (event.kind == Event::Kind::step) return take_step(terms, before, derived, event.step());
  SymbolicState s = before;
  if (const std::optional<Fault> fault = spends(event)) {
    Value& left = s[s.space().left(*fault)];
    left = less_one(terms, left);
  }
  switch (event.kind) {
    case Event::Kind::started:
    case Event::Kind::started_late: {
      const DeviceId d = event.device();
      come_up(terms, s, d);
      s.set_leader(d, event.kind == Event::Kind::started_late ? std::int64_t{d.value} : nobody);
      become_junior(terms, s, d);
      break;
    }
    case Event::Kind::broke:
      s[s.space().broken(event.cable())] = Value(1);
      break;
    case Event::Kind::mended:
      s[s.space().broken(event.cable())] = Value(0);
      break;
    case Event::Kind::crashed:
      go_down(s, event.device(), Power::starting);
      break;
    case Event::Kind::omitted:
      s[s.space().done(event.step())] = Value(1);
      break;
    case Event::Kind::step:
    case Event::Kind::cold_start:
      break;
  }
  return s;
}

void come_up(Terms& terms, SymbolicState& s, DeviceId d) {
  if (s.space().platform().settings_follow == SettingsFollow::number) {  // 5.f
    const Term changes = !equal(terms, s.of(Kind::number, d), s.of(Kind::next_number, d));
    reset_startup(terms, s, d, changes);
  }
  s.set_power(d, Power::up);
  s.of(Kind::number, d) = s.of(Kind::next_number, d);
  s.of(Kind::priority, d) = s.of(Kind::startup_priority, d);
  for (const PortId p : s.space().model()[d].ports) {
    s.of(Kind::enabled, p) = s.of(Kind::startup_enabled, p);
    s.of(Kind::side, p) = s.of(Kind::startup_side, p);
    s.of(Kind::operational_side, p) = s.of(Kind::startup_side, p);
  }
}

Term complete(Terms& terms, const SymbolicState& s) {
  std::vector<Term> demands{!s.halted()};
  for (std::uint32_t i = 0; i < s.space().steps(); ++i) demands.push_back(s.done(StepId(i)));
  return terms.all(demands);
}

Term at_rest(Terms& terms, const SymbolicState& s, const Derived& derived) {
  std::vector<Term> demands;
  for (std::uint32_t i = 0; i < s.space().steps(); ++i) demands.push_back(!ready(terms, s, derived, StepId(i)));
  for_each_device(s.space(), [&](DeviceId d) { demands.push_back(!s.power_is(d, Power::starting)); });
  return terms.all(demands);
}

}  // namespace cairn::system

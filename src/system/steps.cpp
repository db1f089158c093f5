#include "system/steps.hpp"

#include <utility>

#include "system/conditions.hpp"

namespace cairn::system {

using Kind = Variable::Kind;

Term reachable(Terms& terms, const SymbolicState& s, const Derived& derived, DeviceId d, DeviceId v) {
  return terms.both(running(terms, s, v), d == v ? always : derived.together(d, v));
}

namespace {

/// A device that an `apply` or a `save` handles, where the term holds.
using Handled = std::pair<DeviceId, Term>;

// 5.g: the devices named, or `stack-of d`: d itself, and all devices together with it.
std::vector<Handled> handled(const Space& space, const Derived& derived, const Step& step) {
  std::vector<Handled> devices;
  if (!step.stack_of) {
    for (const DeviceId d : step.devices) devices.emplace_back(d, always);
    return devices;
  }
  for_each_device(space, [&](DeviceId d) {
    devices.emplace_back(d, d == step.stack_of ? always : derived.together(d, step.stack_of));
  });
  return devices;
}

// 5.g: "If one of them cannot be reached, the whole step is refused."
Term one_not_reachable(Terms& terms, const SymbolicState& s, const Derived& derived, const Step& step) {
  std::vector<Term> cases;
  for (const auto& [d, is_handled] : handled(s.space(), derived, step)) {
    cases.push_back(terms.both(is_handled, !reachable(terms, s, derived, d, step.via ? step.via : d)));
  }
  return terms.any(cases);
}

// 5.11: "c is plugged, or another cable is plugged into either of its ports"
Term plug_refused(Terms& terms, const SymbolicState& s, CableId c) {
  const Space& space = s.space();
  const Cable& cable = space.model()[c];
  std::vector<Term> cases{s.plugged(c)};
  for (std::uint32_t i = 0; i < space.cables(); ++i) {
    const Cable& other = space.model()[CableId(i)];
    const bool shares = other.a == cable.a || other.a == cable.b || other.b == cable.a || other.b == cable.b;
    if (CableId(i) != c && shares) cases.push_back(s.plugged(CableId(i)));
  }
  return terms.any(cases);
}

void set_where(Terms& terms, Value& value, Term condition, const Value& to) {
  value = choose(terms, condition, to, value);
}

// 5.4; durable as soon as it is set (5.e). "Setting the number in force resets nothing" (5.f).
void set_number(Terms& terms, SymbolicState& s, DeviceId d, std::int64_t n) {
  const Platform& platform = s.space().platform();
  s.of(Kind::next_number, d) = Value(n);
  if (platform.number_takes != Takes::at_once) return;
  const Term changes = !s.of(Kind::number, d).is(n);
  s.of(Kind::number, d) = Value(n);
  if (platform.settings_follow != SettingsFollow::number) return;
  // 5.f: "the same happens at once in startup, running and operational"
  reset_startup(terms, s, d, changes);
  set_where(terms, s.of(Kind::priority, d), changes, s.of(Kind::startup_priority, d));
  for (const PortId p : s.space().model()[d].ports) {
    set_where(terms, s.of(Kind::enabled, p), changes, s.of(Kind::startup_enabled, p));
    set_where(terms, s.of(Kind::side, p), changes, s.of(Kind::startup_side, p));
    set_where(terms, s.of(Kind::operational_side, p), changes, s.of(Kind::startup_side, p));
  }
}

// 5.9
void apply(Terms& terms, SymbolicState& s, DeviceId d, Term condition) {
  for (const PortId p : s.space().model()[d].ports) {
    set_where(terms, s.of(Kind::operational_side, p), condition, s.of(Kind::side, p));
  }
}

// 5.10
void save(Terms& terms, SymbolicState& s, DeviceId d, Term condition) {
  for (const PortId p : s.space().model()[d].ports) {
    set_where(terms, s.of(Kind::startup_enabled, p), condition, s.of(Kind::enabled, p));
    set_where(terms, s.of(Kind::startup_side, p), condition, s.of(Kind::side, p));
  }
  if (s.space().platform().priority_takes == Takes::at_once) {
    set_where(terms, s.of(Kind::startup_priority, d), condition, s.of(Kind::priority, d));
  }
}

}  // namespace

void reset_startup(Terms& terms, SymbolicState& s, DeviceId d, Term condition) {
  const Factory& factory = s.space().platform().factory;
  set_where(terms, s.of(Kind::startup_priority, d), condition, Value(factory.priority));
  for (const PortId p : s.space().model()[d].ports) {
    set_where(terms, s.of(Kind::startup_enabled, p), condition, Value(factory.enabled ? 1 : 0));
    set_where(terms, s.of(Kind::startup_side, p), condition, Value(static_cast<std::int64_t>(factory.side)));
  }
}

Term refused(Terms& terms, const SymbolicState& s, const Derived& derived, StepId id) {
  const Space& space = s.space();
  const Platform& platform = space.platform();
  const Step& step = space.model()[id];
  const auto not_reachable_or = [&](Term wrong) {
    return terms.either(!reachable(terms, s, derived, step.device, step.via), wrong);
  };
  switch (step.verb) {
    case Verb::power_on:  // 5.1
      return !s.power_is(step.device, Power::off);
    case Verb::power_off:  // 5.2
      return s.power_is(step.device, Power::off);
    case Verb::restart:  // 5.3
    case Verb::enable:   // 5.6
    case Verb::disable:
      return not_reachable_or(never);
    case Verb::set_number:  // 5.4
      return not_reachable_or(platform.numbers.contains(step.value) ? never : always);
    case Verb::set_priority:  // 5.5
      return not_reachable_or(platform.priorities.contains(step.value) ? never : always);
    case Verb::set_side:    // 5.7
    case Verb::clear_side:  // 5.8
      return not_reachable_or(platform.side_needs_disabled ? s.enabled(step.port) : never);
    case Verb::apply:  // 5.9
    case Verb::save:   // 5.10
      return one_not_reachable(terms, s, derived, step);
    case Verb::plug:
      return plug_refused(terms, s, step.cable);
    case Verb::unplug:  // 5.12
      return !s.plugged(step.cable);
    case Verb::await:  // 5.13
    case Verb::check:  // 5.14
      return never;
  }
  return never;
}

SymbolicState effect(Terms& terms, const SymbolicState& before, const Derived& derived, StepId id) {
  const Space& space = before.space();
  const Platform& platform = space.platform();
  const Step& step = space.model()[id];
  SymbolicState s = before;
  switch (step.verb) {
    case Verb::power_on:  // 5.1
    case Verb::restart:   // 5.3
      go_down(s, step.device, Power::starting);
      break;
    case Verb::power_off:  // 5.2
      go_down(s, step.device, Power::off);
      break;
    case Verb::set_number:
      set_number(terms, s, step.device, step.value);
      break;
    case Verb::set_priority: {  // 5.5
      const bool at_restart = platform.priority_takes == Takes::at_restart;
      s.of(at_restart ? Kind::startup_priority : Kind::priority, step.device) = Value(step.value);
      break;
    }
    case Verb::enable:  // 5.6
    case Verb::disable:
      s.of(Kind::enabled, step.port) = Value(step.verb == Verb::enable ? 1 : 0);
      break;
    case Verb::set_side:    // 5.7
    case Verb::clear_side:  // 5.8
      s.of(Kind::side, step.port) = Value(static_cast<std::int64_t>(step.side));
      if (platform.side_takes == SideTakes::at_once) {
        s.of(Kind::operational_side, step.port) = s.of(Kind::side, step.port);
      }
      break;
    case Verb::apply:
      for (const auto& [d, is_handled] : handled(space, derived, step)) apply(terms, s, d, is_handled);
      break;
    case Verb::save:
      for (const auto& [d, is_handled] : handled(space, derived, step)) save(terms, s, d, is_handled);
      break;
    case Verb::plug:    // 5.11
    case Verb::unplug:  // 5.12
      s[space.plugged(step.cable)] = Value(step.verb == Verb::plug ? 1 : 0);
      break;
    case Verb::await:  // 5.13
      break;
    case Verb::check:  // 5.14, 5.i
      s[space.halted()] = value_of(terms.either(s.halted(), !holds(terms, before, derived, step.condition)));
      break;
  }
  return s;
}

}  // namespace cairn::system

#include "system/conditions.hpp"

namespace cairn::system {

using Kind = Variable::Kind;

namespace {

bool compares(std::int64_t a, Sign sign, std::int64_t b) {
  switch (sign) {
    case Sign::equal:
      return a == b;
    case Sign::not_equal:
      return a != b;
    case Sign::less:
      return a < b;
    case Sign::less_or_equal:
      return a <= b;
    case Sign::greater:
      return a > b;
    case Sign::greater_or_equal:
      return a >= b;
  }
  return false;
}

Term compared(Terms& terms, const Value& value, Sign sign, std::int64_t with) {
  std::vector<Term> cases;
  for (const Value::Case& each : value.cases()) {
    if (compares(each.value, sign, with)) cases.push_back(each.holds);
  }
  return cases.size() == value.cases().size() ? always : terms.any(cases);
}

// 3.c: all are up and connected through formed links; of one device, that it is up.
Term all_together(Terms& terms, const Derived& derived, const std::vector<DeviceId>& devices) {
  std::vector<Term> demands;
  demands.reserve(devices.size());
  for (const DeviceId d : devices) demands.push_back(derived.together(devices.front(), d));
  return terms.all(demands);
}

}  // namespace

Term holds(Terms& terms, const SymbolicState& s, const Derived& derived, const Condition& condition) {
  const auto device = [&] { return condition.devices.front(); };
  const auto parts = [&] {
    std::vector<Term> each;
    for (const Condition& part : condition.parts) each.push_back(holds(terms, s, derived, part));
    return each;
  };
  switch (condition.kind) {
    case Condition::Kind::up:
      return s.up(device());
    case Condition::Kind::held:
      return s.power_is(device(), Power::held);
    case Condition::Kind::starting:
      return s.power_is(device(), Power::starting);
    case Condition::Kind::off:
      return s.power_is(device(), Power::off);
    case Condition::Kind::linked:
      return derived.linked[condition.cable.value];
    case Condition::Kind::cable_up:
      return derived.cable_up[condition.cable.value];
    case Condition::Kind::together:
      return all_together(terms, derived, condition.devices);
    case Condition::Kind::primary:  // "up, leader is itself"
      return terms.both(s.up(device()), s.leads(device()));
    case Condition::Kind::follower:  // "up, leader is another"
      return terms.all({s.up(device()), !s.leaderless(device()), !s.leads(device())});
    case Condition::Kind::number:
      return compared(terms, s.of(Kind::number, device()), condition.sign, condition.value);
    case Condition::Kind::priority:
      return compared(terms, s.of(Kind::priority, device()), condition.sign, condition.value);
    case Condition::Kind::saved:
      return saved(terms, s, device());
    case Condition::Kind::enabled:
      return s.enabled(condition.port);
    case Condition::Kind::side:
      return compared(terms, s.of(Kind::operational_side, condition.port), condition.sign,
                      static_cast<std::int64_t>(condition.side));
    case Condition::Kind::done:
      return s.done(condition.step);
    case Condition::Kind::negation:
      return !holds(terms, s, derived, condition.parts[0]);
    case Condition::Kind::all:
      return terms.all(parts());
    case Condition::Kind::any:
      return terms.any(parts());
    case Condition::Kind::implies: {
      const std::vector<Term> both = parts();
      return terms.implies(both[0], both[1]);
    }
  }
  return never;
}

Term saved(Terms& terms, const SymbolicState& s, DeviceId d) {
  std::vector<Term> demands{equal(terms, s.of(Kind::priority, d), s.of(Kind::startup_priority, d)),
                            equal(terms, s.of(Kind::number, d), s.of(Kind::next_number, d))};
  for (const PortId p : s.space().model()[d].ports) {
    demands.push_back(equal(terms, s.of(Kind::enabled, p), s.of(Kind::startup_enabled, p)));
    demands.push_back(equal(terms, s.of(Kind::side, p), s.of(Kind::startup_side, p)));
    demands.push_back(equal(terms, s.of(Kind::side, p), s.of(Kind::operational_side, p)));
  }
  return terms.all(demands);
}

}  // namespace cairn::system

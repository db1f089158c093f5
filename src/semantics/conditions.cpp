#include "semantics/conditions.hpp"

#include <algorithm>

#include "semantics/state.hpp"

namespace cairn::semantics {

namespace {

bool compare(const World& world, Quantity a, Sign sign, Quantity b) {
  switch (sign) {
    case Sign::equal:
      return world.equal(a, b);
    case Sign::not_equal:
      return !world.equal(a, b);
    case Sign::less:
      return world.less(a, b);
    case Sign::less_or_equal:
      return !world.less(b, a);
    case Sign::greater:
      return world.less(b, a);
    case Sign::greater_or_equal:
      return !world.less(a, b);
  }
  return false;
}

// 3.c: together(d) is up(d).
bool all_together(const Derived& derived, const std::vector<DeviceId>& devices) {
  return std::all_of(devices.begin(), devices.end(), [&](DeviceId d) { return derived.together(devices.front(), d); });
}

}  // namespace

bool saved(const World& world, const State& s, DeviceId d) {
  const std::vector<PortId>& ports = world.model()[d].ports;
  const bool ports_saved = std::all_of(ports.begin(), ports.end(), [&](PortId p) {
    return s[p].startup_enabled == s[p].enabled && s[p].startup_side == s[p].side && s[p].side == s[p].operational_side;
  });
  return ports_saved && world.equal(s[d].startup_priority, s[d].priority) && world.equal(s[d].next_number, s[d].number);
}

bool holds(const World& world, const State& s, const Derived& derived, const Condition& condition) {
  const auto part_holds = [&](const Condition& part) { return holds(world, s, derived, part); };
  const auto device = [&] { return condition.devices.front(); };
  switch (condition.kind) {
    case Condition::Kind::up:
      return s[device()].power == Power::up;
    case Condition::Kind::held:
      return s[device()].power == Power::held;
    case Condition::Kind::starting:
      return s[device()].power == Power::starting;
    case Condition::Kind::off:
      return s[device()].power == Power::off;
    case Condition::Kind::linked:
      return derived.linked[condition.cable.value] != 0;
    case Condition::Kind::cable_up:
      return derived.cable_up[condition.cable.value] != 0;
    case Condition::Kind::together:
      return all_together(derived, condition.devices);
    case Condition::Kind::primary:
      return s[device()].power == Power::up && leads(s, device());
    case Condition::Kind::follower:
      return s[device()].power == Power::up && !fresh(s, device()) && !leads(s, device());
    case Condition::Kind::number:
      return compare(world, s[device()].number, condition.sign, condition.value);
    case Condition::Kind::priority:
      return compare(world, s[device()].priority, condition.sign, condition.value);
    case Condition::Kind::saved:
      return saved(world, s, device());
    case Condition::Kind::enabled:
      return s[condition.port].enabled;
    case Condition::Kind::side:
      return (s[condition.port].operational_side == condition.side) == (condition.sign == Sign::equal);
    case Condition::Kind::done:
      return s.is_done(condition.step);
    case Condition::Kind::negation:
      return !part_holds(condition.parts[0]);
    case Condition::Kind::all:
      return std::all_of(condition.parts.begin(), condition.parts.end(), part_holds);
    case Condition::Kind::any:
      return std::any_of(condition.parts.begin(), condition.parts.end(), part_holds);
    case Condition::Kind::implies:
      return !part_holds(condition.parts[0]) || part_holds(condition.parts[1]);
  }
  return false;
}

}  // namespace cairn::semantics

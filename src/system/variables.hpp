/// \file
/// Semantics 2, State, as terms: one symbolic value a state variable.
#pragma once

#include <string_view>
#include <vector>

#include "system/space.hpp"
#include "system/value.hpp"

namespace cairn::system {

/// A state whose variables are symbolic values. Copied freely.
class SymbolicState {
 public:
  explicit SymbolicState(const Space& space) : space_(&space), values_(space.size()) {}

  [[nodiscard]] const Space& space() const { return *space_; }
  [[nodiscard]] Value& operator[](VariableId v) { return values_[v]; }
  [[nodiscard]] const Value& operator[](VariableId v) const { return values_[v]; }

  [[nodiscard]] const Value& of(Variable::Kind kind, DeviceId d) const { return values_[space_->of_device(kind, d)]; }
  [[nodiscard]] Value& of(Variable::Kind kind, DeviceId d) { return values_[space_->of_device(kind, d)]; }
  [[nodiscard]] const Value& of(Variable::Kind kind, PortId p) const { return values_[space_->of_port(kind, p)]; }
  [[nodiscard]] Value& of(Variable::Kind kind, PortId p) { return values_[space_->of_port(kind, p)]; }

  [[nodiscard]] Term power_is(DeviceId d, Power power) const {
    return of(Variable::Kind::power, d).is(static_cast<std::int64_t>(power));
  }
  [[nodiscard]] Term up(DeviceId d) const { return power_is(d, Power::up); }
  [[nodiscard]] Term leader_is(DeviceId d, DeviceId leader) const {
    return of(Variable::Kind::leader, d).is(leader.value);
  }
  [[nodiscard]] Term leaderless(DeviceId d) const { return of(Variable::Kind::leader, d).is(nobody); }
  /// 6.2: d leads itself.
  [[nodiscard]] Term leads(DeviceId d) const { return leader_is(d, d); }
  [[nodiscard]] Term senior(DeviceId d, DeviceId e) const { return values_[space_->senior(d, e)].is(1); }
  [[nodiscard]] Term enabled(PortId p) const { return of(Variable::Kind::enabled, p).is(1); }
  [[nodiscard]] Term plugged(CableId c) const { return values_[space_->plugged(c)].is(1); }
  [[nodiscard]] Term broken(CableId c) const { return values_[space_->broken(c)].is(1); }
  [[nodiscard]] Term done(StepId s) const { return values_[space_->done(s)].is(1); }
  [[nodiscard]] Term halted() const { return values_[space_->halted()].is(1); }
  /// 5.c: the budget of this kind lasts.
  [[nodiscard]] Term lasts(Fault fault) const { return !values_[space_->left(fault)].is(0); }

  void set_power(DeviceId d, Power power) { of(Variable::Kind::power, d) = Value(static_cast<std::int64_t>(power)); }
  void set_leader(DeviceId d, std::int64_t leader) { of(Variable::Kind::leader, d) = Value(leader); }

  bool operator==(const SymbolicState& other) const { return values_ == other.values_; }

 private:
  const Space* space_;
  std::vector<Value> values_;
};

/// A Boolean as a value: 1 where it holds, else 0.
[[nodiscard]] Value value_of(Term truth);

/// Per variable the values that it may take, ascending, none twice, at least one. A set of such ranges is a claim about
/// the reachable states: whoever uses it shows that every event stays within.
using Domains = std::vector<std::vector<std::int64_t>>;

/// Semantics 2, Initial state, before it settles, with the budget of the space: every value is a constant.
[[nodiscard]] SymbolicState initial_state(const Space& space);

/// A state that may be any within the domains: a variable with one value is a constant, one with two values a Boolean,
/// any other has one Boolean a value, of which `typing` demands that exactly one holds.
struct FreeState {
  SymbolicState state;
  Term typing;
  std::vector<Term> booleans;  ///< the variables made, in the order of the space
};
/// \param prime  put behind the name of each variable
[[nodiscard]] FreeState free_state(Terms& terms, const Space& space, const Domains& domains, std::string_view prime);

/// What holds of every state, by itself.
enum class Law : std::uint8_t {
  leaders,    ///< 2.a: only a device that is up has a leader
  seniority,  ///< 2.a: `senior` is a strict weak order among the devices that are up or held
  plugs,      ///< 1.b: of the cables of a port at most one is plugged
};
inline constexpr std::uint32_t law_count = 3;
[[nodiscard]] Term law(Terms& terms, const SymbolicState& s, Law which);

/// d is up or held: its power is on and its start is complete.
[[nodiscard]] Term running(Terms& terms, const SymbolicState& s, DeviceId d);
/// 4.1: d is up and has no leader.
[[nodiscard]] Term fresh(Terms& terms, const SymbolicState& s, DeviceId d);
/// d has a leader: up and admitted.
[[nodiscard]] Term admitted(Terms& terms, const SymbolicState& s, DeviceId d);
/// 5.b: every other device that is up or held becomes senior to d, d to none.
void become_junior(Terms& terms, SymbolicState& s, DeviceId d);
/// d goes down to `power` (off or starting): it has no leader any more and leaves the order of seniority (2.a).
void go_down(SymbolicState& s, DeviceId d, Power power);

/// Calls visit(DeviceId) for each device of the space.
template <class Visit>
void for_each_device(const Space& space, Visit visit) {
  for (std::uint32_t d = 0; d < space.devices(); ++d) visit(DeviceId(d));
}

}  // namespace cairn::system

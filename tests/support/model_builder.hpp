/// \file
/// Models built in memory in a few words, so that a test reads like a sentence of the semantics. No reader is involved.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/model.hpp"

namespace cairn::test {

/// A port as a test describes it. What is left out: enabled, startup and operational as running.
struct PortIs {
  std::string name;
  Side side = Side::none;
  bool enabled = true;
  std::optional<bool> startup_enabled = std::nullopt;
  std::optional<Side> startup_side = std::nullopt;
  std::optional<Side> operational_side = std::nullopt;
};

/// The ports that most tests use: "w" on the west side and "e" on the east side, enabled.
[[nodiscard]] std::vector<PortIs> ring_ports();

/// A device as a test describes it. What is left out: on, the next free number and address, priority 5.
struct DeviceIs {
  bool on = true;
  std::optional<std::int64_t> number = std::nullopt;
  std::optional<std::int64_t> next_number = std::nullopt;
  std::int64_t priority = 5;
  std::optional<std::int64_t> startup_priority = std::nullopt;
  std::int64_t tenure = 0;
  std::string software = "1";
  std::optional<std::uint64_t> address = std::nullopt;
  std::vector<PortIs> ports = ring_ports();
};

/// What beside its effect a step may say.
struct StepIs {
  DeviceId via = {};               ///< nothing: the default
  std::vector<StepId> after = {};  ///< on top of the order of the builder
};

/// Collects a Model. Steps follow one another as they are added, unless `unordered` was called before.
/// The platform starts out as the plainest: all takes at once, any sides face, elections by priority alone.
class ModelBuilder {
 public:
  ModelBuilder();

  Platform& platform() { return model_.platform; }

  DeviceId device(std::string name, DeviceIs is = {});
  /// Several devices with the defaults, by name.
  std::vector<DeviceId> devices(std::initializer_list<std::string_view> names);
  [[nodiscard]] PortId port(DeviceId d, std::string_view name) const;
  [[nodiscard]] PortId east(DeviceId d) const { return port(d, "e"); }
  [[nodiscard]] PortId west(DeviceId d) const { return port(d, "w"); }
  CableId cable(PortId a, PortId b, bool plugged = true);
  /// East of each to west of the next.
  std::vector<CableId> chain(const std::vector<DeviceId>& devices);
  /// A chain whose last device also leads east to the first.
  std::vector<CableId> ring(const std::vector<DeviceId>& devices);
  void stack(DeviceId primary, std::vector<DeviceId> members);
  void keep(std::vector<DeviceId> devices);

  StepId power_on(DeviceId d, StepIs is = {}) { return step(Verb::power_on, d, is); }
  StepId power_off(DeviceId d, StepIs is = {}) { return step(Verb::power_off, d, is); }
  StepId restart(DeviceId d, StepIs is = {}) { return step(Verb::restart, d, is); }
  StepId set_number(DeviceId d, std::int64_t to, StepIs is = {});
  StepId set_priority(DeviceId d, std::int64_t to, StepIs is = {});
  StepId enable(PortId p, StepIs is = {}) { return port_step(Verb::enable, p, Side::none, is); }
  StepId disable(PortId p, StepIs is = {}) { return port_step(Verb::disable, p, Side::none, is); }
  StepId set_side(PortId p, Side side, StepIs is = {}) { return port_step(Verb::set_side, p, side, is); }
  StepId clear_side(PortId p, StepIs is = {}) { return port_step(Verb::clear_side, p, Side::none, is); }
  StepId apply(std::vector<DeviceId> devices, StepIs is = {}) { return group_step(Verb::apply, devices, {}, is); }
  StepId save(std::vector<DeviceId> devices, StepIs is = {}) { return group_step(Verb::save, devices, {}, is); }
  StepId apply_stack_of(DeviceId d, StepIs is = {}) { return group_step(Verb::apply, {}, d, is); }
  StepId save_stack_of(DeviceId d, StepIs is = {}) { return group_step(Verb::save, {}, d, is); }
  StepId plug(CableId c, StepIs is = {}) { return cable_step(Verb::plug, c, is); }
  StepId unplug(CableId c, StepIs is = {}) { return cable_step(Verb::unplug, c, is); }
  StepId await(Condition condition, StepIs is = {}) { return waiting_step(Verb::await, std::move(condition), is); }
  StepId check(Condition condition, StepIs is = {}) { return waiting_step(Verb::check, std::move(condition), is); }
  /// From here on a step follows only what its `after` names.
  void unordered() { ordered_ = false; }

  void goal(Goal goal) { model_.procedure.goal = std::move(goal); }
  void faults(FaultBudget faults) { model_.procedure.faults = faults; }

  /// The model so far, `keep` filled in as semantics 6 says where the test named none.
  [[nodiscard]] Model model() const;

 private:
  StepId add(Step step, const StepIs& is);
  StepId step(Verb verb, DeviceId d, const StepIs& is);
  StepId port_step(Verb verb, PortId p, Side side, const StepIs& is);
  StepId group_step(Verb verb, std::vector<DeviceId> devices, DeviceId stack_of, const StepIs& is);
  StepId cable_step(Verb verb, CableId c, const StepIs& is);
  StepId waiting_step(Verb verb, Condition condition, const StepIs& is);

  Model model_;
  bool ordered_ = true;
};

/// The goal that these are one stack, led by `primary` where it is given.
[[nodiscard]] Goal goal_of(std::vector<DeviceId> stack, DeviceId primary = {});

/// Conditions in the words of semantics 8.
namespace when {
Condition up(DeviceId d);
Condition held(DeviceId d);
Condition starting(DeviceId d);
Condition off(DeviceId d);
Condition primary(DeviceId d);
Condition follower(DeviceId d);
Condition saved(DeviceId d);
Condition linked(CableId c);
Condition cable_up(CableId c);
Condition together(std::vector<DeviceId> devices);
Condition number(DeviceId d, Sign sign, std::int64_t n);
Condition priority(DeviceId d, Sign sign, std::int64_t n);
Condition enabled(PortId p);
Condition side(PortId p, Sign sign, Side side);
Condition done(StepId s);
Condition no(Condition a);
Condition all(std::vector<Condition> parts);
Condition any(std::vector<Condition> parts);
Condition implies(Condition a, Condition b);
Condition always();
Condition never();
}  // namespace when

}  // namespace cairn::test

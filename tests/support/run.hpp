/// \file
/// A run of a model by the concrete semantics, event by event, with what the properties would see on the way.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "cairn/verdict.hpp"
#include "semantics/derived.hpp"
#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/settle.hpp"
#include "semantics/state.hpp"
#include "support/model_builder.hpp"
#include "support/printing.hpp"

namespace cairn::test {

/// Events by name.
inline Event step(StepId s) {
  return {Event::Kind::step, s.value};
}
inline Event started(DeviceId d) {
  return {Event::Kind::started, d.value};
}
inline Event started_late(DeviceId d) {
  return {Event::Kind::started_late, d.value};
}
inline Event broke(CableId c) {
  return {Event::Kind::broke, c.value};
}
inline Event mended(CableId c) {
  return {Event::Kind::mended, c.value};
}
inline Event crashed(DeviceId d) {
  return {Event::Kind::crashed, d.value};
}
inline Event omitted(StepId s) {
  return {Event::Kind::omitted, s.value};
}

/// Holds a state of the model. It begins with the initial one, unsettled.
class Run : private semantics::Watcher {
 public:
  explicit Run(Model model);
  explicit Run(const ModelBuilder& builder) : Run(builder.model()) {}
  Run(const Run&) = delete;
  Run& operator=(const Run&) = delete;

  [[nodiscard]] const semantics::World& world() const { return world_; }
  /// To read, and to arrange what a test is about.
  [[nodiscard]] State& state() { return state_; }
  [[nodiscard]] const State& state() const { return state_; }
  [[nodiscard]] semantics::Derived derived() const { return semantics::derive(world_, state_); }

  /// 4: passes until settled.
  Run& settle();
  /// What the next pass would do.
  [[nodiscard]] semantics::PassPlan plan() const;
  /// One pass alone.
  Run& pass();
  /// True when the event may happen in this (settled) state.
  [[nodiscard]] bool can(const Event& event) const;
  [[nodiscard]] std::vector<Event> events() const;
  /// Lets an event happen, which must be possible, but does not settle.
  Refusal leave(const Event& event);
  /// Lets an event happen, which must be possible, and settles.
  Refusal take(const Event& event);
  Run& cold_start();

  [[nodiscard]] bool holds(const Condition& condition) const;
  [[nodiscard]] bool at_rest() const { return semantics::at_rest(state_, events()); }
  /// What broke the property (6.1 to 6.5) first since the run began: looked for as 4.6 says.
  [[nodiscard]] const std::optional<Breach>& broken(Property property) const;
  /// The state as it is, looked at for 6.6.
  [[nodiscard]] std::optional<Breach> missed() const;
  /// How many passes of the last settling held or restarted a device (4.5.c), and the states seen in it (4.6).
  [[nodiscard]] int unsettled_passes() const { return unsettled_; }
  [[nodiscard]] const std::vector<State>& seen() const { return seen_; }

  [[nodiscard]] Power power(DeviceId d) const { return state_[d].power; }
  [[nodiscard]] DeviceId leader(DeviceId d) const { return state_[d].leader; }
  [[nodiscard]] bool together(DeviceId d, DeviceId e) const { return derived().together(d, e); }
  [[nodiscard]] bool linked(CableId c) const { return derived().linked[c.value] != 0; }
  [[nodiscard]] bool cable_up(CableId c) const { return derived().cable_up[c.value] != 0; }

 private:
  void see(const State& s, const semantics::Derived& derived) override;
  void foresee(const State& s, const semantics::Derived& derived, const semantics::PassPlan& plan) override;
  void note(Property property, std::optional<Breach> breach);

  Model model_;
  semantics::World world_;
  State state_;
  semantics::Scratch scratch_;
  std::array<std::optional<Breach>, property_count> broken_;
  int unsettled_ = 0;
  std::vector<State> seen_;
};

}  // namespace cairn::test

/// \file
/// Of events that have nothing to do with one another only some are taken in a state (docs/reductions.md, Orders).
#pragma once

#include <cstdint>
#include <vector>

#include "explore/reduce/alone.hpp"
#include "explore/reduce/components.hpp"
#include "explore/reduce/cuts.hpp"
#include "explore/reduce/seniority.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Chooses strong stubborn sets. Those of a search for breaches of 6.1 to 6.5 contain, in every state, an event of each
/// run to a breach; so a shortest one is kept, with its events in another order. Those of a search for what 6.6 to 6.8
/// ask keep every state at rest, and how many events lead there.
class Orders {
 public:
  /// \param asked  what is searched for: a state may be left without events where it can no longer break any of it; of
  ///               nothing, every state at rest
  /// \param ask    asked now and then, while parts are explored
  Orders(const semantics::World& world, const FaultBudget& budget, const std::vector<AskedProperty>& asked,
         AskLimits ask);

  /// Takes out of `events`, which are those of the settled state `s`, what need not be taken there. Nothing
  /// but that all of them go where nothing asked can be broken any more, while a fault may strike, or a check may halt
  /// the procedure: these have to do with everything.
  /// \throws Stopped  when `ask` answered
  void choose(const State& s, const semantics::Derived& derived, std::vector<Event>& events);

  /// How many states of parts may be visited in order to choose, from now on. While they are too few, more events are
  /// taken.
  void allow_alone(std::uint64_t states) { alone_.allow(states); }

  /// States of parts that were visited in order to choose.
  [[nodiscard]] std::uint64_t states_alone() const { return alone_.states(); }
  /// What decided contests in them.
  [[nodiscard]] const TieNotes& ties_alone() const { return alone_.ties(); }
  /// Bytes in use for them.
  [[nodiscard]] std::uint64_t bytes() const { return alone_.bytes(); }

 private:
  [[nodiscard]] bool may_choose(const State& s) const;
  void clear();
  void add_landmarks(const State& s);
  void add_some_event(const std::vector<Event>& events);
  void close();
  void close_part(DeviceId head);
  void close_step(StepId step);
  void take_in(StepId step);
  void take_in_part(DeviceId head);
  void take_in_devices(const std::vector<DeviceId>& devices);
  [[nodiscard]] bool is_in(const Event& event) const;
  [[nodiscard]] std::size_t count(const std::vector<Event>& events) const;
  [[nodiscard]] bool is_joint(StepId step) const;

  const semantics::World& world_;
  bool on_the_way_ = false;  ///< some of 6.1 to 6.5 is asked
  bool at_rest_ = false;     ///< some of 6.6 to 6.8 is asked
  bool crowded_;
  std::vector<std::vector<DeviceId>> devices_of_steps_;
  std::vector<StepId> checks_;
  Components parts_;
  Components everyone_;  ///< all devices as one part
  Seniority seniority_;
  Alone alone_;

  const State* s_ = nullptr;
  const semantics::Derived* derived_ = nullptr;
  std::vector<std::uint8_t> part_in_;  ///< per head of a part: all events that have to do with it are in the set
  std::vector<std::uint8_t> step_in_;
  std::vector<StepId> steps_to_close_;
  std::vector<DeviceId> parts_to_close_;
};

}  // namespace cairn::explore

/// \file
/// What ever happens to the steps of a procedure, gathered over every state of an exploration.
#pragma once

#include <optional>
#include <vector>

#include "explore/explore.hpp"
#include "semantics/world.hpp"

namespace cairn::verify {

/// Of one step.
struct StepHistory {
  bool had_turn = false;   ///< its turn has come in some state
  bool was_done = false;   ///< and it was done, or left out
  bool was_taken = false;  ///< it happened and was not refused
  bool was_refused = false;
  bool changed = false;          ///< it changed anything at all beside being done
  bool came_into_force = false;  ///< set-side, clear-side: done, and the side in operation is the one that was set
  DeviceId lost_console;         ///< a console that it needs was neither up nor held when its turn had come
  DeviceId same_number;          ///< set-number: another device that took part had the number when its turn had come
};

class StepObserver final : public explore::Observer {
 public:
  explicit StepObserver(const semantics::World& world);

  void open(const State& s, const semantics::Derived& derived, const std::vector<Event>& events) override;
  void taken(const State& before, const Event& event, Refusal refusal, const State& after) override;

  [[nodiscard]] const StepHistory& of(StepId step) const { return steps_[step.value]; }
  /// The goal held in the initial state, settled.
  [[nodiscard]] bool goal_from_the_start() const { return goal_from_the_start_; }

 private:
  void note_turn(const State& s, const semantics::Derived& derived, StepId id);
  [[nodiscard]] DeviceId lost_console(const State& s, const semantics::Derived& derived, const Step& step) const;
  [[nodiscard]] DeviceId same_number(const State& s, const Step& step) const;
  [[nodiscard]] bool takes_part(const State& s, DeviceId d) const;

  const semantics::World& world_;
  std::vector<StepHistory> steps_;
  bool seen_any_ = false;
  bool goal_from_the_start_ = false;
};

}  // namespace cairn::verify

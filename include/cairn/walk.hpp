/// \file
/// A run, moment by moment: the procedure without faults, or a refutation.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/state.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

/// Why a device would not take a step (the right column of the table in semantics 5.d).
enum class Refusal : std::uint8_t {
  none,
  not_off,          ///< power-on of a device that is not off
  already_off,      ///< power-off of a device that is off
  not_reachable,    ///< 5.h
  out_of_range,     ///< a number or a priority that the platform does not have
  port_enabled,     ///< a side changed while the port is enabled, where the platform forbids it
  already_plugged,  ///< plug of a plugged cable
  port_occupied,    ///< plug into a port that has another cable plugged
  not_plugged,      ///< unplug of a cable that is not plugged
};

/// Several leaders met, or a leader was chosen among candidates (semantics 4.2).
struct Contest {
  DeviceId winner;
  std::vector<DeviceId> losers;  ///< the other candidates, in the site's order
};

/// One settling pass (semantics 4) that changed something.
struct Pass {
  std::vector<DeviceId> held;       ///< 4.3.a
  std::vector<DeviceId> restarted;  ///< 4.3.b
  std::vector<DeviceId> admitted;   ///< fresh or orphaned, now with a leader
  std::vector<Contest> contests;    ///< where there were two candidates or more
  State after;
};

/// What broke a property, as data; cairn/render.hpp tells it in words.
struct Breach {
  enum class Cause : std::uint8_t {
    two_leaders,       ///< 6.1: a and b, both to keep, follow different leaders
    cut_apart,         ///< 6.1: a, to keep, and b follow the same leader and are not together
    kept_device_held,  ///< 6.1: a, to keep, is held
    settled_down,      ///< 6.2, 6.3: settling restarts a
    settled_held,      ///< 6.2, 6.3: settling holds a
    taken_down,        ///< 6.2, 6.3: the step takes a down
    held,              ///< 6.4: a is held
    same_number,       ///< 6.4: a and b are together, admitted, and have the same number
    refused,           ///< 6.5: the step is refused
    not_complete,      ///< 6.6: at rest and the procedure is not complete
    goal_missed,       ///< 6.6, 6.7: the goal does not hold; `missed` says which part
    too_many_members,  ///< 6.6: the class of a is larger than max-members
    loss_cuts,         ///< 6.8: a and b, both of goal.stack, are not together after the loss
  };
  /// Which part of the goal (6.b) fails first.
  enum class GoalPart : std::uint8_t { none, together, one_leader, primary, saved, where };

  Cause cause = Cause::two_leaders;
  GoalPart missed = GoalPart::none;
  DeviceId a;
  DeviceId b;
  StepId step;
};

/// One event and all that follows from it.
struct Moment {
  Event event;
  Refusal refusal = Refusal::none;
  State before;              ///< settled
  State left;                ///< as the event leaves it, before any pass
  std::vector<Pass> passes;  ///< those that changed something
  [[nodiscard]] const State& after() const { return passes.empty() ? left : passes.back().after; }
};

/// A run from the initial state.
struct Walk {
  enum class End : std::uint8_t {
    complete,  ///< every step is done
    halted,    ///< a check failed
    stuck,     ///< an await never comes true
    endless,   ///< starts lead back to a state that the run has left, against semantics 5.k
    events,    ///< the given events are used up
  };

  State initial;                     ///< as the site file says
  std::vector<Pass> initial_passes;  ///< its settling
  std::vector<Moment> moments;
  End end = End::complete;
  std::vector<StepId> waiting;   ///< stuck: the steps whose turn it is and whose condition does not hold
  std::optional<Breach> breach;  ///< of a refutation: what breaks at its last event

  /// The settled state at the end.
  [[nodiscard]] const State& last() const;
};

/// The run without faults, in file order, where a start completes when the procedure has to wait for it.
/// The model is no template (objections_to_template() in cairn/prove.hpp tells).
[[nodiscard]] Walk walk(const Model& model);

/// Why a trace is no run of the model, or does not break the property.
struct NotARefutation {
  std::size_t event = 0;  ///< from 0; the number of events where the end is reached and nothing broke
  std::string why;        ///< one sentence
};

/// Walks `events` by the concrete semantics, and sees `asked` break at their end (not before, nor only later).
/// `faults` is the budget in force; it is not spent on properties that are asked without faults.
[[nodiscard]] std::variant<Walk, NotARefutation> replay(const Model& model, const FaultBudget& faults,
                                                        const AskedProperty& asked, const Trace& events);

}  // namespace cairn

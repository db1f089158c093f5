/// \file
/// One event with its settling by the concrete semantics, and what it breaks on the way (4.6).
#pragma once

#include <algorithm>
#include <array>
#include <vector>

#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/settle.hpp"

namespace cairn::confront {

/// The properties that an event or its settling can break.
inline constexpr std::array on_the_way = {Property::no_split, Property::primary_stays, Property::members_stay,
                                          Property::no_clash, Property::no_refusal};

/// From a state on through its passes.
class Course : private semantics::Watcher {
 public:
  explicit Course(const semantics::World& world) : world_(world) {}

  /// Settles `s`, which is what an event left, or the initial state.
  void settle(State& s) {
    states.clear();
    passes = unsettled = 0;
    semantics::settle(world_, s, scratch_, *this);
  }

  /// Lets an event happen that may, in the settled `s`, and settles.
  void take(State& s, const Event& event) {
    broken = {};
    const State before = s;
    const Refusal refusal = semantics::take(world_, s, semantics::derive(world_, before), event);
    for (std::size_t i = 0; i < on_the_way.size(); ++i) {
      note(i, semantics::broken_by(world_, before, event, refusal, on_the_way.at(i)));
    }
    settle(s);
  }

  std::array<bool, on_the_way.size()> broken{};  ///< since the last event, or since the course was made
  std::vector<State> states;                     ///< that the last settling went through
  std::size_t passes = 0;                        ///< of the last settling, that changed something
  std::size_t unsettled = 0;                     ///< of these, that held or restarted a device

  /// 6.e: a device of `keep` leads in one of `states`.
  [[nodiscard]] bool a_kept_device_led() const {
    return std::any_of(states.begin(), states.end(),
                       [this](const State& s) { return semantics::a_kept_device_leads(world_, s); });
  }

  /// Of the state where the last settling ended.
  [[nodiscard]] const semantics::Derived& derived() const { return scratch_.derived; }

 private:
  void see(const State& s, const semantics::Derived& derived) override {
    states.push_back(s);
    for (std::size_t i = 0; i < on_the_way.size(); ++i) {
      note(i, semantics::broken_in(world_, s, derived, on_the_way.at(i)));
    }
  }

  void foresee(const State& s, const semantics::Derived&, const semantics::PassPlan& plan) override {
    ++passes;
    if (plan.unsettled()) ++unsettled;
    for (std::size_t i = 0; i < on_the_way.size(); ++i) {
      note(i, semantics::broken_by(world_, s, plan, on_the_way.at(i)));
    }
  }

  void note(std::size_t i, const std::optional<Breach>& breach) { broken.at(i) = broken.at(i) || breach; }

  const semantics::World& world_;
  semantics::Scratch scratch_;
};

/// 5.j, of a settled state.
[[nodiscard]] inline bool rests(const semantics::World& world, const State& s) {
  std::vector<Event> events;
  semantics::events_in(world, s, semantics::derive(world, s), events);
  return semantics::at_rest(s, events);
}

}  // namespace cairn::confront

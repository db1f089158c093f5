/// \file
/// What a part of the devices can break by itself, whatever the others do (docs/reductions.md, Orders).
#pragma once

#include <cstdint>
#include <vector>

#include "explore/layout.hpp"
#include "explore/limits.hpp"
#include "explore/reduce/components.hpp"
#include "explore/reduce/forget.hpp"
#include "explore/sentry.hpp"
#include "explore/store.hpp"
#include "semantics/precedence.hpp"
#include "semantics/settle.hpp"

namespace cairn::explore {

/// Explores the events of one part of the devices alone, without faults. Steps that have to do with others are left
/// out, and the order that they bring about is not demanded: so more may happen than does.
class Alone {
 public:
  /// \param asked    those of 6.1 to 6.5 are the properties in question
  /// \param devices  of each step, as devices_of_steps() tells; must outlive this
  /// \param ask      asked now and then
  Alone(const semantics::World& world, const FaultBudget& budget, const std::vector<AskedProperty>& asked,
        const std::vector<std::vector<DeviceId>>& devices, AskLimits ask);

  /// How many states of parts it may have visited in all, from now on: exploring parts shall not cost more than it
  /// saves.
  void allow(std::uint64_t states) { allowance_ = states; }

  /// True only where no events of the part of `head` alone, from the settled state `s` on, break any of the properties.
  /// False, too, while it is not allowed to look far enough.
  /// \throws Stopped  when `ask` answered
  [[nodiscard]] bool breaks_nothing(const State& s, const Components& parts, DeviceId head);

  /// False where it is plain that whatever happens within the part of `head`, by steps to come that have to do with it
  /// alone and by starts, breaks none of the properties.
  [[nodiscard]] bool may_break(const State& s, const Components& parts, DeviceId head) const;

  /// What decided contests on the way.
  [[nodiscard]] const TieNotes& ties() const { return sentry_.ties(); }
  /// Visited so far.
  [[nodiscard]] std::uint64_t states() const { return store_.size(); }
  [[nodiscard]] std::uint64_t bytes() const { return store_.bytes_with(between_looks) + answers_.capacity(); }

 private:
  /// States that may be added between two looks at the limits.
  static constexpr StateIndex between_looks = 4096;

  /// That an event leads from one state to another.
  struct Arc {
    StateIndex to, from;
    auto operator<=>(const Arc&) const = default;
  };
  enum class Answer : std::uint8_t { unknown, reached, harmless, harmful };

  [[nodiscard]] bool may_break(Property property, const State& s, const Components& parts, DeviceId head) const;
  [[nodiscard]] bool may_share_a_number(const State& s, const Components& parts, DeviceId head) const;
  [[nodiscard]] std::vector<std::int64_t> numbers_to_come(const State& s, DeviceId d) const;
  [[nodiscard]] bool is_own(StepId step, const Components& parts, DeviceId head) const;
  void set_scene(const State& s, const Components& parts, DeviceId head);
  [[nodiscard]] StateIndex insert(const State& s);
  void collect_events(const State& s, const semantics::Derived& derived);
  [[nodiscard]] bool has_turn(const State& s, StepId step) const;
  [[nodiscard]] bool explore(StateIndex from);
  void spread_harm(std::vector<Arc>& arcs);

  const semantics::World& world_;
  const std::vector<std::vector<DeviceId>>& devices_of_steps_;
  std::vector<Property> asked_;
  semantics::Precedence precedence_;
  AskLimits ask_;
  State off_;                         ///< the initial state, with everything off
  State scene_;                       ///< the part as it is, and the others as if they were not there
  std::vector<std::uint8_t> inside_;  ///< per device: of the part
  std::vector<StepId> own_;           ///< steps that have to do with the part alone
  Layout layout_;
  Forgetter forgetter_;
  Store store_;
  std::vector<Answer> answers_;  ///< per state stored
  std::uint64_t allowance_ = 0;
  std::vector<std::uint64_t> put_off_;  ///< per head of a part: not looked at before the allowance is so large
  Sentry sentry_;
  semantics::Derived derived_;
  semantics::Scratch scratch_;
  std::vector<Event> events_;
  std::vector<std::uint64_t> packed_;
};

}  // namespace cairn::explore

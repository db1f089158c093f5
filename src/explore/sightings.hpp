/// \file
/// What was seen to happen in an exploration at all: for those who ask afterwards what never did.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/state.hpp"
#include "cairn/verdict.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Gathered state by state and event by event.
class Sightings {
 public:
  explicit Sightings(const semantics::World& world);

  /// A settled state, and the events that may happen in it.
  void open(const semantics::World& world, const State& s, const std::vector<Event>& events);
  /// One of them, settled in `after`.
  void taken(const Event& event, const State& after) {
    kinds_ |= bit(event.kind);
    if (event.kind != Event::Kind::step) return;
    happened_[event.place] = 1;
    if (after.halted) failed_[event.place] = 1;
  }
  void rank_decided() { rank_decided_ = true; }
  void visited_every_state() { every_state_ = true; }
  /// Adds what another exploration of the same model has seen.
  void add(const Sightings& other);
  /// Adds what happens to the steps that stand for those that it happened to, two for each other. True where there was
  /// any.
  bool add_images(const Renaming& swap);

  /// No state was left out, so that what was not seen never happens.
  [[nodiscard]] bool every_state() const { return every_state_; }
  /// The step was done in some run.
  [[nodiscard]] bool happened(StepId step) const { return happened_[step.value] != 0; }
  /// The turn of an await had come, and its condition did not hold.
  [[nodiscard]] bool waited(StepId await) const;
  /// A check did not hold.
  [[nodiscard]] bool failed(StepId check) const { return failed_[check.value] != 0; }
  [[nodiscard]] bool happened(Event::Kind kind) const { return (kinds_ & bit(kind)) != 0; }
  /// Who outranks whom (semantics 4.4) decided a contest or a clash.
  [[nodiscard]] bool rank_decided_anything() const { return rank_decided_; }

 private:
  static std::uint32_t bit(Event::Kind kind) { return std::uint32_t{1} << static_cast<unsigned>(kind); }

  std::vector<StepId> never_waited_;  ///< awaits that have not waited so far, in file order
  std::vector<std::uint8_t> happened_;
  std::vector<std::uint8_t> failed_;
  std::uint32_t kinds_ = 0;
  bool rank_decided_ = false;
  bool every_state_ = false;
};

}  // namespace cairn::explore

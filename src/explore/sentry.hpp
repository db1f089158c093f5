/// \file
/// Looks out for the breach of several properties at once, event by event.
#pragma once

#include <cstdint>
#include <vector>

#include "explore/ties.hpp"
#include "semantics/properties.hpp"

namespace cairn::explore {

/// Knows 6.1 to 6.5, which an event and its settling can break.
class Sentry final : public semantics::Watcher {
 public:
  explicit Sentry(const semantics::World& world) : world_(world), ties_(world) {}

  void watch(Property property) { watched_ |= bit(property); }
  void ignore(Property property) { watched_ &= ~bit(property); }

  /// Adds what another of the same world has noted, but for what is broken.
  void add_notes(const Sentry& other) {
    kept_led_ = kept_led_ || other.kept_led_;
    ties_.add(other.ties_);
  }

  /// Forgets what is broken, before an event.
  void reset() { broken_ = 0; }
  /// What the event itself breaks, before it settles.
  void note(const State& before, const Event& event, Refusal refusal);
  void see(const State& s, const semantics::Derived& derived) override;
  void foresee(const State& s, const semantics::Derived& derived, const semantics::PassPlan& plan) override;

  /// Something watched was broken since reset().
  [[nodiscard]] bool alarmed() const { return broken_ != 0; }
  [[nodiscard]] bool broken(Property property) const { return (broken_ & bit(property)) != 0; }

  /// Semantics 6.e: in a state seen so far, a device of `keep` led.
  [[nodiscard]] bool a_kept_device_led() const { return kept_led_; }
  [[nodiscard]] TieNotes& ties() { return ties_; }
  [[nodiscard]] const TieNotes& ties() const { return ties_; }

 private:
  static std::uint32_t bit(Property property) { return std::uint32_t{1} << static_cast<unsigned>(property); }
  [[nodiscard]] bool open(Property property) const { return (watched_ & ~broken_ & bit(property)) != 0; }
  template <class Judge>
  void judge(Property property, Judge judge) {
    if (open(property) && judge(property)) broken_ |= bit(property);
  }

  const semantics::World& world_;
  std::uint32_t watched_ = 0;  ///< bits by property
  std::uint32_t broken_ = 0;
  bool kept_led_ = false;
  TieNotes ties_;
};

}  // namespace cairn::explore

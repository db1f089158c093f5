/// \file
/// What a verdict is empty of: what the procedure and the question provide for, and what happens in no run.
#pragma once

#include <optional>
#include <vector>

#include "explore/explore.hpp"
#include "explore/split/search.hpp"

namespace cairn::verify {

/// Gathers what the explorations of one call have seen.
class Emptinesses {
 public:
  explicit Emptinesses(const Model& model) : model_(model) {}

  /// An exploration under `faults`, after it ended.
  void add(const explore::Exploration& all, const FaultBudget& faults) { add(all.answers, all.seen, faults); }
  /// The same of all instances of a template.
  void add(const explore::SplitExploration& all, const FaultBudget& faults) { add(all.answers, all.seen, faults); }
  /// An exploration that was cut short, and that others will follow. `cold_starts_to_come`: these look at all cold
  /// starts that it was asked for.
  void add_part(const explore::Exploration& all, bool cold_starts_to_come);
  /// What others have gathered of the same model.
  void add(const Emptinesses& other);
  /// An exploration that was broken off without anything to show.
  void add_nothing() { missed_ = true; }

  /// What was never seen; nothing where not every run was looked at. Whether a fault strikes is told of `faults` where
  /// an exploration was made under them.
  [[nodiscard]] std::optional<std::vector<Emptiness>> told(const FaultBudget& faults) const;

 private:
  template <class Answers>
  void add(const Answers& answers, const explore::Sightings& seen, const FaultBudget& faults) {
    // After the first cold start that misses the goal no other is looked at.
    every_cold_start_ = every_cold_start_ && std::ranges::none_of(answers, [](const auto& answer) {
                          return answer.asked.property == Property::survives_cold_start && answer.refutation;
                        });
    if (!faults.none()) under_ = faults;
    add(seen);
  }
  void add(const explore::Sightings& seen);
  void tell_steps(std::vector<Emptiness>& all) const;
  void tell_faults(const FaultBudget& faults, std::vector<Emptiness>& all) const;

  const Model& model_;
  std::optional<explore::Sightings> seen_;
  FaultBudget under_;    ///< the largest budget explored under
  bool missed_ = false;  ///< an exploration has nothing to show
  bool rank_decided_in_part_ = false;
  bool every_cold_start_ =
      true;  ///< every exploration looked at the cold start of each complete one, where that was asked
};

}  // namespace cairn::verify

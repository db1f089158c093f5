/// \file
/// Several scouts, and the stretches of a layer that they explore side by side.
#pragma once

#include <span>
#include <vector>

#include "base/crew.hpp"
#include "explore/scout.hpp"

namespace cairn::explore {

/// Goes ahead of one search. What comes of it is the same for every number of scouts: each stretch by itself.
class Vanguard {
 public:
  /// \param expander  whose like the scouts work with
  /// \param store     read while explore() runs; must outlive this
  /// \param words     64-bit words a packed state
  /// \param stretch   states a stretch, but for the first and the last of a layer: each ends at a multiple of it
  /// \param crew      who the scouts are; must outlive this
  Vanguard(const semantics::World& world, const Expander& expander, const Store& store, std::size_t words,
           StateIndex stretch, Crew& crew);

  /// Explores stretches from `begin` on, as many as make it worth while, and none beyond `end`; ascending. They are
  /// valid until the next call. Of `at_rest`, `sentry` and `seen` see Scout::explore().
  [[nodiscard]] std::span<const Stretch> explore(StateIndex begin, StateIndex end,
                                                 const std::vector<AskedProperty>& at_rest, const Sentry& sentry,
                                                 const Sightings& seen, const AskLimits& ask);

 private:
  static constexpr std::size_t stretches_a_scout = 8;

  StateIndex stretch_;
  Crew& crew_;
  std::vector<Scout> scouts_;
  std::vector<Stretch> stretches_;
};

}  // namespace cairn::explore

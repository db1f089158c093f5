/// \file
/// Looks for swaps that may map a model to itself (docs/reductions.md, Alike). What is found is a guess.
#pragma once

#include <optional>
#include <vector>

#include "explore/reduce/match_steps.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Guesses swaps, one from two devices.
class SwapGuesser {
 public:
  explicit SwapGuesser(const semantics::World& world) : world_(world), steps_(world.model()) {}

  /// The swap that exchanges two devices, and along with them what their cables lead to, as far as that is told apart
  /// by its place alone; steps by what they do and by what comes before and after them. Nothing where the two, or what
  /// is exchanged along with them, differ in what the site gives them. Whether it maps the model to itself is not
  /// known.
  [[nodiscard]] std::optional<Swap> guess(DeviceId d, DeviceId e) const;

 private:
  const semantics::World& world_;
  StepMatcher steps_;
};

/// Of all swaps that are guessed, each once, those that map the model to itself.
/// \param cold_start  whether a cold start (6.a) is one of the events
[[nodiscard]] std::vector<Swap> find_swaps(const semantics::World& world, bool cold_start);

}  // namespace cairn::explore

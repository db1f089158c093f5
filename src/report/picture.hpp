/// \file
/// A small drawing of the stack in text: devices in a row as they are cabled, what each one is, and the links between.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::report {

/// One state to draw.
struct Snapshot {
  std::string caption;  ///< at most 8 columns
  const State* state = nullptr;
};

/// The states one below the other, in one layout, so that the eye finds what changed; a state that looks like the one
/// before it is left out. Without colour. The drawing begins after `margin` columns, in which the captions stand.
[[nodiscard]] std::vector<std::string> draw(const semantics::World& world, const std::vector<Snapshot>& snapshots,
                                            std::size_t margin = 11);

/// Whether the two states look the same in a drawing.
[[nodiscard]] bool look_alike(const semantics::World& world, const State& a, const State& b);

/// What the signs of a drawing mean.
[[nodiscard]] std::string legend();

}  // namespace cairn::report

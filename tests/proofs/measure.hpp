/// \file
/// What grows less with every event of a run: the measure of proofs/runs-end.md.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <vector>

#include "cairn/state.hpp"
#include "semantics/world.hpp"

namespace cairn::test {

/// Smaller is closer to the end. First what is left to do, then, larger first, how far the stacks have grown.
struct Measure {
  /// Steps not done and faults left; broken cables; devices that a start would still change the settings of.
  std::array<std::int64_t, 3> to_come{};
  /// Devices that are held.
  std::int64_t held = 0;
  /// The leaders, the best-ranked first: what it has in the election that does not age, and how many follow it.
  struct Stack {
    std::vector<std::int64_t> prefix;
    std::int64_t size = 0;
    auto operator<=>(const Stack&) const = default;
  };
  std::vector<Stack> stacks;
};

/// Of a settled state.
[[nodiscard]] Measure measure_of(const semantics::World& world, const State& s);

/// `after` is smaller than `before`: lexicographically, and a stack more is smaller.
[[nodiscard]] bool falls(const Measure& before, const Measure& after);

}  // namespace cairn::test

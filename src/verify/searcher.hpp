/// \file
/// Explorations as the settler wants them: several side by side, and each with the time that it took.
#pragma once

#include <cstdint>
#include <exception>
#include <optional>
#include <vector>

#include "cairn/options.hpp"
#include "explore/explore.hpp"

namespace cairn::verify {

/// What an exploration has brought: all of it, or why it failed.
struct Found {
  std::optional<explore::Exploration> all;
  double seconds = 0;
  std::exception_ptr failure;
};

/// Explores under one budget of faults, within the limits of a call.
class Searcher {
 public:
  /// All are kept by reference.
  Searcher(const semantics::World& world, const ProveOptions& options, const FaultBudget& faults,
           const explore::Guard& guard)
      : world_(world), options_(options), faults_(faults), guard_(guard) {}

  /// \param most_states  where there are more, the exploration is cut short
  /// Throws what the exploration throws.
  [[nodiscard]] Found search(const std::vector<AskedProperty>& asked, const Reductions& reductions,
                             std::uint64_t most_states = explore::Manner().most_states) const;

  /// One exploration for each of `asked`, in that order. Those that leave states out, which nobody will evaluate again,
  /// come without the states visited. Never throws: what an exploration throws is its failure.
  [[nodiscard]] std::vector<Found> search_each(const std::vector<std::vector<AskedProperty>>& asked,
                                               const Reductions& reductions) const;

 private:
  [[nodiscard]] Found search(const std::vector<AskedProperty>& asked, const Reductions& reductions,
                             std::uint64_t most_states, const explore::Guard& guard) const;

  const semantics::World& world_;
  const ProveOptions& options_;
  const FaultBudget& faults_;
  const explore::Guard& guard_;
};

}  // namespace cairn::verify

/// \file
/// What is known of the lengths of runs before a question, so that it need not be asked again.
#pragma once

#include <cstddef>
#include <optional>

namespace cairn::solver {

/// Of the runs of one system, whatever is asked of them.
struct RunLengths {
  /// There are runs of so many events, or so a scout says: whether a shorter one goes on is not asked. Where that is
  /// wrong, longer ones are looked at than there are, and a proof is none the worse for it.
  std::size_t some = 0;
  std::optional<std::size_t> longest;  ///< no run has more events: judged
};

/// The longest run has `longest` events.
[[nodiscard]] inline RunLengths no_run_exceeds(std::size_t longest) {
  return {longest, longest};
}

}  // namespace cairn::solver

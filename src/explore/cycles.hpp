/// \file
/// Semantics 5.k: every run ends, so that no cycle is among the states.
#pragma once

#include <cstdint>
#include <vector>

#include "explore/limits.hpp"
#include "explore/store.hpp"

namespace cairn::explore {

/// Which starts lead from which state to which.
///
/// Steps stay done (5.d), budgets only shrink and so do, once no break is left, the broken cables (5.c): an event of
/// these kinds lies on no cycle. A cycle would consist of starts alone (5.b), and one of them would lead to a state of
/// the same layer or of an earlier one. The targets of such starts are the suspects; the search sets out from them.
class StartGraph {
 public:
  /// The state whose starts are added from now on: 0, 1, 2, … in turn.
  void begin_state() { first_.push_back(static_cast<std::uint64_t>(targets_.size())); }
  /// A start leads to `target`; it is a suspect where the target is not of a later layer.
  void add(StateIndex target, bool suspect);

  /// The states of one cycle, each leading to the next and the last to the first; empty where there is none.
  /// \throws Stopped  when `ask` answered
  [[nodiscard]] std::vector<StateIndex> find_cycle(const AskLimits& ask) const;

  [[nodiscard]] std::uint64_t bytes() const;

 private:
  std::vector<std::uint64_t> first_;  ///< per state, where its targets begin
  std::vector<StateIndex> targets_;
  std::vector<StateIndex> suspects_;
};

}  // namespace cairn::explore

/// \file
/// Runs without end, against semantics 5.k, in some instance of a template.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "explore/limits.hpp"
#include "explore/store.hpp"
#include "unknowns/cases.hpp"

namespace cairn::explore {

/// Which starts lead from which node to which, and in which of its instances. As in StartGraph, a cycle has a start
/// that leads to a node of the same layer or of an earlier one. But not every cycle of nodes is a run: where a node
/// covers more instances than a start leads there in, those that go on need not be those that came.
class SplitStarts {
 public:
  /// The node whose starts are added from now on: 0, 1, 2, … in turn.
  void begin_node() { first_.push_back(starts_.size()); }
  /// A start leads to `target` under a case; the target is a suspect where it is not of a later layer.
  void add(StateIndex target, unknowns::CaseId under, bool suspect);

  /// A case of which every instance goes round a cycle; nothing where there is none.
  /// \throws Stopped  when `ask` answered
  [[nodiscard]] std::optional<unknowns::CaseId> find_endless(unknowns::Cases& cases, const AskLimits& ask) const;

  [[nodiscard]] std::uint64_t bytes() const;

 private:
  struct Start {
    StateIndex target;
    unknowns::CaseId under;
  };
  class Search;

  std::vector<std::uint64_t> first_;  ///< per node, where its starts begin
  std::vector<Start> starts_;
  std::vector<Start> suspects_;
};

}  // namespace cairn::explore

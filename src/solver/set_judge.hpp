/// \file
/// What a confirmation has found so far, and when it is over.
#pragma once

#include <utility>

#include "solver/blocks.hpp"
#include "solver/closed_set.hpp"
#include "system/rows.hpp"

namespace cairn::solver {

/// Ends a confirmation, by an exception, where there is something to tell before its end; keeps the first doubt.
class SetJudge {
 public:
  explicit SetJudge(const AskLimits& ask) : ask_(ask) {}

  struct Over {};

  [[nodiscard]] SetConfirmation& told() { return told_; }

  /// \throws Over
  [[noreturn]] void end(SetConfirmation::Outcome outcome) {
    told_.outcome = outcome;
    throw Over();
  }
  /// \throws Over
  [[noreturn]] void stop(Reason reason) {
    told_.reason = reason;
    end(SetConfirmation::Outcome::stopped);
  }
  /// \throws Over
  [[noreturn]] void differ(Difference difference) {
    told_.difference = std::move(difference);
    end(SetConfirmation::Outcome::differs);
  }
  void doubt(Difference difference) {
    if (!told_.doubt) told_.doubt = std::move(difference);
  }
  /// \throws Over  where a limit is met
  void ask_limits(std::uint64_t bytes) {
    if (const std::optional<Reason> met = ask_(bytes)) stop(*met);
  }

  /// Of rows for which something may be wrong: where it is sure to be, that is told, and it is over; else it is a
  /// doubt. `what(row)` tells what is wrong. \throws Over
  template <class What>
  void judge(const system::Block& perhaps, const system::Block& surely, std::size_t count, What what) {
    for_each_row(perhaps, count, [&](std::size_t row) {
      if (has(surely, row)) differ(what(row));
      if (!told_.doubt) doubt(what(row));
    });
  }

 private:
  const AskLimits& ask_;
  SetConfirmation told_;
};

}  // namespace cairn::solver

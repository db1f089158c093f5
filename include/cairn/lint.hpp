/// \file
/// What is legal in a model but suspicious, found by reading and by exploring.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/diagnostic.hpp"
#include "cairn/files.hpp"
#include "cairn/options.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

/// One suspicion.
struct Finding {
  enum class Kind : std::uint8_t {
    never_reached,        ///< a step that no order ever reaches
    never_waits,          ///< an await that is true whenever its turn comes
    cannot_fail,          ///< a check that holds whenever its turn comes
    changes_nothing,      ///< a step that changes nothing in any run
    never_applied,        ///< a side that is set and never becomes operational
    goal_from_the_start,  ///< a goal that is true before the first step
    number_in_use,        ///< a member number that another device on the site has too
    out_of_range,         ///< a step that asks for a number or a priority that the platform does not have
    console_lost,         ///< a step whose `via` is neither up nor held in some state in which its turn has come
  };

  Kind kind = Kind::never_reached;
  Span span;
  std::string message;  ///< one sentence without a full stop: what is suspicious
  std::string advice;   ///< what to do about it
};

/// "never-waits"
[[nodiscard]] std::string_view name_of(Finding::Kind kind);

struct LintReport {
  Diagnostics problems;             ///< errors of the input; then there are no findings
  std::vector<Finding> findings;    ///< in file order
  std::optional<Reason> cut_short;  ///< a limit was met: findings that need every run are left out
};

/// Reads a file of any of the three kinds. A procedure without problems is also explored, under its own faults for
/// what never happens and without faults for `console_lost`.
[[nodiscard]] LintReport lint(const std::string& path, const Files& files, const Limits& limits = {});

}  // namespace cairn

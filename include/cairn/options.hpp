/// \file
/// How a question is asked: which properties, under which faults, within which limits.
#pragma once

#include <atomic>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "cairn/property.hpp"

namespace cairn {

/// How far the exploration has come.
struct Progress {
  std::uint64_t states = 0;   ///< visited so far
  std::uint64_t waiting = 0;  ///< of those, not yet expanded
  std::uint64_t depth = 0;    ///< events from the initial state
  double seconds = 0;         ///< since the exploration began
};

/// What may end a run early. Whatever is not settled by then is undecided, with the reason.
struct Limits {
  std::optional<double> seconds;  ///< Wall clock, from the call on; 0 or more.
  /// Of memory for the states (10^6 bytes each), or for constraints (docs/trust.md says what is counted); 1 or more.
  std::optional<std::uint64_t> megabytes;
  const std::atomic<bool>* interrupt =
      nullptr;  ///< Becomes true when the caller wants an end, for instance from a signal handler.
};

/// Which way verdicts are settled (docs/trust.md).
enum class Engine : std::uint8_t {
  automatic,  ///< explores, then proves by facts what is not refuted, else by the closed set of states
  explore,    ///< states alone
  solver,     ///< constraints alone: no exploration takes part
  both,       ///< `explore` and `solver`, which must agree on verdict, length and vacuity
};

/// What the exploration leaves out because it makes no difference (docs/reductions.md). No verdict depends on it, nor
/// the length of a refutation; the choice among the shortest does on `orders` and `alike` alone.
struct Reductions {
  bool seniority = true;  ///< who has been up longer, where no contest can come to it
  bool settings = true;   ///< settings that a start will overwrite unread
  bool budgets = true;    ///< faults that can no longer strike
  /// Orders of events that have nothing to do with one another. Like the next one only where those above leave too much
  /// (ProveOptions::forgetting_limit), since what is left cannot be evaluated again as it is.
  bool orders = true;
  bool alike = true;  ///< which of several devices is which, where nothing tells them apart

  [[nodiscard]] static Reductions none() { return {false, false, false, false, false}; }
  [[nodiscard]] static Reductions all() { return {true, true, true, true, true}; }
  bool operator==(const Reductions&) const = default;
};

struct ProveOptions {
  std::vector<AskedProperty> properties;  ///< Empty: those that the procedure asks for.
  std::optional<std::int64_t> cable_breaks, crashes, omissions, late_starts;  ///< Instead of the procedure's budget.
  std::optional<bool> mends;
  Engine engine = Engine::automatic;
  /// How many states one way of settling may visit to confirm what another has settled: a count, so that the same
  /// question gets the same answer on every machine. Sets of more states, of reductions too, are not evaluated again.
  std::uint64_t confirm_limit = 1'000'000;
  Reductions reductions;  ///< Of explorations.
  /// How many states may be left of an exploration that forgets. Only where there are more, orders and devices alike
  /// are left out too.
  std::uint64_t forgetting_limit = 1'000'000;
  /// Threads that explore side by side, at least 1. Neither verdicts, lengths, the refutations chosen nor the states
  /// counted depend on it.
  unsigned jobs = 1;
  /// States that a thread takes at a time, 1 or more; less than four times as many are left to one thread. Only how
  /// long it takes depends on it.
  std::uint32_t stretch = 256;
  Limits limits;
  std::function<void(const Progress&)> progress;  ///< Called now and then, from the calling thread; may be empty.
};

}  // namespace cairn

/// \file
/// Expands states ahead of the search, side by side with others who do the same.
#pragma once

#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

#include "cairn/verdict.hpp"
#include "explore/expander.hpp"
#include "explore/limits.hpp"
#include "explore/sentry.hpp"
#include "explore/sightings.hpp"
#include "explore/store.hpp"

namespace cairn::explore {

/// Counts the outcome of an event, `visited` before or not.
inline void note_outcome(Savings& savings, const Forgotten& forgotten, bool visited) {
  ++savings.outcomes;
  if (!visited) return;
  if (forgotten.seniority) ++savings.by_seniority;
  if (forgotten.settings) ++savings.by_settings;
  if (forgotten.budgets) ++savings.by_budgets;
  if (forgotten.alike) ++savings.by_alike;
}

/// What came of expanding some states that follow one another. Apart from others in memory, since different threads
/// write to them.
struct alignas(128) Stretch {
  /// The successors of a state, one after the other; those that nothing is to be done about are left out.
  struct Successor {
    StateIndex index;  ///< `newcomer`, or one that was stored before
    bool by_start;
  };
  static constexpr StateIndex newcomer = std::numeric_limits<StateIndex>::max();

  StateIndex begin = 0, end = 0;
  /// Something broke, or could not be finished: the search expands these states by itself, and nothing else here is of
  /// any use.
  bool eventful = false;
  bool completed = false;  ///< a complete state at rest is among them (6.e)
  std::vector<Successor> successors;
  std::vector<std::uint32_t> ends;    ///< per state, where its successors end
  std::vector<std::uint64_t> rows;    ///< of the newcomers, packed; two may be alike
  std::vector<std::uint64_t> hashes;  ///< of the same
  std::vector<Forgotten> forgotten;   ///< of the same
  Savings savings;                    ///< of all but the newcomers
  std::optional<Sentry> sentry;       ///< with what it knew before, and what it noted here
  std::optional<Sightings> seen;      ///< the same
};

/// One of several who expand states of one layer. Reads the store, to which nothing is added meanwhile.
class Scout {
 public:
  /// \param expander  whose like it works with
  Scout(const semantics::World& world, Expander expander, const Store& store, std::size_t words)
      : world_(world), expander_(std::move(expander)), store_(store), words_(words) {}

  /// Expands the states from `out.begin` to `out.end`. Never throws: what does is eventful.
  /// \param at_rest  what is asked of states at rest, and open
  /// \param sentry   of the search, and not broken; `seen` likewise
  void explore(Stretch& out, const std::vector<AskedProperty>& at_rest, const Sentry& sentry, const Sightings& seen,
               const AskLimits& ask);

 private:
  void expand(StateIndex index, Stretch& out, const std::vector<AskedProperty>& at_rest, const AskLimits& ask);

  const semantics::World& world_;
  Expander expander_;
  const Store& store_;
  std::size_t words_;
};

}  // namespace cairn::explore

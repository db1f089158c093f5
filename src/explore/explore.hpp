/// \file
/// Every reachable state, breadth first: a shortest refutation of each property, or the closed set of states as its
/// proof.
#pragma once

#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <vector>

#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"
#include "explore/limits.hpp"
#include "explore/reduce/alike.hpp"
#include "explore/sightings.hpp"
#include "explore/visited.hpp"
#include "semantics/derived.hpp"

namespace cairn::explore {

/// Sees every state and every event of an exploration once, for whoever looks for more than properties.
class Observer {
 public:
  virtual ~Observer() = default;
  /// A settled state, and the events that may happen in it.
  virtual void open(const State& s, const semantics::Derived& derived, const std::vector<Event>& events) = 0;
  /// One of them: taken in `before`, refused for `refusal` or not, and settled in `after`.
  virtual void taken(const State& before, const Event& event, Refusal refusal, const State& after) = 0;
};

/// What was found on one property.
struct Answer {
  AskedProperty asked;
  std::optional<Trace> refutation;  ///< the shortest, chosen as explore/choose.hpp tells
};

struct Exploration {
  explicit Exploration(Sightings sightings) : seen(std::move(sightings)) {}

  std::vector<Answer> answers;     ///< in the order asked
  std::optional<Reason> stopped;   ///< the limit that was met; what is not refuted is then undecided
  std::uint64_t explored = 0;      ///< settled states visited
  bool a_kept_device_led = false;  ///< 6.e, of the states visited
  bool a_run_completed = false;    ///< 6.e: a complete state at rest was visited
  std::vector<UnstatedTie> ties;   ///< ascending
  Sightings seen;                  ///< in the states visited
  /// Devices whose starts follow one another in a circle, against semantics 5.k; empty as the lemma says. Looked for
  /// where every state was visited.
  std::vector<DeviceId> endless;
  bool every_state_visited = false;
  bool cut_short = false;  ///< `most_states` were visited, and there are more
  /// Reductions were allowed: of the states visited, each stands for some that were not.
  bool reduced = false;
  /// Among them orders: not all that happens was seen, and states that can lead to nothing asked were left as they are.
  bool orders_left_out = false;
  /// Devices are alike: of the states that swapping them makes of one another, one was visited. Else nothing.
  std::shared_ptr<const Alike> alike;
  Savings savings;
  /// The states visited; where all were, the closed set.
  std::unique_ptr<const Visited> visited;

  /// Beside what is forgotten, states were left out that those visited lead to: these are not closed, even with that
  /// unknown (docs/reductions.md, What a reduced set proves).
  [[nodiscard]] bool leaves_states_out() const { return orders_left_out || alike != nullptr; }
};

/// How to explore. As it stands: everything.
struct Manner {
  Observer* observer = nullptr;  ///< sees what is left when reductions have struck
  std::uint64_t most_states = std::numeric_limits<std::uint64_t>::max();  ///< after about so many it stops, `cut_short`
  Reductions reductions = Reductions::none();
  unsigned jobs = 1;            ///< threads, at least 1; nothing that is found depends on it
  std::uint32_t stretch = 256;  ///< states that a thread takes at a time; limits are looked at as often
};

/// Explores under `budget` until every asked property is refuted or every state is visited. With an observer, or with
/// nothing asked, every state is visited. Asks for what docs/semantics.md, section 6 lets be asked together: the caller
/// sees to it that properties asked without faults come with an empty budget.
/// \throws Contradiction  where cairn breaks a promise of its own
[[nodiscard]] Exploration explore(const semantics::World& world, const FaultBudget& budget,
                                  const std::vector<AskedProperty>& asked, const Guard& guard,
                                  const Manner& manner = {});

}  // namespace cairn::explore

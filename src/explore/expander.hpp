/// \file
/// From a packed state to the events that may happen in it and the packed states that they lead to.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "explore/layout.hpp"
#include "explore/reduce/alike.hpp"
#include "explore/reduce/forget.hpp"
#include "semantics/events.hpp"
#include "semantics/settle.hpp"
#include "semantics/state.hpp"

namespace cairn::explore {

/// Holds one open state and the successor that was taken last. Reuses its memory from state to state.
class Expander {
 public:
  /// \param alike  which states count as one beside; nothing where each counts for itself
  Expander(const semantics::World& world, const FaultBudget& budget, const Layout& layout, const Reductions& reductions,
           std::shared_ptr<const Alike> alike = nullptr);

  /// The initial state, unsettled; settling it is seen by `watcher`. next() is the settled one, reduced.
  void settle_initial(semantics::Watcher& watcher);

  /// Opens a settled state: state(), derived() and events() are of it until the next call.
  void open(const std::uint64_t* packed);
  [[nodiscard]] const State& state() const { return state_; }
  [[nodiscard]] const semantics::Derived& derived() const { return derived_; }
  [[nodiscard]] const std::vector<Event>& events() const { return events_; }
  [[nodiscard]] bool at_rest() const { return semantics::at_rest(state_, events_); }

  /// Takes one of events(), and settles; next() is the outcome, reduced.
  Refusal take(const Event& event, semantics::Watcher& watcher);
  [[nodiscard]] const State& next() const { return next_; }
  /// What reducing it has changed.
  [[nodiscard]] const Forgotten& forgotten() const { return forgotten_; }
  /// The swaps that led from the outcome to next().
  [[nodiscard]] const Alike::Applied& applied() const { return applied_; }
  /// next(), packed.
  [[nodiscard]] const std::uint64_t* packed_next();

 private:
  void reduce_next();

  const semantics::World& world_;
  const Layout& layout_;
  std::optional<Forgetter> forgetter_;  ///< where it forgets anything: it takes its time to make
  std::shared_ptr<const Alike> alike_;
  State state_;
  semantics::Derived derived_;
  std::vector<Event> events_;
  State next_;
  Forgotten forgotten_;
  Alike::Applied applied_;
  semantics::Scratch scratch_;
  std::vector<std::uint64_t> packed_;
};

}  // namespace cairn::explore

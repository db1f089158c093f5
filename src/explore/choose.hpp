/// \file
/// Which of the shortest refutations is told: the one with fewest faults, then with the fewest switches between actors,
/// then the earliest in file order. So the same input gives the same refutation everywhere.
#pragma once

#include <array>
#include <compare>
#include <exception>
#include <optional>
#include <vector>

#include "base/crew.hpp"
#include "explore/expander.hpp"
#include "explore/limits.hpp"
#include "explore/sentry.hpp"
#include "explore/store.hpp"

namespace cairn::explore {

/// The states by layers: those first reached by d events are numbered from layers[d] up to layers[d + 1].
using Layers = std::vector<StateIndex>;

/// Chooses by dynamic programming. A state at place d of a shortest refutation is of layer d, so the cheapest way to
/// finish from each state of the layers can be computed from the last layer back to the first, and then be followed
/// forwards, the earliest event first.
class Chooser {
 public:
  /// \param expander  whose like it works with
  /// \param alike     what `expander` counts as one, or nothing
  /// \param length    of the shortest refutation of `asked`; the layers up to it, but for its last event, are in
  ///                  `store`
  /// \param crew      where given, layers are shared out among it
  Chooser(const semantics::World& world, const Expander& expander, const Alike* alike, const Store& store,
          const Layers& layers, const AskedProperty& asked, std::size_t length, AskLimits ask, Crew* crew);

  /// \throws Stopped  when `ask` answered
  /// \throws Contradiction  when no refutation of that length is found again
  [[nodiscard]] Trace choose();

 private:
  /// What is minimised, in this order.
  struct Cost {
    std::uint32_t faults;
    std::uint32_t switches;
    auto operator<=>(const Cost&) const = default;
    [[nodiscard]] bool possible() const { return faults != impossible; }
  };
  static constexpr std::uint32_t impossible = ~std::uint32_t{0};
  static constexpr Cost no_way{impossible, impossible};
  /// The cost of finishing from a state, by the actor of the event before.
  using CostAfter = std::array<Cost, 3>;

  /// One way on: an event, and the state that it leads to unless it, or the tail that it begins, ends the refutation.
  struct Option {
    Trace events;
    bool ends = false;
    StateIndex next = 0;
    Alike::Applied applied;  ///< the swaps that led to `next` from the outcome
  };

  /// What one thread looks with.
  struct Lookout {
    Expander expander;
    Sentry sentry;
    TieNotes unheard;
    std::exception_ptr failure;  ///< what ended its work
  };

  template <class Visit>
  void for_each_option(Lookout& out, StateIndex index, std::size_t depth, Visit visit) const;
  /// The cost of going on with `option` after an event of `before` (of nobody, at the start).
  [[nodiscard]] Cost cost_of(const Option& option, std::optional<Actor> before) const;
  [[nodiscard]] CostAfter finish_from(Lookout& out, StateIndex index, std::size_t depth) const;
  void find_costs(std::size_t depth);
  void find_costs(Lookout& out, StateIndex begin, StateIndex end, std::size_t depth);
  [[nodiscard]] bool in_layer(StateIndex index, std::size_t depth) const {
    return layers_[depth] <= index && index < layers_[depth + 1];
  }
  [[nodiscard]] std::size_t last_layer() const;
  [[nodiscard]] Option cheapest(StateIndex from, std::size_t depth, std::optional<Actor> before);

  const semantics::World& world_;
  const Alike* alike_;
  const Store& store_;
  const Layers& layers_;
  AskedProperty asked_;
  std::size_t length_;
  AskLimits ask_;
  Crew* crew_;
  std::vector<Lookout> lookouts_;
  std::vector<CostAfter> costs_;  ///< by state, of the layers done so far
};

}  // namespace cairn::explore

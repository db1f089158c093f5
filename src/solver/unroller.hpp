/// \file
/// The transition relation laid out in a row: the state at each depth as terms over the events before it.
#pragma once

#include <cstddef>
#include <deque>
#include <vector>

#include "system/build.hpp"

namespace cairn::solver {

/// A run of events from the initial state, none of which is decided yet. Depth t is the settled state after t events.
/// Every state is a function of the events before it, folded from the constants of the initial state: what the first
/// events cannot touch stays a constant, and an event that cannot happen yet costs nothing. The system must outlive
/// this; its pool grows.
class Unroller {
 public:
  /// \throws Contradiction  where the relation leaves the domains of its states
  explicit Unroller(system::System& system);

  [[nodiscard]] system::System& system() const { return system_; }

  /// The settled state at depth t. Depths are made as they are asked for.
  [[nodiscard]] const system::SymbolicState& state(std::size_t t);
  /// That `event`, a place in System::events, is the one that happens at depth t: a free variable of its own, or a
  /// constant.
  [[nodiscard]] system::Term happens(std::size_t t, std::size_t event);
  /// One event happens at depth t, and it may.
  [[nodiscard]] system::Term one_event(std::size_t t);
  /// A term over System::now and System::events, put at depth t.
  [[nodiscard]] system::Term at(std::size_t t, system::Term term);

 private:
  struct Frame {
    system::SymbolicState state;
    std::vector<system::Term> happens;
    system::Substitution put;
  };
  Frame& frame(std::size_t t);
  void add_frame(system::SymbolicState state);
  void put_state(system::Substitution& put, const system::SymbolicState& state) const;
  [[nodiscard]] system::SymbolicState after(Frame& frame) const;

  system::System& system_;
  std::deque<Frame> frames_;
};

}  // namespace cairn::solver

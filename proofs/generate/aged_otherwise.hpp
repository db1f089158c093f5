/// \file
/// Two states that differ in nothing but who has been up longer, and an event that happens in both.
#pragma once

#include <vector>

#include "any_state.hpp"

namespace cairn::proofs {

/// Per device: that it leads itself or is fresh (semantics 4.1). Without orphans nobody else is compared by rank (4.2).
[[nodiscard]] std::vector<system::Term> contestants(system::Terms& terms, const system::SymbolicState& s);

/// `s` with the order of seniority of another state.
[[nodiscard]] system::SymbolicState with_seniority_of(system::SymbolicState s, const system::SymbolicState& other);

struct TwoOrders {
  system::SymbolicState first, second;

  TwoOrders(system::SymbolicState a, system::SymbolicState b) : first(std::move(a)), second(std::move(b)) {}

  /// Each after one pass.
  [[nodiscard]] TwoOrders after_pass(system::Terms& terms) const;
  /// A pass holds and restarts the same devices.
  [[nodiscard]] system::Term same_pass(system::Terms& terms) const;
  /// Every variable but seniority is equal.
  [[nodiscard]] system::Term same_but_for_seniority(system::Terms& terms) const;
  /// The order of any two of `who`, told per device, is the same in both.
  [[nodiscard]] system::Term same_among(system::Terms& terms, const std::vector<system::Term>& who) const;
};

/// That the second state has a lawful order of seniority; `other` is where it is from.
[[nodiscard]] Given another_order(system::Terms& terms, const TwoOrders& two, const system::FreeState& other);

/// An event that may be any: d1 comes up, late or not, or some devices go down; links form or go, and numbers and
/// priorities change, as another state has them.
class AnyEvent {
 public:
  AnyEvent(system::Terms& terms, const system::Space& space);

  /// The state that it leaves, with the cables, numbers and priorities of `other`.
  [[nodiscard]] system::SymbolicState take(system::Terms& terms, const system::SymbolicState& before,
                                           const system::SymbolicState& other) const;

  /// d1 comes up only where it is starting (5.b).
  [[nodiscard]] Given is_possible(system::Terms& terms, const system::SymbolicState& before) const;
  /// Where d1 comes up, the links that form are its own.
  [[nodiscard]] Given one_at_a_time(system::Terms& terms, const system::SymbolicState& before,
                                    const system::SymbolicState& after) const;
  /// Who followed and is still up is together with its leader, by links that were there before.
  [[nodiscard]] Given leaves_no_orphans(system::Terms& terms, const system::SymbolicState& before,
                                        const system::SymbolicState& after) const;
  [[nodiscard]] system::Term comes_up() const { return comes_up_; }
  [[nodiscard]] const std::vector<system::Term>& goes_down() const { return goes_down_; }

 private:
  system::Term comes_up_, late_;
  std::vector<system::Term> goes_down_;  ///< per device
};

}  // namespace cairn::proofs

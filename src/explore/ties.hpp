/// \file
/// Contests that were decided by something that the site file does not state: the verdict leans on it.
#pragma once

#include <set>
#include <vector>

#include "cairn/verdict.hpp"
#include "explore/reduce/swap.hpp"
#include "semantics/settle.hpp"

namespace cairn::explore {

/// Notes, pass by pass, which comparisons of rank (semantics 4.4) came down to a tenure or an address that is only a
/// default. A tenure counts where both devices may still stand in the order that the file gives them (2.j).
class TieNotes final : public semantics::Watcher {
 public:
  explicit TieNotes(const semantics::World& world);

  void see(const State&, const semantics::Derived&) override {}
  void foresee(const State& s, const semantics::Derived& derived, const semantics::PassPlan& plan) override;

  /// Adds what others have noted in the same world.
  void add(const TieNotes& other) {
    rank_decided_ = rank_decided_ || other.rank_decided_;
    ties_.insert(other.ties_.begin(), other.ties_.end());
  }

  /// Adds the ties between those who stand for the devices of ties, two for each other. True where there was any.
  bool add_images(const Renaming& swap);

  /// Who outranks whom decided a contest or a clash.
  [[nodiscard]] bool rank_decided() const { return rank_decided_; }
  /// In ascending order.
  [[nodiscard]] std::vector<UnstatedTie> ties() const { return {ties_.begin(), ties_.end()}; }

 private:
  void note(const State& s, DeviceId winner, DeviceId loser);

  const semantics::World& world_;
  bool all_stated_;
  bool rank_decided_ = false;
  std::set<UnstatedTie> ties_;
};

}  // namespace cairn::explore

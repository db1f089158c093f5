/// \file
/// Semantics 4, Settling: clashes, contests and who restarts.
#pragma once

#include <utility>
#include <vector>

#include "semantics/derived.hpp"

namespace cairn::semantics {

/// 4.4: d comes before e in the platform's election order. Total: exactly one of two devices outranks the other.
[[nodiscard]] bool outranks(const World& world, const State& s, DeviceId d, DeviceId e);

/// What is compared of d in a contest (4.4); d is up.
[[nodiscard]] Rank rank(const World& world, const State& s, DeviceId d);
/// By key of a rank: whether the larger is better.
[[nodiscard]] std::vector<bool> higher_wins(const World& world);

/// What one pass decides, before it takes effect. Reused from pass to pass.
struct PassPlan {
  std::vector<DeviceId> held;                                 ///< 4.3.a, those that yield
  std::vector<DeviceId> restarted;                            ///< 4.3.b
  std::vector<std::pair<DeviceId, DeviceId>> admitted;        ///< a device and its new leader
  std::vector<std::pair<DeviceId, DeviceId>> contests;        ///< 4.2: the winner and another candidate
  std::vector<std::pair<DeviceId, DeviceId>> number_clashes;  ///< 4.1.b: the one that outranks and the one that yields

  void clear();
  /// 4.5.a: a pass that held or restarted a device is unsettled, and another follows.
  [[nodiscard]] bool unsettled() const { return !held.empty() || !restarted.empty(); }
  [[nodiscard]] bool changes_nothing() const { return !unsettled() && admitted.empty(); }
};

/// 4.a: decides one pass over all classes at once, from the state as it is.
void plan_pass(const World& world, const State& s, const Derived& derived, PassPlan& plan);

/// Lets the plan take effect (4.3).
void carry_out(const PassPlan& plan, State& s);

/// Sees every state that the properties look at (4.6), and what settling is about to do.
class Watcher {
 public:
  virtual ~Watcher() = default;
  /// A state that an event left, or one after a pass.
  virtual void see(const State& s, const Derived& derived) = 0;
  /// `plan` is about to take effect in `s`; it changes something.
  virtual void foresee(const State& s, const Derived& derived, const PassPlan& plan) = 0;
};

/// What settling needs at hand; kept by the caller, so that nothing is allocated from event to event.
struct Scratch {
  Derived derived;
  PassPlan plan;
};

/// 4.5: passes until the state is settled. Afterwards `scratch.derived` is that of the settled state.
/// It comes to an end: an unsettled pass takes down or holds a device that was up, and none comes up. (Lemma 4.5.c says
/// that there are never more than two such passes in a row; docs/semantics-questions.md has a model with three.)
void settle(const World& world, State& s, Scratch& scratch, Watcher& watcher);

}  // namespace cairn::semantics

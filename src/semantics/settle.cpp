#include "semantics/settle.hpp"

#include <algorithm>

#include "semantics/state.hpp"

namespace cairn::semantics {

bool outranks(const World& world, const State& s, DeviceId d, DeviceId e) {
  for (const ElectionKey key : world.platform().election) {
    switch (key) {
      case ElectionKey::priority:  // 4.4.a: running, higher wins
        if (!world.equal(s[d].priority, s[e].priority)) return world.less(s[e].priority, s[d].priority);
        break;
      case ElectionKey::tenure:  // 4.4.b
        if (senior(s, d, e)) return true;
        if (senior(s, e, d)) return false;
        break;
      case ElectionKey::number:  // 4.4.c: lower wins
        if (!world.equal(s[d].number, s[e].number)) return world.less(s[d].number, s[e].number);
        break;
    }
  }
  return world.less(world.address(d), world.address(e));  // 4.4.d: lower wins, always appended
}

Rank rank(const World& world, const State& s, DeviceId d) {
  Rank keys;
  for (const ElectionKey key : world.platform().election) {
    switch (key) {
      case ElectionKey::priority:
        keys.push_back(s[d].priority);
        break;
      case ElectionKey::tenure:
        keys.push_back(s[d].seniority);
        break;
      case ElectionKey::number:
        keys.push_back(s[d].number);
        break;
    }
  }
  keys.push_back(world.address(d));
  return keys;
}

std::vector<bool> higher_wins(const World& world) {
  std::vector<bool> wins;
  for (const ElectionKey key : world.platform().election) wins.push_back(key == ElectionKey::priority);
  wins.push_back(false);
  return wins;
}

void PassPlan::clear() {
  held.clear();
  restarted.clear();
  admitted.clear();
  contests.clear();
  number_clashes.clear();
}

namespace {

/// One class K and what it decides in this pass.
class ClassPass {
 public:
  ClassPass(const World& world, const State& s, const Derived& derived, DeviceId head, PassPlan& plan)
      : world_(world), s_(s), derived_(derived), head_(head), plan_(plan) {}

  void decide() {
    if (all_follow_one_of_them()) return;
    const auto leading = [this](DeviceId d) { return leads(s_, d); };
    const auto orphaned = [this](DeviceId d) { return !fresh(s_, d); };
    if ((winner_ = best(leading))) return settle_contest();
    if (has(orphaned)) return settle_orphans(orphaned);
    elect(best([](DeviceId) { return true; }));  // 4.2.b: none present, and all of K are fresh
  }

 private:
  template <class Do>
  void for_each(Do visit) const {
    for (DeviceId d = head_; d; d = derived_.next_in_class[d.value]) visit(d);
  }

  template <class Is>
  [[nodiscard]] bool has(Is is) const {
    for (DeviceId d = head_; d; d = derived_.next_in_class[d.value]) {
      if (is(d)) return true;
    }
    return false;
  }

  [[nodiscard]] bool in_class(DeviceId d) const { return derived_.class_of[d.value] == head_; }

  /// Nothing to decide: 4.1.e, and 4.2.c finds neither a loser nor a fresh device.
  [[nodiscard]] bool all_follow_one_of_them() const {
    const DeviceId leader = s_[head_].leader;
    return leader && in_class(leader) && leads(s_, leader) && !has([&](DeviceId d) { return s_[d].leader != leader; });
  }

  /// The best-ranked of the candidates, or nothing where there are none. Notes who contested.
  template <class Is>
  DeviceId best(Is candidate) {
    DeviceId best;
    if (world_.is_template()) {
      best = decided_best(candidate);
    } else {
      for_each([&](DeviceId d) {
        if (candidate(d) && (!best || outranks(world_, s_, d, best))) best = d;
      });
    }
    for_each([&](DeviceId d) {
      if (candidate(d) && d != best) plan_.contests.emplace_back(best, d);
    });
    return best;
  }

  // Of a template: asked for at once, since who wins is all that matters, and not how the losers stand to each other.
  template <class Is>
  DeviceId decided_best(Is candidate) const {
    std::vector<DeviceId> candidates;
    for_each([&](DeviceId d) {
      if (candidate(d)) candidates.push_back(d);
    });
    if (candidates.size() < 2) return candidates.empty() ? DeviceId() : candidates.front();
    std::vector<Rank> ranks;
    ranks.reserve(candidates.size());
    for (const DeviceId d : candidates) ranks.push_back(rank(world_, s_, d));
    return candidates[world_.decider().best(ranks, higher_wins(world_))];
  }

  // 4.1, of one other device e of K, if the two have the same number and rank does not decide.
  [[nodiscard]] bool would_yield_to(DeviceId d, DeviceId e) const {
    if (fresh(s_, d)) return true;  // 4.1.a; 4.1.b
    if (fresh(s_, e)) return false;
    const DeviceId leader_d = s_[d].leader;
    const DeviceId leader_e = s_[e].leader;
    if (leader_d == leader_e) return false;  // 4.1.e
    if (!in_class(leader_e)) return false;   // 4.1.e, and the converse of 4.1.d
    if (!in_class(leader_d)) return true;    // 4.1.d
    return leader_d != winner_;              // 4.1.c
  }

  // 4.1: "A device d in K yields when some other e in K has the same number and …". What a template leaves open is
  // asked last.
  bool yields_to(DeviceId d, DeviceId e) {
    if (e == d || World::surely_differ(s_[e].number, s_[d].number) || !would_yield_to(d, e)) return false;
    if (!world_.equal(s_[e].number, s_[d].number)) return false;
    if (!fresh(s_, d) || !fresh(s_, e)) return true;
    if (!outranks(world_, s_, e, d)) return false;
    plan_.number_clashes.emplace_back(e, d);  // 4.1.b
    return true;
  }

  [[nodiscard]] bool yields(DeviceId d) {
    return has([&](DeviceId e) { return yields_to(d, e); });
  }

  // 4.2.a
  template <class Is>
  void settle_orphans(Is orphaned) {
    if (world_.platform().orphans == Orphans::carry_on) return elect(best(orphaned));
    for_each([&](DeviceId d) {
      if (yields(d)) {
        plan_.held.push_back(d);
      } else if (!fresh(s_, d)) {
        plan_.restarted.push_back(d);
      }
    });
  }

  // 4.2.a (carry-on), 4.2.b: the new leader leads every device in K that does not yield.
  void elect(DeviceId leader) {
    for_each([&](DeviceId d) {
      if (yields(d)) {
        plan_.held.push_back(d);
      } else {
        plan_.admitted.emplace_back(d, leader);
      }
    });
  }

  // 4.2.c, 4.2.d; by 4.4.e a fresh device follows the winner whatever its rank
  void settle_contest() {
    for_each([&](DeviceId d) {
      if (yields(d)) {
        plan_.held.push_back(d);
      } else if (fresh(s_, d)) {
        plan_.admitted.emplace_back(d, winner_);
      } else if (s_[d].leader != winner_) {
        plan_.restarted.push_back(d);
      }
    });
  }

  const World& world_;
  const State& s_;
  const Derived& derived_;
  DeviceId head_;
  DeviceId winner_;  ///< 4.2.c; nothing where no leader is present
  PassPlan& plan_;
};

}  // namespace

void plan_pass(const World& world, const State& s, const Derived& derived, PassPlan& plan) {
  plan.clear();
  for (std::size_t i = 0; i < world.device_count(); ++i) {
    if (derived.heads_class(DeviceId(i))) ClassPass(world, s, derived, DeviceId(i), plan).decide();
  }
}

void carry_out(const PassPlan& plan, State& s) {
  for (const DeviceId d : plan.held) {
    s[d].power = Power::held;
    s[d].leader = DeviceId();
  }
  for (const DeviceId d : plan.restarted) go_down(s, d, Power::starting);
  for (const auto& [d, leader] : plan.admitted) s[d].leader = leader;
}

void settle(const World& world, State& s, Scratch& scratch, Watcher& watcher) {
  derive(world, s, scratch.derived);
  watcher.see(s, scratch.derived);
  while (true) {
    plan_pass(world, s, scratch.derived, scratch.plan);
    if (scratch.plan.changes_nothing()) return;
    watcher.foresee(s, scratch.derived, scratch.plan);
    carry_out(scratch.plan, s);
    if (!scratch.plan.unsettled()) {
      // 4.5.b: only leaders changed, and nothing that is derived depends on them.
      watcher.see(s, scratch.derived);
      return;
    }
    derive(world, s, scratch.derived);
    watcher.see(s, scratch.derived);
  }
}

}  // namespace cairn::semantics

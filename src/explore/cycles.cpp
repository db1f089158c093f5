#include "explore/cycles.hpp"

#include <unordered_map>

#include "explore/limits.hpp"

namespace cairn::explore {

namespace {

/// Sees nothing.
class Unheard final : public semantics::Watcher {
 public:
  void see(const State&, const semantics::Derived&) override {}
  void foresee(const State&, const semantics::Derived&, const semantics::PassPlan&) override {}
};

/// Depth first with two marks: a state met again while it is open closes a cycle.
class StartWalk {
 public:
  StartWalk(Expander& expander, const Store& store) : expander_(expander), store_(store) {}

  bool finds_cycle_from(StateIndex root) {
    if (finished_.contains(root)) return false;
    enter(root);
    while (!path_.empty()) {
      Visit& visit = path_.back();
      if (visit.left.empty()) {
        finished_[visit.state] = true;
        path_.pop_back();
        continue;
      }
      const StateIndex next = visit.left.back();
      visit.left.pop_back();
      const auto met = finished_.find(next);
      if (met == finished_.end()) {
        enter(next);
      } else if (!met->second) {
        return true;
      }
    }
    return false;
  }

 private:
  struct Visit {
    StateIndex state;
    std::vector<StateIndex> left;  ///< successors by a start that were not followed yet
  };

  void enter(StateIndex state) {
    finished_[state] = false;
    Visit visit{state, {}};
    expander_.open(store_[state]);
    for (const Event& event : expander_.events()) {
      if (event.kind != Event::Kind::started) continue;
      expander_.take(event, unheard_);
      if (const auto next = store_.find(expander_.packed_next())) visit.left.push_back(*next);
    }
    path_.push_back(std::move(visit));
  }

  Expander& expander_;
  const Store& store_;
  Unheard unheard_;
  std::unordered_map<StateIndex, bool> finished_;  ///< false while a state is on the path
  std::vector<Visit> path_;
};

}  // namespace

bool cycle_among(Expander& expander, const Store& store, const std::vector<StateIndex>& suspects,
                 const std::function<bool()>& interrupted) {
  StartWalk walk(expander, store);
  for (const StateIndex suspect : suspects) {
    if (interrupted()) throw Interrupted();
    if (walk.finds_cycle_from(suspect)) return true;
  }
  return false;
}

}  // namespace cairn::explore

#include "explore/cycles.hpp"

#include <algorithm>

namespace cairn::explore {

namespace {

enum class Mark : std::uint8_t { unseen, on_path, finished };

}  // namespace

void StartGraph::add(StateIndex target, bool suspect) {
  targets_.push_back(target);
  if (suspect) suspects_.push_back(target);
}

// Depth first: a state met again while it is on the path closes a cycle. A state that was never expanded has no starts.
std::vector<StateIndex> StartGraph::find_cycle(const AskLimits& ask) const {
  struct Visit {
    StateIndex state;
    std::uint64_t next;  ///< place of the target to follow next
    std::uint64_t end;
  };
  StateIndex largest = static_cast<StateIndex>(first_.size());
  for (const StateIndex target : targets_) largest = std::max(largest, target);
  std::vector<Mark> marks(std::size_t{largest} + 1, Mark::unseen);
  std::vector<Visit> path;
  const auto enter = [&](StateIndex state) {
    marks[state] = Mark::on_path;
    const std::uint64_t end = state + 1 < first_.size() ? first_[state + 1] : targets_.size();
    path.push_back({state, state < first_.size() ? first_[state] : end, end});
  };
  for (const StateIndex root : suspects_) {
    if (marks[root] != Mark::unseen) continue;
    if (const auto met = ask()) throw Stopped{*met};
    enter(root);
    while (!path.empty()) {
      Visit& visit = path.back();
      if (visit.next == visit.end) {
        marks[visit.state] = Mark::finished;
        path.pop_back();
        continue;
      }
      const StateIndex next = targets_[visit.next++];
      if (marks[next] == Mark::on_path) {
        std::vector<StateIndex> cycle;
        do {
          cycle.insert(cycle.begin(), path.back().state);
          path.pop_back();
        } while (cycle.front() != next);
        return cycle;
      }
      if (marks[next] == Mark::unseen) enter(next);
    }
  }
  return {};
}

std::uint64_t StartGraph::bytes() const {
  return first_.capacity() * sizeof(std::uint64_t) + (targets_.capacity() + suspects_.capacity()) * sizeof(StateIndex);
}

}  // namespace cairn::explore

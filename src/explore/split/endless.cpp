#include "explore/split/endless.hpp"

#include <algorithm>
#include <unordered_map>

namespace cairn::explore {

using unknowns::CaseId;
using unknowns::Cases;

void SplitStarts::add(StateIndex target, CaseId under, bool suspect) {
  starts_.push_back({target, under});
  if (suspect) suspects_.push_back({target, under});
}

std::uint64_t SplitStarts::bytes() const {
  return first_.capacity() * sizeof(first_.front()) + (starts_.capacity() + suspects_.capacity()) * sizeof(Start);
}

/// Depth first, with the instances that came all the way: a node met again on the path is a run that goes round. A node
/// from which none was found need not be left again with instances that are of those.
class SplitStarts::Search {
 public:
  Search(const SplitStarts& graph, Cases& cases, const AskLimits& ask) : graph_(graph), cases_(cases), ask_(ask) {}

  std::optional<CaseId> run() {
    for (const Start& suspect : graph_.suspects_) {
      if (const auto met = ask_()) throw Stopped{*met};
      if (const auto endless = from(suspect)) return endless;
    }
    return {};
  }

 private:
  /// A node on the path, with the instances that came there, and the start to follow next.
  struct Visit {
    Start here;
    std::uint64_t next;
  };

  std::optional<CaseId> from(const Start& root) {
    enter(root);
    while (!path_.empty()) {
      Visit& visit = path_.back();
      const Start here = visit.here;
      if (visit.next == end_of(here.target)) {
        finished_[here.target].push_back(here.under);
        path_.pop_back();
        continue;
      }
      const Start& start = graph_.starts_[visit.next++];
      const auto under = cases_.both(here.under, start.under);
      if (!under) continue;
      if (std::ranges::any_of(path_, [&](const Visit& v) { return v.here.target == start.target; })) return under;
      enter({start.target, *under});
    }
    return {};
  }

  void enter(const Start& start) {
    const std::vector<CaseId>& done = finished_[start.target];
    if (std::ranges::any_of(done, [&](CaseId wide) { return cases_.is_within(start.under, wide); })) return;
    path_.push_back({start, start.target < graph_.first_.size() ? graph_.first_[start.target] : graph_.starts_.size()});
  }

  [[nodiscard]] std::uint64_t end_of(StateIndex node) const {
    return node + 1 < graph_.first_.size() ? graph_.first_[node + 1] : graph_.starts_.size();
  }

  const SplitStarts& graph_;
  Cases& cases_;
  const AskLimits& ask_;
  std::vector<Visit> path_;
  std::unordered_map<StateIndex, std::vector<CaseId>> finished_;
};

std::optional<CaseId> SplitStarts::find_endless(Cases& cases, const AskLimits& ask) const {
  return Search(*this, cases, ask).run();
}

}  // namespace cairn::explore

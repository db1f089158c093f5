#include "differential/order.hpp"

#include <map>

namespace cairn::differential {

namespace {

/// waits[i] holds every step that must be done before step i.
using Waits = std::vector<std::set<std::size_t>>;

/// Numbers the steps of a list depth first from `next` and notes who waits for whom. Every step of the list waits for
/// `before`; what the list holds is added to `before`.
void read_list(const std::vector<Item>& items, std::set<std::size_t>& before, std::size_t& next, Waits& waits) {
  for (const Item& item : items) {
    if (item.branches.empty()) {
      waits.push_back(before);
      before.insert(next++);
      continue;
    }
    std::set<std::size_t> after_all;
    for (const auto& branch : item.branches) {
      std::set<std::size_t> before_branch = before;
      read_list(branch, before_branch, next, waits);
      after_all.insert(before_branch.begin(), before_branch.end());
    }
    before = after_all;
  }
}

/// Adds what follows from what is there: who waits for b waits for all that b waits for.
void close(Waits& waits) {
  for (bool grew = true; grew;) {
    grew = false;
    for (auto& mine : waits) {
      const auto known = mine;
      for (const std::size_t other : known) mine.insert(waits[other].begin(), waits[other].end());
      grew = grew || mine.size() != known.size();
    }
  }
}

}  // namespace

std::vector<std::set<std::size_t>> waits_of(const Draft& draft) {
  Waits ours;
  std::set<std::size_t> before;
  std::size_t next = 0;
  read_list(draft.steps, before, next, ours);
  Draft copy = draft;
  const auto steps = all_steps(copy.steps);
  std::map<std::string, std::size_t> places;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    places[steps[i]->id ? *steps[i]->id : "s" + std::to_string(i + 1)] = i;
  }
  for (std::size_t i = 0; i < steps.size(); ++i) {
    for (const std::string& name : steps[i]->after) ours[i].insert(places.at(name));
  }
  close(ours);
  return ours;
}

bool same_order(const Draft& draft, const Model& model) {
  Waits theirs;
  for (const Step& step : model.procedure.steps) {
    theirs.emplace_back();
    for (const StepId other : step.after) theirs.back().insert(other.value);
  }
  close(theirs);
  return waits_of(draft) == theirs;
}

}  // namespace cairn::differential

#include "verify/searcher.hpp"

#include <algorithm>

#include "base/crew.hpp"

namespace cairn::verify {

Found Searcher::search(const std::vector<AskedProperty>& asked, const Reductions& reductions,
                       std::uint64_t most_states) const {
  return search(asked, reductions, most_states, guard_);
}

Found Searcher::search(const std::vector<AskedProperty>& asked, const Reductions& reductions, std::uint64_t most_states,
                       const explore::Guard& guard) const {
  const explore::Watch watch;
  Found found;
  found.all.emplace(explore::explore(
      world_, faults_, asked, guard,
      {.most_states = most_states, .reductions = reductions, .jobs = options_.jobs, .stretch = options_.stretch}));
  found.seconds = watch.seconds();
  return found;
}

// A search that leaves orders out does not go about in several threads by itself: several go side by side.
std::vector<Found> Searcher::search_each(const std::vector<std::vector<AskedProperty>>& asked,
                                         const Reductions& reductions) const {
  std::vector<Found> found(asked.size());
  const explore::Guard guard = guard_.for_one_of(asked.size());
  const explore::Guard silent = guard.without_progress();
  Crew crew(std::min(options_.jobs, static_cast<unsigned>(asked.size())));
  crew.run(asked.size(), [&](std::size_t i, Crew::Worker worker) {
    try {
      found[i] = search(asked[i], reductions, explore::Manner().most_states, worker == 0 ? guard : silent);
      if (found[i].all->leaves_states_out()) found[i].all->visited.reset();  // room for the others
    } catch (...) {
      found[i].failure = std::current_exception();
    }
  });
  return found;
}

}  // namespace cairn::verify

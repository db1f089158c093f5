#include "explore/vanguard.hpp"

#include <algorithm>

namespace cairn::explore {

Vanguard::Vanguard(const semantics::World& world, const Expander& expander, const Store& store, std::size_t words,
                   StateIndex stretch, Crew& crew)
    : stretch_(stretch), crew_(crew), stretches_(crew.size() * stretches_a_scout) {
  scouts_.reserve(crew.size());
  for (unsigned i = 0; i < crew.size(); ++i) scouts_.emplace_back(world, expander, store, words);
}

std::span<const Stretch> Vanguard::explore(StateIndex begin, StateIndex end, const std::vector<AskedProperty>& at_rest,
                                           const Sentry& sentry, const Sightings& seen, const AskLimits& ask) {
  std::size_t count = 0;
  for (; count < stretches_.size() && begin < end; ++count) {
    stretches_[count].begin = begin;
    begin = std::min(end, (begin / stretch_ + 1) * stretch_);
    stretches_[count].end = begin;
  }
  crew_.run(count, [&](std::size_t task, Crew::Worker worker) {
    scouts_[worker].explore(stretches_[task], at_rest, sentry, seen, ask);
  });
  return {stretches_.data(), count};
}

}  // namespace cairn::explore

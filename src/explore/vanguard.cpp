#include "explore/vanguard.hpp"

#include <algorithm>
#include <new>
#include <utility>

namespace cairn::explore {

Vanguard::Vanguard(const semantics::World& world, const Expander& expander, const Store& store, std::size_t words,
                   StateIndex stretch, Crew& crew)
    : stretch_(stretch),
      crew_(crew),
      world_(world),
      expander_(expander),
      store_(store),
      words_(words),
      scouts_(crew.size()),
      stretches_(stretches_for(crew.size())),
      brought_in_(stretches_for(crew.size())) {}

void Vanguard::send_out(StateIndex begin, StateIndex end, std::vector<AskedProperty> at_rest, const Sentry& sentry,
                        const Sightings& seen, AskLimits ask) {
  at_rest_ = std::move(at_rest);
  sentry_.emplace(sentry);
  seen_.emplace(seen);
  ask_ = std::move(ask);
  for (count_ = 0; count_ < stretches_.size() && begin < end; ++count_) {
    stretches_[count_].begin = begin;
    begin += std::min(end - begin, stretch_ - begin % stretch_);
    stretches_[count_].end = begin;
  }
  out_ = true;
  crew_.start(count_, [this](std::size_t task, Crew::Worker worker) { explore(stretches_[task], worker); });
}

void Vanguard::explore(Stretch& stretch, Crew::Worker worker) {
  std::unique_ptr<Scout>& scout = scouts_[worker];
  try {
    if (!scout) scout = std::make_unique<Scout>(world_, expander_, store_, words_);
  } catch (const std::bad_alloc&) {
    stretch.eventful = true;  // for the search to explore by itself
    return;
  }
  scout->explore(stretch, at_rest_, *sentry_, *seen_, ask_);
}

std::span<const Stretch> Vanguard::bring_in() {
  crew_.finish();
  out_ = false;
  stretches_.swap(brought_in_);
  return {brought_in_.data(), count_};
}

void Vanguard::recall() {
  if (std::exchange(out_, false)) crew_.call_off();
}

}  // namespace cairn::explore

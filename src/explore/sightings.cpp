#include "explore/sightings.hpp"

#include <algorithm>

#include "semantics/events.hpp"

namespace cairn::explore {

Sightings::Sightings(const semantics::World& world)
    : happened_(world.steps().size(), 0), failed_(world.steps().size(), 0) {
  for (std::size_t i = 0; i < world.steps().size(); ++i) {
    if (world.steps()[i].verb == Verb::await) never_waited_.emplace_back(i);
  }
}

// An await whose turn has come and that is none of the events waits. Most are soon seen to, and then not asked for
// again.
void Sightings::open(const semantics::World& world, const State& s, const std::vector<Event>& events) {
  std::erase_if(never_waited_, [&](StepId await) {
    if (!semantics::has_turn(world, s, await)) return false;
    return std::find(events.begin(), events.end(), Event{Event::Kind::step, await.value}) == events.end();
  });
}

void Sightings::add(const Sightings& other) {
  std::erase_if(never_waited_, [&](StepId await) { return other.waited(await); });
  const auto either = [](std::uint8_t a, std::uint8_t b) { return static_cast<std::uint8_t>(a | b); };
  std::transform(happened_.begin(), happened_.end(), other.happened_.begin(), happened_.begin(), either);
  std::transform(failed_.begin(), failed_.end(), other.failed_.begin(), failed_.begin(), either);
  kinds_ |= other.kinds_;
  rank_decided_ = rank_decided_ || other.rank_decided_;
  every_state_ = every_state_ && other.every_state_;
}

bool Sightings::add_images(const Renaming& swap) {
  const std::vector<StepId> before = never_waited_;
  bool grows = std::erase_if(never_waited_, [&](StepId await) {
                 return std::find(before.begin(), before.end(), swap[await]) == before.end();
               }) > 0;
  for (std::vector<std::uint8_t>* noted : {&happened_, &failed_}) {
    for (std::size_t i = 0; i < noted->size(); ++i) {
      std::uint8_t& image = (*noted)[swap[StepId(i)].value];
      if ((*noted)[i] == 0 || image != 0) continue;
      image = 1;
      grows = true;
    }
  }
  return grows;
}

bool Sightings::waited(StepId await) const {
  return std::find(never_waited_.begin(), never_waited_.end(), await) == never_waited_.end();
}

}  // namespace cairn::explore

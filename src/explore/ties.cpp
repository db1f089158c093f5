#include "explore/ties.hpp"

#include <algorithm>

#include "semantics/state.hpp"

namespace cairn::explore {

namespace {

bool tenure_unstated(const Model& model, DeviceId d, DeviceId e) {
  return model[d].on && model[e].on && !(model[d].tenure_stated && model[e].tenure_stated);
}

}  // namespace

TieNotes::TieNotes(const semantics::World& world)
    : world_(world),
      all_stated_(std::all_of(world.site().devices.begin(), world.site().devices.end(),
                              [](const Device& d) { return d.address_stated && d.tenure_stated; })) {}

void TieNotes::foresee(const State& s, const semantics::Derived&, const semantics::PassPlan& plan) {
  rank_decided_ = rank_decided_ || !plan.contests.empty() || !plan.number_clashes.empty();
  if (all_stated_) return;
  for (const auto& [winner, loser] : plan.contests) note(s, winner, loser);
  for (const auto& [winner, loser] : plan.number_clashes) note(s, winner, loser);
}

bool TieNotes::add_images(const Renaming& swap) {
  const std::size_t before = ties_.size();
  for (const UnstatedTie& tie : ties()) ties_.insert({tie.key, swap[tie.winner], swap[tie.loser]});
  return ties_.size() > before;
}

// Follows the comparison key by key (4.4), as far as the key that decides.
void TieNotes::note(const State& s, DeviceId winner, DeviceId loser) {
  const Model& model = world_.model();
  for (const ElectionKey key : world_.platform().election) {
    switch (key) {
      case ElectionKey::priority:
        if (!world_.equal(s[winner].priority, s[loser].priority)) return;
        break;
      case ElectionKey::tenure: {
        const bool decides = s[winner].seniority != s[loser].seniority;
        const Quantity winners = model[winner].tenure;
        const Quantity losers = model[loser].tenure;
        const bool as_in_file = decides ? world_.less(losers, winners) : world_.equal(winners, losers);
        if (as_in_file && tenure_unstated(model, winner, loser)) {
          ties_.insert({UnstatedTie::Key::tenure, winner, loser});
        }
        if (decides) return;
        break;
      }
      case ElectionKey::number:
        if (!world_.equal(s[winner].number, s[loser].number)) return;
        break;
    }
  }
  if (!model[winner].address_stated || !model[loser].address_stated) {
    ties_.insert({UnstatedTie::Key::address, winner, loser});
  }
}

}  // namespace cairn::explore

#include "semantics/record.hpp"

#include <utility>

#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/state.hpp"

namespace cairn::semantics {

namespace {

std::vector<Contest> contests_of(const PassPlan& plan) {
  std::vector<Contest> contests;
  for (const auto& [winner, loser] : plan.contests) {
    if (contests.empty() || contests.back().winner != winner) contests.push_back({winner, {}});
    contests.back().losers.push_back(loser);
  }
  return contests;
}

void keep_first(std::optional<Breach>& kept, const std::optional<Breach>& found) {
  if (!kept) kept = found;
}

}  // namespace

/// Writes the passes of one settling down.
class Recorder::Passes final : public Watcher {
 public:
  Passes(Recorder& recorder, std::vector<Pass>& passes) : recorder_(recorder), passes_(passes) {}

  void see(const State& s, const Derived& derived) override {
    if (passes_.size() > seen_) passes_[seen_++].after = s;
    if (!recorder_.watched_) return;
    keep_first(recorder_.breach_, broken_in(recorder_.world_, s, derived, *recorder_.watched_));
  }

  void foresee(const State& s, const Derived&, const PassPlan& plan) override {
    Pass pass;
    pass.held = plan.held;
    pass.restarted = plan.restarted;
    for (const auto& [device, leader] : plan.admitted) pass.admitted.push_back(device);
    pass.contests = contests_of(plan);
    passes_.push_back(std::move(pass));
    if (!recorder_.watched_) return;
    keep_first(recorder_.breach_, broken_by(recorder_.world_, s, plan, *recorder_.watched_));
  }

 private:
  Recorder& recorder_;
  std::vector<Pass>& passes_;
  std::size_t seen_ = 0;  ///< passes whose outcome has been seen
};

Recorder::Recorder(const World& world, const FaultBudget& budget, std::optional<Property> watched)
    : world_(world), watched_(watched), state_(initial_state(world, budget)) {
  walk_.initial = state_;
  Passes passes(*this, walk_.initial_passes);
  settle(world_, state_, scratch_, passes);
}

void Recorder::take(const Event& event) {
  Moment& moment = walk_.moments.emplace_back();
  moment.event = event;
  moment.before = state_;
  moment.refusal = semantics::take(world_, state_, scratch_.derived, event);
  moment.left = state_;
  if (watched_) keep_first(breach_, broken_by(world_, moment.before, event, moment.refusal, *watched_));
  Passes passes(*this, moment.passes);
  settle(world_, state_, scratch_, passes);
}

void Recorder::take_cold_start() {
  Moment& moment = walk_.moments.emplace_back();
  moment.event = {Event::Kind::cold_start, 0};
  moment.before = state_;
  cold_start(world_, state_);
  moment.left = state_;
  Passes passes(*this, moment.passes);
  settle(world_, state_, scratch_, passes);
  keep_first(breach_, goal_missed(world_, state_, scratch_.derived));
}

void Recorder::take_loss(CableId cable) {
  Moment& moment = walk_.moments.emplace_back();
  moment.event = {Event::Kind::broke, cable.value};
  moment.before = state_;
  state_[cable].broken = true;
  moment.left = state_;
  derive(world_, state_, scratch_.derived);
}

void Recorder::look_at_loss() {
  keep_first(breach_, goal_stack_apart(world_, scratch_.derived));
}

void Recorder::look_at_rest() {
  keep_first(breach_, broken_at_rest(world_, state_, scratch_.derived));
}

Walk Recorder::finish() && {
  walk_.breach = breach_;
  return std::move(walk_);
}

}  // namespace cairn::semantics

#include "explore/expander.hpp"

#include <cassert>
#include <utility>

namespace cairn::explore {

Expander::Expander(const semantics::World& world, const FaultBudget& budget, const Layout& layout,
                   const Reductions& reductions, std::shared_ptr<const Alike> alike)
    : world_(world),
      layout_(layout),
      alike_(std::move(alike)),
      state_(semantics::initial_state(world, budget)),
      next_(state_),
      packed_(layout.words()) {
  if (reductions.seniority || reductions.settings || reductions.budgets) forgetter_.emplace(world, reductions);
}

void Expander::settle_initial(semantics::Watcher& watcher) {
  semantics::settle(world_, next_, scratch_, watcher);
  reduce_next();
}

void Expander::reduce_next() {
  if (forgetter_) forgotten_ = forgetter_->forget(next_);
  if (!alike_) return;
  alike_->arrange(next_, applied_);
  forgotten_.alike = !applied_.empty();
}

void Expander::open(const std::uint64_t* packed) {
  layout_.unpack(packed, state_);
  semantics::derive(world_, state_, derived_);
  semantics::events_in(world_, state_, derived_, events_);
}

Refusal Expander::take(const Event& event, semantics::Watcher& watcher) {
  next_ = state_;
  const Refusal refusal = semantics::take(world_, next_, derived_, event);
  semantics::settle(world_, next_, scratch_, watcher);
  reduce_next();
  return refusal;
}

const std::uint64_t* Expander::packed_next() {
  layout_.pack(next_, packed_.data());
#ifndef NDEBUG
  // What the layout leaves out must never have changed.
  State again = state_;
  layout_.unpack(packed_.data(), again);
  assert(again == next_);
#endif
  return packed_.data();
}

}  // namespace cairn::explore

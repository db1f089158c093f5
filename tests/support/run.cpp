#include "support/run.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "semantics/conditions.hpp"

namespace cairn::test {

namespace {

constexpr std::array watched = {Property::no_split, Property::primary_stays, Property::members_stay, Property::no_clash,
                                Property::no_refusal};

}  // namespace

Run::Run(Model model)
    : model_(std::move(model)), world_(model_), state_(semantics::initial_state(world_, model_.procedure.faults)) {}

Run& Run::settle() {
  unsettled_ = 0;
  seen_.clear();
  semantics::settle(world_, state_, scratch_, *this);
  return *this;
}

semantics::PassPlan Run::plan() const {
  semantics::PassPlan plan;
  semantics::plan_pass(world_, state_, derived(), plan);
  return plan;
}

Run& Run::pass() {
  semantics::carry_out(plan(), state_);
  return *this;
}

std::vector<Event> Run::events() const {
  std::vector<Event> events;
  semantics::events_in(world_, state_, derived(), events);
  return events;
}

bool Run::can(const Event& event) const {
  const std::vector<Event> possible = events();
  return std::find(possible.begin(), possible.end(), event) != possible.end();
}

Refusal Run::leave(const Event& event) {
  if (!can(event)) throw std::logic_error("the test takes an event that cannot happen");
  const State before = state_;
  const Refusal refusal = semantics::take(world_, state_, derived(), event);
  for (const Property property : watched) {
    note(property, semantics::broken_by(world_, before, event, refusal, property));
  }
  return refusal;
}

Refusal Run::take(const Event& event) {
  const Refusal refusal = leave(event);
  settle();
  return refusal;
}

Run& Run::cold_start() {
  semantics::cold_start(world_, state_);
  return settle();
}

bool Run::holds(const Condition& condition) const {
  return semantics::holds(world_, state_, derived(), condition);
}

const std::optional<Breach>& Run::broken(Property property) const {
  return broken_[static_cast<std::size_t>(property)];
}

std::optional<Breach> Run::missed() const {
  return semantics::broken_at_rest(world_, state_, derived());
}

void Run::see(const State& s, const semantics::Derived& derived) {
  seen_.push_back(s);
  for (const Property property : watched) note(property, semantics::broken_in(world_, s, derived, property));
}

void Run::foresee(const State& s, const semantics::Derived&, const semantics::PassPlan& plan) {
  if (plan.unsettled()) ++unsettled_;
  for (const Property property : watched) note(property, semantics::broken_by(world_, s, plan, property));
}

void Run::note(Property property, std::optional<Breach> breach) {
  auto& kept = broken_[static_cast<std::size_t>(property)];
  if (!kept) kept = std::move(breach);
}

}  // namespace cairn::test

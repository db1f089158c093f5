#include "explore/choose.hpp"

#include <algorithm>

#include "base/contradiction.hpp"
#include "explore/tail.hpp"

namespace cairn::explore {

Chooser::Chooser(const semantics::World& world, Expander& expander, const Store& store, const Layers& layers,
                 const AskedProperty& asked, std::size_t length, AskLimits ask)
    : world_(world),
      expander_(expander),
      store_(store),
      layers_(layers),
      asked_(asked),
      length_(length),
      ask_(std::move(ask)),
      sentry_(world),
      unheard_(world) {
  sentry_.watch(asked.property);
}

// The last layer that holds states before the refutation's last event, or at rest before its tail.
std::size_t Chooser::last_layer() const {
  const bool by_an_event = !speaks_of_goal(asked_.property);
  return by_an_event ? length_ - 1 : std::min(length_, layers_.size() - 2);
}

template <class Visit>
void Chooser::for_each_option(StateIndex index, std::size_t depth, Visit visit) {
  expander_.open(store_[index]);
  const bool by_an_event = !speaks_of_goal(asked_.property);
  if (!by_an_event && expander_.at_rest() && depth + longest_tail(world_, asked_) >= length_) {
    const auto tail = fatal_tail(world_, expander_, asked_, unheard_, ask_);
    if (tail && depth + tail->size() == length_) visit(Option{*tail, true, 0});
  }
  if (depth == last_layer() && !by_an_event) return;
  for (const Event& event : expander_.events()) {
    sentry_.reset();
    sentry_.note(expander_.state(), event, expander_.take(event, sentry_));
    if (depth + 1 == length_ && by_an_event) {
      if (sentry_.alarmed()) visit(Option{{event}, true, 0});
      continue;
    }
    const auto next = store_.find(expander_.packed_next());
    if (next && in_layer(*next, depth + 1)) visit(Option{{event}, false, *next});
  }
}

Chooser::Cost Chooser::cost_of(const Option& option, std::optional<Actor> before) const {
  Cost cost{0, 0};
  for (const Event& event : option.events) {
    const Actor actor = actor_of(event.kind);
    if (actor == Actor::fault) ++cost.faults;
    if (before && *before != actor) ++cost.switches;
    before = actor;
  }
  if (option.ends) return cost;
  const Cost& rest = costs_[option.next][static_cast<std::size_t>(*before)];
  if (!rest.possible()) return no_way;
  return {cost.faults + rest.faults, cost.switches + rest.switches};
}

Chooser::CostAfter Chooser::finish_from(StateIndex index, std::size_t depth) {
  CostAfter best{no_way, no_way, no_way};
  for_each_option(index, depth, [&](const Option& option) {
    for (const Actor before : {Actor::operator_, Actor::device, Actor::fault}) {
      Cost& least = best[static_cast<std::size_t>(before)];
      least = std::min(least, cost_of(option, before));
    }
  });
  return best;
}

Trace Chooser::choose() {
  const std::size_t last = last_layer();
  costs_.assign(layers_[last + 1], CostAfter{no_way, no_way, no_way});
  for (std::size_t depth = last + 1; depth-- > 0;) {
    for (StateIndex index = layers_[depth]; index < layers_[depth + 1]; ++index) {
      if (index % 256 == 0) {
        if (const auto met = ask_()) throw Stopped{*met};
      }
      costs_[index] = finish_from(index, depth);
    }
  }
  Trace trace;
  Option here;  // the initial state
  for (std::size_t depth = 0; !here.ends; ++depth) {
    std::optional<Actor> before;
    if (!trace.empty()) before = actor_of(trace.back().kind);
    Cost least = no_way;
    Option chosen;
    for_each_option(here.next, depth, [&](const Option& option) {
      const Cost cost = cost_of(option, before);
      if (cost < least) {
        least = cost;
        chosen = option;
      }
    });
    if (!least.possible()) throw Contradiction("a refutation that was met is not found again");
    trace.insert(trace.end(), chosen.events.begin(), chosen.events.end());
    here = chosen;
  }
  return trace;
}

}  // namespace cairn::explore

#include "explore/choose.hpp"

#include <algorithm>

#include "base/contradiction.hpp"
#include "explore/tail.hpp"

namespace cairn::explore {

Chooser::Chooser(const semantics::World& world, const Expander& expander, const Alike* alike, const Store& store,
                 const Layers& layers, const AskedProperty& asked, std::size_t length, AskLimits ask, Crew* crew)
    : world_(world),
      alike_(alike),
      store_(store),
      layers_(layers),
      asked_(asked),
      length_(length),
      ask_(std::move(ask)),
      crew_(crew) {
  const std::size_t lookouts = crew == nullptr ? 1 : crew->size();
  lookouts_.reserve(lookouts);
  for (std::size_t i = 0; i < lookouts; ++i) {
    lookouts_.push_back({expander, Sentry(world), TieNotes(world), {}});
    lookouts_.back().sentry.watch(asked.property);
  }
}

// The last layer that holds states before the refutation's last event, or at rest before its tail.
std::size_t Chooser::last_layer() const {
  const bool by_an_event = !speaks_of_goal(asked_.property);
  return by_an_event ? length_ - 1 : std::min(length_, layers_.size() - 2);
}

template <class Visit>
void Chooser::for_each_option(Lookout& out, StateIndex index, std::size_t depth, Visit visit) const {
  out.expander.open(store_[index]);
  const bool by_an_event = !speaks_of_goal(asked_.property);
  if (!by_an_event && out.expander.at_rest() && depth + longest_tail(world_, asked_) >= length_) {
    const auto tail = fatal_tail(world_, out.expander.state(), out.expander.derived(), asked_, out.unheard, ask_);
    if (tail && depth + tail->size() == length_) visit(Option{*tail, true, 0, {}});
  }
  if (depth == last_layer() && !by_an_event) return;
  for (const Event& event : out.expander.events()) {
    out.sentry.reset();
    out.sentry.note(out.expander.state(), event, out.expander.take(event, out.sentry));
    if (depth + 1 == length_ && by_an_event) {
      if (out.sentry.alarmed()) visit(Option{{event}, true, 0, {}});
      continue;
    }
    const auto next = store_.find(out.expander.packed_next());
    if (next && in_layer(*next, depth + 1)) visit(Option{{event}, false, *next, out.expander.applied()});
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

Chooser::CostAfter Chooser::finish_from(Lookout& out, StateIndex index, std::size_t depth) const {
  CostAfter best{no_way, no_way, no_way};
  for_each_option(out, index, depth, [&](const Option& option) {
    for (const Actor before : {Actor::operator_, Actor::device, Actor::fault}) {
      Cost& least = best[static_cast<std::size_t>(before)];
      least = std::min(least, cost_of(option, before));
    }
  });
  return best;
}

void Chooser::find_costs(Lookout& out, StateIndex begin, StateIndex end, std::size_t depth) {
  if (const auto met = ask_()) throw Stopped{*met};
  for (StateIndex index = begin; index < end; ++index) costs_[index] = finish_from(out, index, depth);
}

// Those of one layer rest on those of the next alone.
void Chooser::find_costs(std::size_t depth) {
  constexpr StateIndex portion = 256;
  const StateIndex begin = layers_[depth];
  const StateIndex end = layers_[depth + 1];
  const StateIndex portions = (end - begin + portion - 1) / portion;
  const auto find = [&](std::size_t i, Crew::Worker worker) {
    const StateIndex from = begin + static_cast<StateIndex>(i) * portion;
    find_costs(lookouts_[worker], from, std::min(end, from + portion), depth);
  };
  if (crew_ == nullptr || portions < 4) {
    for (StateIndex i = 0; i < portions; ++i) find(i, 0);
    return;
  }
  crew_->run(portions, [&](std::size_t i, Crew::Worker worker) {
    std::exception_ptr& failure = lookouts_[worker].failure;
    if (failure) return;
    try {
      find(i, worker);
    } catch (...) {
      failure = std::current_exception();
    }
  });
  for (const Lookout& lookout : lookouts_) {
    if (lookout.failure) std::rethrow_exception(lookout.failure);
  }
}

Chooser::Option Chooser::cheapest(StateIndex from, std::size_t depth, std::optional<Actor> before) {
  Cost least = no_way;
  Option chosen;
  for_each_option(lookouts_.front(), from, depth, [&](const Option& option) {
    const Cost cost = cost_of(option, before);
    if (cost < least) {
      least = cost;
      chosen = option;
    }
  });
  if (!least.possible()) throw Contradiction("a refutation that was met is not found again");
  return chosen;
}

// Where devices are alike, each state of the store is followed as what stands in truth for it: the run begins in the
// initial state, and whatever swaps led from an outcome to the state of the store is undone in all events that follow.
Trace Chooser::choose() {
  const std::size_t last = last_layer();
  costs_.assign(layers_[last + 1], CostAfter{no_way, no_way, no_way});
  for (std::size_t depth = last + 1; depth-- > 0;) find_costs(depth);
  Trace trace;
  std::optional<Renaming> truly;
  if (alike_ != nullptr) truly = alike_->identity();
  Option here;  // the initial state
  for (std::size_t depth = 0; !here.ends; ++depth) {
    std::optional<Actor> before;
    if (!trace.empty()) before = actor_of(trace.back().kind);
    here = cheapest(here.next, depth, before);
    if (truly) {
      for (Event& event : here.events) event = truly->image(event);
      std::ranges::sort(here.events);  // the breaks of a loss in the site's order
      truly = alike_->before(*truly, here.applied);
    }
    trace.insert(trace.end(), here.events.begin(), here.events.end());
  }
  return trace;
}

}  // namespace cairn::explore

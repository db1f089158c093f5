#include "naive/explore.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace cairn::naive {

namespace {

/// Who acts: the operator carries out steps, devices complete their starts, faults do the rest.
Actor actor(const Event& event) {
  if (event.kind == Event::Kind::step) return Actor::operator_;
  return event.kind == Event::Kind::started ? Actor::device : Actor::fault;
}

std::size_t faults(const Trace& trace) {
  return static_cast<std::size_t>(
      std::count_if(trace.begin(), trace.end(), [](const Event& e) { return actor(e) == Actor::fault; }));
}

std::size_t switches(const Trace& trace) {
  std::size_t count = 0;
  for (std::size_t i = 1; i < trace.size(); ++i) {
    if (actor(trace[i - 1]) != actor(trace[i])) ++count;
  }
  return count;
}

void keep_preferred(std::optional<Trace>& best, const Trace& candidate) {
  if (!best || preferred(candidate, *best)) best = candidate;
}

/// The best traces of one length that lead to one state, by who acted last: whoever acts next, no other trace of
/// that length to the state can be the beginning of a preferred one.
using Arrivals = std::map<Actor, Trace>;

void arrive(Arrivals& arrivals, const Trace& trace) {
  const Actor last = actor(trace.back());
  const auto [place, is_new] = arrivals.emplace(last, trace);
  if (!is_new && preferred(trace, place->second)) place->second = trace;
}

/// Breadth first, layer by layer.
class Explorer {
 public:
  Explorer(const Model& model, const FaultBudget& budget, const std::vector<AskedProperty>& asked)
      : model_(model), asked_(asked), best_(asked.size()) {
    begin_ = begin(model, budget);
  }

  /// False where there are more than `most_states`.
  bool run(std::size_t most_states) {
    look(begin_, {Trace()});
    // Before the first event nobody has acted, and whoever acts then, nothing is switched: the key may be any.
    std::map<World, Arrivals> layer = {{begin_.settled(), {{Actor::operator_, Trace()}}}};
    while (!layer.empty()) {
      std::map<World, Arrivals> next;
      for (const auto& [world, arrivals] : layer) successors_[world];
      if (successors_.size() > most_states) return false;
      for (const auto& [world, arrivals] : layer) expand(world, arrivals, next);
      // A state that was met at a smaller depth is left out: no shortest refutation leads through it here.
      std::erase_if(next, [&](const auto& entry) { return successors_.contains(entry.first); });
      layer = std::move(next);
    }
    return true;
  }

  void report(Exploration& exploration) const {
    exploration.states += successors_.size();
    exploration.unsettled_passes = std::max(exploration.unsettled_passes, unsettled_passes_);
    const bool cycle = has_cycle();
    for (std::size_t i = 0; i < asked_.size(); ++i) {
      Answer answer{.asked = asked_[i],
                    .refuted = best_[i].has_value(),
                    .preferred = {},
                    .vacuous = false,
                    .explored = successors_.size(),
                    .cycle = cycle};
      if (best_[i]) answer.preferred = *best_[i];
      answer.vacuous = !answer.refuted && vacuous(asked_[i].property);
      exploration.answers.push_back(answer);
    }
  }

 private:
  /// 6.e
  [[nodiscard]] bool vacuous(Property property) const {
    switch (property) {
      case Property::primary_stays:
        return !one_of_keep_leads_;
      case Property::no_refusal:
        return model_.procedure.steps.empty();
      case Property::survives_cold_start:
      case Property::tolerates_loss:
        return !some_run_is_complete_;
      default:
        return false;
    }
  }

  void see(const World& world) {
    for (const DeviceId d : model_.procedure.keep) {
      if (world[d].leader == d) one_of_keep_leads_ = true;
    }
  }

  void look(const Happening& happening, const std::vector<Trace>& traces) {
    see(happening.left);
    for (const Pass& pass : happening.passes) see(pass.after);
    unsettled_passes_ = std::max(unsettled_passes_, static_cast<int>(happening.passes.size()) - 1);
    for (std::size_t i = 0; i < asked_.size(); ++i) {
      if (!breaks(model_, asked_[i].property, happening)) continue;
      for (const Trace& trace : traces) keep_preferred(best_[i], trace);
    }
  }

  void expand(const World& world, const Arrivals& arrivals, std::map<World, Arrivals>& next) {
    for (const Event& event : events(model_, world)) {
      const Happening happening = happen(model_, world, event);
      successors_[world].insert(happening.settled());
      std::vector<Trace> traces;
      for (const auto& [actor, trace] : arrivals) {
        traces.push_back(trace);
        traces.back().push_back(event);
      }
      look(happening, traces);
      for (const Trace& trace : traces) arrive(next[happening.settled()], trace);
    }
    if (at_rest(model_, world) && complete(model_, world)) look_beyond(world, arrivals);
  }

  /// 6.7 and 6.8 of a complete state at rest.
  void look_beyond(const World& world, const Arrivals& arrivals) {
    some_run_is_complete_ = true;
    for (std::size_t i = 0; i < asked_.size(); ++i) {
      if (asked_[i].property == Property::survives_cold_start && dies_of_cold_start(model_, world)) {
        add_tail(arrivals, {{Event::Kind::cold_start, 0}}, best_[i]);
      }
      if (asked_[i].property != Property::tolerates_loss) continue;
      for (const auto& loss : losses(model_, world, asked_[i].k)) {
        if (!loss_cuts(model_, world, loss)) continue;
        Trace tail;
        for (const CableId c : loss) tail.push_back({Event::Kind::broke, c.value});
        add_tail(arrivals, tail, best_[i]);
      }
    }
  }

  static void add_tail(const Arrivals& arrivals, const Trace& tail, std::optional<Trace>& best) {
    for (const auto& [actor, trace] : arrivals) {
      Trace whole = trace;
      whole.insert(whole.end(), tail.begin(), tail.end());
      keep_preferred(best, whole);
    }
  }

  /// 5.k: a state that can be reached from itself.
  [[nodiscard]] bool has_cycle() const {
    std::map<World, bool> finished;  // false while the walk is below the state
    const auto walk = [&](const auto& self, const World& world) -> bool {
      const auto [place, is_new] = finished.emplace(world, false);
      if (!is_new) return !place->second;
      for (const World& successor : successors_.at(world)) {
        if (self(self, successor)) return true;
      }
      place->second = true;
      return false;
    };
    return walk(walk, begin_.settled());
  }

  const Model& model_;
  std::vector<AskedProperty> asked_;
  std::vector<std::optional<Trace>> best_;  // one per property asked
  std::map<World, std::set<World>> successors_;
  Happening begin_;
  int unsettled_passes_ = 0;
  bool one_of_keep_leads_ = false;
  bool some_run_is_complete_ = false;
};

/// How many events at the end of a refutation are no events of section 5 (6.7, 6.8).
std::size_t tail_length(const Model& model, const World& at_rest, const AskedProperty& asked) {
  if (asked.property == Property::survives_cold_start) return 1;
  if (asked.property == Property::tolerates_loss) return losses(model, at_rest, asked.k).front().size();
  return 0;
}

std::string replay_tail(const Model& model, const World& world, const AskedProperty& asked, const Trace& tail) {
  if (asked.property == Property::survives_cold_start) {
    if (tail != Trace{{Event::Kind::cold_start, 0}}) return "it does not end with a cold start";
    return dies_of_cold_start(model, world) ? "" : "the goal holds after the cold start";
  }
  std::vector<CableId> loss;
  for (const Event& event : tail) {
    if (event.kind != Event::Kind::broke) return "it does not end with breaks";
    loss.push_back(event.cable());
  }
  const auto possible = losses(model, world, asked.k);
  if (std::find(possible.begin(), possible.end(), loss) == possible.end()) return "these cables are no loss of k";
  return loss_cuts(model, world, loss) ? "" : "the stack is together after the loss";
}

}  // namespace

bool preferred(const Trace& a, const Trace& b) {
  const auto key = [](const Trace& t) { return std::tuple(t.size(), faults(t), switches(t), t); };
  return key(a) < key(b);
}

std::optional<Exploration> explore(const Model& model, const FaultBudget& budget,
                                   const std::vector<AskedProperty>& asked, std::size_t most_states) {
  Exploration whole;
  std::vector<AskedProperty> with_faults;
  std::vector<AskedProperty> without;
  for (const AskedProperty& one : asked) (asked_with_faults(one.property) ? with_faults : without).push_back(one);
  for (const auto& [properties, faults_allowed] : {std::pair(with_faults, budget), std::pair(without, FaultBudget{})}) {
    if (properties.empty()) continue;
    Explorer explorer(model, faults_allowed, properties);
    if (!explorer.run(most_states)) return std::nullopt;
    explorer.report(whole);
  }
  std::vector<Answer> in_order;
  for (const AskedProperty& one : asked) {
    in_order.push_back(*std::find_if(whole.answers.begin(), whole.answers.end(),
                                     [&](const Answer& answer) { return answer.asked == one; }));
  }
  whole.answers = in_order;
  return whole;
}

std::optional<Exploration> explore(const Model& model, std::size_t most_states) {
  return explore(model, model.procedure.faults, model.procedure.properties, most_states);
}

std::string replay(const Model& model, const FaultBudget& budget, const AskedProperty& asked, const Trace& trace) {
  const bool has_tail = asked.property == Property::survives_cold_start || asked.property == Property::tolerates_loss;
  Happening now = begin(model, asked_with_faults(asked.property) ? budget : FaultBudget{});
  for (std::size_t i = 0;; ++i) {
    const World& world = now.settled();
    const std::string at = " at event " + std::to_string(i);
    if (has_tail && at_rest(model, world) && complete(model, world) &&
        trace.size() - i == tail_length(model, world, asked)) {
      return replay_tail(model, world, asked, Trace(trace.begin() + static_cast<std::ptrdiff_t>(i), trace.end()));
    }
    const bool broken = breaks(model, asked.property, now);
    if (i == trace.size()) return broken ? "" : "nothing is broken at the end";
    if (broken) return "it is broken before the end," + at;
    const auto possible = events(model, world);
    if (std::find(possible.begin(), possible.end(), trace[i]) == possible.end()) return "no such event" + at;
    now = happen(model, world, trace[i]);
  }
}

}  // namespace cairn::naive

#include <algorithm>

#include "cairn/walk.hpp"
#include "semantics/events.hpp"
#include "semantics/record.hpp"
#include "semantics/state.hpp"

namespace cairn {

const State& Walk::last() const {
  if (!moments.empty()) return moments.back().after();
  return initial_passes.empty() ? initial : initial_passes.back().after;
}

namespace {

using semantics::Recorder;
using semantics::World;

/// Chooses the next event of the run in file order.
class Pace {
 public:
  explicit Pace(const World& world) : world_(world) {}

  // The earliest step in file order whose turn has come; where it is an await that does not hold yet, a start that may
  // make it hold; where nothing is starting, whatever else is ready.
  std::optional<Event> next(const State& s, const semantics::Derived& derived) const {
    const std::vector<StepId> turns = waiting(s);
    if (!turns.empty() && ready(world_, s, derived, turns.front())) return step(turns.front());
    for (std::uint32_t i = 0; i < s.devices.size(); ++i) {
      if (s.devices[i].power == Power::starting) return Event{Event::Kind::started, i};
    }
    for (const StepId turn : turns) {
      if (ready(world_, s, derived, turn)) return step(turn);
    }
    return {};
  }

  // The steps whose turn has come.
  std::vector<StepId> waiting(const State& s) const {
    std::vector<StepId> turns;
    for (std::size_t i = 0; i < world_.steps().size(); ++i) {
      if (semantics::has_turn(world_, s, StepId(i))) turns.emplace_back(i);
    }
    return turns;
  }

 private:
  static Event step(StepId id) { return {Event::Kind::step, id.value}; }

  const World& world_;
};

/// Notices a run without end. Every event of a walk but a start makes a step done for good, so that only starts since
/// the last step can lead back to a state that was left (see explore/cycles.hpp).
class Return {
 public:
  explicit Return(const State& initial) : left_{initial} {}

  /// True when `s`, to which `event` led, has been left before.
  bool to(const State& s, const Event& event) {
    if (event.kind != Event::Kind::started) left_.clear();
    if (std::find(left_.begin(), left_.end(), s) != left_.end()) return true;
    left_.push_back(s);
    return false;
  }

 private:
  std::vector<State> left_;
};

Walk::End end_of(const State& s) {
  if (semantics::complete(s)) return Walk::End::complete;
  return s.halted ? Walk::End::halted : Walk::End::stuck;
}

}  // namespace

Walk walk(const Model& model) {
  const World world(model);
  const Pace pace(world);
  Recorder recorder(world, FaultBudget{}, std::nullopt);
  Return returns(recorder.state());
  bool endless = false;
  while (!endless) {
    const auto event = pace.next(recorder.state(), recorder.derived());
    if (!event) break;
    recorder.take(*event);
    endless = returns.to(recorder.state(), *event);
  }
  const Walk::End end = endless ? Walk::End::endless : end_of(recorder.state());
  std::vector<StepId> waiting;
  if (end == Walk::End::stuck) waiting = pace.waiting(recorder.state());
  Walk walk = std::move(recorder).finish();
  walk.end = end;
  walk.waiting = std::move(waiting);
  return walk;
}

}  // namespace cairn

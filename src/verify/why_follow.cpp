#include "verify/why_follow.hpp"

#include <algorithm>

#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/record.hpp"
#include "verify/why_changes.hpp"

namespace cairn::verify {

namespace {

using Kind = Event::Kind;

class Follower {
 public:
  Follower(const Model& model, const std::vector<Change>& changes, const FaultBudget& faults,
           const PropertyVerdict& refuted)
      : refuted_(refuted),
        places_(places_after(model, changes)),
        variant_(with_changes(model, changes)),
        world_(variant_),
        recorder_(world_, asked_with_faults(asked().property) ? faults : FaultBudget{}, asked().property) {
    for (const Change& change : changes) {
      if (change.kind == Change::Kind::move) moved_.push_back(places_[change.step.value]);
    }
  }

  bool breaks() {
    const auto loss = first_of_loss();
    take_moved();
    for (auto event = refuted_.events.begin(); event != loss && !broken(); ++event) {
      if (take(*event)) take_moved();
    }
    if (broken() || !speaks_of_goal(asked().property)) return broken();
    return !come_to_rest() || breaks_at_rest(loss);
  }

 private:
  using Place = Trace::const_iterator;

  [[nodiscard]] const AskedProperty& asked() const { return refuted_.asked; }
  [[nodiscard]] bool broken() const { return recorder_.breach().has_value(); }

  // 6.8: where the breaks of the loss begin, after all that happens on the way.
  [[nodiscard]] Place first_of_loss() const {
    const Trace& events = refuted_.events;
    if (asked().property != Property::tolerates_loss) return events.end();
    return std::find_if_not(events.rbegin(), events.rend(), [](const Event& e) { return e.kind == Kind::broke; })
        .base();
  }

  bool take(Event event) {
    if (event.kind == Kind::step || event.kind == Kind::omitted) {
      const StepId place = places_[event.place];
      if (!place) return false;
      event.place = place.value;
    }
    semantics::events_in(world_, recorder_.state(), recorder_.derived(), possible_);
    if (std::find(possible_.begin(), possible_.end(), event) == possible_.end()) return false;
    recorder_.take(event);
    return true;
  }

  void take_moved() {
    for (bool taken = true; taken && !broken();) {
      taken = std::any_of(moved_.begin(), moved_.end(), [&](StepId step) { return take_at({Kind::step, step.value}); });
    }
  }

  // An event of the variant itself.
  bool take_at(const Event& event) {
    if (!semantics::ready(world_, recorder_.state(), recorder_.derived(), event.step())) return false;
    recorder_.take(event);
    return true;
  }

  // Steps in file order before starts. False where the run has no end (see semantics 5.k).
  bool come_to_rest() {
    const std::size_t most_events = variant_.procedure.steps.size() + most_starts * world_.device_count();
    for (std::size_t i = 0; i < most_events; ++i) {
      semantics::events_in(world_, recorder_.state(), recorder_.derived(), possible_);
      if (semantics::at_rest(recorder_.state(), possible_)) return true;
      recorder_.take(possible_.front());
    }
    return false;
  }

  bool breaks_at_rest(Place loss) {
    if (asked().property == Property::reaches_goal) {
      recorder_.look_at_rest();
    } else if (semantics::complete(recorder_.state())) {
      asked().property == Property::tolerates_loss ? lose(loss) : recorder_.take_cold_start();
    }
    return broken();
  }

  void lose(Place loss) {
    for (; loss != refuted_.events.end(); ++loss) {
      const auto left = semantics::breakable(recorder_.state());
      if (std::find(left.begin(), left.end(), loss->cable()) != left.end()) recorder_.take_loss(loss->cable());
    }
    recorder_.look_at_loss();
  }

  /// More starts of one device than any run without faults has.
  static constexpr std::size_t most_starts = 64;

  const PropertyVerdict& refuted_;
  std::vector<StepId> places_;  ///< in the variant, by step of the model
  Model variant_;
  semantics::World world_;
  semantics::Recorder recorder_;
  std::vector<StepId> moved_;  ///< in the variant
  std::vector<Event> possible_;
};

}  // namespace

bool avoids(const Model& model, const std::vector<Change>& changes, const FaultBudget& faults,
            const PropertyVerdict& refuted) {
  return !Follower(model, changes, faults, refuted).breaks();
}

}  // namespace cairn::verify

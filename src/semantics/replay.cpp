#include <algorithm>
#include <string>

#include "cairn/walk.hpp"
#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/record.hpp"

namespace cairn {

namespace {

using semantics::Recorder;
using semantics::World;

/// One trace, walked event by event (6.f: "that anyone can replay by these rules"). A step that fails says why and
/// stops the rest.
class Replayer {
 public:
  Replayer(const World& world, const FaultBudget& faults, const AskedProperty& asked, const Trace& events)
      : asked_(asked),
        events_(events),
        recorder_(world, asked_with_faults(asked.property) ? faults : FaultBudget{}, asked.property),
        world_(world) {}

  std::variant<Walk, NotARefutation> run() {
    const std::size_t tail = tail_length();
    if (tail > events_.size()) return not_one(events_.size(), "there are fewer events than the last ones it needs");
    const std::size_t body = events_.size() - tail;
    for (std::size_t i = 0; i < body; ++i) {
      if (recorder_.breach()) return not_one(i, "the property is broken before this event");
      if (!may_happen(events_[i])) return not_one(i, "this event cannot happen here");
      recorder_.take(events_[i]);
    }
    return end(body);
  }

 private:
  // The events after the procedure's own: the cold start (6.7), or the breaks of a loss (6.8).
  std::size_t tail_length() const {
    if (asked_.property == Property::survives_cold_start) return 1;
    if (asked_.property != Property::tolerates_loss) return 0;
    std::size_t breaks = 0;
    while (breaks < events_.size() && events_[events_.size() - 1 - breaks].kind == Event::Kind::broke) ++breaks;
    return breaks;
  }

  bool may_happen(const Event& event) {
    events_in(world_, recorder_.state(), recorder_.derived(), possible_);
    return std::find(possible_.begin(), possible_.end(), event) != possible_.end();
  }

  bool at_rest() {
    events_in(world_, recorder_.state(), recorder_.derived(), possible_);
    return semantics::at_rest(recorder_.state(), possible_);
  }

  std::variant<Walk, NotARefutation> end(std::size_t body) {
    if (speaks_of_goal(asked_.property)) {
      if (!world_.model().procedure.goal) return not_one(body, "the procedure states no goal");
      if (!at_rest()) return not_one(body, "the run is not at rest here");
      if (asked_.property == Property::reaches_goal) {
        recorder_.look_at_rest();
      } else if (!semantics::complete(recorder_.state())) {
        return not_one(body, "the procedure is not complete here");
      } else if (const auto wrong = walk_tail(body)) {
        return *wrong;
      }
    }
    if (!recorder_.breach()) return not_one(events_.size(), "the property is not broken at the end");
    Walk walk = std::move(recorder_).finish();
    walk.end = Walk::End::events;
    return walk;
  }

  std::optional<NotARefutation> walk_tail(std::size_t body) {
    if (asked_.property == Property::survives_cold_start) {
      if (events_.back().kind != Event::Kind::cold_start) return not_one(body, "the last event is no cold start");
      recorder_.take_cold_start();
      return {};
    }
    const std::size_t breakable = semantics::breakable(recorder_.state()).size();
    const std::size_t wanted = static_cast<std::size_t>(std::min(asked_.k, static_cast<std::int64_t>(breakable)));
    if (events_.size() - body != wanted) return not_one(body, "the loss is not of as many cables as asked");
    for (std::size_t i = body; i < events_.size(); ++i) {
      const std::vector<CableId> left = semantics::breakable(recorder_.state());
      if (std::find(left.begin(), left.end(), events_[i].cable()) == left.end()) {
        return not_one(i, "this cable cannot break here");
      }
      recorder_.take_loss(events_[i].cable());
    }
    recorder_.look_at_loss();
    return {};
  }

  static NotARefutation not_one(std::size_t event, std::string why) { return {event, std::move(why)}; }

  const AskedProperty& asked_;
  const Trace& events_;
  Recorder recorder_;
  const World& world_;
  std::vector<Event> possible_;
};

}  // namespace

std::variant<Walk, NotARefutation> replay(const Model& model, const FaultBudget& faults, const AskedProperty& asked,
                                          const Trace& events) {
  const World world(model);
  return Replayer(world, faults, asked, events).run();
}

}  // namespace cairn

#include "explore/plain_search.hpp"

#include <algorithm>
#include <vector>

#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/settle.hpp"
#include "semantics/state.hpp"

namespace cairn::test {

namespace {

class PlainSearch final : public semantics::Watcher {
 public:
  PlainSearch(const Model& model, Property property, const Forget& forget, const Choose& choose)
      : world_(model), property_(property), forget_(forget), choose_(choose) {}

  std::optional<std::size_t> run(const FaultBudget& faults) {
    reach(semantics::initial_state(world_, faults));
    std::vector<Event> events;
    for (std::size_t length = 0, begin = 0; begin < states_.size() && !broken_; ++length) {
      const std::size_t end = states_.size();
      for (; begin < end; ++begin) {
        const State s = states_[begin];
        const semantics::Derived derived = semantics::derive(world_, s);
        semantics::events_in(world_, s, derived, events);
        if (semantics::at_rest(s, events) && rest_is_wrong(s, derived)) return length;
        choose_(s, events);
        for (const Event& event : events) {
          State next = s;
          const Refusal refusal = semantics::take(world_, next, derived, event);
          note(semantics::broken_by(world_, s, event, refusal, property_));
          reach(std::move(next));
        }
      }
      if (broken_) return length + 1;
    }
    return broken_ ? std::optional<std::size_t>(0) : std::nullopt;
  }

 private:
  void reach(State s) {
    semantics::settle(world_, s, scratch_, *this);
    forget_(s);
    if (std::find(states_.begin(), states_.end(), s) == states_.end()) states_.push_back(std::move(s));
  }

  [[nodiscard]] bool rest_is_wrong(const State& s, const semantics::Derived& derived) const {
    return property_ == Property::reaches_goal && semantics::broken_at_rest(world_, s, derived);
  }

  void see(const State& s, const semantics::Derived& derived) override {
    note(semantics::broken_in(world_, s, derived, property_));
  }
  void foresee(const State& s, const semantics::Derived&, const semantics::PassPlan& plan) override {
    note(semantics::broken_by(world_, s, plan, property_));
  }
  void note(const std::optional<Breach>& breach) { broken_ = broken_ || breach; }

  semantics::World world_;
  Property property_;
  const Forget& forget_;
  const Choose& choose_;
  semantics::Scratch scratch_;
  std::vector<State> states_;
  bool broken_ = false;
};

}  // namespace

std::optional<std::size_t> plain_search(const Model& model, Property property, const Forget& forget,
                                        const Choose& choose) {
  return PlainSearch(model, property, forget, choose).run(model.procedure.faults);
}

}  // namespace cairn::test

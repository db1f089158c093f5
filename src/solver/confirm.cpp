#include "solver/confirm.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "system/build.hpp"

namespace cairn::solver {

using system::Derived;
using system::Settling;
using system::Space;
using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

/// One run, event by event; states are constants throughout.
class Run {
 public:
  Run(const Model& model, const FaultBudget& faults, const AskedProperty& asked, const Trace& events)
      : space_(model, asked_with_faults(asked.property) ? faults : FaultBudget{}), asked_(asked), events_(events) {}

  std::string unsatisfied() {
    Settling settling = settle(terms_, initial_state(space_), passes());
    bool broken = broken_while(settling);
    const std::size_t body = events_.size() - std::min(events_.size(), tail_length());
    for (std::size_t i = 0; i < body; ++i) {
      if (broken) return told(i, "the property is broken before this event");
      const SymbolicState before = settling.end;
      const Derived derived = settling.end_derived;
      if (may_happen(terms_, before, derived, events_[i]) != system::always) return told(i, "it cannot happen here");
      settling = settle(terms_, take(terms_, before, derived, events_[i]), passes());
      if (settling.unfinished != system::never) return told(i, "the stack does not come to settle");
      broken =
          broken_while(settling) || broken_by(terms_, before, derived, events_[i], asked_.property) == system::always;
    }
    if (speaks_of_goal(asked_.property)) broken = broken_at_the_end(settling, body);
    return broken ? std::string() : "the formulas do not see the property break at the end of these events";
  }

 private:
  // A settling of constants goes on for as long as it takes.
  [[nodiscard]] int passes() const { return static_cast<int>(space_.devices()) + 2; }

  [[nodiscard]] std::size_t tail_length() const {
    if (asked_.property == Property::survives_cold_start) return 1;
    if (asked_.property != Property::tolerates_loss) return 0;
    const auto others = std::find_if(events_.rbegin(), events_.rend(),
                                     [](const Event& event) { return event.kind != Event::Kind::broke; });
    return static_cast<std::size_t>(others - events_.rbegin());
  }

  bool broken_while(const Settling& settling) {
    bool broken = false;
    for (const system::Stage& stage : settling.stages) {
      broken = broken || broken_in(terms_, stage.state, stage.derived, asked_.property) == system::always ||
               broken_by(terms_, stage.state, stage.pass, asked_.property) == system::always;
    }
    return broken || broken_in(terms_, settling.end, settling.end_derived, asked_.property) == system::always;
  }

  bool broken_at_the_end(const Settling& settling, std::size_t body) {
    const system::RestBreach breach = broken_at_rest(terms_, settling.end, settling.end_derived, asked_, passes());
    if (asked_.property != Property::tolerates_loss) return breach.broken == system::always;
    system::Substitution lost(terms_);
    for (std::uint32_t c = 0; c < space_.cables(); ++c) {
      const Event breaks{Event::Kind::broke, c};
      const bool is_lost =
          std::find(events_.begin() + static_cast<std::ptrdiff_t>(body), events_.end(), breaks) != events_.end();
      lost.put(breach.lost[c], is_lost ? system::always : system::never);
    }
    return lost(breach.broken) == system::always;
  }

  [[nodiscard]] std::string told(std::size_t i, std::string_view what) const {
    return fmt::format("event {} ({}): by the formulas {}", i + 1, system::event_name(space_.model(), events_[i]),
                       what);
  }

  Space space_;
  Terms terms_;
  const AskedProperty& asked_;
  const Trace& events_;
};

}  // namespace

std::string unsatisfied_by(const Model& model, const FaultBudget& faults, const AskedProperty& asked,
                           const Trace& events) {
  return Run(model, faults, asked, events).unsatisfied();
}

}  // namespace cairn::solver

#include "verify/closed_set.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "semantics/events.hpp"
#include "semantics/properties.hpp"
#include "semantics/settle.hpp"
#include "semantics/state.hpp"
#include "system/build.hpp"
#include "verify/nobody.hpp"
#include "verify/partial_states.hpp"

namespace cairn::verify {

namespace {

using solver::Difference;
using system::Space;
using system::VariableId;

/// The states of an exploration, unpacked one by one.
class VisitedStates final : public solver::StateSet {
 public:
  explicit VisitedStates(const explore::Visited& visited) : visited_(visited), state_(visited.any()) {}

  [[nodiscard]] std::uint64_t size() const override { return visited_.size(); }
  [[nodiscard]] const State& at(std::uint64_t index) override {
    visited_.read(static_cast<explore::StateIndex>(index), state_);
    return state_;
  }

 private:
  const explore::Visited& visited_;
  State state_;
};

// The values that some of the states have: a good guess at the domains.
system::Domains values_in(const Space& space, solver::StateSet& states) {
  constexpr std::uint64_t enough = 512;
  const std::uint64_t stride = states.size() / enough + 1;
  system::Domains values(space.size());
  for (std::uint64_t i = 0; i < states.size(); i += stride) {
    const State& s = states.at(i);
    for (VariableId v = 0; v < space.size(); ++v) {
      const std::int64_t value = space.read(s, v);
      if (std::find(values[v].begin(), values[v].end(), value) == values[v].end()) values[v].push_back(value);
    }
  }
  return values;
}

/// Puts one difference into words.
class Telling {
 public:
  Telling(const semantics::World& world, const FaultBudget& faults, const Difference& difference)
      : world_(world),
        space_(world.model(), faults),
        difference_(difference),
        first_(settled(semantics::initial_state(world, faults))) {}

  [[nodiscard]] std::string all() const {
    switch (difference_.kind) {
      case Difference::Kind::first_missing:
        return fmt::format("by the formulas the initial state settles to one that the exploration did not visit: {}",
                           against(first_));
      case Difference::Kind::strange:
        return fmt::format("the exploration visited a state with a value that nothing brings about by the formulas: {}",
                           state());
      case Difference::Kind::unsettled:
        return fmt::format("by the formulas a state that the exploration holds for settled settles further: {}",
                           state());
      case Difference::Kind::leads_out:
        return fmt::format("by the formulas {} leads to a state that the exploration did not visit: {}; {}", events(),
                           against(taken()), state());
      case Difference::Kind::endless:
        return fmt::format("by the formulas the stack does not settle{}{}; {}",
                           difference_.events.empty() ? "" : " after ", events(), state());
      case Difference::Kind::broken:
        return fmt::format("by the formulas {} is broken{}{}, which the exploration did not see; {}",
                           name_of(difference_.property->property), difference_.events.empty() ? "" : " after ",
                           events(), state());
    }
    return {};
  }

 private:
  [[nodiscard]] State settled(State s) const {
    semantics::Scratch scratch;
    Nobody nobody;
    semantics::settle(world_, s, scratch, nobody);
    return s;
  }

  // What the concrete functions make of the events.
  [[nodiscard]] State taken() const {
    State s = *difference_.state;
    for (const Event& event : difference_.events) {
      if (event.kind == Event::Kind::cold_start) {
        semantics::cold_start(world_, s);
      } else {
        semantics::take(world_, s, semantics::derive(world_, s), event);
      }
    }
    return settled(std::move(s));
  }

  [[nodiscard]] std::string value(VariableId v, std::int64_t value) const {
    if (space_.is_truth(v)) return fmt::format("{}{}", value == 0 ? "not " : "", space_.name(v));
    return fmt::format("{} is {}", space_.name(v), space_.value_name(v, value));
  }

  // Where the state that the formulas lead to differs from that of the concrete functions.
  [[nodiscard]] std::string against(const State& concrete) const {
    std::vector<std::string> differences;
    for (VariableId v = 0; v < space_.size(); ++v) {
      const std::int64_t theirs = space_.read(concrete, v);
      const std::optional<std::int64_t> ours = difference_.reached[v];
      if (!ours || *ours == theirs) continue;
      differences.push_back(
          fmt::format("{} (by the concrete functions, {})", value(v, *ours), space_.value_name(v, theirs)));
    }
    if (differences.empty()) return "the concrete functions lead there too";
    return fmt::format("{}", fmt::join(differences, ", "));
  }

  [[nodiscard]] std::string events() const {
    std::vector<std::string> names;
    for (const Event& event : difference_.events) {
      const bool all = event.kind == Event::Kind::cold_start;
      names.push_back(all ? std::string(name_of(event.kind)) : system::event_name(world_.model(), event));
    }
    return fmt::format("{}", fmt::join(names, ", "));
  }

  // By what distinguishes it from the initial state.
  [[nodiscard]] std::string state() const {
    if (!difference_.state) return "at the start";
    std::vector<std::string> changes;
    for (VariableId v = 0; v < space_.size(); ++v) {
      const std::int64_t now = space_.read(*difference_.state, v);
      if (now != space_.read(first_, v)) changes.push_back(value(v, now));
    }
    if (changes.empty()) return "in the initial state, settled";
    return fmt::format("in the state that is the initial one, settled, but that {}", fmt::join(changes, ", "));
  }

  const semantics::World& world_;
  Space space_;
  const Difference& difference_;
  State first_;
};

// The parts of the model that the states and the questions need.
std::unique_ptr<system::Moves> parts_for(const semantics::World& world, const FaultBudget& faults,
                                         const std::vector<AskedProperty>& asked, solver::StateSet& states) {
  const bool cold = std::any_of(asked.begin(), asked.end(),
                                [](const AskedProperty& a) { return a.property == Property::survives_cold_start; });
  const Space space(world.model(), faults);
  return system::take_apart(world.model(), faults, values_in(space, states), cold);
}

solver::AskLimits limits_of(const explore::Guard& guard, const explore::Visited& visited) {
  return [&](std::uint64_t bytes) { return guard.met(visited.bytes() + bytes); };
}

solver::SetConfirmation too_large() {
  solver::SetConfirmation confirmation;
  confirmation.outcome = solver::SetConfirmation::Outcome::too_large;
  return confirmation;
}

}  // namespace

solver::SetConfirmation confirm_closed_set(const semantics::World& world, const FaultBudget& faults,
                                           const std::vector<AskedProperty>& asked, const explore::Visited& visited,
                                           std::uint64_t most, const explore::Guard& guard) {
  if (visited.size() > most) return too_large();
  VisitedStates states(visited);
  const auto moves = parts_for(world, faults, asked, states);
  return solver::confirm_closed_set(*moves, states, asked, most, limits_of(guard, visited));
}

solver::SetConfirmation confirm_reduced_set(const semantics::World& world, const FaultBudget& faults,
                                            const std::vector<AskedProperty>& asked, const explore::Visited& visited,
                                            const Reductions& reductions, std::uint64_t most,
                                            const explore::Guard& guard) {
  if (visited.size() > most) return too_large();
  PartialStates states(world, faults, reductions, visited);
  const auto moves = parts_for(world, faults, asked, states);
  return solver::confirm_partial_set(*moves, states, asked, most, limits_of(guard, visited));
}

std::string told(const semantics::World& world, const FaultBudget& faults, const solver::Difference& difference) {
  return Telling(world, faults, difference).all();
}

}  // namespace cairn::verify

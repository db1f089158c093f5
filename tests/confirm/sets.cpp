#include "confirm/sets.hpp"

#include <doctest/doctest.h>

#include <limits>

#include "explore/explore.hpp"
#include "verify/partial_states.hpp"

namespace cairn::test {

std::vector<State> reachable(const Model& model, const FaultBudget& faults) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  const explore::Exploration all = explore::explore(world, faults, {}, guard);
  REQUIRE(all.visited != nullptr);
  std::vector<State> states;
  State state = all.visited->any();
  for (explore::StateIndex i = 0; i < all.visited->size(); ++i) {
    all.visited->read(i, state);
    states.push_back(state);
  }
  REQUIRE(states.size() == all.explored);
  return states;
}

void ListedPartialStates::erase(std::size_t index) {
  entries.erase(entries.begin() + static_cast<std::ptrdiff_t>(index));
  for (Entry& entry : entries) {
    std::erase_if(entry.ways, [&](const Way& way) { return way.to == index; });
    for (Way& way : entry.ways) way.to -= way.to > index ? 1 : 0;
  }
}

ListedPartialStates reduced(const Model& model, const FaultBudget& faults, const Reductions& reductions) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  const explore::Exploration all = explore::explore(world, faults, {}, guard, {.reductions = reductions});
  REQUIRE(all.visited != nullptr);
  verify::PartialStates states(world, faults, reductions, *all.visited);
  ListedPartialStates listed;
  for (std::uint64_t i = 0; i < states.size(); ++i) {
    ListedPartialStates::Entry& entry = listed.entries.emplace_back();
    entry.state = states.at(i);
    states.unknown(i, entry.unknown);
    states.ways(i, entry.ways);
  }
  return listed;
}

std::unique_ptr<system::Moves> parts_of(const Model& model, const FaultBudget& faults) {
  return system::take_apart(model, faults, {}, true);
}

solver::SetConfirmation confirm(system::Moves& moves, std::vector<State> states,
                                const std::vector<AskedProperty>& asked) {
  ListedStates set(std::move(states));
  return solver::confirm_closed_set(moves, set, asked, std::numeric_limits<std::uint64_t>::max(),
                                    [](std::uint64_t) { return std::nullopt; });
}

solver::SetConfirmation confirm(system::Moves& moves, ListedPartialStates& states,
                                const std::vector<AskedProperty>& asked) {
  return solver::confirm_partial_set(moves, states, asked, std::numeric_limits<std::uint64_t>::max(),
                                     [](std::uint64_t) { return std::nullopt; });
}

}  // namespace cairn::test

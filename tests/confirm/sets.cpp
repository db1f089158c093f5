#include "confirm/sets.hpp"

#include <doctest/doctest.h>

#include <limits>

#include "explore/explore.hpp"

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

std::unique_ptr<system::Moves> parts_of(const Model& model, const FaultBudget& faults) {
  return system::take_apart(model, faults, {}, true);
}

solver::SetConfirmation confirm(system::Moves& moves, std::vector<State> states,
                                const std::vector<AskedProperty>& asked) {
  ListedStates set(std::move(states));
  return solver::confirm_closed_set(moves, set, asked, std::numeric_limits<std::uint64_t>::max(),
                                    [](std::uint64_t) { return std::nullopt; });
}

}  // namespace cairn::test

/// \file
/// Random states, reachable or not, and the assignments that stand for them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "confront/models.hpp"
#include "semantics/world.hpp"
#include "system/variables.hpp"

namespace cairn::confront {

/// Ranges wide enough for every state of random_state() and all that one event makes of it.
[[nodiscard]] system::Domains wide_domains(const system::Space& space);

/// What a random state is like.
enum class Sort : std::uint8_t {
  wild,     ///< any values at all, but for what 2.a and 1.b demand
  lively,   ///< most things are up, plugged and enabled
  settled,  ///< lively, and settled
  at_rest,  ///< settled, every step done, nothing starting
};
inline constexpr std::size_t sort_count = 4;

/// A state of that sort, which obeys 2.a (`leader` is none unless a device is up, and the levels of seniority are those
/// of the devices that are up or held, none left out) and 1.b (of the cables of a port at most one is plugged).
[[nodiscard]] State random_state(Random& random, const semantics::World& world, const system::Space& space,
                                 const system::Domains& domains, Sort sort);

/// The value of every variable in `s`.
[[nodiscard]] std::vector<std::int64_t> values_of(const system::Space& space, const State& s);

/// Which Booleans of a free state over these domains (system::free_state) are true where the variables have these
/// values, which are in the domains; ascending.
[[nodiscard]] std::vector<std::size_t> assignment_of(const system::Domains& domains,
                                                     const std::vector<std::int64_t>& values);

/// True when each variable has a value of its domain in `s`.
[[nodiscard]] bool within(const system::Space& space, const system::Domains& domains, const State& s);

/// Every variable and its value, for a failure.
[[nodiscard]] std::string told(const system::Space& space, const State& s);

}  // namespace cairn::confront

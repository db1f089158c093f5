/// \file
/// Which values the parts of a state can ever take: what never changes need not be stored.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "semantics/world.hpp"

namespace cairn::explore {

/// Values in ascending order, none twice, at least one.
template <class T>
using Values = std::vector<T>;

/// Some value is in both.
template <class T>
[[nodiscard]] bool share_a_value(const Values<T>& a, const Values<T>& b) {
  return std::ranges::any_of(a, [&](const T& value) { return std::ranges::binary_search(b, value); });
}

/// An over-approximation of what every run can bring about, read off the site and the steps. A value and its copies
/// (running, startup, operational; number and next number) share one domain, since starts, saves and applies copy from
/// one to the other (semantics 5.b, 5.9, 5.10).
struct Domains {
  std::vector<Values<std::int64_t>> numbers;     ///< per device: `number` and `next_number`
  std::vector<Values<std::int64_t>> priorities;  ///< per device: running and startup
  std::vector<Values<bool>> enabled;             ///< per port: running and startup
  std::vector<Values<Side>> sides;               ///< per port: running, startup and operational
  std::vector<std::uint8_t> replugged;           ///< per cable: some step plugs or unplugs it
  bool checks = false;                           ///< some step is a check, so that the procedure may halt
};

[[nodiscard]] Domains domains_of(const semantics::World& world);

}  // namespace cairn::explore

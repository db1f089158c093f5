/// \file
/// Numbers, priorities, tenures and addresses: integers, or what stands for one that is not known.
#pragma once

#include <cstdint>
#include <limits>

#include "cairn/ids.hpp"

namespace cairn {

/// An inclusive range of integers, low <= high.
struct Range {
  std::int64_t low = 0;
  std::int64_t high = 0;

  [[nodiscard]] bool contains(std::int64_t n) const { return low <= n && n <= high; }
  bool operator==(const Range&) const = default;
};

/// The place of something that a template leaves open: first its parameters, then its open addresses.
using UnknownId = Id<struct UnknownTag>;

/// A number, a priority, a tenure or an address: the integer itself where it is known, and otherwise a code for what
/// stands in its place. The codes lie below every integer that is read from a file as a quantity.
using Quantity = std::int64_t;

inline constexpr Quantity least_known = std::numeric_limits<Quantity>::min() + (Quantity{1} << 32);

[[nodiscard]] constexpr Quantity unknown(UnknownId u) {
  return std::numeric_limits<Quantity>::min() + Quantity{u.value};
}
[[nodiscard]] constexpr bool is_known(Quantity q) {
  return q >= least_known;
}
/// Of a quantity that is not known.
[[nodiscard]] constexpr UnknownId unknown_of(Quantity q) {
  return UnknownId(static_cast<std::size_t>(q - std::numeric_limits<Quantity>::min()));
}

}  // namespace cairn

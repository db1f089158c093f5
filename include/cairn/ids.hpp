/// \file
/// Indices into the tables of a Model. Each kind of thing has its own type, so that the compiler keeps them apart.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>

namespace cairn {

/// The place of a thing in its table, from 0 in file order. A default-constructed Id names nothing.
template <class Tag>
struct Id {
  static constexpr std::uint32_t nothing = std::numeric_limits<std::uint32_t>::max();

  std::uint32_t value = nothing;

  constexpr Id() = default;
  constexpr explicit Id(std::size_t place) : value(static_cast<std::uint32_t>(place)) {}

  /// True unless the Id names nothing.
  constexpr explicit operator bool() const { return value != nothing; }
  constexpr auto operator<=>(const Id&) const = default;
};

using DeviceId = Id<struct DeviceTag>;
using PortId = Id<struct PortTag>;
using CableId = Id<struct CableTag>;
using StepId = Id<struct StepTag>;

}  // namespace cairn

template <class Tag>
struct std::hash<cairn::Id<Tag>> {
  std::size_t operator()(cairn::Id<Tag> id) const noexcept { return id.value; }
};

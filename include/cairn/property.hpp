/// \file
/// The eight properties (semantics 6).
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace cairn {

/// In the order of the semantics, section 6.
enum class Property : std::uint8_t {
  no_split,
  primary_stays,
  members_stay,
  no_clash,
  no_refusal,
  reaches_goal,
  survives_cold_start,
  tolerates_loss,
};

inline constexpr int property_count = 8;

/// A property that a verdict is asked on.
struct AskedProperty {
  Property property = Property::no_split;
  std::int64_t k = 0;  ///< tolerates-loss: how many cables break at once, at least 1; else 0.

  bool operator==(const AskedProperty&) const = default;
};

/// The name that files and verdicts use: "no-split".
[[nodiscard]] std::string_view name_of(Property property);

/// The property of that name, or nothing.
[[nodiscard]] std::optional<Property> property_named(std::string_view name);

/// True for 6.1 to 6.4, which are asked under the faults that the budget allows; the others are asked without.
[[nodiscard]] constexpr bool asked_with_faults(Property property) {
  return property <= Property::no_clash;
}

/// True for 6.1 to 6.3, which speak of the devices to keep.
[[nodiscard]] constexpr bool speaks_of_keep(Property property) {
  return property <= Property::members_stay;
}

/// True for 6.6 to 6.8, which speak of the goal.
[[nodiscard]] constexpr bool speaks_of_goal(Property property) {
  return property >= Property::reaches_goal;
}

}  // namespace cairn

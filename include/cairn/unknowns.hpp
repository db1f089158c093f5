/// \file
/// What a template leaves open (semantics 9): parameters and addresses, and what is assumed of them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cairn/condition.hpp"
#include "cairn/ids.hpp"
#include "cairn/quantity.hpp"

namespace cairn {

/// Stands for any integer of its range (9.a).
struct Parameter {
  std::string name;  ///< without `$`
  Range range;

  bool operator==(const Parameter&) const = default;
};

/// One side of a comparison in `assume`.
struct Operand {
  Quantity quantity = 0;
  DeviceId address_of;  ///< The device whose address `quantity` is; nothing where it is an integer or a parameter.
};

/// What `assume` says, as a tree, names resolved. Which fields count depends on `kind`.
struct Assumption {
  enum class Kind : std::uint8_t {
    comparison,  ///< left sign right
    negation,    ///< not parts[0]
    all,         ///< parts[0] and parts[1] and …; true without parts
    any,         ///< parts[0] or parts[1] or …
    implies,     ///< parts[0] implies parts[1]
  };

  Kind kind = Kind::all;
  Operand left;
  Sign sign = Sign::equal;
  Operand right;
  std::vector<Assumption> parts;
};

/// Of a plain model all of this is empty.
struct Unknowns {
  std::vector<Parameter> parameters;
  std::vector<DeviceId> addresses;  ///< The devices with `address: any`, in the site's order.
  std::optional<Assumption> assume;

  /// True of a template.
  [[nodiscard]] bool any() const { return count() != 0 || assume; }
  /// The unknown that stands for the address of `addresses[place]`.
  [[nodiscard]] UnknownId address(std::size_t place) const { return UnknownId(parameters.size() + place); }
  [[nodiscard]] std::size_t count() const { return parameters.size() + addresses.size(); }
  [[nodiscard]] bool is_address(UnknownId u) const { return u.value >= parameters.size(); }
};

/// One choice of what a template leaves open (9.c).
struct Instance {
  std::vector<std::int64_t> values;  ///< By UnknownId.

  bool operator==(const Instance&) const = default;
};

}  // namespace cairn

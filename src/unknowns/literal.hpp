/// \file
/// Comparisons of two quantities, of which at least one is not known: what path conditions are made of.
#pragma once

#include <compare>
#include <cstdint>
#include <span>

#include "cairn/unknowns.hpp"

namespace cairn::unknowns {

/// How one quantity may stand to another: any of less, equal and greater.
class Relation {
 public:
  constexpr Relation() = default;

  static constexpr Relation less() { return Relation(1); }
  static constexpr Relation equal() { return Relation(2); }
  static constexpr Relation greater() { return Relation(4); }
  static constexpr Relation not_equal() { return Relation(5); }
  static constexpr Relation any() { return Relation(7); }
  [[nodiscard]] static constexpr Relation of(Sign sign);

  [[nodiscard]] constexpr bool none() const { return bits_ == 0; }
  /// True where everything that this allows `other` allows too.
  [[nodiscard]] constexpr bool within(Relation other) const { return (bits_ & ~other.bits_) == 0; }
  /// With the two quantities in each other's place.
  [[nodiscard]] constexpr Relation flipped() const {
    return Relation(static_cast<std::uint8_t>((bits_ & 2) | (bits_ & 1) << 2 | (bits_ & 4) >> 2));
  }
  [[nodiscard]] constexpr Relation complement() const { return Relation(static_cast<std::uint8_t>(~bits_ & 7)); }
  friend constexpr Relation operator&(Relation a, Relation b) {
    return Relation(static_cast<std::uint8_t>(a.bits_ & b.bits_));
  }
  friend constexpr Relation operator|(Relation a, Relation b) {
    return Relation(static_cast<std::uint8_t>(a.bits_ | b.bits_));
  }
  constexpr auto operator<=>(const Relation&) const = default;
  [[nodiscard]] constexpr std::uint8_t bits() const { return bits_; }

 private:
  constexpr explicit Relation(std::uint8_t bits) : bits_(bits) {}
  std::uint8_t bits_ = 0;
};

constexpr Relation Relation::of(Sign sign) {
  switch (sign) {
    case Sign::equal:
      return equal();
    case Sign::not_equal:
      return not_equal();
    case Sign::less:
      return less();
    case Sign::less_or_equal:
      return less() | equal();
    case Sign::greater:
      return greater();
    case Sign::greater_or_equal:
      return greater() | equal();
  }
  return any();
}

/// How two integers stand to each other.
[[nodiscard]] constexpr Relation relation_of(std::int64_t a, std::int64_t b) {
  return a < b ? Relation::less() : a == b ? Relation::equal() : Relation::greater();
}

/// `left` stands to `right` as `relation` says.
struct Literal {
  Quantity left = 0;
  Quantity right = 0;
  Relation relation = Relation::any();

  /// The same with an unknown quantity on the left, and of two unknown ones the first.
  [[nodiscard]] constexpr Literal normal() const {
    return left <= right ? *this : Literal{right, left, relation.flipped()};
  }
  [[nodiscard]] constexpr Literal denied() const { return {left, right, relation.complement()}; }
  constexpr auto operator<=>(const Literal&) const = default;
};

/// What `q` is in an instance.
[[nodiscard]] constexpr std::int64_t value_of(Quantity q, std::span<const std::int64_t> values) {
  return is_known(q) ? q : values[unknown_of(q).value];
}

[[nodiscard]] constexpr bool holds(const Literal& literal, std::span<const std::int64_t> values) {
  return relation_of(value_of(literal.left, values), value_of(literal.right, values)).within(literal.relation);
}

}  // namespace cairn::unknowns

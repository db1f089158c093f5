#include "unknowns/bounds.hpp"

#include <algorithm>

namespace cairn::unknowns {

Bounds::Bounds(std::size_t unknowns) : size_(unknowns + 1), most_(size_ * size_, unbounded) {
  for (std::size_t i = 0; i < size_; ++i) most_[i * size_ + i] = 0;
}

// Whatever became tighter did so by way of the new bound.
bool Bounds::add(const Bound& bound) {
  if (bound.most >= most(bound.left, bound.right)) return true;
  if (bound.most + most(bound.right, bound.left) < 0) return false;
  for (std::size_t i = 0; i < size_; ++i) {
    const Wide to_left = most(i, bound.left);
    if (to_left == unbounded) continue;
    for (std::size_t j = 0; j < size_; ++j) {
      const Wide from_right = most(bound.right, j);
      if (from_right == unbounded) continue;
      Wide& here = most_[i * size_ + j];
      here = std::min(here, to_left + bound.most + from_right);
    }
  }
  return true;
}

bool Bounds::add(const Literal& literal) {
  const std::size_t left = place_of(literal.left);
  const std::size_t right = place_of(literal.right);
  const Wide apart = part_of(literal.right) - part_of(literal.left);  // left - right, where the two are equal
  // Where two that may not be equal are so at an end of what is possible, that end is cut off.
  const Relation r = literal.relation & possible(literal.left, literal.right);
  if (r.none()) return false;
  if (left == right) return true;
  const bool may_equal = Relation::equal().within(r);
  if (!Relation::greater().within(r) && !add({left, right, apart - (may_equal ? 0 : 1)})) return false;
  if (!Relation::less().within(r) && !add({right, left, -apart - (may_equal ? 0 : 1)})) return false;
  return true;
}

Relation Bounds::possible(Quantity a, Quantity b) const {
  const std::size_t left = place_of(a);
  const std::size_t right = place_of(b);
  const Wide apart = part_of(b) - part_of(a);
  if (left == right) return apart > 0 ? Relation::less() : apart < 0 ? Relation::greater() : Relation::equal();
  const Wide highest = most(left, right);
  const Wide lowest = -most(right, left);
  Relation relation;
  if (lowest < apart) relation = relation | Relation::less();
  if (lowest <= apart && apart <= highest) relation = relation | Relation::equal();
  if (highest > apart) relation = relation | Relation::greater();
  return relation;
}

std::vector<std::int64_t> Bounds::least() const {
  std::vector<std::int64_t> values;
  values.reserve(size_ - 1);
  for (std::size_t i = 1; i < size_; ++i) values.push_back(static_cast<std::int64_t>(-most(zero, i)));
  return values;
}

std::int64_t Bounds::highest(UnknownId u) const {
  return static_cast<std::int64_t>(most(u.value + 1, zero));
}

}  // namespace cairn::unknowns

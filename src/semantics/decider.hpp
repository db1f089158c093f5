/// \file
/// Who is asked where the meaning of a template depends on what it leaves open (semantics 9).
#pragma once

#include <cstddef>
#include <vector>

#include "cairn/unknowns.hpp"

namespace cairn::semantics {

/// What is compared of one device in a contest (4.4), the first key first.
using Rank = std::vector<Quantity>;

/// Answers comparisons of quantities of which one at least is not known. All answers together hold in some instance.
class Decider {
 public:
  virtual ~Decider() = default;
  virtual bool equal(Quantity a, Quantity b) = 0;
  virtual bool less(Quantity a, Quantity b) = 0;
  /// The place of the best of `ranks`, two or more of the same length, of which no two are equal.
  /// \param higher_wins  by key: whether the larger is better
  virtual std::size_t best(const std::vector<Rank>& ranks, const std::vector<bool>& higher_wins) = 0;
};

}  // namespace cairn::semantics

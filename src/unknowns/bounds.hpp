/// \file
/// Differences of unknown integers, bounded: the part of a path condition that a closure by shortest paths decides.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "unknowns/literal.hpp"

namespace cairn::unknowns {

/// A difference-bound matrix, closed: for each two unknowns the least number that their difference cannot exceed, and
/// the same against 0. (Dill, Timing assumptions and verification of finite-state concurrent systems, 1989; from
/// memory.) The bounds of a closed matrix are tight: each is attained by integers that keep all of them.
class Bounds {
 public:
  /// Nothing is bounded yet.
  explicit Bounds(std::size_t unknowns);

  /// Takes what is convex in `literal`: all but that two are not equal, which is kept by whoever asks.
  /// False where no integers are left; then nothing else may be asked.
  [[nodiscard]] bool add(const Literal& literal);

  /// How a may stand to b. (Whether all of it can be had beside what is not convex is another question.)
  [[nodiscard]] Relation possible(Quantity a, Quantity b) const;

  /// Integers that keep all bounds: the least ones of each unknown, which must be bounded from below.
  [[nodiscard]] std::vector<std::int64_t> least() const;

  /// How far the unknown may rise; it must be bounded from above.
  [[nodiscard]] std::int64_t highest(UnknownId u) const;

 private:
  /// Sums of bounds on 64-bit integers need more than 64 bits.
  __extension__ using Wide = __int128;
  /// More than any sum of bounds on 64-bit integers that is met, and far from what 128 bits hold.
  static constexpr Wide unbounded = Wide{1} << 100;
  /// "left - right <= most"
  struct Bound {
    std::size_t left;
    std::size_t right;
    Wide most;
  };
  static constexpr std::size_t zero = 0;

  [[nodiscard]] static std::size_t place_of(Quantity q) { return is_known(q) ? zero : unknown_of(q).value + 1; }
  [[nodiscard]] static Wide part_of(Quantity q) { return is_known(q) ? Wide{q} : Wide{0}; }
  [[nodiscard]] Wide most(std::size_t left, std::size_t right) const { return most_[left * size_ + right]; }
  [[nodiscard]] bool add(const Bound& bound);

  std::size_t size_;
  std::vector<Wide> most_;
};

}  // namespace cairn::unknowns

/// \file
/// Partial orders of steps whose linear extensions have been counted by others.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace cairn::test {

/// Who directly follows whom, by place; a step follows only earlier ones.
using Order = std::vector<std::vector<std::size_t>>;

/// x0 < x1 > x2 < x3 > …: the odd ones follow their neighbours.
[[nodiscard]] Order zigzag(std::size_t n);

/// A grid of `rows` times `columns`: each step follows the one above and the one to the left.
[[nodiscard]] Order grid(std::size_t rows, std::size_t columns);

/// Chains of these lengths, beside one another.
[[nodiscard]] Order chains(const std::vector<std::size_t>& lengths);

/// The subsets of a set of `n`, each after those with one element less.
[[nodiscard]] Order boolean_lattice(std::size_t n);

/// (a + b + …)! / (a! b! …), the multinomial coefficient; with two lengths a binomial.
[[nodiscard]] std::uint64_t interleavings(const std::vector<std::size_t>& lengths);

}  // namespace cairn::test

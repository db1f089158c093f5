/// \file
/// Blocks taken as sets of rows.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>

#include "system/evaluate.hpp"

namespace cairn::solver {

[[nodiscard]] inline bool any(const system::Block& rows) {
  return std::any_of(rows.words.begin(), rows.words.end(), [](std::uint64_t word) { return word != 0; });
}

[[nodiscard]] inline bool has(const system::Block& rows, std::size_t row) {
  return (rows.words[row / 64] >> row % 64 & 1) != 0;
}

inline void insert(system::Block& rows, std::size_t row) {
  rows.words[row / 64] |= std::uint64_t{1} << row % 64;
}

inline void insert(system::Block& rows, const system::Block& more) {
  for (std::size_t g = 0; g < rows.words.size(); ++g) rows.words[g] |= more.words[g];
}

[[nodiscard]] inline system::Block both(system::Block rows, const system::Block& other) {
  for (std::size_t g = 0; g < rows.words.size(); ++g) rows.words[g] &= other.words[g];
  return rows;
}

/// Those of `rows` that are not among `other`.
[[nodiscard]] inline system::Block without(system::Block rows, const system::Block& other) {
  for (std::size_t g = 0; g < rows.words.size(); ++g) rows.words[g] &= ~other.words[g];
  return rows;
}

}  // namespace cairn::solver

/// \file
/// The rows of a set of states, found by hash: whether a state is among them.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <vector>

#include "system/rows.hpp"

namespace cairn::solver {

/// Filled first, asked afterwards. Rows are compared whole: a hash alone decides nothing.
class RowTable {
 public:
  /// \param words  64-bit words a row, at least 1
  /// \param most   rows that will be added, at most most_rows
  RowTable(std::size_t words, std::uint64_t most);

  static constexpr std::uint64_t most_rows = 0xffff'fffe;

  /// Bytes that a table of so many rows takes.
  [[nodiscard]] static std::uint64_t bytes(std::size_t words, std::uint64_t rows);

  /// Where the next rows are to be written, one after another, before they are added; demands that `most` leaves room.
  [[nodiscard]] std::uint64_t* next() { return rows_.get() + size_ * words_; }
  /// Adds the `count` rows that were written at next(), at most system::most_rows; a row that is there already is added
  /// again.
  void add(std::size_t count);
  [[nodiscard]] std::uint64_t size() const { return size_; }
  [[nodiscard]] const std::uint64_t* operator[](std::uint64_t index) const { return rows_.get() + index * words_; }

  /// Which of `count` rows, one after another and at most system::most_rows, are in the table.
  [[nodiscard]] system::Block find(const std::uint64_t* rows, std::size_t count) const;

 private:
  using Hashes = std::array<std::uint64_t, system::most_rows>;

  [[nodiscard]] std::uint64_t hash_of(const std::uint64_t* row) const;
  [[nodiscard]] std::size_t home_of(std::uint64_t hash) const { return (hash ^ hash >> 32) & (slots_.size() - 1); }
  /// The hashes of `count` rows, whose slots are asked for ahead of their use: in a large table each is out of reach.
  [[nodiscard]] Hashes foresee(const std::uint64_t* rows, std::size_t count) const;
  [[nodiscard]] bool holds(const std::uint64_t* row, std::uint64_t hash) const;

  std::size_t words_;
  std::uint64_t size_ = 0;
  std::unique_ptr<std::uint64_t[]> rows_;
  /// 0 is free; else the upper half holds bits of the hash, the lower half the index plus 1. A power of two long.
  std::vector<std::uint64_t> slots_;
};

}  // namespace cairn::solver

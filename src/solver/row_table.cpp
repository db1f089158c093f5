#include "solver/row_table.hpp"

#include <algorithm>
#include <bit>

namespace cairn::solver {

namespace {

constexpr std::uint64_t low_half = 0xffff'ffff;

// At most two slots in three are taken, so that probes stay short.
std::uint64_t slots_for(std::uint64_t rows) {
  return std::bit_ceil(rows + rows / 2 + 1);
}

}  // namespace

RowTable::RowTable(std::size_t words, std::uint64_t most)
    : words_(words), rows_(std::make_unique_for_overwrite<std::uint64_t[]>(most * words)), slots_(slots_for(most), 0) {}

std::uint64_t RowTable::bytes(std::size_t words, std::uint64_t rows) {
  return (rows * words + slots_for(rows)) * sizeof(std::uint64_t);
}

std::uint64_t RowTable::hash_of(const std::uint64_t* row) const {
  std::uint64_t hash = 0x9e37'79b9'7f4a'7c15;
  for (std::size_t i = 0; i < words_; ++i) {
    hash = (hash ^ row[i]) * 0xd6e8'feb8'6659'fd93;
    hash ^= hash >> 32;
  }
  return hash * 0xd6e8'feb8'6659'fd93;
}

RowTable::Hashes RowTable::foresee(const std::uint64_t* rows, std::size_t count) const {
  Hashes hashes;
  for (std::size_t i = 0; i < count; ++i) {
    hashes[i] = hash_of(rows + i * words_);
    __builtin_prefetch(&slots_[home_of(hashes[i])]);
  }
  return hashes;
}

void RowTable::add(std::size_t count) {
  const Hashes hashes = foresee(next(), count);
  for (std::size_t i = 0; i < count; ++i) {
    std::size_t slot = home_of(hashes[i]);
    while (slots_[slot] != 0) slot = (slot + 1) & (slots_.size() - 1);
    slots_[slot] = (hashes[i] & ~low_half) | ++size_;
  }
}

bool RowTable::holds(const std::uint64_t* row, std::uint64_t hash) const {
  for (std::size_t slot = home_of(hash); slots_[slot] != 0; slot = (slot + 1) & (slots_.size() - 1)) {
    const std::uint64_t held = slots_[slot];
    if ((held ^ hash) >> 32 == 0 && std::equal(row, row + words_, (*this)[(held & low_half) - 1])) return true;
  }
  return false;
}

system::Block RowTable::find(const std::uint64_t* rows, std::size_t count) const {
  const Hashes hashes = foresee(rows, count);
  for (std::size_t i = 0; i < count; ++i) {
    const std::uint64_t held = slots_[home_of(hashes[i])];
    if (held != 0) __builtin_prefetch((*this)[(held & low_half) - 1]);
  }
  system::Block found;
  for (std::size_t i = 0; i < count; ++i) {
    if (holds(rows + i * words_, hashes[i])) found.words[i / 64] |= std::uint64_t{1} << i % 64;
  }
  return found;
}

}  // namespace cairn::solver

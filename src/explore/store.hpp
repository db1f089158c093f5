/// \file
/// The states visited so far: packed, numbered in the order of their discovery, found by hash.
#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <vector>

namespace cairn::explore {

using StateIndex = std::uint32_t;

/// Grows by chunks that never move, beside one open-addressing table of numbers and hash tags. While one thread
/// inserts, others may look up and read what they find, as long as there is room (make_room()).
class Store {
 public:
  /// \param words  64-bit words a state, at least 1
  explicit Store(std::size_t words);

  struct Inserted {
    StateIndex index;
    bool fresh;  ///< it was not there before
  };
  /// Demands size() < most_states.
  Inserted insert(const std::uint64_t* state) { return insert(state, hash_of(state)); }
  [[nodiscard]] std::optional<StateIndex> find(const std::uint64_t* state) const { return find(state, hash_of(state)); }

  /// The same in two steps, of which the first needs nothing but the state.
  [[nodiscard]] std::uint64_t hash_of(const std::uint64_t* state) const;
  Inserted insert(const std::uint64_t* state, std::uint64_t hash);
  [[nodiscard]] std::optional<StateIndex> find(const std::uint64_t* state, std::uint64_t hash) const;
  /// Asks for the slot of a hash that will be looked up soon: in a large table each is out of reach.
  void foresee(std::uint64_t hash) const { __builtin_prefetch(&slots_[home_of(hash)]); }

  /// So many further states will find room without the table growing, which nobody may look on at.
  void make_room(std::uint64_t more);

  [[nodiscard]] const std::uint64_t* operator[](StateIndex index) const {
    return chunks_.data()[index / chunk_states].get() + (index % chunk_states) * words_;
  }
  [[nodiscard]] StateIndex size() const { return size_; }

  /// An upper bound on the bytes in use while `more` further states are inserted.
  [[nodiscard]] std::uint64_t bytes_with(std::uint64_t more) const;

  static constexpr StateIndex most_states = std::numeric_limits<StateIndex>::max() - 1;

 private:
  static constexpr std::size_t chunk_states = 4096;

  /// Where a state is, or belongs.
  struct Place {
    std::size_t slot;
    std::uint64_t held;  ///< what was in the slot when it was looked at: 0, or the state
  };
  [[nodiscard]] Place place_of(const std::uint64_t* state, std::uint64_t hash) const;
  [[nodiscard]] std::size_t home_of(std::uint64_t hash) const { return (hash ^ hash >> 32) & (slot_count_ - 1); }
  void grow();

  std::size_t words_;
  StateIndex size_ = 0;
  std::vector<std::unique_ptr<std::uint64_t[]>> chunks_;
  /// 0 is free; else the upper half holds bits of the hash, the lower half the index plus 1. A power of two long.
  std::unique_ptr<std::atomic<std::uint64_t>[]> slots_;
  std::size_t slot_count_;
};

}  // namespace cairn::explore

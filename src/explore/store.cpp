#include "explore/store.hpp"

#include <algorithm>

namespace cairn::explore {

namespace {

constexpr std::uint64_t low_half = 0xffff'ffff;
constexpr std::size_t fewest_slots = 1024;

// At most 7 slots in 10 are taken, so that probes stay short.
bool crowded(std::uint64_t states, std::uint64_t slots) {
  return states * 10 > slots * 7;
}

// Of the state that a slot which is taken holds.
StateIndex index_in(std::uint64_t held) {
  return static_cast<StateIndex>((held & low_half) - 1);
}

}  // namespace

Store::Store(std::size_t words)
    : words_(words), slots_(std::make_unique<std::atomic<std::uint64_t>[]>(fewest_slots)), slot_count_(fewest_slots) {}

std::uint64_t Store::hash_of(const std::uint64_t* state) const {
  std::uint64_t hash = 0x9e37'79b9'7f4a'7c15;
  for (std::size_t i = 0; i < words_; ++i) {
    hash = (hash ^ state[i]) * 0xd6e8'feb8'6659'fd93;
    hash ^= hash >> 32;
  }
  return hash * 0xd6e8'feb8'6659'fd93;
}

// A slot is looked at once: a free one may be taken by another state in the next moment.
Store::Place Store::place_of(const std::uint64_t* state, std::uint64_t hash) const {
  const std::size_t mask = slot_count_ - 1;
  for (std::size_t slot = home_of(hash);; slot = (slot + 1) & mask) {
    // With the number of a state comes the state, which was written before.
    const std::uint64_t held = slots_[slot].load(std::memory_order_acquire);
    if (held == 0) return {slot, 0};
    if ((held ^ hash) >> 32 != 0) continue;
    if (std::equal(state, state + words_, (*this)[index_in(held)])) return {slot, held};
  }
}

Store::Inserted Store::insert(const std::uint64_t* state, std::uint64_t hash) {
  Place place = place_of(state, hash);
  if (place.held != 0) return {index_in(place.held), false};
  if (crowded(std::uint64_t{size_} + 1, slot_count_)) {
    grow();
    place = place_of(state, hash);
  }
  if (size_ % chunk_states == 0) {
    chunks_.push_back(std::make_unique_for_overwrite<std::uint64_t[]>(chunk_states * words_));
  }
  const StateIndex index = size_++;
  std::copy_n(state, words_, chunks_.back().get() + (index % chunk_states) * words_);
  slots_[place.slot].store((hash & ~low_half) | (std::uint64_t{index} + 1), std::memory_order_release);
  return {index, true};
}

std::optional<StateIndex> Store::find(const std::uint64_t* state, std::uint64_t hash) const {
  const std::uint64_t held = place_of(state, hash).held;
  if (held == 0) return {};
  return index_in(held);
}

void Store::make_room(std::uint64_t more) {
  while (crowded(size_ + more, slot_count_)) grow();
  const std::size_t chunks = (size_ + more) / chunk_states + 1;
  if (chunks > chunks_.capacity()) chunks_.reserve(std::max(chunks, 2 * chunks_.capacity()));
}

void Store::grow() {
  const std::size_t old_count = slot_count_;
  auto old = std::make_unique<std::atomic<std::uint64_t>[]>(2 * old_count);  // where that fails, all stays as it was
  old.swap(slots_);
  slot_count_ = 2 * old_count;
  for (std::size_t i = 0; i < old_count; ++i) {
    const std::uint64_t held = old[i].load(std::memory_order_relaxed);
    if (held == 0) continue;
    const std::uint64_t hash = hash_of((*this)[index_in(held)]);
    std::size_t slot = home_of(hash);
    while (slots_[slot].load(std::memory_order_relaxed) != 0) slot = (slot + 1) & (slot_count_ - 1);
    slots_[slot].store(held, std::memory_order_relaxed);
  }
}

// By the number of states alone, so that a table that has grown ahead of its time makes no difference.
std::uint64_t Store::bytes_with(std::uint64_t more) const {
  const std::uint64_t states = size_ + more;
  const std::uint64_t chunks = std::max<std::uint64_t>(chunks_.size(), states / chunk_states + 1);
  const auto slots_for = [](std::uint64_t count) {
    std::uint64_t slots = fewest_slots;
    while (crowded(count, slots)) slots *= 2;
    return slots;
  };
  std::uint64_t slots = slots_for(states);
  // While the table grows, the old one is still there.
  if (slots > slots_for(size_)) slots += slots / 2;
  return (chunks * chunk_states * words_ + slots) * sizeof(std::uint64_t);
}

}  // namespace cairn::explore

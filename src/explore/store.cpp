#include "explore/store.hpp"

#include <algorithm>

namespace cairn::explore {

namespace {

constexpr std::uint64_t low_half = 0xffff'ffff;

// At most 7 slots in 10 are taken, so that probes stay short.
bool crowded(std::uint64_t states, std::uint64_t slots) {
  return states * 10 > slots * 7;
}

}  // namespace

Store::Store(std::size_t words) : words_(words), slots_(1024, 0) {}

std::uint64_t Store::hash_of(const std::uint64_t* state) const {
  std::uint64_t hash = 0x9e37'79b9'7f4a'7c15;
  for (std::size_t i = 0; i < words_; ++i) {
    hash = (hash ^ state[i]) * 0xd6e8'feb8'6659'fd93;
    hash ^= hash >> 32;
  }
  return hash * 0xd6e8'feb8'6659'fd93;
}

std::size_t Store::slot_of(const std::uint64_t* state, std::uint64_t hash) const {
  const std::size_t mask = slots_.size() - 1;
  for (std::size_t slot = home_of(hash);; slot = (slot + 1) & mask) {
    const std::uint64_t held = slots_[slot];
    if (held == 0) return slot;
    if ((held ^ hash) >> 32 != 0) continue;
    if (std::equal(state, state + words_, (*this)[static_cast<StateIndex>((held & low_half) - 1)])) return slot;
  }
}

Store::Inserted Store::insert(const std::uint64_t* state, std::uint64_t hash) {
  std::size_t slot = slot_of(state, hash);
  if (slots_[slot] != 0) return {static_cast<StateIndex>((slots_[slot] & low_half) - 1), false};
  if (crowded(std::uint64_t{size_} + 1, slots_.size())) {
    grow();
    slot = slot_of(state, hash);
  }
  if (size_ % chunk_states == 0) {
    chunks_.push_back(std::make_unique_for_overwrite<std::uint64_t[]>(chunk_states * words_));
  }
  const StateIndex index = size_++;
  std::copy_n(state, words_, chunks_.back().get() + (index % chunk_states) * words_);
  slots_[slot] = (hash & ~low_half) | (std::uint64_t{index} + 1);
  return {index, true};
}

std::optional<StateIndex> Store::find(const std::uint64_t* state, std::uint64_t hash) const {
  const std::uint64_t held = slots_[slot_of(state, hash)];
  if (held == 0) return {};
  return static_cast<StateIndex>((held & low_half) - 1);
}

void Store::grow() {
  std::vector<std::uint64_t> old(slots_.size() * 2, 0);
  old.swap(slots_);
  const std::size_t mask = slots_.size() - 1;
  for (const std::uint64_t held : old) {
    if (held == 0) continue;
    const std::uint64_t hash = hash_of((*this)[static_cast<StateIndex>((held & low_half) - 1)]);
    std::size_t slot = home_of(hash);
    while (slots_[slot] != 0) slot = (slot + 1) & mask;
    slots_[slot] = held;
  }
}

std::uint64_t Store::bytes_with(std::uint64_t more) const {
  const std::uint64_t states = size_ + more;
  const std::uint64_t chunks = std::max<std::uint64_t>(chunks_.size(), states / chunk_states + 1);
  std::uint64_t slots = slots_.size();
  while (crowded(states, slots)) slots *= 2;
  // While the table grows, the old one is still there.
  if (slots > slots_.size()) slots += slots / 2;
  return (chunks * chunk_states * words_ + slots) * sizeof(std::uint64_t);
}

}  // namespace cairn::explore

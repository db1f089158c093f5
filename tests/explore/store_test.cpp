#include "explore/store.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <thread>
#include <vector>

using namespace cairn::explore;

namespace {

// Three words that differ in few bits, as packed states do.
std::vector<std::uint64_t> state(std::uint64_t i) {
  return {i & 0xff, i >> 8 & 0xff, i >> 16};
}

}  // namespace

TEST_CASE("a state is numbered when it is first inserted and found again later") {
  Store store(3);
  const std::uint64_t many = 100'000;  // past several growths of the table and many chunks
  for (std::uint64_t i = 0; i < many; ++i) {
    const auto [index, fresh] = store.insert(state(i).data());
    REQUIRE(fresh);
    REQUIRE(index == i);
  }
  CHECK(store.size() == many);
  for (std::uint64_t i = 0; i < many; ++i) {
    const auto [index, fresh] = store.insert(state(i).data());
    REQUIRE_FALSE(fresh);
    REQUIRE(index == i);
    REQUIRE(store.find(state(i).data()) == static_cast<StateIndex>(i));
    REQUIRE(std::vector<std::uint64_t>(store[index], store[index] + 3) == state(i));
  }
  CHECK_FALSE(store.find(state(many).data()));
}

TEST_CASE("the bound on memory covers what further states bring") {
  Store store(2);
  std::uint64_t bound = store.bytes_with(5000);
  for (std::uint64_t i = 0; i < 5000; ++i) {
    const std::uint64_t words[2] = {i, ~i};
    store.insert(words);
    CHECK(store.bytes_with(0) <= bound);
  }
  CHECK(store.bytes_with(0) >= 5000 * 2 * sizeof(std::uint64_t));
}

// A slot that is free when it is looked at may hold another state a moment later. Nearly full small tables make that
// likely: with two looks at a slot, one round in ten finds what nobody inserted.
TEST_CASE("what is not there is not found while others are inserted") {
  std::size_t found = 0;
  for (std::uint64_t round = 0; round < 200; ++round) {
    Store store(1);
    store.make_room(700);
    std::atomic<bool> begun{false};
    std::atomic<bool> over{false};
    std::thread looker([&] {
      begun = true;
      for (std::uint64_t i = 1; !over; i += 2) found += store.find(&i) ? 1 : 0;
    });
    while (!begun) std::this_thread::yield();
    for (std::uint64_t i = 0; i < 1400; i += 2) store.insert(&i);
    over = true;
    looker.join();
  }
  CHECK(found == 0);
}

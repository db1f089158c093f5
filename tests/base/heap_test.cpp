#include "base/heap.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <vector>

#include "support/allocator.hpp"

using namespace cairn;

TEST_CASE("what is allocated counts until it is freed, large blocks and small ones" *
          doctest::skip(test::allocator_is_replaced)) {
  constexpr std::size_t size = 64'000'000;
  const std::uint64_t before = heap_in_use();
  {
    const std::vector<char> large(size);
    CHECK(heap_in_use() >= before + size);
    std::vector<std::unique_ptr<char[]>> small;
    for (std::size_t i = 0; i < size / 1000; ++i) small.push_back(std::make_unique<char[]>(1000));
    CHECK(heap_in_use() >= before + 2 * size);
  }
  CHECK(heap_in_use() < before + size / 2);
}

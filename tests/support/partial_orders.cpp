#include "support/partial_orders.hpp"

namespace cairn::test {

Order zigzag(std::size_t n) {
  Order order(n);
  for (std::size_t i = 1; i < n; i += 2) {
    order[i].push_back(i - 1);
    if (i + 1 < n) order[i].push_back(i + 1);
  }
  return order;
}

Order grid(std::size_t rows, std::size_t columns) {
  Order order(rows * columns);
  for (std::size_t i = 0; i < order.size(); ++i) {
    if (i >= columns) order[i].push_back(i - columns);
    if (i % columns != 0) order[i].push_back(i - 1);
  }
  return order;
}

Order chains(const std::vector<std::size_t>& lengths) {
  Order order;
  for (const std::size_t length : lengths) {
    for (std::size_t i = 0; i < length; ++i) {
      order.emplace_back();
      if (i > 0) order.back().push_back(order.size() - 2);
    }
  }
  return order;
}

Order boolean_lattice(std::size_t n) {
  Order order(std::size_t{1} << n);
  for (std::size_t set = 0; set < order.size(); ++set) {
    for (std::size_t element = 0; element < n; ++element) {
      if ((set >> element & 1U) != 0) order[set].push_back(set & ~(std::size_t{1} << element));
    }
  }
  return order;
}

std::uint64_t interleavings(const std::vector<std::size_t>& lengths) {
  std::uint64_t count = 1;
  std::uint64_t placed = 0;
  for (const std::size_t length : lengths) {
    for (std::uint64_t i = 1; i <= length; ++i) count = count * ++placed / i;
  }
  return count;
}

}  // namespace cairn::test

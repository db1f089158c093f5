/// \file
/// What waits while a closed set is put to the formulas: states for their events, and rows for passes.
#pragma once

#include <cstdint>
#include <vector>

namespace cairn::solver {

/// A state of the set in which an event is to be taken, and the hint where it leads.
struct Waiting {
  std::uint32_t state;
  std::uint32_t target;
};

/// Rows that an event left outside the set, so that passes follow.
struct Stirred {
  struct Origin {
    Waiting from;
    std::uint32_t event;
    std::uint32_t passes;
  };
  std::vector<Origin> origins;
  std::vector<std::uint64_t> rows;

  void push(const Origin& origin, const std::uint64_t* row, std::size_t words) {
    origins.push_back(origin);
    rows.insert(rows.end(), row, row + words);
  }
  /// Takes the last `count` out: their rows go to `out`.
  std::vector<Origin> pop(std::size_t count, std::size_t words, std::vector<std::uint64_t>& out) {
    std::vector<Origin> last(origins.end() - static_cast<std::ptrdiff_t>(count), origins.end());
    out.assign(rows.end() - static_cast<std::ptrdiff_t>(count * words), rows.end());
    origins.resize(origins.size() - count);
    rows.resize(rows.size() - count * words);
    return last;
  }
};

}  // namespace cairn::solver

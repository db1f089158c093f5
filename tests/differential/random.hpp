/// \file
/// Chance that is the same everywhere: std::mt19937_64 is fixed by the C++ standard, its distributions are not, so
/// the few that are needed are written here.
#pragma once

#include <cstdint>
#include <random>
#include <vector>

namespace cairn::differential {

class Random {
 public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}

  /// An integer from 0 to n - 1; n is small, so the bias of the remainder is far below anything measured.
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(engine_() % n); }
  std::int64_t between(std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(below(static_cast<std::size_t>(high - low + 1)));
  }
  bool chance(int percent) { return below(100) < static_cast<std::size_t>(percent); }
  bool coin() { return chance(50); }

  template <class T>
  const T& pick(const std::vector<T>& from) {
    return from[below(from.size())];
  }
  template <class T>
  T& pick(std::vector<T>& from) {
    return from[below(from.size())];
  }
  template <class T>
  void shuffle(std::vector<T>& items) {
    for (std::size_t i = items.size(); i > 1; --i) std::swap(items[i - 1], items[below(i)]);
  }

 private:
  std::mt19937_64 engine_;
};

}  // namespace cairn::differential

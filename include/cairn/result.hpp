/// \file
/// Problems of input are values: a Result is either what was asked for or every problem that stood in the way.
#pragma once

#include <cassert>
#include <utility>
#include <variant>

#include "cairn/diagnostic.hpp"

namespace cairn {

/// Holds a T, or the Diagnostics (never empty) that explain why there is none.
template <class T>
class Result {
 public:
  Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}
  Result(Diagnostics problems) : held_(std::in_place_index<1>, std::move(problems)) {
    assert(!std::get<1>(held_).empty());
  }

  [[nodiscard]] bool ok() const { return held_.index() == 0; }
  explicit operator bool() const { return ok(); }

  /// The value. Demands ok().
  [[nodiscard]] const T& value() const& { return std::get<0>(held_); }
  [[nodiscard]] T& value() & { return std::get<0>(held_); }
  [[nodiscard]] T&& value() && { return std::get<0>(std::move(held_)); }

  /// The problems. Demands !ok().
  [[nodiscard]] const Diagnostics& problems() const { return std::get<1>(held_); }

 private:
  std::variant<T, Diagnostics> held_;
};

}  // namespace cairn

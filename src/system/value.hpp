/// \file
/// A symbolic value of a finite type: which of a few integers it is.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "system/term.hpp"

namespace cairn::system {

/// Cases in ascending order of their integers, exactly one of whose terms holds; terms that are `never` are left out.
class Value {
 public:
  struct Case {
    std::int64_t value;
    Term holds;
    bool operator==(const Case&) const = default;
  };
  Value() = default;
  /// A constant.
  explicit Value(std::int64_t constant) : cases_{{constant, always}} {}
  /// Demands what the class promises; cases that are `never` are dropped.
  explicit Value(std::vector<Case> cases);

  [[nodiscard]] const std::vector<Case>& cases() const { return cases_; }
  /// That it is `value`.
  [[nodiscard]] Term is(std::int64_t value) const;
  bool operator==(const Value&) const = default;

 private:
  std::vector<Case> cases_;
};

[[nodiscard]] Value choose(Terms& terms, Term condition, const Value& then, const Value& otherwise);
[[nodiscard]] Term equal(Terms& terms, const Value& a, const Value& b);
[[nodiscard]] Term less(Terms& terms, const Value& a, const Value& b);
/// The value less one, where it is at least one; no smaller than 0.
[[nodiscard]] Value less_one(Terms& terms, const Value& a);

}  // namespace cairn::system

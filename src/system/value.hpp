/// \file
/// A symbolic value of a finite type: which of a few integers it is.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <utility>
#include <vector>

#include "system/term.hpp"

namespace cairn::system {

/// Cases in ascending order of their integers, exactly one of whose terms holds; terms that are `never` are left out.
/// Immutable, and cheap to copy: states are copied whole for each event, and few of their values change.
class Value {
 public:
  struct Case {
    std::int64_t value;
    Term holds;
    bool operator==(const Case&) const = default;
  };
  /// Of no use but to be assigned to.
  Value() : Value(std::vector<Case>{}) {}
  /// A constant.
  explicit Value(std::int64_t constant) : Value(std::vector<Case>{{constant, always}}) {}
  /// Demands what the class promises; cases that are `never` are dropped.
  explicit Value(std::vector<Case> cases);

  [[nodiscard]] const std::vector<Case>& cases() const { return *cases_; }
  /// That it is `value`.
  [[nodiscard]] Term is(std::int64_t value) const;
  bool operator==(const Value& other) const { return cases_ == other.cases_ || *cases_ == *other.cases_; }

 private:
  std::shared_ptr<const std::vector<Case>> cases_;
};

/// A value that may be any of `values`, which ascend: one is a constant, two are one Boolean, declared for the greater,
/// more are a Boolean each, of which somebody has to demand that exactly one holds.
[[nodiscard]] Value free_value(const std::vector<std::int64_t>& values,
                               const std::function<Term(std::int64_t)>& declare);

[[nodiscard]] Value choose(Terms& terms, Term condition, const Value& then, const Value& otherwise);
[[nodiscard]] Term equal(Terms& terms, const Value& a, const Value& b);
[[nodiscard]] Term less(Terms& terms, const Value& a, const Value& b);
/// The value less one, where it is at least one; no smaller than 0.
[[nodiscard]] Value less_one(Terms& terms, const Value& a);

}  // namespace cairn::system

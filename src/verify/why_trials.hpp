/// \file
/// Variants of a model put to the proof, one after the other.
#pragma once

#include <vector>

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/prove.hpp"
#include "explore/limits.hpp"

namespace cairn::verify {

/// Asks them all under the faults of one call, and within its limits taken together.
class Trials {
 public:
  explicit Trials(const ProveOptions& options) : options_(options), guard_(options.limits, {}) {}

  /// The report on `asked`, which is not empty. Where the limits are used up, all of it is undecided.
  [[nodiscard]] Report ask(const Model& variant, const std::vector<AskedProperty>& asked) const;

  /// The limits that are left by now.
  [[nodiscard]] Limits left() const { return guard_.left(); }

 private:
  ProveOptions options_;
  explore::Guard guard_;
};

}  // namespace cairn::verify

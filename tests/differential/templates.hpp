/// \file
/// Random templates, confronted with the reference on every instance.
#pragma once

#include <cstdint>

#include "differential/compare.hpp"
#include "differential/draft.hpp"

namespace cairn::differential {

/// A model of generate() in which some values are open, within ranges that are small enough to run every instance.
Draft generate_template(std::uint64_t seed);

/// What the library says of a template against what the reference says of each instance: whether the reader takes it,
/// the verdicts, the lengths of the shortest refutations, the instances named, and vacuity.
Comparison compare_instances(const Draft& draft);

}  // namespace cairn::differential

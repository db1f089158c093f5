/// \file
/// Procedures of any size in memory, for tests that need states by the thousand.
#pragma once

#include "cairn/model.hpp"

namespace cairn::test {

/// Appends one device to a chain of n: the procedure `append` of bench/scaled.py, in its two-stage platform.
[[nodiscard]] Model append_to_chain(int n);

}  // namespace cairn::test

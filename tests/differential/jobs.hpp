/// \file
/// One thread against several, on one model: the same answer to the byte.
#pragma once

#include "differential/compare.hpp"

namespace cairn::differential {

/// Proves with 1, 2, 4 and 8 jobs that take few states at a time, in each of several ways: every state visited, cut
/// short and reduced, reduced at once with orders and without, and with little memory. Compares the JSON documents, and
/// what was counted.
Comparison compare_jobs(const Model& model);

/// Reads the draft first.
Comparison compare_jobs(const Draft& draft);

}  // namespace cairn::differential

/// \file
/// What a verdict is empty of, in words.
#pragma once

#include <string>
#include <vector>

#include "cairn/verdict.hpp"

namespace cairn::report {

/// "s2 never waits: up(yard-3) holds whenever its turn comes."
[[nodiscard]] std::string in_words(const Model& model, const Emptiness& finding);

/// One sentence each, in the order of the report; the last tells, where it matters, that only runs without faults were
/// looked at.
[[nodiscard]] std::vector<std::string> findings_in_words(const Model& model, const Report& report);

}  // namespace cairn::report

/// \file
/// What the fuzzers try, as functions that any program can call. A broken promise is returned in words.
#pragma once

#include <string>

namespace cairn::test {

/// Reads `text` as a document of any kind, and shows its problems. Empty when every promise was kept:
/// a model is whole, problems are in order, each points into its line, and nothing of the input reaches a terminal raw.
[[nodiscard]] std::string try_reader(const std::string& text);

/// Reads `text` as a condition and as an assumption. Empty when every promise was kept.
[[nodiscard]] std::string try_condition(const std::string& text);

}  // namespace cairn::test

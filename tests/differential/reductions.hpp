/// \file
/// Explorations that leave out what makes no difference, confronted with one that leaves out nothing
/// (docs/reductions.md).
#pragma once

#include <array>
#include <utility>
#include <vector>

#include "cairn/options.hpp"
#include "differential/compare.hpp"

namespace cairn::differential {

/// The properties of a model that are asked under the same faults.
struct Question {
  FaultBudget faults;
  std::vector<AskedProperty> asked;
};
/// Without faults, with those of the procedure, and without any of what is asked with faults.
[[nodiscard]] std::vector<Question> questions_of(const Model& model);

/// Those that forget: all runs are as they were.
inline constexpr std::array<std::pair<const char*, Reductions>, 4> forgetting{{
    {"seniority", {true, false, false, false, false}},
    {"settings", {false, true, false, false, false}},
    {"budgets", {false, false, true, false, false}},
    {"all that forget", {true, true, true, false, false}},
}};

/// Explores with no reduction, with each alone and with all, and compares what every property gets: verdict, length,
/// the refutation chosen, vacuity; the states at rest; what was seen to happen, and which ties decided. No exploration
/// may visit more states than the whole one.
Comparison compare_reductions(const Model& model);

/// Reads the draft first.
Comparison compare_reductions(const Draft& draft);

}  // namespace cairn::differential

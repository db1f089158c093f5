/// \file
/// Who waits for whom (semantics 5.a): the order of the file, `any-order` and `after`, as predecessors of each step.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "syntax/draft.hpp"

namespace cairn::syntax {

/// Per step, by place, the steps that it must follow directly.
using Predecessors = std::vector<std::vector<std::size_t>>;

/// What no procedure may exceed: two groups of n branches one after the other need n * n.
inline constexpr std::size_t most_waits = 1'000'000;

/// The predecessors that `order` alone gives to each of `count` steps. Nothing when there are more than `most_waits`.
[[nodiscard]] std::optional<Predecessors> file_order(const Block& order, std::size_t count);

/// Circles among the predecessors, disjoint from each other: each a list of steps in which every step waits for the one
/// before it and the first for the last; of very many the first hundred. Empty exactly when there is an order in which
/// all steps can happen.
[[nodiscard]] std::vector<std::vector<std::size_t>> circles(const Predecessors& predecessors);

/// Leaves out every predecessor that follows from the others. Demands that there are no circles. Beyond some thousand
/// steps redundant predecessors stay, which say nothing wrong.
void leave_out_redundant(Predecessors& predecessors);

}  // namespace cairn::syntax

/// \file
/// Variants of a model: the same procedure but for one or a few changes.
#pragma once

#include <cstdint>
#include <vector>

#include "cairn/model.hpp"

namespace cairn::verify {

/// By step: the steps that it must directly follow, ascending.
using Order = std::vector<std::vector<StepId>>;

[[nodiscard]] Order order_of(const Procedure& procedure);
void set_order(Procedure& procedure, Order order);

/// Takes the step out: its followers follow what it followed. The step itself is left, ordered by nothing.
void take_out(Order& order, StepId step);

/// Takes the step out of order and out of the table; the steps after it are renumbered.
void drop_step(Procedure& procedure, StepId step);

/// Lets either of two steps come first, of which `earlier` was directly before `later`.
void drop_ordering(Procedure& procedure, StepId earlier, StepId later);

}  // namespace cairn::verify

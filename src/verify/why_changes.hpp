/// \file
/// The changes of one step that are worth trying.
#pragma once

#include <vector>

#include "cairn/why.hpp"

namespace cairn::verify {

/// Every change of one step, step by step in file order: other numbers, nearest first; other places among the steps
/// that it waits for or that wait for it, nearest first; and taking it out. No two give the same procedure.
[[nodiscard]] std::vector<Change> changes_of(const Model& model);

/// Other numbers for a `set-number` or `set-priority` step, nearest first. Of priorities those that rank differently
/// against the others of the site and the procedure: each of them, and one between any two. Of numbers the nearest, the
/// lowest and the highest that nothing else has, and those that a condition asks of the device.
[[nodiscard]] std::vector<std::int64_t> other_values(const Model& model, StepId id);

/// Where each step of `model` stands after the changes; nothing for one that is taken out.
[[nodiscard]] std::vector<StepId> places_after(const Model& model, const std::vector<Change>& changes);

}  // namespace cairn::verify

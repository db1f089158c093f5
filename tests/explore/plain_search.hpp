/// \file
/// An exploration as short as can be, which forgets of each state whatever a test wants forgotten.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "cairn/property.hpp"
#include "cairn/state.hpp"
#include "cairn/verdict.hpp"

namespace cairn::test {

/// Changes a settled state into the one that shall stand for it.
using Forget = std::function<void(State&)>;

/// Takes out of the events of a settled state those that shall not be taken.
using Choose = std::function<void(const State&, std::vector<Event>&)>;

/// The length of a shortest refutation of `property` (one of 6.1 to 6.6, under the faults of the procedure), or nothing
/// where there is none. Compares each state with all others: for models of some hundred states.
[[nodiscard]] std::optional<std::size_t> plain_search(
    const Model& model, Property property, const Forget& forget,
    const Choose& choose = [](const State&, std::vector<Event>&) {});

}  // namespace cairn::test

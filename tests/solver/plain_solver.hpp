/// \file
/// The port in its plainest form: tries both values, variable by variable. Slow, and easy to believe.
#pragma once

#include <memory>

#include "solver/solver.hpp"

namespace cairn::test {

/// Knows one bound, the effort: it counts the values that it tries.
[[nodiscard]] std::unique_ptr<solver::Solver> make_plain_solver();

}  // namespace cairn::test

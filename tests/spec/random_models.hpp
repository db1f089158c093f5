/// \file
/// Small random models in which much happens: several stacks, clashing numbers, cables across, steps in any order.
#pragma once

#include <random>

#include "support/model_builder.hpp"

namespace cairn::test {

using Random = std::mt19937_64;

/// A number from 0 to n - 1. (The distributions of the standard library differ from one to another.)
[[nodiscard]] std::size_t below(Random& random, std::size_t n);

struct RandomModelIs {
  std::size_t most_devices = 5;
  std::size_t most_steps = 5;
  FaultBudget faults = {};
};

/// The same random numbers give the same model everywhere. The rules of the platform are drawn as well.
[[nodiscard]] Model random_model(Random& random, const RandomModelIs& is);

}  // namespace cairn::test

/// \file
/// Random models in which every rule, verb, condition and fault occurs, for the two writings to be confronted on.
#pragma once

#include "spec/random_models.hpp"

namespace cairn::confront {

using test::below;
using test::Random;

/// True in `percent` of 100 cases.
[[nodiscard]] bool chance(Random& random, std::size_t percent);

/// Any condition on the things of the model (semantics 8), of at most this depth. Demands a step and a cable.
[[nodiscard]] Condition random_condition(Random& random, const Model& model, int depth);

/// A model with a goal, steps of every verb in a random order, and any budget of faults. The same random numbers give
/// the same model everywhere.
[[nodiscard]] Model random_model(Random& random);

}  // namespace cairn::confront

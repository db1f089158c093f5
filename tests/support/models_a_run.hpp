// How many random models a test takes.
#pragma once

#include <cstddef>

#include "support/allocator.hpp"

namespace cairn::test {

/// Of `models` a tenth under the sanitizers, which make each of them about ten times as dear. They look at the code,
/// not at the answers; these are compared without them.
constexpr std::size_t models_a_run(std::size_t models) {
  return allocator_is_replaced ? models / 10 : models;
}

}  // namespace cairn::test

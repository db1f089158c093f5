/// \file
/// How far two words are apart. The known name that is nearest to one: cairn/nearest.hpp.
#pragma once

#include <cstddef>
#include <string_view>

#include "cairn/nearest.hpp"

namespace cairn {

/// How many letters must be put in, taken out, replaced or swapped with their neighbour to turn `a` into `b` (the
/// optimal string alignment distance: no stretch is edited twice). Letters are bytes.
[[nodiscard]] std::size_t edit_distance(std::string_view a, std::string_view b);

}  // namespace cairn

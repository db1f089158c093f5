/// \file
/// The known name that was perhaps meant.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace cairn {

/// The candidate with the smallest edit distance from `word`, the first among equals; a wrong case counts as half an
/// edit in all. Empty when none is near: more than a third of the letters would have to change (at least one and at
/// most four may; of a single letter none). Words of more than 64 letters are near to nothing.
[[nodiscard]] std::string nearest(std::string_view word, std::span<const std::string_view> candidates);

}  // namespace cairn

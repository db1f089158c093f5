/// \file
/// What the commands that settle properties have in common.
#pragma once

#include <string>

#include "cairn/verdict.hpp"

namespace cairn::cli {

/// The exit status of a verdict (docs/format.md).
[[nodiscard]] int status_of(const Report& report);

/// Tells on standard error where cairn contradicts itself, the loudest failure that it has (docs/format.md: 70).
void cry_out(const std::string& file, const Report& report);

}  // namespace cairn::cli

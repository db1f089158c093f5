/// \file
/// The version of cairn and of what it writes.
#pragma once

namespace cairn {

inline constexpr const char* version = "0.1.0";
inline constexpr const char* verdict_schema = "cairn/verdict/1";
inline constexpr const char* why_schema = "cairn/why/1";

}  // namespace cairn

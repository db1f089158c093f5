/// \file
/// How much memory the machine has left for this process.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace cairn {

/// Bytes that can still be used before the kernel has to take some back or end a process: what Linux holds for
/// available
/// (/proc/meminfo), or less where control groups, of version 2 or 1, or a limit on the address space leave less. Pages
/// of files that are not in use count as left. Nothing where the system tells none of it. \param root  put before the
/// paths that are read, for tests
[[nodiscard]] std::optional<std::uint64_t> memory_left(const std::string& root = "");

}  // namespace cairn

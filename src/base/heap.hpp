/// \file
/// How much memory the process has asked for.
#pragma once

#include <cstdint>

namespace cairn {

/// Bytes that the whole process has allocated on the heap and not freed, whoever allocated them: an upper bound of what
/// any part of it holds. 0 where the C library does not tell (only glibc from 2.33 on does), or where its allocator is
/// replaced, as the sanitizers do. Takes longer the more freed blocks there are: for now and then.
[[nodiscard]] std::uint64_t heap_in_use();

}  // namespace cairn

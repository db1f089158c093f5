// Whether the heap is that of the C library, for tests of what counts it.
#pragma once

namespace cairn::test {

/// The sanitizers bring an allocator of their own, of which the C library tells nothing.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
inline constexpr bool allocator_is_replaced = true;
#else
inline constexpr bool allocator_is_replaced = false;
#endif

}  // namespace cairn::test

#include "base/heap.hpp"

#include <cstdlib>  // defines __GLIBC__ where there is one

#if defined(__GLIBC__)
#if __GLIBC_PREREQ(2, 33)
#include <malloc.h>
#define CAIRN_HEAP_IS_TOLD
#endif
#endif

namespace cairn {

std::uint64_t heap_in_use() {
#ifdef CAIRN_HEAP_IS_TOLD
  const struct mallinfo2 info = mallinfo2();
  return info.uordblks + info.hblkhd;  // in the arenas, and in blocks that are mapped by themselves
#else
  return 0;
#endif
}

}  // namespace cairn

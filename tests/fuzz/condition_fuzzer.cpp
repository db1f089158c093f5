#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "inputs.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto fault = cairn::test::try_condition(std::string(reinterpret_cast<const char*>(data), size));
  if (fault.empty()) return 0;
  std::fprintf(stderr, "%s\n", fault.c_str());
  std::abort();
}

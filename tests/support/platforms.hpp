/// \file
/// Every platform there can be, but for ranges and factory values.
#pragma once

#include <functional>

#include "cairn/model.hpp"

namespace cairn::test {

/// Visits every combination of rule values (semantics 7) with every election order that has no key twice.
void for_each_platform(const std::function<void(const Platform&)>& visit);

}  // namespace cairn::test

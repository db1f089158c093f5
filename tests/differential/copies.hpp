/// \file
/// Random models of parts that are copies of one another, handled side by side in the same way: so that devices are
/// alike, or nearly so.
#pragma once

#include "differential/draft.hpp"

namespace cairn::differential {

/// The model of this seed, with faults and properties to ask. In some of them one of the copies differs from the others
/// in one thing. It may be one that the reader refuses.
Draft generate_copies(std::uint64_t seed);

}  // namespace cairn::differential

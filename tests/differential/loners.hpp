/// \file
/// Random models of devices that lead themselves and are joined one after the other, while their ranks change: who wins
/// depends on who has been up longer more often than in procedures that an engineer would write.
#pragma once

#include "differential/draft.hpp"

namespace cairn::differential {

/// The model of this seed, with faults and properties to ask. It may be one that the reader refuses.
Draft generate_loners(std::uint64_t seed);

}  // namespace cairn::differential

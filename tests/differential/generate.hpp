/// \file
/// Random models, the same from the same seed on every machine.
#pragma once

#include "differential/draft.hpp"

namespace cairn::differential {

/// The model of this seed: a careful procedure, spoiled no, one or several times, with faults and properties to ask.
/// It may be one that the reader refuses.
Draft generate(std::uint64_t seed);

}  // namespace cairn::differential

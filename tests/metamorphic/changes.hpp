/// \file
/// Ways to write the same model otherwise. Each says whether it changed anything.
#pragma once

#include "differential/draft.hpp"
#include "differential/random.hpp"

namespace cairn::metamorphic {

/// Every device gets another name; their order stays.
bool rename_devices(differential::Random& random, differential::Draft& draft);

/// What docs/format.md fills in by itself is written out.
bool write_defaults(differential::Draft& draft);

/// Every configuring step of one device names that device as its console (semantics 5.h).
bool write_consoles(differential::Draft& draft);

/// East becomes west and west becomes east, everywhere.
bool exchange_sides(differential::Draft& draft);

/// All numbers, in all three documents, become larger by `distance`.
bool move_numbers(differential::Draft& draft, std::int64_t distance);

/// The site names the ends of its cables the other way round.
bool turn_cables(differential::Draft& draft);

}  // namespace cairn::metamorphic

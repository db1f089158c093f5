/// \file
/// Facts in words, for a person who knows the procedure and no logic.
#pragma once

#include <string>

#include "solver/fact.hpp"

namespace cairn::verify {

/// What the fact says, all of it and no more, as a sentence without capital and full stop: "yard-1 keeps priority 220",
/// "between s2 and s3, where yard-3 is up, it has number 3". \param space  that of the fact
[[nodiscard]] std::string words_of(const system::Space& space, const solver::Fact& fact);

}  // namespace cairn::verify

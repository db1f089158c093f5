/// \file
/// Random conditions over the names of a draft.
#pragma once

#include "differential/draft.hpp"
#include "differential/random.hpp"

namespace cairn::differential {

/// A short way to an atom: atom("follower", {"c"}).
ConditionDraft atom(const std::string& word, const std::vector<std::string>& names, const std::string& sign = "",
                    const std::string& value = "");

/// One of the atoms of semantics 8, about anything in the draft. `done` is left out where no step has an id.
ConditionDraft random_atom(Random& random, Draft& draft);

/// Atoms combined, at most `depth` levels deep.
ConditionDraft random_condition(Random& random, Draft& draft, int depth);

}  // namespace cairn::differential

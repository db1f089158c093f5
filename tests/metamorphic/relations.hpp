/// \file
/// Changes of a model that must not change its verdicts, or change them in one direction only.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cairn/verdict.hpp"
#include "differential/draft.hpp"
#include "differential/random.hpp"

namespace cairn::metamorphic {

/// What must hold between the answers on a model and on the changed one.
enum class Promise {
  identical,      ///< verdicts, vacuity, states and the refutations, event by event
  same_lengths,   ///< verdicts, vacuity, states and the lengths of refutations
  same_verdicts,  ///< verdicts
  no_better,      ///< what was refuted stays refuted
  harder,         ///< what was refuted stays refuted, and no refutation becomes longer
};

struct Relation {
  std::string name;
  Promise promise = Promise::identical;
  /// Changes the draft; false where the change does not apply to it.
  std::function<bool(differential::Random&, differential::Draft&)> change;
};

const std::vector<Relation>& relations();

/// How the answers break the promise; empty where they keep it.
std::string broken(Promise promise, const Report& before, const Report& after);

}  // namespace cairn::metamorphic

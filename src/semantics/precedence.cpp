#include "semantics/precedence.hpp"

#include <cstddef>

namespace cairn::semantics {

Precedence::Precedence(const Procedure& procedure)
    : earlier_(procedure.steps.size(), std::vector<bool>(procedure.steps.size(), false)) {
  const std::size_t count = procedure.steps.size();
  for (std::size_t s = 0; s < count; ++s) {
    for (const StepId p : procedure.steps[s].after) earlier_[s][p.value] = true;
  }
  for (std::size_t via = 0; via < count; ++via) {
    for (std::size_t s = 0; s < count; ++s) {
      if (!earlier_[s][via]) continue;
      for (std::size_t p = 0; p < count; ++p) earlier_[s][p] = earlier_[s][p] || earlier_[via][p];
    }
  }
}

bool Precedence::directly_before(StepId earlier, StepId later) const {
  if (!before(earlier, later)) return false;
  for (std::size_t s = 0; s < earlier_.size(); ++s) {
    if (before(earlier, StepId(s)) && before(StepId(s), later)) return false;
  }
  return true;
}

}  // namespace cairn::semantics

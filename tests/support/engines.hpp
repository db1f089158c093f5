// Options for tests that are not about how verdicts are settled.
#pragma once

#include "cairn/options.hpp"

namespace cairn::test {

/// Exploration alone, of every state, and nothing confirmed by the formulas: quick on many models.
inline ProveOptions exploring() {
  ProveOptions options;
  options.engine = Engine::explore;
  options.confirm_limit = 0;
  options.reductions = Reductions::none();
  return options;
}

}  // namespace cairn::test

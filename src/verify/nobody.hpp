/// \file
/// For whoever settles a state and does not watch.
#pragma once

#include "semantics/settle.hpp"

namespace cairn::verify {

/// Sees nothing.
class Nobody final : public semantics::Watcher {
 public:
  void see(const State&, const semantics::Derived&) override {}
  void foresee(const State&, const semantics::Derived&, const semantics::PassPlan&) override {}
};

}  // namespace cairn::verify

/// \file
/// What the variables of a model can be worth, as far as its text shows: no run is looked at.
#pragma once

#include "cairn/model.hpp"
#include "system/variables.hpp"

namespace cairn::system {

/// The smallest domains that the site's values are in and that no event leaves, as far as the building of the relation
/// shows by itself. With them System::strays is `never` for every variable.
[[nodiscard]] Domains static_domains(const Model& model, const FaultBudget& budget);

/// The same, but every number and every priority may be any that stands somewhere in the site, the steps or the
/// platform's factory values: that a device keeps its own is then a fact that can be told.
[[nodiscard]] Domains stated_domains(const Model& model, const FaultBudget& budget);

}  // namespace cairn::system

/// \file
/// Semantics 6, Properties, as terms: what breaks each of them.
#pragma once

#include "cairn/property.hpp"
#include "cairn/verdict.hpp"
#include "system/settle.hpp"

namespace cairn::system {

/// 6.1 no-split or 6.4 no-clash is broken in one state; the others are broken by no state of this kind.
[[nodiscard]] Term broken_in(Terms& terms, const SymbolicState& s, const Derived& derived, Property property);

/// 6.2 primary-stays or 6.3 members-stay is broken by what settling does next in the stage.
[[nodiscard]] Term broken_by(Terms& terms, const SymbolicState& s, const Pass& pass, Property property);

/// 6.2, 6.3 or 6.5 no-refusal is broken by the event, taken in `s` (settled).
[[nodiscard]] Term broken_by(Terms& terms, const SymbolicState& s, const Derived& derived, const Event& event,
                             Property property);

/// 6.2, vacuity (6.e): a device of `keep` leads.
[[nodiscard]] Term a_kept_device_leads(Terms& terms, const SymbolicState& s);

/// 6.b: the goal holds. Demands that the procedure has one.
[[nodiscard]] Term goal(Terms& terms, const SymbolicState& s, const Derived& derived);

/// 6.a: power fails and returns for all at once, but for the settling that follows.
[[nodiscard]] SymbolicState cold_start(Terms& terms, const SymbolicState& s);

/// What 6.6, 6.7 or 6.8 finds amiss with a settled state at rest.
struct RestBreach {
  Term broken;             ///< the settled state is at rest and breaks the property
  std::vector<Term> lost;  ///< 6.8: free variables, one a cable: it is among the cables that break at once; else empty
  std::vector<Term> breakable;  ///< 6.8: per cable, that it is plugged and unbroken
  Term unfinished;              ///< 6.7: the passes after the cold start were not enough to settle
};
/// Demands that the property is one of the goal.
[[nodiscard]] RestBreach broken_at_rest(Terms& terms, const SymbolicState& s, const Derived& derived,
                                        const AskedProperty& asked, int passes);

}  // namespace cairn::system

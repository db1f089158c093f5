/// \file
/// Semantics 4, Settling, as terms: who yields, who restarts, who leads whom after a pass.
#pragma once

#include <vector>

#include "system/derived.hpp"

namespace cairn::system {

/// 4.4: d comes before e in the platform's election order.
[[nodiscard]] Term outranks(Terms& terms, const SymbolicState& s, DeviceId d, DeviceId e);

/// What one pass decides, per device.
struct Pass {
  std::vector<Term> yields;    ///< 4.1, 4.3.a
  std::vector<Term> restarts;  ///< 4.2.a, 4.2.d, 4.3.b
  /// 4.2: it leads its class from this pass on: the winner of a contest, or the one elected.
  std::vector<Term> chosen;
  /// 4.5.a: it held or restarted a device.
  Term unsettled;
};

/// 4.a: decides one pass over all classes at once, from the state as it is.
[[nodiscard]] Pass plan_pass(Terms& terms, const SymbolicState& s, const Derived& derived);

/// The state after the pass (4.3).
[[nodiscard]] SymbolicState carry_out(Terms& terms, const SymbolicState& s, const Derived& derived, const Pass& pass);

/// 4.5.b: a pass would change nothing. Told by what a settled state looks like: devices that are linked follow the same
/// leader, and every device that is up is together with its leader (proofs/, the lemma of settled states).
[[nodiscard]] Term settled(Terms& terms, const SymbolicState& s, const Derived& derived);

/// One state that settling goes through, with what follows from it.
struct Stage {
  SymbolicState state;
  Derived derived;
  Pass pass;  ///< what happens in it next
};

/// The states from `s` on until all is settled (4.5), `s` among them, and how it ends.
struct Settling {
  std::vector<Stage> stages;
  SymbolicState end;    ///< after the last pass
  Derived end_derived;  ///< of `end`, unless `unfinished`: leaders alone may have changed since the last stage
  Term unfinished;      ///< the last pass was unsettled: more of them are needed
  /// No link forms between the passes, so that 4.5.c bounds them (docs/semantics-questions.md).
  [[nodiscard]] bool bounded() const;
};

/// How many passes are enough after one event (4.5.c), where the platform's rules make it sure; where
/// `side-leads-to: one-neighbour` lets links form between passes, a first guess, of which Settling::unfinished tells
/// whether it was enough.
[[nodiscard]] int passes_enough(const Platform& platform);

/// Demands at least one pass.
[[nodiscard]] Settling settle(Terms& terms, SymbolicState s, int passes);

/// Of a state that is all constants: for as long as it takes, since each unsettled pass takes a device down.
[[nodiscard]] Settling settle_to_the_end(Terms& terms, SymbolicState s);

}  // namespace cairn::system

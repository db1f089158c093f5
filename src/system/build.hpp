/// \file
/// A model as a transition system: a state that may be any, one event with its settling, and what is bad about them.
///
/// An event and its passes are one step (semantics 4.5.c), so that the length of a run counts events. The relation is a
/// function of the state and of the event: `next` is built from the Booleans of `now` and from `happens`, one Boolean
/// an event, of which `one_event` demands that exactly one holds and may happen.
#pragma once

#include <vector>

#include "system/domains.hpp"
#include "system/events.hpp"
#include "system/properties.hpp"
#include "system/settle.hpp"

namespace cairn::system {

/// An event of the relation.
struct Occurrence {
  Event event;
  Term happens;     ///< a free variable
  Term may_happen;  ///< in `now`
  bool stirs;       ///< it can touch a power, a leader or a link, so that passes follow
};

/// The transition relation. Once built, only the pool grows, by the questions that are asked.
struct System {
  /// \param ranges  what `now` ranges over
  System(const Model& model, const FaultBudget& budget, const Domains& ranges, Counting counting = Counting::counted);

  System(const System&) = delete;
  System& operator=(const System&) = delete;

  Space space;
  Terms terms;
  Domains domains;
  int passes;

  /// The initial state settled, and what it went through: all constants.
  Settling first;

  FreeState now;
  Derived now_derived;
  Term settled;  ///< 5: "in a settled state"

  std::vector<Occurrence> events;
  Term one_event;
  Term stirs;           ///< an event that stirs happens
  SymbolicState quiet;  ///< after an event that does not stir: settled as it is
  Derived quiet_derived;
  Settling stirred;    ///< from what an event that stirs leaves
  Term unfinished;     ///< it stirs, and the passes are not enough; `never` where 4.5.c bounds them
  SymbolicState next;  ///< settled

  /// `next` lies outside the domains of `now`, per variable; `never` where it cannot by the way that it is built.
  [[nodiscard]] Term strays(VariableId v);

  /// The property is broken by the event or on the way from it to `next` (4.6), for 6.1 to 6.5.
  [[nodiscard]] Term broken_on_the_way(Property property);
  /// The property is broken in the initial state, before or after it settles: depth zero. A constant.
  [[nodiscard]] Term broken_at_first(Property property);
  /// 6.e: a device of `keep` leads in a state that the event leaves, or in one after a pass (4.6).
  [[nodiscard]] Term kept_device_leads_on_the_way();
  /// 6.e: a device of `keep` leads in the initial state, before or after it settles. A constant.
  [[nodiscard]] Term kept_device_leads_at_first();
  /// 6.6 to 6.8, of `now`, settled.
  [[nodiscard]] RestBreach broken_at_rest(const AskedProperty& asked);
  /// 6.e: `now`, settled, is complete and at rest.
  [[nodiscard]] Term complete_at_rest();
};

/// What the variable `happens` of an event is called: "step s3", "crashed yard-2".
[[nodiscard]] std::string event_name(const Model& model, const Event& event);

}  // namespace cairn::system

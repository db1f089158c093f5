/// \file
/// Devices of which any two may be linked, in a state that may be any.
#pragma once

#include <vector>

#include "questions.hpp"
#include "system/settle.hpp"
#include "system/variables.hpp"

namespace cairn::proofs {

/// What the lemmas differ in.
struct Rules {
  Orphans orphans = Orphans::restart;
  SideLeadsTo side_leads_to = SideLeadsTo::any;
  SettingsFollow settings_follow = SettingsFollow::device;
  std::vector<ElectionKey> election = {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number};
  /// Sides, `enabled` and broken cables are free as well. Else only whether a cable is plugged, so that a link has
  /// formed exactly where it is and both devices are up.
  bool free_ports = false;
  /// All that can happen: a procedure with a step of every verb at the first device, one fault of every kind, and a
  /// second cable for a port.
  bool all_events = false;
};

/// n devices, named d1, d2, …, with a cable between any two, each in ports of its own; addresses ascend. So the
/// formulas of cairn speak about an arbitrary graph on n devices: what is above the formulas (several cables between
/// two devices, ports that are shared) only says which graphs there can be.
class AnyStack {
 public:
  AnyStack(int devices, const Rules& rules);
  AnyStack(const AnyStack&) = delete;
  AnyStack& operator=(const AnyStack&) = delete;

  /// Any values. Member numbers and priorities are from 1 to n: which of them are equal, and which is greater, can be
  /// any relation. Where the election asks for no number, only equality counts, and device i takes one of the first i.
  [[nodiscard]] system::FreeState any(std::string_view prime = "");

  const Model model;
  const system::Space space;
  system::Terms terms;
  /// The orphans rule as part of a file's name.
  const std::string variant;

 private:
  system::Domains domains_;
};

/// The typing of a state, and the laws of all states (semantics 1.b, 2.a; proofs/laws.md).
[[nodiscard]] Given a_state(system::Terms& terms, const system::FreeState& free);
/// Semantics 4.5.b, as cairn's formulas tell it.
[[nodiscard]] Given is_settled(system::Terms& terms, const system::SymbolicState& s, std::string without = "");

/// d follows a leader that is together with it.
[[nodiscard]] system::Term with_its_leader(system::Terms& terms, const system::SymbolicState& s,
                                           const system::Derived& derived, DeviceId d);
/// Every variable of the device has the same value in both.
[[nodiscard]] system::Term same_power_and_leader(system::Terms& terms, const system::SymbolicState& s,
                                                 const system::SymbolicState& t, DeviceId d);

}  // namespace cairn::proofs

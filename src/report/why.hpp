/// \file
/// Reasons, read from a state: why a contest went as it did, why no link forms, what is not saved, what is false.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/state.hpp"
#include "semantics/derived.hpp"

namespace cairn::report {

/// What decided that one device outranks another (semantics 4.4); nothing stands for the address.
[[nodiscard]] std::optional<ElectionKey> deciding_key(const Model& model, const State& s, DeviceId winner,
                                                      DeviceId loser);

/// "its higher priority (220 against 180)", "its longer time up", "its lower number (4 against 7)", "its lower
/// address".
[[nodiscard]] std::string why_outranks(const Model& model, const State& s, DeviceId winner, DeviceId loser);

/// The same of several losers: the values are told of one alone, and nothing where different keys decided.
[[nodiscard]] std::string why_outranks_all(const Model& model, const State& s, DeviceId winner,
                                           const std::vector<DeviceId>& losers);

/// Why a cable is no formed link in `s`, of which `derived` was derived: "port yard-3/t1 is disabled". Every reason
/// that the operator can see, the nearest first. Demands that it is none.
[[nodiscard]] std::vector<std::string> why_no_link(const semantics::World& world, const State& s,
                                                   const semantics::Derived& derived, CableId c);

/// What a start of d would lose or change, or has no effect yet (semantics 8, saved): "the side of yard-3/t1".
[[nodiscard]] std::vector<std::string> unsaved(const Model& model, const State& s, DeviceId d);

/// What makes `condition` false in `s`, as facts: "the number of yard-3 is 1; yard-4 is off". Demands that it is false.
[[nodiscard]] std::string why_false(const semantics::World& world, const State& s, const semantics::Derived& derived,
                                    const Condition& condition);

/// What d is in `s`, as a clause: "yard-3 leads itself", "yard-3 is off".
[[nodiscard]] std::string standing(const Model& model, const State& s, DeviceId d);

/// Another device of d's class with the same number, or nothing.
[[nodiscard]] DeviceId clashes_with(const semantics::Derived& derived, const State& s, DeviceId d);

/// The cables that lead from the class of `a` towards the class of `b` and form no link: of the cables plugged those
/// that join different classes. They are what keeps the two apart.
[[nodiscard]] std::vector<CableId> open_cables(const semantics::World& world, const State& s,
                                               const semantics::Derived& derived, DeviceId a, DeviceId b);

}  // namespace cairn::report

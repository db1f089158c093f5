/// \file
/// A refutation for a person: a table of events, a drawing, what broke, and the way out.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"
#include "report/layout.hpp"
#include "semantics/world.hpp"

namespace cairn::report {

/// One property and the walk that breaks it.
struct Refuted {
  AskedProperty asked;
  Walk walk;  ///< with its breach
};

/// "tolerates-loss=2"
[[nodiscard]] std::string name_with_k(const AskedProperty& asked);

/// How long a refutation is: "7 events, one of them a fault", "a power cut after 15 events", "the loss of 2 cables
/// after 9 events".
[[nodiscard]] std::string length_in_words(Property property, const Trace& events);

/// Who acts, what happens and what changes, of the moment with this number (from 1).
void tell_moment(Page& page, const semantics::World& world, const Moment& moment, std::size_t number);

/// The first events of a refutation, where an earlier section has told them.
struct ToldBefore {
  std::size_t events = 0;  ///< how many of them
  std::string where;       ///< the properties of that section
};

/// Writes one section on properties that break by the same events, of a template in this instance.
void tell_refutation(Page& page, const semantics::World& world, const std::vector<Refuted>& refuted,
                     const std::string& instance, const ToldBefore& told_before, bool with_legend);

}  // namespace cairn::report

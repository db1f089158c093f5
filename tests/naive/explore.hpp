/// \file
/// Every reachable settled state, one after the other, and what section 6 says of them all.
#pragma once

#include <optional>
#include <string>

#include "naive/properties.hpp"

namespace cairn::naive {

/// The answer on one property.
struct Answer {
  AskedProperty asked;
  bool refuted = false;
  Trace preferred;       ///< Refuted: of the shortest the one with the fewest faults, then switches, then the first.
  bool vacuous = false;  ///< 6.e, of a proof
  std::uint64_t explored = 0;  ///< Settled reachable states, the initial one included.
  bool cycle = false;          ///< A state of the exploration can be reached from itself; 5.k says that there is none.
};

/// All answers, and what was found about the text itself.
struct Exploration {
  std::vector<Answer> answers;  ///< In the order asked.
  std::size_t states = 0;       ///< Of the explorations, added up.
  int unsettled_passes = 0;     ///< 4.5.c: the most in a row.
};

/// Answers `asked` under `budget`, or nothing where an exploration has more than `most_states`.
std::optional<Exploration> explore(const Model& model, const FaultBudget& budget,
                                   const std::vector<AskedProperty>& asked, std::size_t most_states);

/// As above, of what the procedure asks for.
std::optional<Exploration> explore(const Model& model, std::size_t most_states);

/// How traces are preferred: shorter, then fewer faults, then fewer switches between actors, then earlier in the file.
bool preferred(const Trace& a, const Trace& b);

/// Walks a refutation: every event may happen, the property breaks at the last one and not before. Empty where it
/// does, else the reason why not.
std::string replay(const Model& model, const FaultBudget& budget, const AskedProperty& asked, const Trace& events);

}  // namespace cairn::naive

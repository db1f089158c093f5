/// \file
/// The library confronted with the reference (tests/naive) on one model.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cairn/verdict.hpp"
#include "differential/draft.hpp"

namespace cairn::differential {

struct Comparison {
  enum class Outcome {
    unreadable,  ///< the reader refuses the model
    too_large,   ///< more states than the reference is asked to visit
    endless,     ///< both find a state that can be reached from itself
    unsettled,   ///< the formulas have too few passes for it, and say so
    agree,
    disagree,
  };
  struct Verdict {
    AskedProperty asked;
    bool refuted = false;
    bool vacuous = false;
    std::optional<Settled::By> settled = {};  ///< how, where constraints were asked
  };

  Outcome outcome = Outcome::agree;
  std::string difference;         ///< disagree: the first difference, in one sentence
  std::vector<Verdict> verdicts;  ///< of the reference, or by constraints
  std::uint64_t states = 0;       ///< that were visited
  std::size_t sets = 0;           ///< reduced sets that were put to the formulas
  std::size_t unclear = 0;        ///< of these, those that stayed unclear
  std::size_t swapped = 0;        ///< explorations in which devices were alike
  bool settles_slowly = false;    ///< more unsettled passes in a row than semantics 4.5.c says
};

/// Models of which one exploration visits more states are left out.
inline constexpr std::size_t most_states = 3000;

/// Compares verdicts, shortest lengths, the preferred refutations themselves, vacuity, the number of states, and every
/// state that the refutations and the run without faults pass through.
Comparison compare(const Model& model);

/// Reads the draft first, and also compares the order of its steps.
Comparison compare(const Draft& draft);

/// The model that the reader makes of the draft, if it takes it.
std::optional<Model> read(const Draft& draft);

/// Events as a person would note them down: "s1, started c, broke a/t2--b/t1".
std::string tell(const Model& model, const Trace& trace);

}  // namespace cairn::differential

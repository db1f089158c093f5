/// \file
/// Many random models in a row.
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

#include "differential/compare.hpp"
#include "differential/generate.hpp"

namespace cairn::differential {

struct Tally {
  struct OfProperty {
    std::size_t asked = 0;
    std::size_t refuted = 0;
    std::size_t vacuous = 0;
    std::size_t by_facts = 0, by_unrolling = 0;  ///< proved so, where constraints were asked
    [[nodiscard]] double refuted_percent() const;
  };
  struct Disagreement {
    std::uint64_t seed = 0;  ///< of the model
    std::string difference;  ///< of the minimal model
    std::string kept_at;     ///< where the minimal model was written
  };

  std::size_t compared = 0;
  std::size_t unreadable = 0;
  std::size_t too_large = 0;
  std::size_t endless = 0;         ///< contrary to semantics 5.k
  std::size_t unsettled = 0;       ///< the formulas have too few passes for them
  std::size_t settles_slowly = 0;  ///< contrary to semantics 4.5.c
  std::uint64_t states = 0;
  std::size_t sets = 0;     ///< reduced sets that were put to the formulas
  std::size_t unclear = 0;  ///< of these, those that stayed unclear
  std::size_t swapped = 0;  ///< models in which devices were alike
  std::array<OfProperty, property_count> properties;
  std::vector<Disagreement> disagreements;

  /// A table for a person.
  [[nodiscard]] std::string text() const;
};

/// What is confronted with what.
struct Contest {
  std::string name;  ///< of the files that are kept
  std::function<Comparison(const Draft&)> compare;
  std::function<Draft(std::uint64_t)> generate = differential::generate;  ///< the model of a seed
};
[[nodiscard]] Contest library_and_reference();
[[nodiscard]] Contest states_and_constraints();
[[nodiscard]] Contest reduced_and_whole();
[[nodiscard]] Contest one_and_several_jobs();
/// Templates against each of their instances (templates.hpp).
[[nodiscard]] Contest templates_and_instances();
/// Reductions on the models of differential/loners.hpp.
[[nodiscard]] Contest reduced_and_whole_of_loners();
/// Reductions on the models of differential/copies.hpp.
[[nodiscard]] Contest reduced_and_whole_of_copies();

/// Reduced sets put to the formulas (reduced_sets.hpp); one that stays unclear counts as a disagreement where `strict`.
[[nodiscard]] Contest reduced_sets_and_formulas(bool strict);
[[nodiscard]] Contest reduced_sets_and_formulas_of_loners(bool strict);

/// Compares `models` random models. Each that shows a disagreement is shrunk and written to `found`; after `enough`
/// disagreements the campaign stops.
Tally run_campaign(const Contest& contest, std::size_t models, std::uint64_t seed, const std::string& found,
                   std::size_t enough = 3);

}  // namespace cairn::differential

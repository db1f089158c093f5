/// \file
/// Many random models in a row.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "differential/compare.hpp"

namespace cairn::differential {

struct Tally {
  struct OfProperty {
    std::size_t asked = 0;
    std::size_t refuted = 0;
    std::size_t vacuous = 0;
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
  std::size_t settles_slowly = 0;  ///< contrary to semantics 4.5.c
  std::size_t states = 0;
  std::array<OfProperty, property_count> properties;
  std::vector<Disagreement> disagreements;

  /// A table for a person.
  [[nodiscard]] std::string text() const;
};

/// Compares `models` random models. Each that shows a disagreement is shrunk and written to `found`; after `enough`
/// disagreements the campaign stops.
Tally run_campaign(std::size_t models, std::uint64_t seed, const std::string& found, std::size_t enough = 3);

}  // namespace cairn::differential

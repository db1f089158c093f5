/// \file
/// What every campaign on random models has to show, as checks of doctest.
#pragma once

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <filesystem>
#include <set>
#include <string>

#include "cairn/load.hpp"
#include "differential/campaign.hpp"

namespace cairn::differential {

/// Where the smallest models of disagreements are kept.
inline const std::string found = std::string(CAIRN_SOURCE_DIR) + "/tests/differential/found";

/// Nothing disagrees, and the models are worth comparing. \param endless_one_in  at most one in so many has an endless
/// run
inline void expect_agreement(const Tally& tally, std::size_t models, std::size_t endless_one_in) {
  fmt::print("{}", tally.text());
  CHECK(tally.compared == models);
  for (const Tally::Disagreement& disagreement : tally.disagreements) {
    FAIL_CHECK(disagreement.difference << "\n  smallest model: " << disagreement.kept_at);
  }
  // Models that are left out must stay the exception, or the figures would speak of tame models only.
  CHECK(tally.too_large * 20 < tally.compared);
  CHECK(tally.unreadable * 10 < tally.compared);
  CHECK(tally.endless * endless_one_in < tally.compared);
  // A property that is nearly always proved, or nearly always refuted, would be compared for nothing.
  for (int i = 0; i < property_count; ++i) {
    CAPTURE(name_of(static_cast<Property>(i)));
    const Tally::OfProperty& of = tally.properties[static_cast<std::size_t>(i)];
    CHECK(of.asked * 2 > tally.compared);
    CHECK(of.refuted_percent() >= 20);
    CHECK(of.refuted_percent() <= 80);
  }
}

/// No model that is kept disagrees. \param compare  Comparison of a Model
template <class Compare>
void expect_agreement_on_kept_models(Compare compare) {
  std::set<std::filesystem::path> models;
  for (const auto& entry : std::filesystem::directory_iterator(found)) {
    if (entry.path().extension() == ".yaml") models.insert(entry.path());
  }
  for (const auto& path : models) {
    CAPTURE(path.string());
    const auto model = load_procedure(path.string(), DiskFiles());
    REQUIRE(model.ok());
    const Comparison comparison = compare(model.value());
    INFO(comparison.difference);
    CHECK(comparison.outcome != Comparison::Outcome::disagree);
    CHECK(comparison.outcome != Comparison::Outcome::too_large);
  }
}

}  // namespace cairn::differential

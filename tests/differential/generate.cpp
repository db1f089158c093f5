#include "differential/generate.hpp"

#include "differential/author.hpp"
#include "differential/spoil.hpp"

namespace cairn::differential {

namespace {

FaultBudget random_budget(Random& random) {
  FaultBudget budget;
  if (random.chance(45)) return budget;
  const auto some = [&] { return random.chance(80) ? 1 : 2; };
  if (random.chance(35)) budget.cable_breaks = some();
  if (random.chance(20)) budget.crashes = some();
  if (random.chance(35)) budget.omissions = some();
  if (random.chance(35)) budget.late_starts = some();
  budget.mends = random.chance(40);
  return budget;
}

std::vector<AskedProperty> random_properties(Random& random) {
  std::vector<AskedProperty> asked;
  const bool all = random.chance(60);
  for (int i = 0; i < property_count; ++i) {
    const auto property = static_cast<Property>(i);
    if (!all && random.coin()) continue;
    const std::int64_t k = property == Property::tolerates_loss ? random.between(1, 3) : 0;
    asked.push_back({property, k});
  }
  if (asked.empty()) asked.push_back({Property::reaches_goal, 0});
  if (random.chance(20)) random.shuffle(asked);
  return asked;
}

}  // namespace

Draft generate(std::uint64_t seed) {
  Random random(seed);
  Draft draft = Author(random).write();
  for (StepDraft* step : all_steps(draft.steps)) {
    if (random.chance(8)) step->id = "mark-" + std::to_string(random.below(10'000));
  }
  const std::size_t mistakes = random.chance(30) ? 0 : 1 + random.below(4);
  for (std::size_t i = 0; i < mistakes; ++i) spoil(random, draft);
  draft.faults = random_budget(random);
  draft.properties = random_properties(random);
  if (!draft.keep && random.chance(20)) {
    std::vector<std::string> keep = device_names(draft);
    random.shuffle(keep);
    keep.resize(1 + random.below(keep.size()));
    draft.keep = keep;
  }
  return draft;
}

}  // namespace cairn::differential

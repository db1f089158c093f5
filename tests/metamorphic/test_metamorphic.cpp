#include <doctest/doctest.h>
#include <fmt/core.h>

#include <filesystem>

#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "differential/compare.hpp"
#include "differential/generate.hpp"
#include "differential/render.hpp"
#include "differential/shrink.hpp"
#include "metamorphic/relations.hpp"
#include "support/engines.hpp"
#include "support/models_a_run.hpp"

using namespace cairn;
using namespace cairn::metamorphic;
using differential::Draft;

namespace {

constexpr std::size_t models_per_relation = test::models_a_run(300);
constexpr std::uint64_t first_seed = 5'000'000;  // not those of tests/differential
constexpr std::uint64_t most_states = 20'000;    // larger models add time, not insight
const std::string found = std::string(CAIRN_SOURCE_DIR) + "/tests/metamorphic/found";

std::optional<Report> answer(const Draft& draft) {
  const auto model = differential::read(draft);
  if (!model) return std::nullopt;
  const auto report = prove(*model, test::exploring());
  REQUIRE(report.ok());
  return report.value();
}

bool small(const Report& report) {
  return std::all_of(report.properties.begin(), report.properties.end(),
                     [](const PropertyVerdict& p) { return p.explored <= most_states; });
}

/// How the relation is broken on the draft; empty where it holds, nothing where it does not apply.
std::optional<std::string> check(const Relation& relation, std::uint64_t seed, const Draft& draft) {
  Draft changed = draft;
  differential::Random random(seed);
  if (!relation.change(random, changed)) return std::nullopt;
  const auto before = answer(draft);
  if (!before || !small(*before)) return std::nullopt;
  const auto after = answer(changed);
  if (!after) return std::nullopt;
  return broken(relation.promise, *before, *after);
}

/// Shrinks, and keeps both sides: found/RELATION/SEED-before.yaml and -after.yaml.
std::string keep(const Relation& relation, std::uint64_t seed, const Draft& draft) {
  const auto shows = [&](const Draft& d) { return !check(relation, seed, d).value_or("").empty(); };
  const Draft before = differential::shrink(draft, shows);
  const std::string why = relation.name + ": " + *check(relation, seed, before);
  Draft after = before;
  differential::Random random(seed);
  relation.change(random, after);
  const std::string directory = found + "/" + relation.name;
  differential::keep_found(after, directory, std::to_string(seed) + "-after", why);
  return differential::keep_found(before, directory, std::to_string(seed) + "-before", why);
}

Report answer_file(const std::string& path) {
  const auto model = load_procedure(path, DiskFiles());
  REQUIRE(model.ok());
  const auto report = prove(model.value(), test::exploring());
  REQUIRE(report.ok());
  return report.value();
}

}  // namespace

TEST_CASE("changes that must not matter do not matter, and harder questions are no easier") {
  for (const Relation& relation : relations()) {
    std::size_t applied = 0;
    std::uint64_t seed = first_seed;
    for (; applied < models_per_relation && seed < first_seed + 20 * models_per_relation; ++seed) {
      const Draft draft = differential::generate(seed);
      const auto how = check(relation, seed, draft);
      if (!how) continue;
      ++applied;
      if (how->empty()) continue;
      FAIL_CHECK(relation.name << ": " << *how << "\n  smallest model: " << keep(relation, seed, draft));
      break;
    }
    CAPTURE(relation.name);
    CHECK(applied * 3 >= models_per_relation);
  }
}

TEST_CASE("pairs of models on which a relation was once broken") {
  for (const Relation& relation : relations()) {
    const std::string directory = found + "/" + relation.name;
    if (!std::filesystem::is_directory(directory)) continue;
    for (const auto& entry : std::filesystem::directory_iterator(directory)) {
      std::string path = entry.path().string();
      const auto place = path.find("-before.yaml");
      if (place == std::string::npos) continue;
      CAPTURE(path);
      const Report before = answer_file(path);
      const Report after = answer_file(path.replace(place, std::string::npos, "-after.yaml"));
      CHECK(broken(relation.promise, before, after) == "");
    }
  }
}

TEST_CASE("three documents say what one says") {
  std::size_t compared = 0;
  for (std::uint64_t seed = first_seed; compared < 100; ++seed) {
    const Draft draft = differential::generate(seed);
    const auto one = answer(draft);
    const auto three = load_procedure(differential::procedure_path, MemoryFiles(differential::render_files(draft)));
    CHECK(one.has_value() == three.ok());
    if (!one || !small(*one)) continue;
    CHECK(broken(Promise::identical, *one, prove(three.value(), test::exploring()).value()) == "");
    ++compared;
  }
}

TEST_CASE("a property asked alone is answered as among others, and a budget counts alike in the file and in the call") {
  std::size_t compared = 0;
  for (std::uint64_t seed = first_seed; compared < 100; ++seed) {
    Draft draft = differential::generate(seed);
    const auto all = answer(draft);
    if (!all || !small(*all)) continue;
    ++compared;
    ProveOptions options = test::exploring();
    options.cable_breaks = draft.faults.cable_breaks;
    options.crashes = draft.faults.crashes;
    options.omissions = draft.faults.omissions;
    options.late_starts = draft.faults.late_starts;
    options.mends = draft.faults.mends;
    draft.faults = {.cable_breaks = 2, .crashes = 1, .omissions = 1, .late_starts = 1, .mends = true};
    const auto model = differential::read(draft);
    for (const PropertyVerdict& among_others : all->properties) {
      options.properties = {among_others.asked};
      const Report alone = prove(*model, options).value();
      REQUIRE(alone.properties.size() == 1);
      CHECK(alone.properties.front().verdict == among_others.verdict);
      CHECK(alone.properties.front().events == among_others.events);
      CHECK(alone.properties.front().vacuous == among_others.vacuous);
    }
  }
}

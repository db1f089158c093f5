// Every procedure gives the verdicts that it states, and every refutation can be walked.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <variant>

#include "cairn/walk.hpp"
#include "models/shelf.hpp"

namespace cairn::test {
namespace {

std::string written(const AskedProperty& asked) {
  std::string text(name_of(asked.property));
  return asked.k == 0 ? text : text + "=" + std::to_string(asked.k);
}

const Expectation* find(const std::vector<Expectation>& expectations, const AskedProperty& asked) {
  const auto found = std::find_if(expectations.begin(), expectations.end(),
                                  [&](const Expectation& expectation) { return expectation.asked == asked; });
  return found == expectations.end() ? nullptr : &*found;
}

bool states_a_refutation(const Heading& heading) {
  return std::any_of(heading.expectations.begin(), heading.expectations.end(),
                     [](const Expectation& expectation) { return expectation.verdict == Verdict::refuted; });
}

void compare(const PropertyVerdict& given, const Expectation& stated) {
  CHECK_MESSAGE(name_of(given.verdict) == name_of(stated.verdict), given.contradiction);
  if (stated.verdict == Verdict::refuted) CHECK(given.events.size() == stated.events);
  if (stated.verdict == Verdict::proved) CHECK(!given.vacuous.empty() == stated.vacuous);
}

}  // namespace

TEST_CASE("a line of expectation is read strictly") {
  const auto read = [](std::string_view text) { return read_expectation(text).has_value(); };
  CHECK(read("no-split proved"));
  CHECK(read("primary-stays proved vacuous"));
  CHECK(read("reaches-goal refuted 16"));
  CHECK(read("tolerates-loss=2 refuted 12"));
  CHECK_FALSE(read("no-split"));
  CHECK_FALSE(read("no-split=1 proved"));
  CHECK_FALSE(read("no-split undecided"));
  CHECK_FALSE(read("no-split proved 3"));
  CHECK_FALSE(read("no-split refuted"));
  CHECK_FALSE(read("no-split refuted soon"));
  CHECK_FALSE(read("no-split refuted 3 times"));
  CHECK_FALSE(read("no-harm proved"));
  CHECK_FALSE(read("tolerates-loss proved"));
  CHECK_FALSE(read("tolerates-loss=0 proved"));
}

TEST_CASE("a procedure gives the verdicts that it states") {
  CHECK(shelf().size() >= 30);
  for (const Proved& proved : shelf()) {
    CAPTURE(proved.path);
    CHECK(proved.heading.malformed.empty());
    CHECK(proved.heading.expectations.size() == proved.report.properties.size());
    for (const PropertyVerdict& given : proved.report.properties) {
      const std::string property = written(given.asked);
      CAPTURE(property);
      const Expectation* stated = find(proved.heading.expectations, given.asked);
      REQUIRE_MESSAGE(stated != nullptr, "nothing is stated about a property that is asked");
      compare(given, *stated);
    }
  }
}

TEST_CASE("every refutation replays") {
  for (const Proved& proved : shelf()) {
    CAPTURE(proved.path);
    for (const PropertyVerdict& given : proved.report.properties) {
      if (given.verdict != Verdict::refuted) continue;
      const std::string property = written(given.asked);
      CAPTURE(property);
      const auto replayed = replay(proved.model, proved.report.faults, given.asked, given.events);
      if (const auto* failure = std::get_if<NotARefutation>(&replayed)) FAIL_CHECK(failure->why);
    }
  }
}

TEST_CASE("a mistake spoils a sound procedure, and nothing else is refuted") {
  for (const Proved& proved : shelf()) {
    CAPTURE(proved.path);
    CHECK(proved.heading.mistake_of.has_value() == states_a_refutation(proved.heading));
    if (!proved.heading.mistake_of) continue;
    const std::string sound = proved.path.substr(0, proved.path.find('/') + 1) + *proved.heading.mistake_of;
    const auto base =
        std::find_if(shelf().begin(), shelf().end(), [&](const Proved& other) { return other.path == sound; });
    REQUIRE_MESSAGE(base != shelf().end(), sound);
    CHECK_FALSE(states_a_refutation(base->heading));
    CHECK(base->report.faults == proved.report.faults);
  }
}

}  // namespace cairn::test

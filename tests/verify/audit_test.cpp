// No claim unaudited: what does not replay is not told as a refutation.
#include "verify/audit.hpp"

#include <doctest/doctest.h>

#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

constexpr Event step(std::uint32_t place) {
  return {Event::Kind::step, place};
}

struct Unplugging {
  Unplugging() {
    const auto yard = b.devices({"yard-1", "yard-2"});
    const auto cables = b.chain(yard);
    b.stack(yard[0], yard);
    b.check(when::always());
    b.unplug(cables[0]);
    b.goal({yard, {}, false, {}, {}});
  }

  PropertyVerdict judged(Property property, Trace events, std::int64_t k = 0) {
    PropertyVerdict verdict;
    verdict.asked = {property, k};
    verify::judge_refutation(b.model(), {}, std::move(events), verdict);
    return verdict;
  }

  bool contradicts(Property property, Trace events, std::int64_t k = 0) {
    const PropertyVerdict verdict = judged(property, std::move(events), k);
    const bool silent = verdict.events.empty() && !verdict.contradiction.empty();
    return verdict.verdict == Verdict::undecided && verdict.reason == Reason::contradiction && silent;
  }

  ModelBuilder b;
};

}  // namespace

TEST_CASE("a refutation that replays is told") {
  const PropertyVerdict verdict = Unplugging().judged(Property::no_split, {step(0), step(1)});
  CHECK(verdict.verdict == Verdict::refuted);
  CHECK(verdict.events == Trace{step(0), step(1)});
}

TEST_CASE("a refutation that does not replay is a contradiction, and nothing is claimed") {
  Unplugging model;
  CHECK(model.contradicts(Property::no_split, {step(1)}));                                  // not its turn
  CHECK(model.contradicts(Property::no_split, {step(0)}));                                  // nothing is broken yet
  CHECK(model.contradicts(Property::no_split, {}));                                         // nor here
  CHECK(model.contradicts(Property::no_split, {step(0), step(1), step(1)}));                // broken before
  CHECK(model.contradicts(Property::no_split, {step(7)}));                                  // no such step
  CHECK(model.contradicts(Property::no_split, {{Event::Kind::broke, 0}}));                  // no budget
  CHECK(model.contradicts(Property::reaches_goal, {step(0)}));                              // not at rest
  CHECK(model.contradicts(Property::survives_cold_start, {step(0), step(1)}));              // no cold start
  CHECK(model.contradicts(Property::survives_cold_start, {{Event::Kind::cold_start, 0}}));  // too early
  CHECK(model.contradicts(Property::tolerates_loss, {step(0), step(1), {Event::Kind::broke, 0}}, 1));  // not plugged
}

TEST_CASE("two proofs agree only where both hold of something, or of nothing for the same reason") {
  const auto proved = [](std::string vacuous, Settled::By by) {
    PropertyVerdict verdict;
    verdict.verdict = Verdict::proved;
    verdict.vacuous = std::move(vacuous);
    verdict.settled.by = by;
    return verdict;
  };
  const auto reconciled = [&](const std::string& by_constraints, const std::string& by_states) {
    PropertyVerdict verdict = proved(by_states, Settled::By::states);
    verify::reconcile(proved(by_constraints, Settled::By::unrolling), verdict);
    return verdict;
  };
  for (const char* why : {"", "no run is complete"}) {
    const PropertyVerdict agreed = reconciled(why, why);
    CHECK(agreed.verdict == Verdict::proved);
    CHECK(agreed.vacuous == why);
    CHECK(agreed.settled.by == Settled::By::unrolling);
    CHECK(agreed.settled.confirmed);
  }
  const PropertyVerdict differing = reconciled("", "no run is complete");
  CHECK(differing.verdict == Verdict::undecided);
  CHECK(differing.reason == Reason::contradiction);
  CHECK(differing.contradiction ==
        "exploration says: proved of nothing (no run is complete); constraints alone say: proved");
  CHECK(differing.vacuous.empty());
  CHECK(reconciled("no run is complete", "").reason == Reason::contradiction);
}

TEST_CASE("where one way has no answer the other stands, and the verdict says that nothing was compared") {
  PropertyVerdict open;
  open.verdict = Verdict::undecided;
  open.reason = Reason::time;
  PropertyVerdict proved;
  proved.verdict = Verdict::proved;
  proved.explored = 7;

  PropertyVerdict by_states = proved;
  verify::reconcile(open, by_states);
  CHECK(by_states.verdict == Verdict::proved);
  CHECK_FALSE(by_states.settled.confirmed);
  CHECK(by_states.settled.not_compared == "constraints alone had not settled it when the time limit was met");

  PropertyVerdict by_constraints = open;
  by_constraints.explored = 3;
  by_constraints.reason = Reason::memory;
  verify::reconcile(proved, by_constraints);
  CHECK(by_constraints.verdict == Verdict::proved);
  CHECK(by_constraints.explored == 3);
  CHECK(by_constraints.settled.not_compared == "exploration had not settled it when the memory limit was met");

  PropertyVerdict neither = open;
  verify::reconcile(open, neither);
  CHECK(neither.verdict == Verdict::undecided);
  CHECK(neither.settled.not_compared.empty());
}

TEST_CASE("a contradiction on one property makes the whole report one") {
  Report report;
  report.properties.resize(2);
  report.properties[0].verdict = Verdict::refuted;
  CHECK_FALSE(report.contradicted());
  verify::claim_nothing("two ways disagree", report.properties[1]);
  CHECK(report.contradicted());
}

// Semantics 6.e by constraints: the same proofs hold of nothing as by states, and where that is not known none is told.
#include "verify/vacuity.hpp"

#include <doctest/doctest.h>

#include <atomic>

#include "cairn/prove.hpp"
#include "support/model_builder.hpp"
#include "support/newcomer.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

constexpr AskedProperty primary_stays{Property::primary_stays, 0};
constexpr AskedProperty no_refusal{Property::no_refusal, 0};
constexpr AskedProperty survives_cold_start{Property::survives_cold_start, 0};
constexpr AskedProperty tolerates_loss{Property::tolerates_loss, 1};

PropertyVerdict told(const Model& model, const AskedProperty& asked, Engine engine) {
  ProveOptions options;
  options.properties = {asked};
  options.engine = engine;
  return prove(model, options).value().properties.front();
}

// The proof by constraints holds of nothing for the reason given, or of something where it is empty; states agree.
void check_vacuity(const Model& model, const AskedProperty& asked, const std::string& why) {
  CAPTURE(name_of(asked.property));
  const PropertyVerdict by_constraints = told(model, asked, Engine::solver);
  CHECK(by_constraints.verdict == Verdict::proved);
  CHECK(by_constraints.vacuous == why);
  CHECK(told(model, asked, Engine::explore).vacuous == why);
  const PropertyVerdict by_both = told(model, asked, Engine::both);
  CHECK(by_both.verdict == Verdict::proved);
  CHECK(by_both.vacuous == why);
  CHECK(by_both.settled.confirmed);
}

// yard-1 leads yard-2; the goal is that they are one stack, and saving is all that is done.
struct Pair {
  Pair() {
    yard = b.devices({"yard-1", "yard-2"});
    b.ring(yard);
    b.stack(yard[0], yard);
    b.goal(goal_of(yard));
  }
  ModelBuilder b;
  std::vector<DeviceId> yard;
};

// Of `keep` only the follower, who never leads.
Model follower_kept() {
  Pair pair;
  pair.b.keep({pair.yard[1]});
  pair.b.save({pair.yard[0]});
  return pair.b.model();
}

}  // namespace

TEST_CASE("6.e primary-stays holds of nothing where no device of keep ever leads") {
  check_vacuity(follower_kept(), primary_stays, "no device of keep ever leads");
  Pair pair;
  pair.b.save({pair.yard[0]});
  check_vacuity(pair.b.model(), primary_stays, "");
}

TEST_CASE("6.e primary-stays holds of something where a device of keep leads in the end") {
  Newcomer newcomer;
  check_vacuity(newcomer.b.model(), primary_stays, "");
  newcomer.b.await(when::primary(newcomer.late));
  check_vacuity(newcomer.b.model(), primary_stays, "");
}

TEST_CASE("6.e primary-stays holds of something where a device of keep leads after a fault alone") {
  const auto with_crash = [](std::int64_t crashes) {
    Pair pair;
    pair.b.platform().orphans = Orphans::carry_on;
    pair.b.keep({pair.yard[1]});
    Model model = pair.b.model();
    model.procedure.faults = {.crashes = crashes};
    return model;
  };
  check_vacuity(with_crash(0), primary_stays, "no device of keep ever leads");
  check_vacuity(with_crash(1), primary_stays, "");
}

TEST_CASE("6.e no-refusal holds of nothing without a step") {
  Pair pair;
  check_vacuity(pair.b.model(), no_refusal, "there is no step");
  pair.b.save({pair.yard[0]});
  check_vacuity(pair.b.model(), no_refusal, "");
}

TEST_CASE("6.e survives-cold-start and tolerates-loss hold of nothing where no run is complete") {
  for (const AskedProperty& asked : {survives_cold_start, tolerates_loss}) {
    check_vacuity(Pair().b.model(), asked, "");
    Pair halted;
    halted.b.check(when::never());
    check_vacuity(halted.b.model(), asked, "no run is complete");
    Pair waiting;
    waiting.b.save({waiting.yard[0]});
    waiting.b.await(when::held(waiting.yard[1]));
    check_vacuity(waiting.b.model(), asked, "no run is complete");
    Pair saved;
    saved.b.save({saved.yard[0]});
    saved.b.await(when::follower(saved.yard[1]));
    check_vacuity(saved.b.model(), asked, "");
  }
}

TEST_CASE("other properties never hold of nothing") {
  CHECK(verify::vacuity(follower_kept(), Property::members_stay, {}).empty());
  CHECK(verify::vacuity(follower_kept(), Property::reaches_goal, {}).empty());
}

TEST_CASE("where a limit ends the search, the verdict is undecided by it, and nothing of the proof is left") {
  const auto settled_within = [](const Limits& limits) {
    PropertyVerdict verdict;
    verdict.asked = primary_stays;
    verdict.verdict = Verdict::proved;
    verdict.settled.by = Settled::By::facts;
    verdict.settled.facts = {"yard-1 stays up"};
    const Model model = follower_kept();
    verify::ByUnrolling unrolling(model, {});
    verify::settle_vacuity(unrolling, limits, verdict);
    return verdict;
  };
  CHECK(settled_within({}).verdict == Verdict::proved);
  CHECK(settled_within({}).settled.facts.size() == 1);

  Limits no_time;
  no_time.seconds = 0;
  const std::atomic<bool> interrupt = true;
  Limits interrupted;
  interrupted.interrupt = &interrupt;
  for (const auto& [limits, reason] : {std::pair(no_time, Reason::time), std::pair(interrupted, Reason::interrupted)}) {
    const PropertyVerdict verdict = settled_within(limits);
    CHECK(verdict.verdict == Verdict::undecided);
    CHECK(verdict.reason == reason);
    CHECK(verdict.vacuous.empty());
    CHECK(verdict.settled.facts.empty());
    CHECK(verdict.settled.by == Settled::By::states);
  }
}

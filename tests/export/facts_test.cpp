// A proof by facts as questions: what is asked, that all of it holds, and that something fails where a fact is missing.
#include "verify/export_facts.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "explore/explore.hpp"
#include "solver/clauses.hpp"
#include "solver/z3_solver.hpp"
#include "support/model_builder.hpp"
#include "support/second_neighbour.hpp"
#include "verify/by_facts.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Fact;
using verify::Draft;
using verify::question_of_start;
using verify::questions_of_facts;

namespace {

bool satisfiable(const system::System& system, const Draft& draft) {
  const auto z3 = solver::make_z3_solver(nullptr);
  solver::Clauses clauses(system.terms, *z3);
  for (const system::Assertion& each : draft.assertions) clauses.require(each.term);
  const solver::Outcome outcome = z3->check({}, {});
  CHECK(outcome != solver::Outcome::unknown);
  return outcome == solver::Outcome::satisfiable;
}

std::vector<std::string> names_of(const std::vector<Draft>& drafts) {
  std::vector<std::string> names;
  for (const Draft& draft : drafts) names.push_back(draft.name);
  return names;
}

// yard-3 is to join a running stack; its priority is lowered before it is cabled.
Model append(std::int64_t lowered_to) {
  ModelBuilder b;
  b.platform().election = {ElectionKey::priority};
  b.platform().side_leads_to = SideLeadsTo::any;
  DeviceIs strong, off;
  strong.priority = 8;
  off.priority = 9;
  off.on = false;
  const DeviceId one = b.device("yard-1", strong);
  const DeviceId two = b.device("yard-2");
  const DeviceId three = b.device("yard-3", off);
  b.cable(b.east(one), b.west(two));
  const CableId run = b.cable(b.east(two), b.west(three), false);
  b.stack(one, {one, two});
  b.power_on(three);
  b.await(when::up(three));
  b.set_priority(three, lowered_to);
  b.save({three});
  b.plug(run);
  b.goal(goal_of({one, two, three}, one));
  return b.model();
}

/// A system over the domains that facts are told in.
struct Bench {
  explicit Bench(Model of) : model(std::move(of)), system(model, {}, system::stated_domains(model, {})) {}
  [[nodiscard]] std::vector<Fact> proof(const AskedProperty& asked) const {
    const semantics::World world(model);
    const explore::Exploration all = explore::explore(world, {}, {asked}, explore::Guard({}, {}));
    verify::ByFacts by_facts(model, {}, {});
    by_facts.see(all);
    const auto answer = by_facts.prove(asked);
    REQUIRE(std::holds_alternative<solver::FactsProof>(answer));
    return std::get<solver::FactsProof>(answer).facts;
  }
  [[nodiscard]] solver::Subject subject() const { return {model, {}, system::stated_domains(model, {})}; }
  Model model;
  system::System system;
};

constexpr AskedProperty primary_stays{Property::primary_stays, 0};
constexpr AskedProperty no_clash{Property::no_clash, 0};
constexpr AskedProperty reaches_goal{Property::reaches_goal, 0};

}  // namespace

TEST_CASE("the obligations of a proof: all answers are the expected ones") {
  Bench bench(append(3));
  const std::vector<Fact> facts = bench.proof(primary_stays);
  REQUIRE(facts.size() >= 2);
  const std::vector<Draft> drafts = questions_of_facts(bench.system, primary_stays, facts);
  for (const Draft& draft : drafts) {
    CAPTURE(draft.name);
    CHECK(satisfiable(bench.system, draft) == draft.satisfiable);
    CHECK_FALSE(draft.says.empty());
    CHECK_FALSE(draft.expected.empty());
  }
  const std::vector<std::string> names = names_of(drafts);
  REQUIRE(names.size() == facts.size() + 5);
  CHECK(names[0] == "first-state-satisfies-the-facts");
  CHECK(names[1] == "start-does-not-break-primary-stays");
  CHECK(names[2] == "some-state-satisfies-the-facts");
  CHECK(names[3] == "some-event-happens-where-the-facts-hold");
  for (std::size_t i = 0; i < facts.size(); ++i) CHECK(names[4 + i].starts_with("event-keeps-"));
  CHECK(names.back() == "facts-exclude-a-breach-of-primary-stays");
}

// The exported questions are those that the prover itself leaves to its judge, cut into pieces.
TEST_CASE("without a fact some answer is another, exactly where the judge finds a hole") {
  Bench bench(append(3));
  const std::vector<Fact> facts = bench.proof(primary_stays);
  std::size_t needed = 0;
  for (std::size_t i = 0; i < facts.size(); ++i) {
    std::vector<Fact> fewer = facts;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    const std::vector<Draft> drafts = questions_of_facts(bench.system, primary_stays, fewer);
    const bool differs = std::ranges::any_of(
        drafts, [&](const Draft& draft) { return satisfiable(bench.system, draft) != draft.satisfiable; });
    const auto judge = solver::make_z3_solver(nullptr);
    const solver::Outcome hole = find_hole(bench.subject(), primary_stays, fewer, *judge, {});
    CAPTURE(i);
    CHECK(differs == (hole == solver::Outcome::satisfiable));
    needed += differs ? 1 : 0;
  }
  CHECK(needed >= 4);
}

TEST_CASE("a fact that does not hold at first, and one that an event loses, are found out") {
  Bench bench(append(3));
  const auto power = [&](std::uint32_t device, Power is) {
    const system::VariableId v = bench.system.space.of_device(system::Variable::Kind::power, DeviceId(device));
    return Fact{{}, Fact::Kind::within, {v, {static_cast<std::int64_t>(is)}}};
  };
  const auto draft_named = [&](const std::vector<Draft>& drafts, const std::string& beginning) {
    const auto found =
        std::ranges::find_if(drafts, [&](const Draft& draft) { return draft.name.starts_with(beginning); });
    REQUIRE(found != drafts.end());
    return *found;
  };
  const std::vector<Draft> never = questions_of_facts(bench.system, primary_stays, {power(2, Power::up)});
  CHECK(satisfiable(bench.system, draft_named(never, "first-state-satisfies-the-facts")));
  const std::vector<Draft> lost = questions_of_facts(bench.system, primary_stays, {power(2, Power::off)});
  CHECK_FALSE(satisfiable(bench.system, draft_named(lost, "first-state-satisfies-the-facts")));
  CHECK(satisfiable(bench.system, draft_named(lost, "event-keeps-1-yard-3-stays-off")));
  CHECK(satisfiable(bench.system, draft_named(never, "facts-exclude-a-breach-of-primary-stays")));
}

TEST_CASE("a property of states at rest has no event in its last question") {
  ModelBuilder b;
  const DeviceId one = b.device("gate-1");
  b.save({one});
  b.goal(goal_of({one}, one));
  Bench bench(b.model());
  const std::vector<Draft> drafts = questions_of_facts(bench.system, reaches_goal, bench.proof(reaches_goal));
  for (const Draft& draft : drafts) {
    CAPTURE(draft.name);
    CHECK(satisfiable(bench.system, draft) == draft.satisfiable);
  }
  const std::vector<std::string> names = names_of(drafts);
  CHECK(std::ranges::count(names, "start-does-not-break-reaches-goal") == 0);
  CHECK(drafts.back().name == "facts-exclude-a-breach-of-reaches-goal");
  CHECK(std::ranges::none_of(drafts.back().assertions,
                             [](const system::Assertion& each) { return each.says == "One event happens."; }));
}

TEST_CASE("where links may form between passes it is asked whether the passes are enough") {
  Bench bench(SecondNeighbour(Orphans::carry_on).b.model());
  REQUIRE(bench.system.unfinished != system::never);
  const std::vector<Draft> drafts = questions_of_facts(bench.system, no_clash, bench.proof(no_clash));
  CHECK(std::ranges::count(names_of(drafts), "passes-are-enough") == 1);
  for (const Draft& draft : drafts) CHECK(satisfiable(bench.system, draft) == draft.satisfiable);
}

TEST_CASE("a start that breaks the property") {
  ModelBuilder b;
  b.devices({"gate-1", "gate-2"});  // two leaders, apart
  Bench bench(b.model());
  const Draft draft = question_of_start(bench.system, {Property::no_split, 0}, true);
  CHECK(draft.name == "start-breaks-no-split");
  CHECK(satisfiable(bench.system, draft));
  CHECK_FALSE(satisfiable(bench.system, question_of_start(bench.system, no_clash, false)));
}

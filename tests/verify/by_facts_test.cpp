// Proofs by facts: what their obligations catch, and when they are not enough.
#include "verify/by_facts.hpp"

#include <doctest/doctest.h>

#include "cairn/prove.hpp"
#include "solver/cadical_solver.hpp"
#include "support/allocator.hpp"
#include "support/model_builder.hpp"
#include "support/second_neighbour.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Fact;
using solver::Outcome;
using Kind = system::Variable::Kind;

namespace {

constexpr AskedProperty primary_stays{Property::primary_stays, 0};
constexpr AskedProperty no_split{Property::no_split, 0};

/// Two stacked devices and a third that is switched on, not cabled to them; faults as wanted.
struct Yard {
  explicit Yard(FaultBudget budget = {}) {
    one = b.device("yard-1", {.priority = 9});
    two = b.device("yard-2");
    three = b.device("yard-3", {.on = false});
    b.cable(b.east(one), b.west(two));
    b.stack(one, {one, two});
    b.power_on(three);
    b.faults(budget);
    model = b.model();
  }
  [[nodiscard]] solver::Subject subject() const {
    const FaultBudget& faults = model.procedure.faults;
    return {model, faults, system::stated_domains(model, faults)};
  }
  [[nodiscard]] Outcome hole(const AskedProperty& asked, const std::vector<Fact>& facts) const {
    return find_hole(subject(), asked, facts, *solver::make_cadical_solver(nullptr), {});
  }
  [[nodiscard]] Fact power(DeviceId d, std::vector<Power> powers) const {
    const system::Space space(model, model.procedure.faults);
    std::vector<std::int64_t> values;
    for (const Power each : powers) values.push_back(static_cast<std::int64_t>(each));
    return solver::within({space.of_device(Kind::power, d), values});
  }
  ModelBuilder b;
  DeviceId one, two, three;
  Model model;
};

bool is_proved(const Yard& yard, const AskedProperty& asked, bool& any_number) {
  verify::ByFacts facts(yard.model, yard.model.procedure.faults, {});
  const auto answer = facts.prove(asked);
  const auto* proof = std::get_if<solver::FactsProof>(&answer);
  any_number = proof != nullptr && proof->any_number;
  return proof != nullptr;
}

}  // namespace

TEST_CASE("the obligations catch a fact that does not hold at first, and one that an event loses") {
  const Yard yard;
  const std::vector<Fact> sound{yard.power(yard.one, {Power::up}), yard.power(yard.two, {Power::up})};
  const Outcome as_it_is = yard.hole(primary_stays, sound);
  std::vector<Fact> wrong_at_first = sound;
  wrong_at_first.push_back(yard.power(yard.three, {Power::up}));
  CHECK(yard.hole(primary_stays, wrong_at_first) == Outcome::satisfiable);
  // It is off at first, and s1 switches it on.
  std::vector<Fact> lost = sound;
  lost.push_back(yard.power(yard.three, {Power::off}));
  CHECK(yard.hole(primary_stays, lost) == Outcome::satisfiable);
  // What adds nothing changes nothing.
  std::vector<Fact> more = sound;
  more.push_back(yard.power(yard.three, {Power::off, Power::starting, Power::up, Power::held}));
  CHECK(yard.hole(primary_stays, more) == as_it_is);
}

TEST_CASE("the obligations catch a property that is broken before any event") {
  ModelBuilder b;
  b.devices({"gate-1", "gate-2"});  // two leaders, apart
  const Model model = b.model();
  const solver::Subject subject{model, {}, system::stated_domains(model, {})};
  CHECK(find_hole(subject, no_split, {}, *solver::make_cadical_solver(nullptr), {}) == Outcome::satisfiable);
}

TEST_CASE("for any number of faults: where their number does not matter") {
  bool any_number = false;
  // However many cables break, nobody restarts.
  CHECK(is_proved(Yard({.cable_breaks = 1}), primary_stays, any_number));
  CHECK(any_number);
  // Nothing is said of faults where none may strike.
  CHECK(is_proved(Yard(), primary_stays, any_number));
  CHECK_FALSE(any_number);
}

TEST_CASE("where a run need not end, nothing is told as proved") {
  ModelBuilder b = SecondNeighbour(Orphans::restart).b;
  const SecondNeighbour names(Orphans::restart);
  b.goal(goal_of({names.d}, names.d));
  for (const std::uint64_t limit : {std::uint64_t{0}, std::uint64_t{1}, std::uint64_t{1'000'000}}) {
    CAPTURE(limit);
    ProveOptions options;
    options.properties = {{Property::no_clash, 0}, {Property::reaches_goal, 0}};
    options.confirm_limit = limit;
    const Report report = prove(b.model(), options).value();
    for (const PropertyVerdict& p : report.properties) CHECK(p.verdict != Verdict::proved);
    CHECK(report.contradicted());
  }
}

TEST_CASE("a limit of memory bounds proofs by facts too" * doctest::skip(allocator_is_replaced)) {
  ModelBuilder b;
  const std::vector<DeviceId> all =
      b.devices({"yard-1", "yard-2", "yard-3", "yard-4", "yard-5", "yard-6", "yard-7", "yard-8"});
  b.chain(all);
  b.stack(all.front(), all);
  b.save({all.front()});
  b.faults({.cable_breaks = 2, .crashes = 1});
  ProveOptions options;
  options.engine = Engine::solver;
  options.properties = {{Property::no_clash, 0}};
  options.limits.megabytes = 1;
  const Report report = prove(b.model(), options).value();
  CHECK(report.properties.front().verdict == Verdict::undecided);
  CHECK(report.properties.front().reason == Reason::memory);
}

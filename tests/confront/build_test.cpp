// A model as a transition system: one event with its settling leads to the same state in both writings, and breaks the
// same on the way; where the ranges are too narrow, `strays` tells.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "confront/relation.hpp"
#include "confront/round.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

/// Leaves values out of the ranges of numbers, priorities and sides.
void narrow(Round& round) {
  for (system::VariableId v = 0; v < round.space.size(); ++v) {
    const auto kind = round.space[v].kind;
    using Kind = system::Variable::Kind;
    const bool setting = (kind >= Kind::number && kind <= Kind::startup_priority) ||
                         (kind >= Kind::enabled && kind <= Kind::operational_side);
    std::vector<std::int64_t>& values = round.domains[v];
    while (setting && values.size() > 1 && chance(round.random, 40)) {
      values.erase(values.begin() + static_cast<std::ptrdiff_t>(below(round.random, values.size())));
    }
  }
}

}  // namespace

TEST_CASE("an event with its settling leads to the same state in both, and breaks the same on the way") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Round round(seed);
    if (seed % 4 == 0) narrow(round);
    const auto counting = seed % 5 == 0 ? system::Counting::uncounted : system::Counting::counted;
    system::System system(round.model, round.model.procedure.faults, round.domains, counting);
    Relation relation(round.world, system, "model " + std::to_string(seed), tally);
    for (int i = 0; i < 48; ++i) {
      const State lively = round.draw(i % 4 == 0 ? Sort::wild : Sort::lively);
      if (!within(round.space, round.domains, lively)) continue;
      State s = lively;
      Course course(round.world);
      course.settle(s);
      relation.answer_state(lively, s == lively);
      relation.answer_state(s, true);
      relation.answer_choice(s, round.random);
      relation.answer_events(s);
    }
    relation.finish();
  }
  tally.erase("unfinished");
  check_both_answers(tally, 100);
  MESSAGE(told(tally));
}

TEST_CASE("4.6: the initial state settles to the same in both, and breaks the same at depth zero") {
  std::array<std::size_t, on_the_way.size()> broken{};
  std::size_t settling = 0, leading = 0;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Round round(seed);
    system::System system(round.model, round.model.procedure.faults, round.domains);
    Course course(round.world);
    State s = semantics::initial_state(round.world, round.model.procedure.faults);
    course.settle(s);
    settling += course.unsettled != 0 ? 1 : 0;
    INFO("model " << seed);
    REQUIRE(system.first.unfinished == system::never);
    REQUIRE(system.first.stages.size() >= course.states.size() - 1);
    for (system::VariableId v = 0; v < round.space.size(); ++v) {
      const auto is = [&](const State& concrete) { return system::Value(round.space.read(concrete, v)); };
      REQUIRE(system.first.end[v] == is(s));
      for (std::size_t i = 0; i < system.first.stages.size(); ++i) {
        REQUIRE(system.first.stages[i].state[v] == is(course.states[std::min(i, course.states.size() - 1)]));
      }
    }
    const bool leads = course.a_kept_device_led();
    REQUIRE(system.kept_device_leads_at_first() == (leads ? system::always : system::never));
    leading += leads ? 1 : 0;
    for (std::size_t i = 0; i < on_the_way.size(); ++i) {
      REQUIRE(system.broken_at_first(on_the_way.at(i)) == (course.broken.at(i) ? system::always : system::never));
      broken.at(i) += course.broken.at(i) ? 1 : 0;
    }
  }
  CHECK(settling > 20);
  CHECK(leading > 20);
  CHECK(leading < 195);
  for (std::size_t i = 0; i < on_the_way.size(); ++i)
    CHECK((broken.at(i) > 10) == (on_the_way.at(i) != Property::no_refusal));
}

TEST_CASE("6.6 to 6.8, 6.e: a system asks of its settled states what rest breaks, and whether they are complete") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    Round round(seed);
    system::System system(round.model, round.model.procedure.faults, round.domains);
    const system::RestBreach goal = system.broken_at_rest({Property::reaches_goal, 0});
    const system::RestBreach cold = system.broken_at_rest({Property::survives_cold_start, 0});
    const system::RestBreach loss = system.broken_at_rest({Property::tolerates_loss, 1});
    std::vector<system::Term> inputs = system.now.booleans;
    inputs.insert(inputs.end(), loss.lost.begin(), loss.lost.end());
    Sheet sheet(system.terms, inputs, tally);
    const auto misses = sheet.ask("6.6", "", goal.broken);
    const auto dies = sheet.ask("6.7", "", cold.broken);
    const auto unfinished = sheet.ask("6.7 unfinished", "", cold.unfinished);
    const auto cut = sheet.ask("6.8", "", loss.broken);
    const auto complete = sheet.ask("6.e complete at rest", "", system.complete_at_rest());
    for (int i = 0; i < 64; ++i) {
      State s = round.draw(Sort::at_rest);
      // A run may be complete, and go on.
      if (i % 4 == 0) semantics::go_down(s, DeviceId(below(round.random, s.devices.size())), Power::starting);
      const semantics::Derived derived = semantics::derive(round.world, s);
      const bool at_rest = rests(round.world, s);
      const bool counts = at_rest && semantics::complete(s);
      round.open(sheet, s);
      sheet.answer(complete, counts);
      sheet.answer(misses, at_rest && semantics::broken_at_rest(round.world, s, derived));
      State end = s;
      semantics::cold_start(round.world, end);
      Course course(round.world);
      course.settle(end);
      const bool more_needed = course.unsettled >= static_cast<std::size_t>(system.passes);
      sheet.answer(unfinished, counts && more_needed);
      if (!more_needed) sheet.answer(dies, counts && semantics::goal_missed(round.world, end, course.derived()));
      const std::vector<CableId> whole = semantics::breakable(s);
      if (whole.empty()) continue;
      const CableId lost = whole[below(round.random, whole.size())];
      State after = s;
      after[lost].broken = true;
      sheet.set(system.now.booleans.size() + lost.value);
      sheet.answer(cut, counts && semantics::goal_stack_apart(round.world, semantics::derive(round.world, after)));
    }
    sheet.finish();
  }
  tally.erase("6.7 unfinished");
  check_both_answers(tally, 100);
  MESSAGE(told(tally));
}

// docs/semantics-questions.md, 1, begun by a step: each of three passes restarts a device, which lets a link form.
TEST_CASE("4.5.c: where links form between passes, `unfinished` tells that they are not enough") {
  test::ModelBuilder b;
  b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  b.platform().orphans = Orphans::carry_on;
  const DeviceId lead = b.device("lead", {.priority = 9});
  std::vector<DeviceId> row;
  for (int i = 0; i < 5; ++i) {
    const Side second = i % 2 == 0 ? Side::east : Side::west;
    row.push_back(
        b.device("d" + std::to_string(i),
                 {.priority = 5 - i, .ports = {{.name = "p", .side = Side::west}, {.name = "q", .side = second}}}));
  }
  const CableId first = b.cable(b.east(lead), b.port(row[0], "p"), false);
  for (std::size_t i = 0; i + 1 < row.size(); ++i) b.cable(b.port(row[i], "q"), b.port(row[i + 1], "p"));
  b.plug(first);
  const Model model = b.model();
  const system::Space space(model, {});
  const system::Domains domains = wide_domains(space);
  system::System system(model, {}, domains);
  const semantics::World world(model);
  Course course(world);
  State s = semantics::initial_state(world, {});
  course.settle(s);
  REQUIRE(system.passes == 3);
  REQUIRE(system.events.front().event == Event{Event::Kind::step, 0});
  std::vector<system::Term> inputs = system.now.booleans;
  for (const system::Occurrence& each : system.events) inputs.push_back(each.happens);
  Tally tally;
  Sheet sheet(system.terms, inputs, tally);
  const auto settled = sheet.ask("settled", "", system.settled);
  const auto unfinished = sheet.ask("unfinished", "", system.unfinished);
  sheet.open(assignment_of(domains, values_of(space, s)), [&] { return told(space, s); });
  sheet.set(system.now.booleans.size());
  sheet.answer(settled, true);
  course.take(s, system.events.front().event);
  REQUIRE(course.unsettled == 3);
  sheet.answer(unfinished, true);
  sheet.finish();
}

TEST_CASE("5: events are called by their kind and place") {
  test::ModelBuilder b;
  const std::vector<DeviceId> devices = b.devices({"yard", "lot"});
  b.chain(devices);
  b.power_off(devices[1]);
  const Model model = b.model();
  CHECK(system::event_name(model, {Event::Kind::step, 0}) == "step s1");
  CHECK(system::event_name(model, {Event::Kind::omitted, 0}) == "omitted s1");
  CHECK(system::event_name(model, {Event::Kind::started, 1}) == "started lot");
  CHECK(system::event_name(model, {Event::Kind::started_late, 0}) == "started-late yard");
  CHECK(system::event_name(model, {Event::Kind::crashed, 1}) == "crashed lot");
  CHECK(system::event_name(model, {Event::Kind::broke, 0}) == "broke yard/e--lot/w");
  CHECK(system::event_name(model, {Event::Kind::mended, 0}) == "mended yard/e--lot/w");
  const FaultBudget faults{1, 0, 0, 0, false};
  const system::System system(model, faults, wide_domains(system::Space(model, faults)));
  for (const system::Occurrence& each : system.events) {
    CHECK(system.terms.name(each.happens.node()) == system::event_name(model, each.event));
  }
}

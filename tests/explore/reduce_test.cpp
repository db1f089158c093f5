// docs/reductions.md: for the subtle points a small model on which forgetting a little more gives another answer.
#include <doctest/doctest.h>

#include <algorithm>

#include "explore/explore.hpp"
#include "explore/leaders.hpp"
#include "explore/plain_search.hpp"
#include "semantics/state.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// The refutation, told by its events; nothing where there is none.
std::optional<Trace> refutation(const Model& model, Property property, const Reductions& reductions) {
  const semantics::World world(model);
  const explore::Guard guard({}, {});
  return explore::explore(world, model.procedure.faults, {{property, 0}}, guard, {.reductions = reductions})
      .answers.front()
      .refutation;
}

/// All that is forgotten leaves what is found as it is, and as a plain search finds it. With orders left out too it is
/// as long. With what `too_much` forgets it is not.
void expect_other_answer(const ModelBuilder& b, Property property, const Forget& too_much) {
  const Model model = b.model();
  const auto whole = refutation(model, property, Reductions::none());
  Reductions forgetting;
  forgetting.orders = false;
  CHECK(refutation(model, property, forgetting) == whole);
  const auto shortest = refutation(model, property, {});
  CHECK(shortest.has_value() == whole.has_value());
  if (shortest && whole) CHECK(shortest->size() == whole->size());
  const auto plain = plain_search(model, property, [](State&) {});
  CHECK(plain.has_value() == whole.has_value());
  if (plain && whole) CHECK(*plain == whole->size());
  CHECK(plain_search(model, property, too_much) != plain);
}

void forget_seniority(State& s) {
  for (DeviceState& d : s.devices) d.seniority = std::min(d.seniority, 1U);
}

/// As though nobody were ever orphaned.
void forget_followers(State& s) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    if (!semantics::leads(s, DeviceId(i))) s.devices[i].seniority = std::min(s.devices[i].seniority, 1U);
  }
}

/// As though who leads now stood between others for good.
Forget forget_while_leading(DeviceId w) {
  return [w](State& s) {
    if (semantics::leads(s, w)) forget_seniority(s);
  };
}

void forget_late_starts(State& s) {
  s.left.late_starts = 0;
}

/// yard-1 leads yard-2 and yard-3 in a chain. When it is gone yard-3 leads, which has been up longer than yard-2.
struct Chain {
  ModelBuilder b;
  DeviceId d[3];
  std::vector<CableId> cables;

  Chain() {
    b.platform().election = {ElectionKey::priority, ElectionKey::tenure};
    b.platform().orphans = Orphans::carry_on;
    const std::int64_t tenure[] = {9, 1, 2};
    for (int i = 0; i < 3; ++i) {
      d[i] = b.device("yard-" + std::to_string(i + 1),
                      {.tenure = tenure[i], .ports = {{"w", Side::west}, {"e", Side::east}, {"s", Side::east}}});
    }
    cables = b.chain({d[0], d[1], d[2]});
    b.stack(d[0], {d[0], d[1], d[2]});
  }
};

}  // namespace

TEST_CASE("4.2.a the order of followers decides who carries on after a step that cuts off their leader") {
  Chain y;
  y.b.goal(goal_of({y.d[1], y.d[2]}, y.d[2]));
  const PortId east = y.b.east(y.d[0]);
  SUBCASE("power-off") {
    y.b.power_off(y.d[0]);
  }
  SUBCASE("restart") {
    y.b.restart(y.d[0]);
  }
  SUBCASE("disable") {
    y.b.disable(east);
  }
  SUBCASE("unplug") {
    y.b.unplug(y.cables[0]);
  }
  SUBCASE("5.f a number that resets the ports") {
    y.b.platform().settings_follow = SettingsFollow::number;
    y.b.set_number(y.d[0], 7);
  }
  SUBCASE("a side at once") {
    y.b.clear_side(east);
  }
  SUBCASE("a side that is applied") {
    y.b.platform().side_takes = SideTakes::on_apply;
    y.b.clear_side(east);
    SUBCASE("to the device") {
      y.b.apply({y.d[0]});
    }
    SUBCASE("to the stack") {
      y.b.apply_stack_of(y.d[2]);
    }
  }
  SUBCASE("3.b a cable of the same side") {
    y.b.platform().side_leads_to = SideLeadsTo::one_neighbour;
    const DeviceId gate = y.b.device("gate-1");
    y.b.plug(y.b.cable(y.b.port(y.d[0], "s"), y.b.west(gate), false));
  }
  expect_other_answer(y.b, Property::reaches_goal, forget_followers);
}

TEST_CASE("4.2.a the order of followers decides who carries on after a fault") {
  Chain y;
  // yard-2 would have to give way to gate-1, if it led.
  const DeviceId gate = y.b.device("gate-1", {.priority = 9});
  y.b.plug(y.b.cable(y.b.port(y.d[1], "s"), y.b.west(gate), false));
  y.b.keep({y.d[1]});
  SUBCASE("a crash") {
    y.b.faults({.crashes = 1});
  }
  SUBCASE("a break") {
    y.b.faults({.cable_breaks = 1});
  }
  expect_other_answer(y.b, Property::primary_stays, forget_followers);
}

TEST_CASE("4.4.b two leaders that a third stands between now may contest later") {
  // yard-1 has been up longer than gate-1, which comes first by its address. It shall never lose.
  Leaders y;
  const DeviceId gate = y.b.device("gate-1", {.priority = 5});
  const DeviceId d = y.add("yard-1");
  y.b.keep({d});
  SUBCASE("after it has become the weaker of them") {
    const DeviceId w = y.add("yard-2", 9);
    y.b.set_priority(w, 1);
    y.plug(d, w);
    y.plug(w, gate);
    expect_other_answer(y.b, Property::primary_stays, forget_while_leading(w));
  }
  SUBCASE("after one of them was the stronger for a while, and took it down") {
    const DeviceId w = y.add("yard-2", 7, 1);
    y.b.set_priority(gate, 9);
    y.plug(w, gate);
    y.b.set_priority(gate, 5);
    y.plug(d, w);
    expect_other_answer(y.b, Property::primary_stays, forget_while_leading(w));
  }
  SUBCASE("after a fourth between them was the stronger for a while, and took it down") {
    const DeviceId v = y.add("yard-2", 1, 1);
    const DeviceId w = y.add("yard-3", 7, 1);
    y.b.set_priority(v, 9);
    y.plug(v, w);
    y.b.set_priority(v, 1);
    y.plug(d, v);
    y.b.await(when::together({d, v, w}));
    y.plug(w, gate);
    expect_other_answer(y.b, Property::primary_stays, forget_while_leading(w));
  }
  SUBCASE("after one that starts between them was the stronger for a while, and took it down") {
    const DeviceId v = y.b.device("yard-2", {.on = false, .priority = 9});
    const DeviceId w = y.add("yard-3", 7, 1);
    y.b.power_on(v);
    y.b.await(when::up(v));
    y.plug(v, w);
    y.b.set_priority(v, 1);
    y.b.save({v});
    y.plug(d, v);
    y.b.await(when::together({d, v, w}));
    y.plug(w, gate);
    expect_other_answer(y.b, Property::primary_stays, forget_while_leading(w));
  }
  SUBCASE("after one of a branch was the stronger for a while, and took it down") {
    const DeviceId v = y.add("yard-2", 9, 1);
    const DeviceId w = y.add("yard-3", 7, 1);
    y.b.plug(y.b.cable(y.b.port(w, "s"), y.b.port(v, "s"), false));
    y.b.set_priority(v, 1);
    y.plug(d, w);
    y.b.await(when::together({d, v, w}));
    y.b.plug(y.b.cable(y.b.east(w), y.b.west(gate), false));
    expect_other_answer(y.b, Property::primary_stays, forget_while_leading(w));
  }
}

TEST_CASE("4.4.b two leaders of whom an await demands that one follows may contest all the same") {
  Leaders y;
  const DeviceId gate = y.b.device("gate-1", {.priority = 5});
  const DeviceId d = y.add("yard-1");
  y.b.keep({d});
  SUBCASE("where it need not") {
    y.b.await(when::any({when::follower(gate), when::up(d)}));
    y.plug(d, gate);
  }
  SUBCASE("after it has followed") {
    const DeviceId lead = y.add("yard-2", 9);
    const CableId cable = y.b.cable(y.b.east(lead), y.b.west(gate));
    y.b.stack(lead, {lead, gate});
    y.b.await(when::follower(gate));
    y.b.unplug(cable);
    y.b.plug(y.b.cable(y.b.east(d), y.b.east(gate), false));
  }
  expect_other_answer(y.b, Property::primary_stays, [&](State& s) {
    if (semantics::leads(s, gate)) forget_seniority(s);
  });
}

TEST_CASE("4.4.a two leaders whose priorities differ may come to one priority") {
  Leaders y;
  const DeviceId gate = y.b.device("gate-1", {.priority = 3});
  const DeviceId d = y.add("yard-1");
  y.b.keep({d});
  y.b.set_priority(gate, 5);
  y.plug(d, gate);
  expect_other_answer(y.b, Property::primary_stays, [&](State& s) {
    if (s[gate].priority != s[d].priority) forget_seniority(s);
  });
}

TEST_CASE("2.k, 5.f settings of a device that is off are read before they are overwritten") {
  ModelBuilder b;
  const DeviceId on = b.device("yard-1");
  const DeviceId off = b.device("gate-1", {.on = false, .number = 8, .next_number = 2, .startup_priority = 9});
  b.goal(goal_of({on}));
  SUBCASE("by an await") {
    b.await(when::priority(off, Sign::equal, 5));
  }
  SUBCASE("by a check") {
    b.check(when::number(off, Sign::equal, 8));
  }
  SUBCASE("by the goal") {
    Goal goal = goal_of({on});
    goal.where = when::number(off, Sign::equal, 8);
    b.goal(goal);
  }
  SUBCASE("by its start, which resets what was filed under another number") {
    b.platform().settings_follow = SettingsFollow::number;
    b.power_on(off);
    b.await(when::up(off));
    b.check(when::priority(off, Sign::equal, b.platform().factory.priority));
  }
  expect_other_answer(b, Property::reaches_goal, [](State& s) {
    for (DeviceState& d : s.devices) {
      if (d.power != Power::off) continue;
      d.number = d.next_number;
      d.priority = d.startup_priority;
    }
  });
}

TEST_CASE("5.c.5 a late start may follow although nobody is starting yet") {
  // yard-2 comes back with a higher priority. Where it starts late it takes yard-1 down.
  ModelBuilder b;
  const DeviceId d = b.device("yard-1");
  const DeviceId e = b.device("yard-2", {.priority = 3, .startup_priority = 9});
  b.keep({d});
  b.platform().orphans = Orphans::carry_on;
  const auto joined = [&] {
    b.cable(b.east(d), b.west(e));
    b.stack(d, {d, e});
  };
  SUBCASE("after a crash") {
    joined();
    b.faults({.crashes = 1, .late_starts = 1});
  }
  SUBCASE("after a step") {
    joined();
    b.restart(e);
    b.faults({.late_starts = 1});
  }
  SUBCASE("5.c.3 after a cable has mended") {
    joined();
    b.faults({.cable_breaks = 1, .late_starts = 1, .mends = true});
  }
  SUBCASE("3.b after another cable has broken, and a link formed in its place") {
    b.platform().side_leads_to = SideLeadsTo::one_neighbour;
    const DeviceId f = b.device("yard-3", {.priority = 1});
    const DeviceId both = b.device("hub-1", {.priority = 5, .ports = {{"w", Side::west}, {"s", Side::west}}});
    b.cable(b.west(both), b.east(e));
    b.cable(b.port(both, "s"), b.east(f));
    b.keep({both});
    b.faults({.cable_breaks = 1, .late_starts = 1});
  }
  expect_other_answer(b, Property::primary_stays, [](State& s) {
    const auto starting = [](const DeviceState& device) { return device.power == Power::starting; };
    if (std::none_of(s.devices.begin(), s.devices.end(), starting)) forget_late_starts(s);
  });
}

TEST_CASE("5.c.5 a late start may follow after orphans have restarted") {
  // yard-3 comes up first and leads; yard-2 comes up late, and gives way to it.
  Chain y;
  y.b.platform().orphans = Orphans::restart;
  y.b.keep({y.d[1]});
  y.b.faults({.cable_breaks = 1, .late_starts = 1});
  expect_other_answer(y.b, Property::primary_stays, [](State& s) {
    if (s.left.cable_breaks > 0) forget_late_starts(s);
  });
}

TEST_CASE("5.c.4 a step that is not ready yet may be omitted later") {
  ModelBuilder b;
  const auto d = b.devices({"yard-1", "yard-2"});
  b.keep({d[1]});
  b.await(when::up(d[0]));
  b.set_priority(d[1], 7);
  b.plug(b.cable(b.east(d[0]), b.west(d[1]), false));
  b.faults({.omissions = 1});
  expect_other_answer(b, Property::primary_stays, [](State& s) {
    if (!s.is_done(StepId(0))) s.left.omissions = 0;
  });
}

// docs/reductions.md, Seniority: for the subtle points a small model on which forgetting a little more gives another
// answer.
#include <doctest/doctest.h>

#include <algorithm>

#include "explore/leaders.hpp"
#include "explore/other_answer.hpp"
#include "semantics/state.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

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

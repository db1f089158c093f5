// docs/reductions.md, Seniority: whose order is kept, and the levels that tell it.
#include "explore/reduce/seniority.hpp"

#include <doctest/doctest.h>

#include "explore/leaders.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// The levels of all devices that are left of the run's state.
std::vector<std::uint32_t> levels(const Run& run) {
  explore::Seniority seniority(run.world());
  State s = run.state();
  seniority.level(s);
  std::vector<std::uint32_t> levels;
  for (const DeviceState& d : s.devices) levels.push_back(d.seniority);
  return levels;
}

using Pairs = std::vector<std::pair<DeviceId, DeviceId>>;

Pairs unasked(const Run& run) {
  return explore::Seniority(run.world()).unasked(run.state());
}

using Levels = std::vector<std::uint32_t>;

}  // namespace

TEST_CASE("4.4.b nothing is kept where the election has no tenure") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2"});
  y.plug(d[0], d[1]);
  CHECK(asks(y.b, d[0], d[1]));
  y.b.platform().election = {ElectionKey::priority};
  CHECK_FALSE(asks(y.b, d[0], d[1]));
  Run run(y.b);
  CHECK(levels(run.settle()) == Levels{1, 1});
}

TEST_CASE("priorities that differ decide before tenure, as long as no step makes them equal") {
  Leaders y;
  const DeviceId d = y.add("yard-1", 7);
  const DeviceId e = y.add("yard-2", 5);
  y.b.unordered();
  y.plug(d, e);
  CHECK_FALSE(asks(y.b, d, e));
  SUBCASE("a step for one") {
    const StepId set = y.b.set_priority(e, 7);
    Run run(y.b);
    CHECK(asks(run.settle(), d, e));
    SUBCASE("that takes at restart") {
      y.b.platform().priority_takes = Takes::at_restart;
      CHECK_FALSE(asks(y.b, d, e));
    }
    SUBCASE("that has been omitted") {
      y.b.faults({.omissions = 1});
      Run omitting(y.b);
      omitting.settle().take(omitted(set));
      CHECK_FALSE(asks(omitting, d, e));
    }
  }
  SUBCASE("a step that makes them differ otherwise") {
    y.b.set_priority(e, 6);
    CHECK_FALSE(asks(y.b, d, e));
  }
  SUBCASE("steps for both") {
    y.b.set_priority(e, 6);
    y.b.set_priority(d, 6);
    CHECK(asks(y.b, d, e));
  }
}

TEST_CASE("numbers that differ decide before tenure where the election says so") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2"});
  y.b.unordered();
  y.plug(d[0], d[1]);
  SUBCASE("before") {
    y.b.platform().election = {ElectionKey::number, ElectionKey::tenure};
    CHECK_FALSE(asks(y.b, d[0], d[1]));
    y.b.set_number(d[1], 1);
    CHECK(asks(y.b, d[0], d[1]));
    y.b.platform().number_takes = Takes::at_restart;
    CHECK_FALSE(asks(y.b, d[0], d[1]));
  }
  SUBCASE("after") {
    y.b.platform().election = {ElectionKey::tenure, ElectionKey::number};
    CHECK(asks(y.b, d[0], d[1]));
  }
}

TEST_CASE("5.f a number that takes at once may reset the priority") {
  Leaders y;
  const DeviceId d = y.add("yard-1", 7);
  const DeviceId e = y.add("yard-2", 5);
  y.b.unordered();
  y.plug(d, e);
  y.b.set_number(e, 9);
  y.b.platform().factory.priority = 7;
  CHECK_FALSE(asks(y.b, d, e));
  y.b.platform().settings_follow = SettingsFollow::number;
  CHECK(asks(y.b, d, e));
  y.b.platform().factory.priority = 6;
  CHECK_FALSE(asks(y.b, d, e));
}

TEST_CASE("4.2 leaders are asked, and followers where they may be orphaned") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3", "gate-1"});
  y.b.cable(y.b.east(d[0]), y.b.west(d[1]));
  y.b.cable(y.b.east(d[1]), y.b.west(d[2]));
  y.b.stack(d[0], {d[0], d[1], d[2]});
  y.b.plug(y.b.cable(y.b.east(d[2]), y.b.west(d[3]), false));
  CHECK(asks(y.b, d[0], d[3]));
  CHECK_FALSE(asks(y.b, d[1], d[2]));
  CHECK_FALSE(asks(y.b, d[0], d[1]));
  CHECK_FALSE(asks(y.b, d[1], d[3]));
  y.b.power_off(d[0]);
  for (std::size_t i = 0; i < d.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) CHECK(asks(y.b, d[i], d[j]));
  }
  SUBCASE("4.2.a orphans that restart are not ranked") {
    y.b.platform().orphans = Orphans::restart;
    CHECK(asks(y.b, d[0], d[3]));
    CHECK_FALSE(asks(y.b, d[1], d[2]));
    CHECK_FALSE(asks(y.b, d[1], d[3]));
  }
}

TEST_CASE("4.3.c a device that is down or held is not asked") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2"});
  y.plug(d[0], d[1]);
  y.b.faults({.crashes = 2});
  const auto in = [&](Power power) {
    Run run(y.b);
    run.settle();
    run.state()[d[1]].power = power;
    run.state()[d[1]].leader = power == Power::up ? d[1] : DeviceId();
    run.state()[d[1]].seniority = power == Power::up || power == Power::held ? 2 : 0;
    return asks(run, d[0], d[1]);
  };
  CHECK(in(Power::up));
  CHECK_FALSE(in(Power::held));
  CHECK_FALSE(in(Power::starting));
  CHECK_FALSE(in(Power::off));
}

TEST_CASE("levels keep the order of every pair that may be asked") {
  Leaders y;
  // yard-4 may come to the priority of the first two and is that of the third.
  const DeviceId d[] = {y.add("yard-1"), y.add("yard-2"), y.add("yard-3", 7), y.add("yard-4", 7)};
  y.b.faults({.crashes = 1});
  SUBCASE("of two priorities") {
    Run run(y.b);
    CHECK(levels(run.settle()) == Levels{1, 2, 1, 2});
  }
  SUBCASE("that are one, or may be") {
    y.b.set_priority(d[3], 5);
    Run run(y.b);
    CHECK(levels(run.settle()) == Levels{1, 2, 1, 3});
  }
}

TEST_CASE("levels keep that two have been up equally long") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3"});
  for (std::size_t i = 0; i + 1 < d.size(); ++i) y.plug(d[i], d[i + 1]);
  Run run(y.b);
  run.settle();
  run.state()[d[2]].seniority = run.state()[d[1]].seniority;
  // yard-2 stands between the others: it outranks yard-3 by its address.
  CHECK(asks(run, d[0], d[1]));
  CHECK(asks(run, d[1], d[2]));
  CHECK_FALSE(asks(run, d[0], d[2]));
  CHECK(levels(run) == Levels{1, 2, 2});
}

TEST_CASE("a pair is unasked where both run, and neither it is asked nor follows from pairs that are") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3", "yard-4"});
  y.plug(d[0], d[1]);
  y.plug(d[1], d[2]);
  Run run(y.b);
  run.settle();
  REQUIRE_FALSE(asks(run, d[0], d[2]));  // yard-2 stands between them
  const Pairs none_reaches_yard_4{{d[0], d[3]}, {d[1], d[3]}, {d[2], d[3]}};
  CHECK(unasked(run) == none_reaches_yard_4);
  SUBCASE("also of two that have been up equally long") {
    run.state()[d[2]].seniority = run.state()[d[1]].seniority;
    CHECK(unasked(run) == none_reaches_yard_4);
  }
  SUBCASE("not of one that is down, whose order is known") {
    run.state()[d[3]].power = Power::starting;
    run.state()[d[3]].leader = {};
    run.state()[d[3]].seniority = 0;
    CHECK(unasked(run).empty());
  }
  SUBCASE("also of one that is held, which stands between nobody any more") {
    run.state()[d[1]].power = Power::held;
    run.state()[d[1]].leader = {};
    CHECK(unasked(run) == Pairs{{d[0], d[1]}, {d[0], d[3]}, {d[1], d[2]}, {d[1], d[3]}, {d[2], d[3]}});
  }
  SUBCASE("all where the election has no tenure") {
    y.b.platform().election = {};
    Run other(y.b);
    CHECK(unasked(other.settle()).size() == 6);
  }
}

TEST_CASE("states that differ in nothing else get the same levels") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3"});
  y.plug(d[0], d[1]);
  Run run(y.b);
  run.settle();
  CHECK(levels(run) == Levels{1, 2, 1});
  run.state()[d[0]].seniority = 2;
  run.state()[d[1]].seniority = 3;
  run.state()[d[2]].seniority = 1;
  CHECK(levels(run) == Levels{1, 2, 1});
  run.state()[d[0]].seniority = 3;
  run.state()[d[1]].seniority = 2;
  CHECK(levels(run) == Levels{2, 1, 1});
}

TEST_CASE("who is down stays out of the order") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3"});
  y.b.restart(d[1]);
  Run run(y.b);
  run.settle().take(step(StepId(0)));
  CHECK(levels(run) == Levels{1, 0, 1});
}

TEST_CASE("who of two comes up first matters where it may ever be asked") {
  Leaders y;
  const DeviceId d = y.add("yard-1");
  const DeviceId e = y.add("yard-2");
  const DeviceId lead = y.add("yard-3", 9, 9);
  const CableId cable = y.b.cable(y.b.east(lead), y.b.port(d, "s"));
  y.b.stack(lead, {lead, d});
  const auto matters = [&] {
    Run run(y.b);
    run.settle();
    return explore::Seniority(run.world()).may_matter(run.state(), d, e);
  };
  CHECK(matters());
  SUBCASE("not where the election has no tenure") {
    y.b.platform().election = {ElectionKey::priority};
    CHECK_FALSE(matters());
  }
  SUBCASE("not where priorities differ whatever comes") {
    Run run(y.b);
    CHECK_FALSE(explore::Seniority(run.world()).may_matter(run.settle().state(), d, lead));
    y.b.set_priority(lead, 5);
    Run setting(y.b);
    CHECK(explore::Seniority(setting.world()).may_matter(setting.settle().state(), d, lead));
  }
  SUBCASE("not where one of them has to follow before they meet") {
    y.b.await(when::follower(d));
    y.plug(d, e);
    CHECK_FALSE(matters());
    SUBCASE("but where it may be orphaned after that") {
      y.b.unplug(cable);
      CHECK(matters());
    }
  }
}

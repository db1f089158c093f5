// docs/reductions.md, Seniority: who do not meet, and who stands between two.
#include "explore/reduce/meetings.hpp"

#include <doctest/doctest.h>

#include "explore/leaders.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("leaders meet over cables that carry a link now or may later") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2"});
  CHECK_FALSE(asks(y.b, d[0], d[1]));
  const CableId cable = y.cable(d[0], d[1]);
  CHECK_FALSE(asks(y.b, d[0], d[1]));
  SUBCASE("one that a step will plug") {
    y.b.plug(cable);
    CHECK(asks(y.b, d[0], d[1]));
  }
  SUBCASE("one that is plugged, and a port that is not enabled yet") {
    y.b.cable(y.b.port(d[0], "s"), y.b.port(d[1], "s"));
    Run run(y.b);
    run.state()[y.b.port(d[0], "s")].enabled = false;
    CHECK(asks(run.settle(), d[0], d[1]));
  }
  SUBCASE("one that is broken") {
    y.b.plug(cable);
    Run run(y.b);
    run.settle();
    run.state()[cable].broken = true;
    CHECK_FALSE(asks(run, d[0], d[1]));
    run.state().left.mends = true;
    CHECK(asks(run, d[0], d[1]));
  }
}

TEST_CASE("who outranks one of two stands between them") {
  const auto between = [](std::int64_t priority) {
    Leaders y;
    const DeviceId d = y.add("yard-1");
    const DeviceId w = y.add("yard-2", priority);
    const DeviceId e = y.add("yard-3");
    y.plug(d, w);
    y.plug(w, e);
    return asks(y.b, d, e);
  };
  CHECK_FALSE(between(9));  // by priority
  CHECK_FALSE(between(5));  // by tenure, which is kept: yard-3 is junior
  CHECK(between(1));
}

TEST_CASE("whoever follows one that outranks two stands between them for it") {
  Leaders y;
  const DeviceId d = y.add("yard-1");
  const DeviceId w = y.add("yard-2", 9);
  const DeviceId v = y.add("yard-3", 1);
  const DeviceId e = y.add("yard-4");
  y.b.cable(y.b.east(w), y.b.west(v));
  y.plug(d, w);
  y.plug(v, e);
  y.b.stack(w, {w, v});
  CHECK_FALSE(asks(y.b, d, e));
}

TEST_CASE("nobody stands where the rank of one on the way may change") {
  Leaders y;
  const DeviceId d = y.add("yard-1");
  const DeviceId u = y.add("yard-2", 1);
  const DeviceId w = y.add("yard-3", 9);
  const DeviceId e = y.add("yard-4");
  const DeviceId elsewhere = y.add("gate-1");
  y.b.unordered();
  y.plug(d, u);
  y.plug(u, w);
  y.plug(w, e);
  CHECK_FALSE(asks(y.b, d, e));
  StepId change;
  SUBCASE("of one of the two") {
    change = y.b.set_priority(d, 4);
  }
  SUBCASE("of the other") {
    change = y.b.set_priority(e, 4);
  }
  SUBCASE("of one on the way") {
    change = y.b.set_priority(u, 4);
  }
  SUBCASE("of the one that would stand there") {
    change = y.b.set_priority(w, 8);
  }
  SUBCASE("by its number") {
    y.b.platform().election = {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number};
    change = y.b.set_number(u, 50);
  }
  if (change) {
    CHECK(asks(y.b, d, e));
    y.b.faults({.omissions = 1});
    Run run(y.b);
    run.settle().take(omitted(change));
    CHECK_FALSE(asks(run, d, e));
  }
  SUBCASE("but of one elsewhere") {
    y.b.set_priority(elsewhere, 4);
    CHECK_FALSE(asks(y.b, d, e));
  }
}

TEST_CASE("nobody stands where devices branch") {
  Leaders y;
  const DeviceId d = y.add("yard-1");
  const DeviceId w = y.add("yard-2", 9);
  const DeviceId v = y.add("yard-3", 1);
  const DeviceId e = y.add("yard-4");
  const DeviceId gate = y.add("gate-1", 1);
  y.plug(d, w);
  y.plug(w, v);
  y.plug(v, e);
  CableId branch;
  SUBCASE("the one that would stand there") {
    branch = y.b.cable(y.b.port(w, "s"), y.b.west(gate), false);
  }
  SUBCASE("one on the way") {
    branch = y.b.cable(y.b.port(v, "s"), y.b.west(gate), false);
  }
  if (branch) {
    CHECK_FALSE(asks(y.b, d, e));  // nobody plugs it
    y.b.plug(branch);
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("two cables to one neighbour are no branch") {
    y.b.plug(y.b.cable(y.b.port(w, "s"), y.b.port(v, "s"), false));
    CHECK_FALSE(asks(y.b, d, e));
  }
}

TEST_CASE("whom no way joins do not meet, whoever branches") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3", "yard-4", "yard-5"});
  for (const DeviceId e : {d[1], d[2], d[3]}) {
    y.b.plug(y.b.cable(y.b.port(d[0], e == d[1] ? "w" : e == d[2] ? "e" : "s"), y.b.west(e), false));
  }
  CHECK(asks(y.b, d[1], d[2]));
  CHECK_FALSE(asks(y.b, d[0], d[4]));
  CHECK_FALSE(asks(y.b, d[1], d[4]));
}

TEST_CASE("somebody has to stand on either way round a ring") {
  const auto ring = [](std::int64_t one, std::int64_t other) {
    Leaders y;
    const DeviceId d = y.add("yard-1");
    const DeviceId w = y.add("yard-2", one);
    const DeviceId e = y.add("yard-3");
    const DeviceId v = y.add("yard-4", other);
    y.plug(d, w);
    y.plug(w, e);
    y.plug(e, v);
    y.plug(v, d);
    return asks(y.b, d, e);
  };
  CHECK_FALSE(ring(9, 9));
  CHECK(ring(9, 1));
  CHECK(ring(1, 9));
  CHECK(ring(1, 1));
}

TEST_CASE("who has to follow before two meet does not contest with the other") {
  Leaders y;
  const DeviceId d = y.add("yard-1");
  const DeviceId e = y.add("yard-2");
  const DeviceId v = y.add("yard-3", 1);
  const CableId cable = y.cable(d, e);
  SUBCASE("the await comes before the plug") {
    SUBCASE("of the one") {
      y.b.await(when::follower(d));
    }
    SUBCASE("of the other") {
      y.b.await(when::follower(e));
    }
    SUBCASE("with more") {
      y.b.await(when::all({when::up(e), when::all({when::follower(d)})}));
    }
    y.b.plug(cable);
    CHECK_FALSE(asks(y.b, d, e));
  }
  SUBCASE("some alternative of the await does not demand it") {
    y.b.await(when::any({when::follower(d), when::up(e)}));
    y.b.plug(cable);
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("the await demands that it does not follow") {
    y.b.await(when::no(when::follower(d)));
    y.b.plug(cable);
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("another one follows") {
    y.b.await(when::follower(v));
    y.b.plug(cable);
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("the plug comes before the await") {
    y.b.plug(cable);
    y.b.await(when::follower(d));
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("the plug waits for nothing") {
    y.b.unordered();
    y.b.plug(cable);
    y.b.await(when::follower(d));
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("another way leads there before") {
    y.plug(e, v);
    y.b.plug(y.b.cable(y.b.port(v, "s"), y.b.port(d, "s"), false));
    y.b.await(when::follower(d));
    y.b.plug(cable);
    CHECK(asks(y.b, d, e));
  }
  SUBCASE("a cable is plugged, and a port not enabled yet") {
    const PortId port = y.b.port(d, "s");
    y.b.cable(port, y.b.port(e, "s"));
    y.b.await(when::follower(d));
    Run run(y.b);
    run.state()[port].enabled = false;
    CHECK(asks(run.settle(), d, e));
  }
}

TEST_CASE("an await that is done demands nothing any more") {
  Leaders y;
  const DeviceId d = y.add("yard-1");
  const DeviceId e = y.add("yard-2");
  const DeviceId lead = y.add("gate-1", 9);
  const CableId both = y.b.cable(y.b.east(lead), y.b.port(d, "s"));
  y.b.stack(lead, {lead, d});
  y.b.await(when::follower(d));
  y.b.unplug(both);  // then d leads again, without a start
  y.plug(d, e);
  Run run(y.b);
  run.settle().take(step(StepId(0)));
  run.take(step(StepId(1)));
  REQUIRE(run.leader(d) == d);
  CHECK(asks(run, d, e));
}

TEST_CASE("whose order is not kept stands in nobody's way") {
  Leaders y;
  const DeviceId e = y.add("yard-1");
  const DeviceId w = y.add("yard-2");
  const DeviceId d = y.add("yard-3");
  y.plug(w, e);
  y.b.await(when::follower(w));
  y.plug(d, w);
  CHECK(asks(y.b, w, e));
  CHECK_FALSE(asks(y.b, d, w));
  CHECK(asks(y.b, d, e));
}

// Semantics 4.1, Clash.
#include "spec/class_of_devices.hpp"

using namespace cairn;
using namespace cairn::test;

TEST_CASE("4.1.a a fresh device yields to one that is not, whatever its rank") {
  const Class k({{.number = 3, .priority = 1}, {.number = 3, .priority = 9}});
  const auto plan = k.plan({0, -1});
  CHECK(plan.held == Ids{k.d[1]});
  CHECK(plan.restarted.empty());
  CHECK(plan.admitted.empty());
}

TEST_CASE("4.1.a a device that is not fresh does not yield to a fresh one") {
  const Class k({{.number = 3, .priority = 1}, {.number = 3, .priority = 9}});
  CHECK(k.plan({-1, 1}).held == Ids{k.d[0]});
}

TEST_CASE("4.1.a a fresh device yields to an orphan too, where orphans carry on and where they restart") {
  // d1 follows d3, which is elsewhere.
  Class k({{.number = 3}, {.number = 3}, {.number = 5}});
  k.b.device("elsewhere");
  k.b.platform().orphans = Orphans::carry_on;
  CHECK(k.plan({-1, 3, 3, 3}).held == Ids{k.d[0]});
  k.b.platform().orphans = Orphans::restart;
  CHECK(k.plan({-1, 3, 3, 3}).held == Ids{k.d[0]});
  CHECK(k.plan({-1, 3, 3, 3}).restarted == Ids{k.d[1], k.d[2]});
}

TEST_CASE("4.1.b of two fresh devices the one that is outranked yields") {
  const Class k({{.number = 3, .priority = 2}, {.number = 3, .priority = 6}, {.number = 4, .priority = 1}});
  const auto plan = k.plan({-1, -1, -1});
  CHECK(plan.held == Ids{k.d[0]});
  CHECK(plan.admitted == Admitted{{k.d[1], k.d[1]}, {k.d[2], k.d[1]}});
}

TEST_CASE("4.1.b of three fresh devices all but the best yield, and beside a leader as well") {
  const Class k({{.number = 3, .priority = 4}, {.number = 3, .priority = 6}, {.number = 3, .priority = 5}});
  CHECK(k.plan({-1, -1, -1}).held == Ids{k.d[0], k.d[2]});
  const Class led({{.number = 1}, {.number = 3, .priority = 4}, {.number = 3, .priority = 6}});
  const auto plan = led.plan({0, -1, -1});
  CHECK(plan.held == Ids{led.d[1]});
  CHECK(plan.admitted == Admitted{{led.d[2], led.d[0]}});
}

TEST_CASE("4.1.c a device of the loser's stack yields to one of the winner's with the same number") {
  // d0 leads d1 and wins; d3 leads d2. d1 and d2 clash.
  const Class k({{.number = 1, .priority = 9}, {.number = 5}, {.number = 5}, {.number = 2, .priority = 1}});
  const auto plan = k.plan({0, 0, 3, 3});
  CHECK(plan.held == Ids{k.d[2]});
  CHECK(plan.restarted == Ids{k.d[3]});
}

TEST_CASE("4.1.c the losing leader itself yields") {
  const Class k({{.number = 5, .priority = 9}, {.number = 5, .priority = 1}});
  const auto plan = k.plan({0, 1});
  CHECK(plan.held == Ids{k.d[1]});
  CHECK(plan.restarted.empty());
}

TEST_CASE("4.1.c two losers that clash with each other both yield") {
  const Class k({{.number = 1, .priority = 9}, {.number = 5, .priority = 4}, {.number = 5, .priority = 3}});
  const auto plan = k.plan({0, 1, 2});
  CHECK(plan.held == Ids{k.d[1], k.d[2]});
}

TEST_CASE("4.1.d an orphan yields to a device whose leader is present") {
  // d1 follows d2, which is elsewhere; d0 leads.
  ModelBuilder b;
  const DeviceId leading = b.device("leading", {.number = 5, .priority = 1});
  const DeviceId orphan = b.device("orphan", {.number = 5, .priority = 9});
  const DeviceId elsewhere = b.device("elsewhere");
  b.chain({leading, orphan});
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    b.platform().orphans = orphans;
    Run run(b);
    run.state()[orphan].leader = elsewhere;
    CHECK(run.plan().held == Ids{orphan});
    CHECK(run.plan().restarted.empty());
  }
}

TEST_CASE("4.1.d a device whose leader is present does not yield to an orphan") {
  Class k({{.number = 1, .priority = 9}, {.number = 5}, {.number = 5}, {.number = 2, .priority = 1}});
  const DeviceId elsewhere = k.b.device("elsewhere");
  // d3 leads d2 and loses against d0; d1 is an orphan. d2 restarts, d1 yields to it.
  const auto plan = k.plan({0, static_cast<int>(elsewhere.value), 3, 3, 4});
  CHECK(plan.held == Ids{k.d[1]});
  CHECK(plan.restarted == Ids{k.d[2], k.d[3]});
}

TEST_CASE("4.1.e two that follow the same leader do not yield to each other") {
  const Class k({{.number = 1, .priority = 9}, {.number = 5}, {.number = 5}, {.number = 1}});
  const auto plan = k.plan({0, 0, 0, 0});
  CHECK(plan.changes_nothing());
}

TEST_CASE("4.1.e two losers of one stack do not yield to each other: they restart") {
  const Class k({{.number = 1, .priority = 9}, {.number = 5}, {.number = 5}, {.number = 2}});
  const auto plan = k.plan({0, 3, 3, 3});
  CHECK(plan.held.empty());
  CHECK(plan.restarted == Ids{k.d[1], k.d[2], k.d[3]});
}

TEST_CASE("4.1.e two whose leaders are both elsewhere do not yield to each other") {
  Class k({{.number = 5, .priority = 3}, {.number = 5, .priority = 9}});
  k.b.device("elsewhere");
  k.b.device("elsewhere too");
  for (const auto& leaders : {std::vector<int>{2, 3, 2, 3}, std::vector<int>{2, 2, 2, 3}}) {
    k.b.platform().orphans = Orphans::carry_on;
    CHECK(k.plan(leaders).held.empty());
    CHECK(k.plan(leaders).admitted == Admitted{{k.d[0], k.d[1]}, {k.d[1], k.d[1]}});
    k.b.platform().orphans = Orphans::restart;
    CHECK(k.plan(leaders).held.empty());
    CHECK(k.plan(leaders).restarted == k.d);
  }
}

TEST_CASE("4.1 the number in force counts, within one class, of two devices") {
  SUBCASE("the next number does not clash") {
    const Class k({{.number = 3}, {.number = 4, .next_number = 3}});
    CHECK(k.plan({0, -1}).held.empty());
    const Class turned({{.number = 4, .next_number = 3}, {.number = 3}});
    CHECK(turned.plan({0, -1}).held.empty());
  }
  SUBCASE("a device elsewhere does not clash") {
    ModelBuilder b;
    b.device("here", {.number = 3});
    b.device("there", {.number = 3});
    CHECK(Run(b).plan().held.empty());
  }
  SUBCASE("a device does not clash with itself") {
    const Class k({DeviceIs{.number = 3}});
    CHECK(k.plan({-1}).held.empty());
  }
}

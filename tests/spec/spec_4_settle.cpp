// Semantics 4, Settling. States that no short run leads to are arranged by hand: a pass is computed from any state.
#include <utility>

#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::outranks;

namespace {

using Ids = std::vector<DeviceId>;

/// What one pass does with the devices of one class, every one of them up and linked in a chain.
struct Class {
  ModelBuilder b;
  Ids d;

  explicit Class(const std::vector<DeviceIs>& devices) {
    for (std::size_t i = 0; i < devices.size(); ++i) d.push_back(b.device("d" + std::to_string(i), devices[i]));
    b.chain(d);
  }

  /// `leaders[i]` is the device that device i of the model follows, by place; -1 is none.
  [[nodiscard]] semantics::PassPlan plan(const std::vector<int>& leaders) const {
    Run run(b);
    for (std::size_t i = 0; i < leaders.size(); ++i) {
      run.state().devices[i].leader = leaders[i] < 0 ? DeviceId() : DeviceId(static_cast<std::size_t>(leaders[i]));
    }
    return run.plan();
  }
};

using Admitted = std::vector<std::pair<DeviceId, DeviceId>>;

}  // namespace

// 4.1 Clash.

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

// 4.2 Contest.

namespace {

/// d0 - d1 - d2, of which d0 and d2 follow a device elsewhere and d1 is fresh.
struct Bereaved : Class {
  explicit Bereaved(Orphans orphans)
      : Class({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 3, .priority = 4}}) {
    b.device("elsewhere");
    b.platform().orphans = orphans;
  }
};

}  // namespace

TEST_CASE("4.2.a carry-on: the best-ranked orphan becomes the leader of all, fresh ones too") {
  const Bereaved k(Orphans::carry_on);
  const auto plan = k.plan({3, -1, 3, 3});
  CHECK_FALSE(plan.unsettled());
  CHECK(plan.admitted == Admitted{{k.d[0], k.d[2]}, {k.d[1], k.d[2]}, {k.d[2], k.d[2]}});
}

TEST_CASE("4.2.a restart: every orphan restarts and the fresh ones wait for the next pass") {
  const Bereaved k(Orphans::restart);
  const auto plan = k.plan({3, -1, 3, 3});
  CHECK(plan.restarted == Ids{k.d[0], k.d[2]});
  CHECK(plan.held.empty());
  CHECK(plan.admitted.empty());
}

TEST_CASE("4.2.a an orphan leads although the primary that it followed is only cut off, not gone") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c"});
  const auto cables = b.chain(d);
  b.stack(d[0], d);
  b.faults({.cable_breaks = 1});
  b.platform().orphans = Orphans::carry_on;
  Run run(b);
  run.settle();
  run.take(broke(cables[0]));
  CHECK(run.leader(d[0]) == d[0]);
  CHECK(run.leader(d[1]) == d[1]);
  CHECK(run.leader(d[2]) == d[1]);
}

TEST_CASE("4.2.b all fresh: the best-ranked becomes the leader of all that do not yield") {
  const Class k({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 2, .priority = 4}});
  const auto plan = k.plan({-1, -1, -1});
  CHECK(plan.held == Ids{k.d[2]});
  CHECK(plan.admitted == Admitted{{k.d[0], k.d[1]}, {k.d[1], k.d[1]}});
}

TEST_CASE("4.2.b a fresh device alone leads itself") {
  const Class k({DeviceIs{.number = 1}});
  CHECK(k.plan({-1}).admitted == Admitted{{k.d[0], k.d[0]}});
}

TEST_CASE("4.2.c the best-ranked leader present wins, fresh devices follow it") {
  const Class k({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 3, .priority = 4}});
  const auto plan = k.plan({0, -1, 2});
  CHECK(plan.admitted == Admitted{{k.d[1], k.d[2]}});
  CHECK(plan.restarted == Ids{k.d[0]});
}

TEST_CASE("4.2.c followers are no candidates, whatever their rank") {
  const Class k({{.number = 1, .priority = 3}, {.number = 2, .priority = 9}, {.number = 3, .priority = 4}});
  CHECK(k.plan({0, 0, 2}).restarted == Ids{k.d[0], k.d[1]});
}

TEST_CASE("4.2.d the loser's whole stack restarts as far as it is in the class, and orphans with it") {
  Class k({{.number = 1, .priority = 9},
           {.number = 2},
           {.number = 3, .priority = 1},
           {.number = 4},
           {.number = 5},
           {.number = 6}});
  const DeviceId elsewhere = k.b.device("elsewhere");
  const auto e = static_cast<int>(elsewhere.value);
  // d2 leads d3 and the device elsewhere, d4 is an orphan, d5 is fresh. What the device elsewhere does, it does as an
  // orphan of its own class.
  const auto plan = k.plan({0, 0, 2, 2, e, -1, 2});
  CHECK(plan.restarted == Ids{k.d[2], k.d[3], k.d[4]});
  CHECK(plan.admitted == Admitted{{k.d[5], k.d[0]}, {elsewhere, elsewhere}});
  k.b.platform().orphans = Orphans::restart;
  CHECK(k.plan({0, 0, 2, 2, e, -1, 2}).restarted == Ids{k.d[2], k.d[3], k.d[4], elsewhere});
}

TEST_CASE("4.2.d a loser that yields is held and does not restart") {
  const Class k({{.number = 1, .priority = 9}, {.number = 1, .priority = 3}, {.number = 2}});
  const auto plan = k.plan({0, 1, 1});
  CHECK(plan.held == Ids{k.d[1]});
  CHECK(plan.restarted == Ids{k.d[2]});
}

TEST_CASE("4.a a pass looks at all classes at once, and is computed from the state as it is") {
  // Two classes, in each a contest.
  ModelBuilder b;
  const auto d = b.devices({"a", "b", "c", "d"});
  b.chain({d[0], d[1]});
  b.chain({d[2], d[3]});
  const Run run(b);
  CHECK(run.plan().restarted == Ids{d[1], d[3]});
}

TEST_CASE("4.a before each event the stack settles") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const CableId c = b.cable(b.east(d[0]), b.west(d[1]), false);
  const StepId plug = b.plug(c);
  Run run(b);
  run.settle();
  run.leave(step(plug));
  CHECK(run.leader(d[1]) == d[1]);
  run.settle();
  CHECK(run.plan().changes_nothing());
  CHECK(run.power(d[1]) == Power::starting);
}

// 4.3

TEST_CASE("4.3.a a device that yields becomes held and has no leader") {
  const Class k({{.number = 3}, {.number = 3}});
  Run run(k.b);
  run.pass();
  CHECK(run.power(k.d[1]) == Power::held);
  CHECK_FALSE(run.leader(k.d[1]));
  // It stays in the order of those that have been up longer.
  CHECK(run.state()[k.d[1]].seniority == 1);
}

TEST_CASE("4.3.b a device that restarts becomes starting and has no leader") {
  const Class k({{.number = 3}, {.number = 4}});
  Run run(k.b);
  run.pass();
  CHECK(run.power(k.d[1]) == Power::starting);
  CHECK_FALSE(run.leader(k.d[1]));
  CHECK(run.state()[k.d[1]].seniority == 0);
}

namespace {

/// `d` is held beside `leading`.
struct Held {
  ModelBuilder b;
  DeviceId leading, d;
  CableId c;

  Held() {
    leading = b.device("leading", {.number = 3});
    d = b.device("d", {.number = 3});
    c = b.chain({leading, d})[0];
    b.faults({.crashes = 1});
    b.unordered();
  }
};

}  // namespace

TEST_CASE("4.3.c a held device stays held though it is renumbered at once or unplugged, and it does not crash") {
  Held h;
  const StepId renumber = h.b.set_number(h.d, 4);
  const StepId unplug = h.b.unplug(h.c);
  Run run(h.b);
  run.settle();
  REQUIRE(run.power(h.d) == Power::held);
  CHECK_FALSE(run.can(crashed(h.d)));
  CHECK(run.can(crashed(h.leading)));
  run.take(step(renumber));
  CHECK(run.state()[h.d].number == 4);
  CHECK(run.power(h.d) == Power::held);
  run.take(step(unplug));
  CHECK(run.power(h.d) == Power::held);
}

TEST_CASE("4.3.c a restart, a power-off or a cold start releases a held device") {
  Held h;
  const StepId renumber = h.b.set_number(h.d, 4);
  const StepId restart = h.b.restart(h.d, {.after = {renumber}});
  const StepId off = h.b.power_off(h.d, {.after = {renumber}});
  Run run(h.b);
  run.settle();
  run.take(step(renumber));
  SUBCASE("restart") {
    run.take(step(restart));
    CHECK(run.power(h.d) == Power::starting);
    run.take(started(h.d));
    CHECK(run.leader(h.d) == h.leading);
  }
  SUBCASE("power-off") {
    run.take(step(off));
    CHECK(run.power(h.d) == Power::off);
  }
  SUBCASE("cold start") {
    run.cold_start();
    CHECK(run.power(h.d) == Power::up);
  }
}

// 4.4 Rank. Every key is also tried last, after keys that do not decide.

namespace {

bool first_outranks(std::vector<ElectionKey> election, DeviceIs first, DeviceIs second) {
  ModelBuilder b;
  b.platform().election = std::move(election);
  const DeviceId d = b.device("first", std::move(first));
  const DeviceId e = b.device("second", std::move(second));
  const Run run(b);
  const bool wins = outranks(run.world(), run.state(), d, e);
  CHECK(outranks(run.world(), run.state(), e, d) == !wins);
  return wins;
}

constexpr auto priority = ElectionKey::priority;
constexpr auto tenure = ElectionKey::tenure;
constexpr auto number = ElectionKey::number;

}  // namespace

TEST_CASE("4.4.a the higher priority wins, in running") {
  CHECK(first_outranks({priority}, {.priority = 6, .address = 9}, {.priority = 5, .address = 8}));
  CHECK_FALSE(first_outranks({priority}, {.priority = 5, .address = 8}, {.priority = 6, .address = 9}));
  CHECK(first_outranks({priority}, {.priority = 6, .startup_priority = 1, .address = 9},
                       {.priority = 5, .startup_priority = 8, .address = 8}));
  CHECK(first_outranks({tenure, number, priority}, {.number = 1, .priority = 6, .address = 9},
                       {.number = 1, .priority = 5, .address = 8}));
}

TEST_CASE("4.4.b whoever has been up longer wins") {
  CHECK(first_outranks({tenure}, {.tenure = 2, .address = 9}, {.tenure = 1, .address = 8}));
  CHECK_FALSE(first_outranks({tenure}, {.tenure = 1, .address = 8}, {.tenure = 2, .address = 9}));
  CHECK(first_outranks({priority, number, tenure}, {.number = 1, .tenure = 2, .address = 9},
                       {.number = 1, .tenure = 1, .address = 8}));
  CHECK(first_outranks({tenure}, {.address = 8}, {.address = 9}));
}

TEST_CASE("4.4.c the lower number wins") {
  CHECK(first_outranks({number}, {.number = 1, .address = 9}, {.number = 2, .address = 8}));
  CHECK_FALSE(first_outranks({number}, {.number = 2, .address = 8}, {.number = 1, .address = 9}));
  CHECK(first_outranks({tenure, priority, number}, {.number = 1, .address = 9}, {.number = 2, .address = 8}));
  CHECK(first_outranks({number}, {.number = 1, .next_number = 9, .address = 9},
                       {.number = 2, .next_number = 3, .address = 8}));
}

TEST_CASE("4.4.d the lower address wins, always appended, compared unsigned") {
  for (const auto& election : {std::vector<ElectionKey>{}, {priority, tenure, number}}) {
    CHECK(first_outranks(election, {.number = 1, .address = 8}, {.number = 1, .address = 9}));
    CHECK_FALSE(first_outranks(election, {.number = 1, .address = 9}, {.number = 1, .address = 8}));
    CHECK(first_outranks(election, {.number = 1, .address = 0x7fffffffffff}, {.number = 1, .address = 0x800000000000}));
  }
}

TEST_CASE("4.4 the keys are compared one after the other, in the platform's order") {
  const DeviceIs strong{.number = 9, .priority = 9, .tenure = 1, .address = 9};
  const DeviceIs old{.number = 5, .priority = 5, .tenure = 9, .address = 8};
  const DeviceIs low{.number = 1, .priority = 1, .tenure = 5, .address = 7};
  CHECK(first_outranks({priority, tenure, number}, strong, old));
  CHECK(first_outranks({priority, number, tenure}, strong, low));
  CHECK(first_outranks({tenure, priority, number}, old, strong));
  CHECK(first_outranks({tenure, number, priority}, old, low));
  CHECK(first_outranks({number, priority, tenure}, low, strong));
  CHECK(first_outranks({number, tenure, priority}, low, old));
  CHECK(first_outranks({}, low, strong));
}

TEST_CASE("4.4.e a fresh device never displaces a leader that is present, whatever its priority") {
  const Class k({{.number = 2, .priority = 1}, {.number = 1, .priority = 9, .tenure = 9}});
  const auto plan = k.plan({0, -1});
  CHECK(plan.admitted == Admitted{{k.d[1], k.d[0]}});
  CHECK_FALSE(plan.unsettled());
}

// 4.5

TEST_CASE("4.5.a a pass that held or restarted a device is unsettled, and another pass follows") {
  // d0 beats d2 over d1. Once d2 is down, nothing more happens to d1; d3 behind d2 is cut off and leads itself.
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1", "d2", "d3"});
  b.chain(d);
  b.stack(d[0], {d[0], d[1]});
  Run run(b);
  run.state()[d[3]].leader = DeviceId();
  run.settle();
  CHECK(run.unsettled_passes() == 1);
  CHECK(run.power(d[2]) == Power::starting);
  // d3 was admitted in the first pass, by d0, and is an orphan in the second.
  CHECK(run.seen()[1][d[3]].leader == d[0]);
  CHECK(run.leader(d[3]) == d[3]);
  CHECK(run.plan().changes_nothing());
}

TEST_CASE("4.5.b a pass that only admits leaves a settled state") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  b.chain(d);
  Run run(b);
  run.state()[d[1]].leader = DeviceId();
  run.settle();
  CHECK(run.unsettled_passes() == 0);
  CHECK(run.seen().size() == 2);
  CHECK(run.plan().changes_nothing());
}

TEST_CASE("4.5.c there may be two unsettled passes in a row, with orphans: carry-on one") {
  // As in 4.5.a; where orphans restart, d3 restarts in a second unsettled pass.
  ModelBuilder b;
  const auto d = b.devices({"d0", "d1", "d2", "d3"});
  b.chain(d);
  b.stack(d[0], {d[0], d[1]});
  b.platform().orphans = Orphans::restart;
  Run run(b);
  run.state()[d[3]].leader = DeviceId();
  run.settle();
  CHECK(run.unsettled_passes() == 2);
  CHECK(run.power(d[3]) == Power::starting);
}

TEST_CASE("4.6 the properties look at the state that an event leaves and at the one after each pass") {
  ModelBuilder b;
  const auto d = b.devices({"a", "b"});
  const CableId c = b.cable(b.east(d[0]), b.west(d[1]), false);
  const StepId plug = b.plug(c);
  Run run(b);
  run.settle();
  run.take(step(plug));
  REQUIRE(run.seen().size() == 2);
  CHECK(run.seen()[0][c].plugged);
  CHECK(run.seen()[0][d[1]].leader == d[1]);
  CHECK(run.seen()[1][d[1]].power == Power::starting);
}

TEST_CASE("4.6 a breach that settling mends at once is a breach") {
  // The numbers are equal from the moment of plugging until the loser is held.
  ModelBuilder b;
  const DeviceId x = b.device("x", {.number = 3});
  const DeviceId y = b.device("y", {.number = 3});
  const CableId c = b.cable(b.east(x), b.west(y), false);
  const StepId plug = b.plug(c);
  Run run(b);
  run.settle();
  CHECK_FALSE(run.broken(Property::no_clash));
  run.take(step(plug));
  REQUIRE(run.broken(Property::no_clash));
  CHECK(run.broken(Property::no_clash)->cause == Breach::Cause::same_number);
}

TEST_CASE("4.6 depth zero: the initial state counts, before and after it settles") {
  ModelBuilder b;
  const DeviceId x = b.device("x");
  const DeviceId y = b.device("y");
  b.stack(x, {x, y});  // without a link between them
  Run run(b);
  run.settle();
  REQUIRE(run.broken(Property::no_split));
  CHECK(run.broken(Property::no_split)->cause == Breach::Cause::cut_apart);
}

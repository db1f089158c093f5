// The reference by itself: sections 3 and 4. Every expectation is worked out by hand from docs/semantics.md.
#include "naive/derived.hpp"
#include "naive/events.hpp"
#include "naive/small_models.hpp"

using namespace cairn;
using namespace cairn::naive;

namespace {

/// The settled initial state.
World settled(const Model& model) {
  return begin(model, {}).settled();
}

const std::string two_lone =
    "devices:\n"
    "  a: {number: 1, priority: 5, ports: {t2: {side: east}}}\n"
    "  b: {number: 2, priority: 6, ports: {t1: {side: west}}}\n"
    "cables: {a/t2--b/t1: {}}\n";

}  // namespace

TEST_CASE("4.2.d the better-ranked leader wins, the loser restarts") {
  const Model model = small_model({}, two_lone, "");
  const auto passes = settle(model, initial(model, {}));
  REQUIRE(passes.size() == 2);
  CHECK(passes[0].restarted == std::set{device(model, "a")});
  CHECK(passes[1].after[device(model, "a")].power == Power::starting);
  CHECK(passes[1].after[device(model, "b")].leader == device(model, "b"));
}

TEST_CASE("4.4 the keys of the election are compared in the platform's order, the address last") {
  const std::string site =
      "devices:\n"
      "  a: {address: 02:00:00:00:00:02, number: 2, priority: 5, tenure: 1, ports: {t2: {side: east}}}\n"
      "  b: {address: 02:00:00:00:00:01, number: 3, priority: 4, tenure: 2, ports: {t1: {side: west}}}\n"
      "cables: {a/t2--b/t1: {}}\n";
  const std::map<std::string, std::string> winners = {
      {"[priority, tenure]", "a"}, {"[tenure, priority]", "b"}, {"[number]", "a"}, {"[]", "b"}};
  for (const auto& [election, winner] : winners) {
    CAPTURE(election);
    const Model model = small_model({{"election", election}}, site, "");
    const World world = settled(model);
    CHECK(world[device(model, winner)].leader == device(model, winner));
    CHECK(world[device(model, winner == "a" ? "b" : "a")].power == Power::starting);
  }
}

TEST_CASE("4.1.a a fresh device yields to one that is not, whatever its priority; 4.3.a it is held") {
  const Model model = small_model({}, chain("ab", {{'b', "next-number: 1, startup: {priority: 15}"}}), "");
  const DeviceId b = device(model, "b");
  World world = settled(model);
  world = happen(model, world, {Event::Kind::crashed, b.value}).settled();
  const Happening started = happen(model, world, {Event::Kind::started, b.value});
  CHECK(started.passes.front().held == std::set{b});
  CHECK(started.settled()[b].power == Power::held);
  CHECK_FALSE(started.settled()[b].leader);
  CHECK(started.settled().senior.contains({device(model, "a"), b}));
}

TEST_CASE("4.4.e a fresh device follows the leader that is present, whatever its priority") {
  const Model model = small_model({}, chain("ab", {{'b', "startup: {priority: 15}"}}), "");
  const DeviceId b = device(model, "b");
  World world = happen(model, settled(model), {Event::Kind::crashed, b.value}).settled();
  world = happen(model, world, {Event::Kind::started, b.value}).settled();
  CHECK(world[b].priority == 15);
  CHECK(world[b].leader == device(model, "a"));
}

TEST_CASE("4.1.c two losers that clash with each other both yield") {
  const Model model = small_model({{"side-leads-to", "any"}},
                                  "devices:\n"
                                  "  a: {number: 1, priority: 9, ports: {t1: {side: west}, t2: {side: east}}}\n"
                                  "  b: {number: 5, priority: 8, ports: {t1: {side: west}}}\n"
                                  "  c: {number: 5, priority: 7, ports: {t2: {side: east}}}\n"
                                  "cables: {a/t2--b/t1: {}, c/t2--a/t1: {}}\n",
                                  "");
  const auto passes = settle(model, initial(model, {}));
  CHECK(passes.front().held == std::set{device(model, "b"), device(model, "c")});
  CHECK(passes.front().restarted.empty());
}

TEST_CASE("4.1.b of two fresh ones the outranked yields") {
  // Both come up apart, unlinked by a disabled port, and meet before either has a leader: a cold start.
  const Model model = small_model({}, chain("ab", {{'b', "next-number: 1"}}), "goal: {stack: [a, b]}\n");
  const World world = cold_start(model, settled(model)).settled();
  CHECK(world[device(model, "a")].leader == device(model, "a"));
  CHECK(world[device(model, "b")].power == Power::held);
}

TEST_CASE("4.2.a orphans carry on under the best-ranked of them, or restart") {
  for (const bool carry_on : {true, false}) {
    CAPTURE(carry_on);
    const Model model = small_model({{"orphans", carry_on ? "carry-on" : "restart"}}, chain("abc"), "");
    const DeviceId b = device(model, "b");
    const DeviceId c = device(model, "c");
    const Happening cut = happen(model, settled(model), {Event::Kind::broke, 0});
    CHECK(cut.left[b].leader == device(model, "a"));
    CHECK(cut.settled()[b].power == (carry_on ? Power::up : Power::starting));
    CHECK(cut.settled()[c].leader == (carry_on ? b : DeviceId()));
    CHECK(cut.passes.size() == (carry_on ? 1 : 2));
  }
}

TEST_CASE("3.b sides face, software matches, and a side leads to one neighbour") {
  const auto linked_after = [](const Rules& rules, const std::string& site) {
    const Model model = small_model(rules, site, "");
    return linked(model, initial(model, {}), CableId(0));
  };
  const auto pair = [](const std::string& a, const std::string& b, const std::string& software) {
    return "devices:\n  a: {number: 1, ports: {p: {side: " + a + "}}}\n  b: {number: 2, software: " + software +
           ", ports: {p: {side: " + b + "}}}\ncables: {a/p--b/p: {}}\n";
  };
  CHECK(linked_after({}, pair("east", "west", "1")));
  CHECK_FALSE(linked_after({}, pair("east", "east", "1")));
  CHECK_FALSE(linked_after({}, pair("east", "none", "1")));
  CHECK(linked_after({{"facing", "any"}}, pair("east", "east", "1")));
  CHECK_FALSE(linked_after({{"facing", "any"}}, pair("east", "none", "1")));
  CHECK(linked_after({}, pair("east", "west", "2")));
  CHECK_FALSE(linked_after({{"software", "must-match"}}, pair("east", "west", "2")));

  const std::string fan =
      "devices:\n  a: {ports: {p: {side: east}, q: {side: east}}}\n  b: {ports: {p: {side: west}}}\n"
      "  c: {ports: {p: {side: none}}}\ncables: {a/p--b/p: {}, a/q--c/p: {}}\n";
  CHECK_FALSE(linked_after({}, fan));  // c counts although no link forms to it: its cable is up
  CHECK(linked_after({{"side-leads-to", "any"}}, fan));
  const std::string doubled =
      "devices:\n  a: {ports: {p: {side: east}, q: {side: east}}}\n  b: {ports: {p: {side: west}, q: {side: west}}}\n"
      "cables: {a/p--b/p: {}, a/q--b/q: {}}\n";
  CHECK(linked_after({}, doubled));  // two cables to the same neighbour
}

TEST_CASE("3.c together by way of others, with oneself, and not with who is not up") {
  const Model model = small_model({}, chain("abc"), "");
  const DeviceId a = device(model, "a");
  const DeviceId c = device(model, "c");
  World world = settled(model);
  CHECK(together(model, world, {a, c}));
  CHECK(together(model, world, {a, a}));
  world[device(model, "b")].power = Power::held;
  CHECK_FALSE(together(model, world, {a, c}));
  CHECK(classes(model, world).size() == 2);
}

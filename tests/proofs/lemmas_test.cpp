// The lemmas of proofs/ on the concrete semantics: every small state, and many random ones of more devices than the
// solvers are asked about.
#include <algorithm>
#include <array>
#include <functional>

#include "proofs/any_graph.hpp"
#include "semantics/state.hpp"
#include "support/platforms.hpp"
#include "support/printing.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::fresh;
using semantics::leads;
using semantics::outranks;
using semantics::senior;

namespace {

constexpr std::array both_ways = {Orphans::carry_on, Orphans::restart};

/// Every state of `graph` in which each device is down, fresh, or follows any device, with every graph of links and
/// every way in which numbers can be equal.
void for_each_state(AnyGraph& graph, const std::function<void()>& visit) {
  const std::size_t n = graph.size();
  const auto numbers = [&](auto&& self, std::size_t i, std::int64_t used) -> void {
    if (i == n) return visit();
    for (std::int64_t number = 1; number <= used + 1; ++number) {
      graph.state.devices[i].number = number;
      self(self, i + 1, std::max(used, number));
    }
  };
  const auto cables = [&](auto&& self, std::size_t i) -> void {
    if (i == graph.pairs()) return numbers(numbers, 0, 0);
    for (const bool plugged : {false, true}) {
      graph.state.cables[i].plugged = plugged;
      self(self, i + 1);
    }
  };
  const auto devices = [&](auto&& self, std::size_t i) -> void {
    if (i == n) return cables(cables, 0);
    graph.state.devices[i].power = Power::off;
    graph.state.devices[i].leader = DeviceId();
    self(self, i + 1);
    graph.state.devices[i].power = Power::up;
    self(self, i + 1);
    for (std::size_t leader = 0; leader < n; ++leader) {
      graph.state.devices[i].leader = DeviceId(leader);
      self(self, i + 1);
    }
  };
  devices(devices, 0);
}

/// Settles the state of the graph; gives how many passes were unsettled.
int unsettled_passes(AnyGraph& graph, semantics::Scratch& scratch) {
  int unsettled = 0;
  while (pass(graph.world(), graph.state, scratch)) ++unsettled;
  return unsettled;
}

/// few-passes and settled, of the state that the graph has; gives how many passes were unsettled.
int check_settling(AnyGraph& graph, semantics::Scratch& scratch) {
  const State before = graph.state;
  const bool looks_settled = each_class_follows_one_inside(graph.world(), before);
  const int unsettled = unsettled_passes(graph, scratch);
  if (looks_settled != (graph.state == before)) FAIL("a state looks settled and is not, or is and does not look so");
  if (!each_class_follows_one_inside(graph.world(), graph.state)) FAIL("settled, and a class follows no one inside");
  return unsettled;
}

int most_unsettled(Orphans orphans) {
  return orphans == Orphans::carry_on ? 1 : 2;
}

/// Whatever is lost: some links break and some devices go down.
void lose(AnyGraph& graph, std::mt19937_64& random) {
  for (CableState& c : graph.state.cables) c.broken = random() % 4 == 0;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (random() % 6 == 0) semantics::go_down(graph.state, DeviceId(i), Power::starting);
  }
}

bool together_with_leader(const semantics::Derived& derived, const State& s, DeviceId d) {
  return s[d].leader && derived.together(d, s[d].leader);
}

}  // namespace

TEST_CASE("rank is a strict total order, for every election list: every three devices (4.4)") {
  std::vector<std::vector<ElectionKey>> lists;
  for_each_platform([&](const Platform& platform) {
    if (std::find(lists.begin(), lists.end(), platform.election) == lists.end()) lists.push_back(platform.election);
  });
  REQUIRE(lists.size() == 16);
  for (const std::vector<ElectionKey>& list : lists) {
    AnyGraph graph(3, Orphans::restart, list);
    const auto a = DeviceId(0), b = DeviceId(1), c = DeviceId(2);
    bool total = true;
    bool transitive = true;
    for (int code = 0; code < 27 * 27 * 27; ++code) {
      int rest = code;
      for (DeviceState& d : graph.state.devices) {
        d.priority = rest % 3;
        d.number = 1 + rest / 3 % 3;
        d.seniority = static_cast<std::uint32_t>(1 + rest / 9 % 3);
        rest /= 27;
      }
      const auto before = [&](DeviceId d, DeviceId e) { return outranks(graph.world(), graph.state, d, e); };
      for (const auto& [d, e, f] : {std::array{a, b, c}, {b, c, a}, {c, a, b}, {c, b, a}, {b, a, c}, {a, c, b}}) {
        total = total && before(d, e) != before(e, d) && !before(d, d);
        transitive = transitive && (!before(d, e) || !before(e, f) || before(d, f));
      }
    }
    CHECK(total);
    CHECK(transitive);
  }
}

TEST_CASE("seniority: who goes down leaves the order, who starts becomes its last, the others keep theirs (2.a, 5.b)") {
  std::mt19937_64 random(41);
  AnyGraph graph(6, Orphans::restart);
  for (int i = 0; i < 20000; ++i) {
    graph.draw(random);
    const State before = graph.state;
    const DeviceId x(random() % graph.size());
    const bool goes_down = random() % 2 == 0;
    if (goes_down) {
      semantics::go_down(graph.state, x, Power::starting);
    } else {
      graph.state[x].power = Power::up;
      semantics::become_junior(graph.state, x);
    }
    bool as_told = true;
    for (std::size_t a = 0; a < graph.size(); ++a) {
      for (std::size_t b = 0; b < graph.size(); ++b) {
        const DeviceId d(a), e(b);
        const bool last = e == x && d != x && !goes_down && semantics::running(graph.state, d);
        const bool wanted = d == x || e == x ? last : senior(before, d, e);
        as_told = as_told && senior(graph.state, d, e) == wanted;
      }
    }
    REQUIRE(as_told);
  }
}

TEST_CASE("few-passes and settled: every state of up to four devices (4.5.c)") {
  for (const Orphans orphans : both_ways) {
    for (std::size_t n = 1; n <= 4; ++n) {
      AnyGraph graph(n, orphans);
      semantics::Scratch scratch;
      int longest = 0;
      for_each_state(graph, [&] {
        const State kept = graph.state;
        longest = std::max(longest, check_settling(graph, scratch));
        graph.state = kept;
      });
      CHECK(longest <= most_unsettled(orphans));
      if (n == 4) CHECK(longest == most_unsettled(orphans));
    }
  }
}

TEST_CASE("few-passes and settled: random states of up to nine devices (4.5.c)") {
  std::mt19937_64 random(42);
  for (const Orphans orphans : both_ways) {
    for (std::size_t n = 5; n <= 9; ++n) {
      AnyGraph graph(n, orphans, {ElectionKey::priority, ElectionKey::tenure, ElectionKey::number});
      semantics::Scratch scratch;
      int longest = 0;
      for (int i = 0; i < 10000; ++i) {
        graph.draw(random);
        longest = std::max(longest, check_settling(graph, scratch));
      }
      CHECK(longest == most_unsettled(orphans));
    }
  }
}

TEST_CASE("loss: nobody is held, and who restarts is cut off from its leader where orphans restart (4.2.a)") {
  std::mt19937_64 random(43);
  for (const Orphans orphans : both_ways) {
    AnyGraph graph(7, orphans, {ElectionKey::tenure, ElectionKey::number});
    semantics::Scratch scratch;
    int cut_off = 0;
    for (int i = 0; i < 20000; ++i) {
      graph.draw(random);
      graph.draw_leaders_of_a_settled_state(random);
      lose(graph, random);
      const State lost = graph.state;
      const semantics::Derived derived = semantics::derive(graph.world(), lost);
      const bool unsettled = pass(graph.world(), graph.state, scratch);
      bool as_told = scratch.plan.held.empty() && (!unsettled || orphans == Orphans::restart);
      for (std::size_t a = 0; a < graph.size(); ++a) {
        const DeviceId d(a);
        if (!derived.is_up(d)) continue;
        const bool kept = together_with_leader(derived, lost, d);
        if (!kept) ++cut_off;
        const bool down = graph.state[d].power != Power::up;
        as_told = as_told && down == (!kept && orphans == Orphans::restart);
        as_told = as_told && (!kept || graph.state[d].leader == lost[d].leader);
      }
      REQUIRE(as_told);
      REQUIRE(each_class_follows_one_inside(graph.world(), graph.state));
    }
    CHECK(cut_off > 0);
  }
}

TEST_CASE("quiet events: other numbers, priorities and seniorities leave a settled state settled (4.1.e)") {
  std::mt19937_64 random(44);
  for (const Orphans orphans : both_ways) {
    AnyGraph graph(7, orphans, {ElectionKey::priority, ElectionKey::tenure});
    semantics::Scratch scratch;
    for (int i = 0; i < 20000; ++i) {
      graph.draw(random);
      graph.draw_leaders_of_a_settled_state(random);
      const State before = graph.state;
      REQUIRE_FALSE(pass(graph.world(), graph.state, scratch));
      REQUIRE(graph.state == before);
    }
  }
}

// Lemmas that reductions lean on (proofs/apart.md, unasked-seniority.md, somebody-between.md) on the concrete
// semantics: random states of more devices than the solvers are asked about.
#include <algorithm>
#include <array>
#include <functional>

#include "proofs/any_graph.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"
#include "spec/random_models.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;
using semantics::leads;
using semantics::senior;

namespace {

constexpr std::array both_ways = {Orphans::carry_on, Orphans::restart};
const std::vector<ElectionKey> by_tenure = {ElectionKey::priority, ElectionKey::tenure};
using Which = std::function<bool(DeviceId)>;

bool everyone(DeviceId) {
  return true;
}

std::vector<DeviceId> only(const std::vector<DeviceId>& devices, const Which& which) {
  std::vector<DeviceId> some;
  std::copy_if(devices.begin(), devices.end(), std::back_inserter(some), which);
  return some;
}

/// One pass in each of two states of one world; whether it did the same to the devices in question.
bool same_pass(const semantics::World& world, State& s, State& t, const Which& which = everyone) {
  semantics::Scratch of_s;
  semantics::Scratch of_t;
  pass(world, s, of_s);
  pass(world, t, of_t);
  return only(of_s.plan.held, which) == only(of_t.plan.held, which) &&
         only(of_s.plan.restarted, which) == only(of_t.plan.restarted, which);
}

void settle(const semantics::World& world, State& s) {
  semantics::Scratch scratch;
  while (pass(world, s, scratch)) {
  }
}

/// Of the devices in question, all is equal but seniority.
bool same_but_for_seniority(const State& s, const State& t, const Which& which = everyone) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    DeviceState other = t.devices[i];
    other.seniority = s.devices[i].seniority;
    if (which(DeviceId(i)) && s.devices[i] != other) return false;
  }
  return true;
}

/// The same of the devices in question are senior to one another.
bool same_order(const State& s, const State& t, const Which& which) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    for (std::size_t j = 0; j < s.devices.size(); ++j) {
      const DeviceId d(i), e(j);
      if (which(d) && which(e) && senior(s, d, e) != senior(t, d, e)) return false;
    }
  }
  return true;
}

/// Gives the devices that run new places in the order of seniority, but for those in question.
void age_otherwise(State& s, Random& random, const Which& but_for) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    if (semantics::running(s, DeviceId(i)) && !but_for(DeviceId(i))) {
      s.devices[i].seniority = static_cast<std::uint32_t>(1 + below(random, s.devices.size()));
    }
  }
}

/// Whoever may contest where nobody is orphaned.
Which contestants(const State& s) {
  return [&s](DeviceId d) { return s[d].power == Power::up && (leads(s, d) || semantics::fresh(s, d)); };
}

void start(const semantics::World& world, State& s, DeviceId x, bool late) {
  if (late) s.left.late_starts = 1;
  semantics::take(world, s, {}, late ? started_late(x) : started(x));
}

}  // namespace

TEST_CASE("apart: a pass looks at each side alone, and starts on two sides may change places (4.a, 5.b)") {
  Random random(61);
  for (const Orphans orphans : both_ways) {
    AnyGraph graph(8, orphans, by_tenure);
    const semantics::World& world = graph.world();
    int swapped = 0;
    for (int i = 0; i < 10000; ++i) {
      const std::size_t border = 1 + below(random, 7);
      const auto here = [&](DeviceId d) { return d.value < border; };
      const auto there = [&](DeviceId d) { return d.value >= border; };
      const auto cut = [&](State& s) {
        for (std::size_t c = 0; c < s.cables.size(); ++c) {
          if (here(world.device_a(CableId(c))) != here(world.device_b(CableId(c)))) s.cables[c].plugged = false;
        }
      };
      graph.draw(random);
      cut(graph.state);
      const State first = graph.state;
      graph.draw(random);
      cut(graph.state);
      State second = graph.state;
      std::copy_n(first.devices.begin(), border, second.devices.begin());
      for (std::size_t c = 0; c < first.cables.size(); ++c) {
        if (here(world.device_a(CableId(c))) && here(world.device_b(CableId(c)))) second.cables[c] = first.cables[c];
      }
      State a = first;
      State b = second;
      for (int passes = 0; passes < 3; ++passes) {
        REQUIRE(same_pass(world, a, b, here));
        REQUIRE(same_but_for_seniority(a, b, here));
        REQUIRE(same_order(a, b, here));
      }
      graph.state = first;
      graph.draw_leaders_of_a_settled_state(random);
      const DeviceId x(below(random, border));
      const DeviceId y(border + below(random, 8 - border));
      if (graph.state[x].power != Power::starting || graph.state[y].power != Power::starting) continue;
      ++swapped;
      State one = graph.state;
      State two = graph.state;
      for (const DeviceId d : {x, y}) {
        start(world, one, d, false);
        settle(world, one);
      }
      for (const DeviceId d : {y, x}) {
        start(world, two, d, false);
        settle(world, two);
      }
      REQUIRE(same_but_for_seniority(one, two));
      REQUIRE(same_order(one, two, here));
      REQUIRE(same_order(one, two, there));
    }
    CHECK(swapped > 20);
  }
}

TEST_CASE("unasked seniority: where orphans restart, only leaders and fresh devices are compared (4.1, 4.2)") {
  Random random(62);
  AnyGraph graph(8, Orphans::restart, by_tenure);
  for (int i = 0; i < 20000; ++i) {
    graph.draw(random);
    State a = graph.state;
    State b = graph.state;
    age_otherwise(b, random, contestants(a));
    for (int passes = 0; passes < 3; ++passes) {
      REQUIRE(same_order(a, b, contestants(a)));
      REQUIRE(same_pass(graph.world(), a, b));
      REQUIRE(same_but_for_seniority(a, b));
    }
  }
}

TEST_CASE("unasked seniority: where orphans carry on, only leaders are, after a start or a link that forms (4.2.c)") {
  Random random(63);
  AnyGraph graph(8, Orphans::carry_on, by_tenure);
  int unsettled = 0;
  for (int i = 0; i < 20000; ++i) {
    graph.draw(random);
    graph.draw_leaders_of_a_settled_state(random);
    State a = graph.state;
    State b = graph.state;
    age_otherwise(b, random, contestants(a));
    const DeviceId x(below(random, graph.size()));
    const bool starts = a[x].power == Power::starting;
    const std::size_t c = below(random, graph.pairs());
    const bool late = below(random, 3) == 0;
    for (State* s : {&a, &b}) {
      if (starts) {
        start(graph.world(), *s, x, late);
      } else {
        s->cables[c].plugged = true;
      }
    }
    const State left = a;
    REQUIRE(same_pass(graph.world(), a, b));
    for (std::size_t d = 0; d < graph.size(); ++d) unsettled += a.devices[d].power != left.devices[d].power ? 1 : 0;
    REQUIRE(same_but_for_seniority(a, b));
    REQUIRE(same_order(a, b, contestants(a)));
    REQUIRE(each_class_follows_one_inside(graph.world(), a));
  }
  CHECK(unsettled > 1000);
}

namespace {

bool outranks_in_both(const semantics::World& world, const State& s, const State& t, DeviceId w, DeviceId d) {
  return semantics::outranks(world, s, w, d) && semantics::outranks(world, t, w, d);
}

/// On the line of devices in the site's order: somebody stands between each two leaders whose order differs.
bool somebody_between(const semantics::World& world, const State& s, const State& t, int& differing) {
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    for (std::size_t j = i + 1; j < s.devices.size(); ++j) {
      const DeviceId d(i), e(j);
      if (!leads(s, d) || !leads(s, e)) continue;
      if (semantics::outranks(world, s, d, e) == semantics::outranks(world, t, d, e)) continue;
      ++differing;
      bool stands = false;
      for (std::size_t k = i + 1; k < j; ++k) {
        const DeviceId w = s.devices[k].leader;
        if (!w || w == d || w == e) continue;
        stands = stands || outranks_in_both(world, s, t, w, d) || outranks_in_both(world, s, t, w, e);
      }
      if (!stands) return false;
    }
  }
  return true;
}

}  // namespace

TEST_CASE("somebody between: on a line no pair decides that is kept apart by a stronger one (4.2.c)") {
  Random random(64);
  for (const Orphans orphans : both_ways) {
    AnyGraph graph(8, orphans, by_tenure);
    const semantics::World& world = graph.world();
    std::vector<std::size_t> line;
    for (std::size_t c = 0; c < graph.pairs(); ++c) {
      if (world.device_b(CableId(c)).value == world.device_a(CableId(c)).value + 1) line.push_back(c);
    }
    REQUIRE(line.size() == 7);
    int differing = 0;
    int events = 0;
    for (int i = 0; i < 20000; ++i) {
      graph.draw(random);
      for (DeviceState& d : graph.state.devices)
        d.priority = d.startup_priority = 1 + static_cast<int>(below(random, 2));
      std::fill(graph.state.cables.begin(), graph.state.cables.end(), CableState{});
      for (const std::size_t c : line) graph.state.cables[c].plugged = below(random, 2) == 0;
      graph.draw_leaders_of_a_settled_state(random);
      State a = graph.state;
      State b = graph.state;
      age_otherwise(b, random, [&](DeviceId) { return below(random, 3) != 0; });
      int at_first = 0;
      if (!somebody_between(world, a, b, at_first) || at_first == 0) continue;
      for (int taken = 0; taken < 6; ++taken) {
        const DeviceId x(below(random, graph.size()));
        const std::size_t c = line[below(random, line.size())];
        const bool starts = a[x].power == Power::starting;
        const bool late = below(random, 3) == 0;
        for (State* s : {&a, &b}) {
          if (starts) {
            start(world, *s, x, late);
          } else {
            s->cables[c].plugged = true;
          }
        }
        ++events;
        REQUIRE(same_pass(world, a, b));
        REQUIRE(same_but_for_seniority(a, b));
        REQUIRE(each_class_follows_one_inside(world, a));
        REQUIRE(somebody_between(world, a, b, differing));
      }
    }
    CHECK(events > 1000);
    CHECK(differing > 1000);
  }
}

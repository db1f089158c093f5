// The lemmas of the semantics, 4.5.c and 5.k, searched for counterexamples.
#include <algorithm>
#include <functional>
#include <map>
#include <vector>

#include "semantics/settle.hpp"
#include "spec/random_models.hpp"
#include "support/run.hpp"
#include "support/second_neighbour.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// The longest row of unsettled passes over many random runs; models that `wanted` refuses are left out.
int longest_row(std::uint64_t seed, int models, const std::function<bool(const Platform&)>& wanted) {
  Random random(seed);
  int longest = 0;
  for (int i = 0; i < models; ++i) {
    Model model = random_model(random, {.most_devices = 7, .most_steps = 12, .faults = {2, 2, 1, 2, true}});
    if (!wanted(model.platform)) continue;
    Run run(std::move(model));
    run.settle();
    longest = std::max(longest, run.unsettled_passes());
    for (int taken = 0; taken < 40; ++taken) {
      const std::vector<Event> events = run.events();
      if (events.empty()) break;
      run.take(events[below(random, events.size())]);
      longest = std::max(longest, run.unsettled_passes());
    }
    if (run.state().left.mends) run.cold_start();
    longest = std::max(longest, run.unsettled_passes());
  }
  return longest;
}

bool links_only_go(const Platform& platform) {
  return platform.side_leads_to == SideLeadsTo::any;
}

/// A key that tells states apart, for the table of those already seen.
std::vector<std::uint64_t> key_of(const State& s) {
  std::vector<std::uint64_t> key;
  for (const DeviceState& d : s.devices) {
    key.insert(key.end(), {static_cast<std::uint64_t>(d.power), d.leader.value, d.seniority,
                           static_cast<std::uint64_t>(d.number), static_cast<std::uint64_t>(d.next_number),
                           static_cast<std::uint64_t>(d.priority), static_cast<std::uint64_t>(d.startup_priority)});
  }
  for (const PortState& p : s.ports) {
    key.insert(key.end(), {p.enabled, p.startup_enabled, static_cast<std::uint64_t>(p.side),
                           static_cast<std::uint64_t>(p.startup_side), static_cast<std::uint64_t>(p.operational_side)});
  }
  for (const CableState& c : s.cables) key.insert(key.end(), {c.plugged, c.broken});
  key.insert(key.end(), s.done.begin(), s.done.end());
  key.push_back(s.halted);
  for (const std::int64_t left : {s.left.cable_breaks, s.left.crashes, s.left.omissions, s.left.late_starts}) {
    key.push_back(static_cast<std::uint64_t>(left));
  }
  return key;
}

/// Looks for a run that comes back to a state, depth first.
class CycleSearch {
 public:
  explicit CycleSearch(Model model) : run_(std::move(model)) {}

  bool finds_one() {
    run_.settle();
    return from(State(run_.state()));
  }

 private:
  enum class Mark : std::uint8_t { on_the_way, ended };

  bool from(const State& s) {
    const auto [place, fresh] = marks_.try_emplace(key_of(s), Mark::on_the_way);
    if (!fresh) return place->second == Mark::on_the_way;
    run_.state() = s;
    for (const Event& event : run_.events()) {
      run_.state() = s;
      run_.take(event);
      if (from(State(run_.state()))) return true;
    }
    place->second = Mark::ended;
    return false;
  }

  Run run_;
  std::map<std::vector<std::uint64_t>, Mark> marks_;
};

}  // namespace

TEST_CASE("4.5.c never more than two unsettled passes in a row: a search for the longest") {
  const int longest = longest_row(20260401, 6000, [](const Platform& platform) {
    return links_only_go(platform) && platform.orphans == Orphans::restart;
  });
  CHECK(longest == 2);
}

TEST_CASE("4.5.c never more than one with orphans: carry-on: a search for the longest") {
  const int longest = longest_row(20260402, 6000, [](const Platform& platform) {
    return links_only_go(platform) && platform.orphans == Orphans::carry_on;
  });
  CHECK(longest == 1);
}

TEST_CASE("5.k every run ends: a search for a cycle in random small models") {
  Random random(20260403);
  for (int i = 0; i < 250; ++i) {
    const Model model = random_model(random, {.most_devices = 4, .most_steps = 4, .faults = {0, 1, 0, 0, false}});
    if (!links_only_go(model.platform)) continue;
    CAPTURE(i);
    CHECK_FALSE(CycleSearch(model).finds_one());
  }
}

namespace {

/// lead - d0, and in a row behind it places where a side leads to two neighbours: d1's west to d0 and d2, d3's west to
/// d2 and d4, and so on. When d0 restarts, d1 and d2 link; the loser, d2, restarts, and d3 and d4 link.
struct Row {
  ModelBuilder b;
  std::vector<DeviceId> d;

  explicit Row(Orphans orphans) {
    b.platform().side_leads_to = SideLeadsTo::one_neighbour;
    b.platform().orphans = orphans;
    const DeviceId lead = b.device("lead", {.priority = 9});
    for (int i = 0; i < 5; ++i) {
      std::vector<PortIs> ports = {{.name = "p", .side = Side::west}, {.name = "q", .side = Side::west}};
      if (i % 2 == 0) ports[1].side = Side::east;
      d.push_back(b.device("d" + std::to_string(i), {.priority = 5 - i, .ports = ports}));
    }
    b.cable(b.east(lead), b.port(d[0], "p"));
    for (int i = 1; i < 5; i += 2) {
      const auto here = static_cast<std::size_t>(i);
      b.cable(b.port(d[here - 1], "q"), b.port(d[here], "p"));
      b.cable(b.port(d[here], "q"), b.port(d[here + 1], "p"));
    }
  }
};

}  // namespace

// A doubt about the text: docs/semantics-questions.md. A restart frees a side, so that a link forms between two passes.
TEST_CASE("4.5.c does not hold where a side leads to one neighbour, and settling goes on until it is done") {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    const Row row(orphans);
    Run run(row.b);
    run.settle();
    CHECK(run.unsettled_passes() == 3);  // each took one device down
    CHECK(run.power(row.d[0]) == Power::starting);
    CHECK(run.power(row.d[2]) == Power::starting);
    CHECK(run.power(row.d[4]) == Power::starting);
  }
}

// The same doubt: d's west leads to e and f. Whichever of the two is up alone joins d; the second to come up cuts both
// off, restarts e as an orphan, and then meets d as a leader of its own and restarts too.
TEST_CASE("5.k does not hold where a side leads to one neighbour and orphans restart") {
  CHECK(CycleSearch(SecondNeighbour(Orphans::restart).b.model()).finds_one());
  CHECK_FALSE(CycleSearch(SecondNeighbour(Orphans::carry_on).b.model()).finds_one());
}

TEST_CASE("5.k does not hold where a side leads to one neighbour and orphans carry on") {
  ModelBuilder b;
  b.platform().side_leads_to = SideLeadsTo::one_neighbour;
  b.platform().orphans = Orphans::carry_on;
  b.platform().facing = Facing::any;
  b.platform().election = {ElectionKey::number};
  const DeviceId a = b.device("a", {.number = 5});
  const DeviceId east_of_d = b.device("b", {.number = 7});
  const DeviceId c = b.device("c", {.number = 9});
  const DeviceId d =
      b.device("d", {.number = 1, .ports = {{.name = "p", .side = Side::east}, {.name = "q", .side = Side::east}}});
  b.cable(b.west(east_of_d), b.port(d, "q"));
  b.cable(b.east(east_of_d), b.west(c));
  b.cable(b.port(d, "p"), b.east(a));
  b.cable(b.east(c), b.west(a));
  CHECK(CycleSearch(b.model()).finds_one());
}

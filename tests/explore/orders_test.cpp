// Which orders of events are left out, and which never are.
#include "explore/reduce/orders.hpp"

#include <doctest/doctest.h>

#include <set>
#include <vector>

#include "semantics/events.hpp"
#include "semantics/settle.hpp"
#include "semantics/state.hpp"
#include "support/model_builder.hpp"
#include "support/second_neighbour.hpp"

using namespace cairn;
using namespace cairn::explore;
using test::ModelBuilder;
namespace when = test::when;

namespace {

const std::vector<AskedProperty> at_rest{{Property::reaches_goal, 0}};

/// Follows all runs that are left, without passes: the devices of these tests have no cables plugged.
class Runs {
 public:
  Runs(const Model& model, const std::vector<AskedProperty>& asked, std::uint64_t allowance = 1000)
      : world_(model),
        orders_(world_, model.procedure.faults, asked, [] { return std::optional<Reason>(); }),
        faults_(model.procedure.faults) {
    allow_alone(allowance);
  }

  void allow_alone(std::uint64_t states) { orders_.allow_alone(states); }
  [[nodiscard]] std::uint64_t states_alone() const { return orders_.states_alone(); }

  /// The steps of each run, in their order.
  std::vector<std::vector<StepId>> all() {
    follow(semantics::initial_state(world_, faults_));
    return runs_;
  }

  /// How many of the events of the initial state are left.
  std::size_t at_first() {
    const State s = semantics::initial_state(world_, faults_);
    return chosen(s, semantics::derive(world_, s)).size();
  }

 private:
  std::vector<Event> chosen(const State& s, const semantics::Derived& derived) {
    std::vector<Event> events;
    semantics::events_in(world_, s, derived, events);
    orders_.choose(s, derived, events);
    return events;
  }

  void follow(const State& s) {
    const semantics::Derived derived = semantics::derive(world_, s);
    const std::vector<Event> events = chosen(s, derived);
    if (events.empty()) runs_.push_back(run_);
    for (const Event& event : events) {
      State next = s;
      semantics::take(world_, next, derived, event);
      if (event.kind == Event::Kind::step) run_.push_back(event.step());
      follow(next);
      if (event.kind == Event::Kind::step) run_.pop_back();
    }
  }

  semantics::World world_;
  Orders orders_;
  FaultBudget faults_;
  std::vector<StepId> run_;
  std::vector<std::vector<StepId>> runs_;
};

std::vector<DeviceId> apart(ModelBuilder& b, std::size_t count) {
  std::vector<DeviceId> devices;
  for (std::size_t i = 0; i < count; ++i) devices.push_back(b.device("d" + std::to_string(i)));
  b.keep({devices.front()});
  b.goal(test::goal_of({devices.front()}));
  b.unordered();
  return devices;
}

/// For each pair of steps that have a device in common, which comes first: the same for orders that cannot be told
/// apart.
std::size_t orders_told_apart(const std::vector<std::vector<StepId>>& runs,
                              const std::vector<std::pair<StepId, StepId>>& pairs) {
  std::set<std::vector<bool>> told;
  for (const std::vector<StepId>& run : runs) {
    std::vector<bool> firsts;
    for (const auto& [a, b] : pairs) {
      firsts.push_back(std::find(run.begin(), run.end(), a) < std::find(run.begin(), run.end(), b));
    }
    told.insert(firsts);
  }
  return told.size();
}

}  // namespace

TEST_CASE("steps of devices that have nothing to do with one another: one order is left") {
  for (const std::size_t lanes : {1U, 2U, 5U, 8U}) {
    ModelBuilder b;
    for (const DeviceId d : apart(b, lanes)) {
      const StepId first = b.set_priority(d, 3);
      b.save({d}, {.after = {first}});
    }
    const Model model = b.model();
    CHECK(Runs(model, at_rest).all().size() == 1);
  }
}

// The orders that cannot be told apart are the acyclic orientations of the graph of steps that disturb one another
// (Stanley 1973: the chromatic polynomial at -1): 2^(n-1) of a path of n, 2^n - 2 of a cycle (OEIS A000079, A000918).
TEST_CASE("of orders that cannot be told apart one at least is left, of each such class") {
  for (std::size_t n = 3; n <= 6; ++n) {
    for (const bool closed : {false, true}) {
      CAPTURE(n);
      CAPTURE(closed);
      ModelBuilder b;
      const std::vector<DeviceId> devices = apart(b, n + 1);
      std::vector<StepId> steps;
      for (std::size_t i = 0; i < n; ++i) {
        const bool closes = closed && i + 1 == n;
        steps.push_back(b.apply({devices[i], closes ? devices[0] : devices[i + 1]}));
      }
      std::vector<std::pair<StepId, StepId>> pairs;
      for (std::size_t i = 0; i + 1 < n; ++i) pairs.emplace_back(steps[i], steps[i + 1]);
      if (closed) pairs.emplace_back(steps[n - 1], steps[0]);
      const Model model = b.model();
      const auto runs = Runs(model, at_rest).all();
      const std::size_t classes = closed ? (std::size_t{1} << n) - 2 : std::size_t{1} << (n - 1);
      CHECK(orders_told_apart(runs, pairs) == classes);
      std::size_t all = 1;
      for (std::size_t i = 2; i <= n; ++i) all *= i;
      if (n > 3) CHECK(runs.size() < all);
    }
  }
}

TEST_CASE("while a fault may strike, a check is to come or ports may crowd, every event is taken") {
  const auto left = [](const FaultBudget& faults, bool checks) {
    ModelBuilder b;
    const std::vector<DeviceId> devices = apart(b, 3);
    for (const DeviceId d : devices) b.set_priority(d, 3);
    if (checks) b.check(when::up(devices[0]));
    b.faults(faults);
    const Model model = b.model();
    const semantics::World world(model);
    const State s = semantics::initial_state(world, faults);
    std::vector<Event> all;
    semantics::events_in(world, s, semantics::derive(world, s), all);
    return std::pair(Runs(model, at_rest).at_first(), all.size());
  };
  CHECK(left({}, false) == std::pair<std::size_t, std::size_t>(1, 3));
  CHECK(left({}, true) == std::pair<std::size_t, std::size_t>(4, 4));
  CHECK(left({.crashes = 1}, false) == std::pair<std::size_t, std::size_t>(6, 6));
  CHECK(left({.omissions = 1}, false) == std::pair<std::size_t, std::size_t>(6, 6));
  CHECK(left({.late_starts = 1}, false) == std::pair<std::size_t, std::size_t>(3, 3));

  test::SecondNeighbour crowded(Orphans::restart);
  crowded.b.unordered();
  crowded.b.power_off(crowded.b.device("g"));
  const Model model = crowded.b.model();
  CHECK(Runs(model, at_rest).at_first() == 2);
}

TEST_CASE("a state that can no longer lead to a breach is left as it is") {
  ModelBuilder b;
  const std::vector<DeviceId> devices = apart(b, 2);
  b.set_priority(devices[0], 3);
  b.set_priority(devices[1], 3);
  const Model model = b.model();
  CHECK(Runs(model, {{Property::no_refusal, 0}}).at_first() == 0);
  CHECK(Runs(model, {{Property::primary_stays, 0}}).at_first() == 0);
  // Nor can faults let two share a number.
  b.faults({.cable_breaks = 1, .crashes = 1, .omissions = 1});
  CHECK(Runs(b.model(), {{Property::no_clash, 0}}).at_first() == 0);
  b.faults({});
  // The second may be off when its step comes.
  b.power_off(devices[1]);
  const Model other = b.model();
  CHECK(Runs(other, {{Property::no_refusal, 0}}).at_first() == 2);
  CHECK(Runs(other, {{Property::primary_stays, 0}}).at_first() == 0);
  // The first is to be kept.
  b.power_off(devices[0]);
  const Model third = b.model();
  CHECK(Runs(third, {{Property::primary_stays, 0}}).at_first() == 2);
  // A run without end is no breach, and takes back what is proved all the same.
  CHECK(Runs(test::SecondNeighbour(Orphans::restart).b.model(), {{Property::no_clash, 0}}).at_first() == 1);
}

TEST_CASE("parts are looked at alone only as far as that is allowed, and again when more is") {
  ModelBuilder b;
  const std::vector<DeviceId> devices = apart(b, 2);
  for (int i = 0; i < 10; ++i) b.set_priority(devices[0], 3);
  b.set_priority(devices[1], 3);
  const Model model = b.model();  // the first device has 2^10 states by itself, the second two
  Runs runs(model, {{Property::no_refusal, 0}}, 0);
  CHECK(runs.at_first() == 11);
  CHECK(runs.states_alone() == 0);
  runs.allow_alone(100);
  CHECK(runs.at_first() == 10);  // the second is done with, whatever was begun first
  const std::uint64_t visited = runs.states_alone();
  CHECK(visited <= 100);
  runs.allow_alone(199);  // not worth another attempt
  CHECK(runs.at_first() == 10);
  CHECK(runs.states_alone() == visited);
  runs.allow_alone(3000);
  CHECK(runs.at_first() == 0);
  CHECK(runs.states_alone() == (1 << 10) + 2);
}

TEST_CASE("a step has to do with all that it handles and that its condition reads") {
  ModelBuilder b;
  const std::vector<DeviceId> d = apart(b, 6);
  const CableId cable = b.cable(b.east(d[0]), b.west(d[1]), false);
  const StepId via = b.set_number(d[0], 3, {.via = d[4]});
  const StepId named = b.save({d[1], d[2]});
  const StepId stack = b.apply_stack_of(d[3], {.via = d[2]});
  const StepId plug = b.plug(cable);
  const StepId port = b.enable(b.east(d[5]));
  const StepId waits =
      b.await(when::all({when::up(d[2]), when::any({when::linked(cable), when::no(when::held(d[3]))})}));
  const StepId reads_port = b.await(when::side(b.west(d[4]), Sign::equal, Side::none));
  const StepId reads_step = b.await(when::done(via));
  const StepId reads_reader = b.await(when::implies(when::done(reads_step), when::up(d[5])));
  const Model model = b.model();
  const std::vector<std::vector<DeviceId>> all = devices_of_steps(model);
  using Devices = std::vector<DeviceId>;
  CHECK(all[via.value] == Devices{d[0], d[4]});
  CHECK(all[named.value] == Devices{d[1], d[2]});
  CHECK(all[stack.value] == Devices{d[2], d[3]});
  CHECK(all[plug.value] == Devices{d[0], d[1]});
  CHECK(all[port.value] == Devices{d[5]});
  CHECK(all[waits.value] == Devices{d[0], d[1], d[2], d[3]});
  CHECK(all[reads_port.value] == Devices{d[4]});
  CHECK(all[reads_step.value] == Devices{d[0], d[4]});
  CHECK(all[reads_reader.value] == Devices{d[0], d[4], d[5]});
}

TEST_CASE("plugged cables join parts, and so does what is to be kept") {
  ModelBuilder b;
  const std::vector<DeviceId> d = apart(b, 5);
  const CableId first = b.cable(b.east(d[1]), b.west(d[2]));
  b.cable(b.east(d[2]), b.west(d[3]), false);
  b.cable(b.east(d[0]), b.west(d[1]), false);
  b.keep({d[0], d[4]});
  const Model model = b.model();
  const semantics::World world(model);
  State s = semantics::initial_state(world, {});
  Components parts(world);
  parts.look_at(s);
  CHECK(parts.of(d[2]) == d[1]);
  CHECK(parts.of(d[3]) == d[3]);
  CHECK(parts.of(d[4]) == d[0]);
  CHECK(parts.is_head(d[1]));
  CHECK_FALSE(parts.is_head(d[2]));
  s[first].plugged = false;
  parts.look_at(s);
  CHECK(parts.of(d[2]) == d[2]);
}

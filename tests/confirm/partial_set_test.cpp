// Sets of partial states put to the formulas: what is wrong with one, with what is said of it or with a formula never
// passes for a proof.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <map>
#include <random>

#include "confirm/sets.hpp"
#include "explore/leaders.hpp"
#include "explore/quayside.hpp"
#include "solver/closed_set.hpp"
#include "support/model_builder.hpp"
#include "verify/closed_set.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Difference;
using Kind = solver::Difference::Kind;
using Outcome = solver::SetConfirmation::Outcome;
using system::Variable;
using system::VariableId;
using Entry = ListedPartialStates::Entry;

namespace {

constexpr Reductions forgetting{.orders = false};
constexpr FaultBudget faults{.crashes = 1, .omissions = 1, .late_starts = 1};
const std::vector<AskedProperty> asked{{Property::primary_stays, 0}};

// Only yard-1 is to be undisturbed, so that a crash breaks nothing.
Model append() {
  Model model = append_to_chain(3);
  model.procedure.keep = {DeviceId(0)};
  return model;
}

/// A closed set that the formulas agree on, for tests to spoil.
struct Sound {
  Sound() : model(append()), moves(parts_of(model, faults)), set(reduced(model, faults, forgetting)) {}

  [[nodiscard]] solver::SetConfirmation ask() { return confirm(*moves, set, asked); }
  [[nodiscard]] system::Move& move(const Event& event) const {
    return *std::find_if(moves->events.begin(), moves->events.end(),
                         [&](const system::Move& each) { return each.event == event; });
  }
  [[nodiscard]] Variable::Kind kind(VariableId v) const { return moves->space[v].kind; }

  Model model;
  std::unique_ptr<system::Moves> moves;
  ListedPartialStates set;
};

/// How often something that was spoilt was noticed.
struct Noticed {
  std::size_t tried = 0;
  std::size_t differs = 0;
  std::size_t unclear = 0;

  void add(const solver::SetConfirmation& told) {
    ++tried;
    differs += told.outcome == Outcome::differs ? 1 : 0;
    unclear += told.outcome == Outcome::unclear ? 1 : 0;
  }
  [[nodiscard]] std::size_t all() const { return differs + unclear; }
};

}  // namespace

TEST_CASE("a reduced set is confirmed, and stands for more states than it has") {
  Sound sound;
  const solver::SetConfirmation told = sound.ask();
  CHECK(told.outcome == Outcome::agrees);
  CHECK_FALSE(told.doubt);
  CHECK(told.effort.states == sound.set.size());
  CHECK(sound.set.size() * 3 < reachable(sound.model, faults).size() * 2);
  std::map<Variable::Kind, std::size_t> unknown;
  for (const Entry& entry : sound.set.entries) {
    for (const VariableId v : entry.unknown) ++unknown[sound.kind(v)];
  }
  for (const auto kind :
       {Variable::Kind::senior, Variable::Kind::number, Variable::Kind::priority, Variable::Kind::enabled,
        Variable::Kind::side, Variable::Kind::operational_side, Variable::Kind::left}) {
    CAPTURE(static_cast<int>(kind));
    CHECK(unknown[kind] > 0);
  }
}

TEST_CASE("every reachable state is among those that a confirmed set stands for") {
  Sound sound;
  REQUIRE(sound.ask().outcome == Outcome::agrees);
  const auto stands_for = [&](const Entry& entry, const State& s) {
    for (VariableId v = 0; v < sound.moves->space.size(); ++v) {
      const bool known = std::find(entry.unknown.begin(), entry.unknown.end(), v) == entry.unknown.end();
      if (known && sound.moves->space.read(entry.state, v) != sound.moves->space.read(s, v)) return false;
    }
    return true;
  };
  const std::vector<State> states = reachable(sound.model, faults);
  for (std::size_t i = 0; i < states.size(); i += 17) {
    REQUIRE(std::any_of(sound.set.entries.begin(), sound.set.entries.end(),
                        [&](const Entry& entry) { return stands_for(entry, states[i]); }));
  }
}

TEST_CASE("whichever partial state is left out, it is missed") {
  const Sound sound;
  for (std::size_t left_out = 0; left_out < sound.set.size(); left_out += 11) {
    ListedPartialStates set = sound.set;
    set.erase(left_out);
    const solver::SetConfirmation told = confirm(*sound.moves, set, asked);
    REQUIRE(told.outcome == Outcome::differs);
    CHECK(told.difference->kind == (left_out == 0 ? Kind::first_missing : Kind::leads_out));
  }
}

TEST_CASE("whichever value is another one, it is noticed") {
  Sound sound;
  std::mt19937_64 random(3);
  Noticed noticed;
  while (noticed.tried < 60) {
    Entry& entry = sound.set.entries[random() % sound.set.size()];
    const Entry before = entry;
    DeviceState& device = entry.state.devices[random() % entry.state.devices.size()];
    switch (random() % 4) {
      case 0:
        device.power = device.power == Power::up ? Power::starting : Power::up;
        break;
      case 1:
        device.next_number = device.next_number == 1 ? 2 : 1;
        break;
      case 2:
        entry.state.done[random() % entry.state.done.size()] ^= 1;
        break;
      default:
        entry.state.left.crashes ^= 1;
    }
    noticed.add(sound.ask());
    entry = before;
  }
  CHECK(noticed.differs == noticed.tried);
}

TEST_CASE("whatever else is taken for unknown, it is noticed where it is asked") {
  Sound sound;
  std::mt19937_64 random(4);
  std::map<Variable::Kind, Noticed> noticed;
  for (int i = 0; i < 500; ++i) {
    Entry& entry = sound.set.entries[random() % sound.set.size()];
    const auto v = static_cast<VariableId>(random() % sound.moves->space.size());
    const bool open = std::find(entry.unknown.begin(), entry.unknown.end(), v) != entry.unknown.end();
    if (open || sound.moves->domains[v].size() == 1) continue;
    const std::vector<VariableId> before = entry.unknown;
    entry.unknown.push_back(v);
    noticed[sound.kind(v)].add(sound.ask());
    entry.unknown = before;
  }
  for (const auto kind :
       {Variable::Kind::power, Variable::Kind::leader, Variable::Kind::number, Variable::Kind::startup_enabled,
        Variable::Kind::senior, Variable::Kind::enabled, Variable::Kind::operational_side, Variable::Kind::plugged,
        Variable::Kind::done, Variable::Kind::left}) {
    CAPTURE(static_cast<int>(kind));
    const Noticed& of = noticed[kind];
    CHECK(of.all() > 0);
    CHECK(of.differs == 0);  // it stands for the right state among others
    if (kind == Variable::Kind::done || kind == Variable::Kind::power) CHECK(of.all() == of.tried);
  }
}

TEST_CASE("4.4.b without a pair of leaders that may be compared by seniority, a set proves nothing") {
  Leaders y;
  const auto d = y.add_all({"yard-1", "yard-2", "yard-3", "yard-4"});
  y.b.unordered();
  for (std::size_t i = 0; i + 1 < d.size(); ++i) y.plug(d[i], d[i + 1]);
  const Model model = y.b.model();
  const auto moves = parts_of(model, {});
  ListedPartialStates set = reduced(model, {}, forgetting);
  const std::vector<AskedProperty> no_clash{{Property::no_clash, 0}};
  REQUIRE(confirm(*moves, set, no_clash).outcome == Outcome::agrees);
  Noticed noticed;
  for (Entry& entry : set.entries) {
    const std::vector<VariableId> before = entry.unknown;
    for (const DeviceId one : d) {
      for (const DeviceId other : d) {
        if (one >= other || entry.state[one].leader != one || entry.state[other].leader != other) continue;
        const VariableId senior = moves->space.senior(one, other);
        if (std::find(before.begin(), before.end(), senior) != before.end()) continue;
        entry.unknown = before;
        entry.unknown.push_back(senior);
        entry.unknown.push_back(moves->space.senior(other, one));
        noticed.add(confirm(*moves, set, no_clash));
      }
    }
    entry.unknown = before;
  }
  CHECK(noticed.tried > 20);
  CHECK(noticed.unclear * 4 > noticed.tried * 3);
}

TEST_CASE("what is forgotten cannot be taken for known") {
  Sound sound;
  std::map<Variable::Kind, Noticed> noticed;
  std::mt19937_64 random(5);
  for (int i = 0; i < 200; ++i) {
    Entry& entry = sound.set.entries[random() % sound.set.size()];
    if (entry.unknown.empty()) continue;
    const std::vector<VariableId> before = entry.unknown;
    const auto forgotten = entry.unknown.begin() + static_cast<std::ptrdiff_t>(random() % entry.unknown.size());
    const VariableId v = *forgotten;
    entry.unknown.erase(forgotten);
    if (sound.moves->domains[v].size() > 1) noticed[sound.kind(v)].add(sound.ask());
    entry.unknown = before;
  }
  for (const auto kind : {Variable::Kind::senior, Variable::Kind::left}) {
    CAPTURE(static_cast<int>(kind));
    CHECK(noticed[kind].all() > 0);
  }
}

TEST_CASE("a wrong hint proves nothing") {
  Sound sound;
  std::mt19937_64 random(6);
  for (int i = 0; i < 40; ++i) {
    Entry& entry = sound.set.entries[random() % sound.set.size()];
    if (entry.ways.empty()) continue;
    const auto before = entry.ways;
    auto& way = entry.ways[random() % entry.ways.size()];
    const std::uint64_t right = way.to;
    SUBCASE("another state") {
      way.to = (right + 1 + random() % (sound.set.size() - 1)) % sound.set.size();
      CHECK(sound.ask().outcome != Outcome::agrees);
    }
    SUBCASE("no state at all") {
      way.to = sound.set.size();
      CHECK(sound.ask().outcome == Outcome::differs);
    }
    SUBCASE("an event that is left out") {
      entry.ways.clear();
      CHECK(sound.ask().outcome == Outcome::differs);
    }
    entry.ways = before;
  }
}

TEST_CASE("a formula that differs is found in partial states too") {
  Sound sound;
  const auto told = [&] {
    const solver::SetConfirmation confirmation = sound.ask();
    REQUIRE(confirmation.outcome == Outcome::differs);
    return *confirmation.difference;
  };
  const DeviceId yard_2(1);
  SUBCASE("a crash that spends nothing") {
    const VariableId left = sound.moves->space.left(system::Fault::crash);
    sound.move({Event::Kind::crashed, yard_2.value}).after[left] = sound.moves->now.state[left];
    const Difference difference = told();
    CHECK(difference.kind == Kind::leads_out);
    CHECK(difference.events == Trace{{Event::Kind::crashed, yard_2.value}});
    CHECK(verify::told(semantics::World(sound.model), faults, difference)
              .find("crashes left is 1 (by the concrete functions, 0)") != std::string::npos);
  }
  SUBCASE("an event that may happen where it may not") {
    sound.move({Event::Kind::crashed, yard_2.value}).may_happen = system::always;
    CHECK(told().kind == Kind::leads_out);
  }
  SUBCASE("a pass that takes somebody down") {
    sound.moves->pass.unsettled = sound.moves->now.state.up(yard_2);
    CHECK(told().kind == Kind::unsettled);
  }
  SUBCASE("a pass that changes a leader in silence") {
    sound.moves->passed.set_leader(yard_2, system::nobody);
    CHECK(told().kind == Kind::unsettled);
  }
  SUBCASE("passes that never end") {
    system::Value& leader = sound.moves->passed.of(Variable::Kind::leader, yard_2);
    const system::Term fresh = system::fresh(sound.moves->terms, sound.moves->now.state, yard_2);
    leader = choose(sound.moves->terms, fresh, system::Value(system::nobody), leader);
    sound.moves->pass.unsettled = fresh;
    CHECK(told().kind == Kind::endless);
  }
}

TEST_CASE("a value that nothing brings about is strange where it is known, and of no account where it is not") {
  Sound sound;
  Entry& entry = sound.set.entries[5];
  const VariableId v = sound.moves->space.of_device(Variable::Kind::priority, DeviceId(0));
  entry.state.devices[0].priority = 219;
  CHECK(sound.ask().difference->kind == Kind::strange);
  entry.unknown.push_back(v);
  CHECK(sound.ask().outcome != Outcome::differs);
}

TEST_CASE("limits end the confirmation of partial states") {
  Sound sound;
  const std::uint64_t all = sound.set.size();
  const auto ask = [&](std::uint64_t most, const solver::AskLimits& limits) {
    return solver::confirm_partial_set(*sound.moves, sound.set, asked, most, limits);
  };
  CHECK(ask(all - 1, [](std::uint64_t) { return std::nullopt; }).outcome == Outcome::too_large);
  const solver::SetConfirmation stopped = ask(all, [&](std::uint64_t bytes) {
    CHECK(bytes >= 2 * all * sizeof(std::uint64_t));
    return std::optional(Reason::time);
  });
  CHECK(stopped.outcome == Outcome::stopped);
  CHECK(stopped.reason == Reason::time);
}

TEST_CASE("6.7 and 6.8 are asked of partial states") {
  const AskedProperty cold{Property::survives_cold_start, 0};
  const AskedProperty loss{Property::tolerates_loss, 1};
  const Model model = append_to_chain(2);
  const auto moves = parts_of(model, {});
  ListedPartialStates set = reduced(model, {}, forgetting);
  CHECK(confirm(*moves, set, {cold}).outcome == Outcome::agrees);
  const solver::SetConfirmation fatal = confirm(*moves, set, {loss});
  REQUIRE(fatal.outcome == Outcome::differs);
  CHECK(fatal.difference->property == loss);
  CHECK(fatal.difference->events.size() == 1);
  SUBCASE("a number that a cold start forgets") {
    moves->cold->of(Variable::Kind::number, DeviceId(2)) = system::Value(1);
    CHECK(confirm(*moves, set, {cold}).difference->events == Trace{{Event::Kind::cold_start, 0}});
  }
  SUBCASE("a setting that the start takes over is not known") {
    Entry& last = *std::find_if(set.entries.begin(), set.entries.end(),
                                [](const Entry& entry) { return entry.state.done.back() != 0; });
    const PortId west = model.site.devices[2].ports.front();
    last.unknown.push_back(moves->space.of_port(Variable::Kind::startup_enabled, west));
    const solver::SetConfirmation open = confirm(*moves, set, {cold});
    CHECK(open.outcome == Outcome::unclear);
    REQUIRE(open.doubt);
    CHECK(open.doubt->events == Trace{{Event::Kind::cold_start, 0}});
  }
}

TEST_CASE("6.8: a port of which it is not known whether it is enabled leaves a loss open") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2", "yard-3"});
  b.ring(yard);
  b.stack(yard[0], yard);
  b.goal(goal_of(yard));
  b.disable(b.east(yard[0]));
  b.enable(b.east(yard[0]));
  const Model model = b.model();
  const auto moves = parts_of(model, {});
  ListedPartialStates set = reduced(model, {}, forgetting);
  const AskedProperty loss{Property::tolerates_loss, 1};
  CHECK(confirm(*moves, set, {loss}).outcome == Outcome::agrees);
  set.entries.back().unknown.push_back(moves->space.of_port(Variable::Kind::enabled, b.east(yard[0])));
  const solver::SetConfirmation open = confirm(*moves, set, {loss});
  CHECK(open.outcome == Outcome::unclear);
  REQUIRE(open.doubt);
  CHECK(open.doubt->property == loss);
  CHECK(open.doubt->events.size() == 1);
}

// What is wrong with a set, or with a formula, is found and named.
#include "solver/closed_set.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <string>

#include "confirm/sets.hpp"
#include "explore/quayside.hpp"
#include "support/model_builder.hpp"
#include "verify/closed_set.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Difference;
using Kind = solver::Difference::Kind;
using Outcome = solver::SetConfirmation::Outcome;
using system::Term;

namespace {

const std::vector<AskedProperty> with_faults{{Property::primary_stays, 0}, {Property::no_clash, 0}};

constexpr FaultBudget one_crash{.crashes = 1};

// Only yard-1 is to be undisturbed, so that a crash breaks nothing.
Model append(int n) {
  Model model = append_to_chain(n);
  model.procedure.keep = {DeviceId(0)};
  return model;
}

/// A closed set that the formulas agree on, for tests to spoil.
struct Sound {
  explicit Sound(const FaultBudget& budget, int n = 3)
      : faults(budget), model(append(n)), states(reachable(model, faults)), moves(parts_of(model, faults)) {}

  [[nodiscard]] solver::SetConfirmation ask(const std::vector<AskedProperty>& asked = with_faults) const {
    return confirm(*moves, states, asked);
  }
  [[nodiscard]] Difference difference(const std::vector<AskedProperty>& asked = with_faults) const {
    const solver::SetConfirmation confirmation = ask(asked);
    REQUIRE(confirmation.outcome == Outcome::differs);
    return *confirmation.difference;
  }
  [[nodiscard]] system::Move& move(const Event& event) const {
    return *std::find_if(moves->events.begin(), moves->events.end(),
                         [&](const system::Move& each) { return each.event == event; });
  }
  [[nodiscard]] std::string told(const Difference& difference) const {
    return verify::told(semantics::World(model), faults, difference);
  }

  FaultBudget faults;
  Model model;
  std::vector<State> states;
  std::unique_ptr<system::Moves> moves;
};

}  // namespace

TEST_CASE("a closed set is confirmed, and what was done is counted") {
  const Sound sound(one_crash);
  const solver::SetConfirmation all = sound.ask();
  CHECK(all.outcome == Outcome::agrees);
  CHECK_FALSE(all.difference);
  CHECK(all.effort.states == sound.states.size());
  CHECK(all.effort.states > 100);
  CHECK(all.effort.events > all.effort.states);
  CHECK(all.effort.passes > 0);
  CHECK(all.effort.passes < 2 * all.effort.events);
  CHECK(all.effort.losses == 0);
}

TEST_CASE("the order of the states is of no account, nor is a state that stands there twice") {
  Sound sound(one_crash);
  std::reverse(sound.states.begin(), sound.states.end());
  sound.states.push_back(sound.states[5]);
  CHECK(sound.ask().outcome == Outcome::agrees);
}

TEST_CASE("whichever state is left out, it is missed") {
  const Sound sound({});
  REQUIRE(sound.states.size() == 20);
  for (std::size_t left_out = 0; left_out < sound.states.size(); ++left_out) {
    CAPTURE(left_out);
    std::vector<State> states = sound.states;
    states.erase(states.begin() + static_cast<std::ptrdiff_t>(left_out));
    const solver::SetConfirmation all = confirm(*sound.moves, states, {{Property::reaches_goal, 0}});
    REQUIRE(all.outcome == Outcome::differs);
    const Difference& difference = *all.difference;
    if (left_out == 0) {
      CHECK(difference.kind == Kind::first_missing);
      CHECK(sound.told(difference).find("the concrete functions lead there too") != std::string::npos);
      continue;
    }
    REQUIRE(difference.kind == Kind::leads_out);
    REQUIRE(difference.state);
    CHECK(difference.events.size() == 1);
    // What the formulas lead to is the state that was left out.
    for (system::VariableId v = 0; v < sound.moves->space.size(); ++v) {
      CHECK(difference.reached[v] == sound.moves->space.read(sound.states[left_out], v));
    }
    CHECK(sound.told(difference).find("the concrete functions lead there too") != std::string::npos);
  }
}

TEST_CASE("whichever state is left out of a set with faults, it is missed") {
  const Sound sound(one_crash);
  for (std::size_t left_out = 1; left_out < sound.states.size(); left_out += 13) {
    std::vector<State> states = sound.states;
    states.erase(states.begin() + static_cast<std::ptrdiff_t>(left_out));
    const solver::SetConfirmation all = confirm(*sound.moves, states, with_faults);
    REQUIRE(all.outcome == Outcome::differs);
    CHECK(all.difference->kind == Kind::leads_out);
  }
}

TEST_CASE("an empty set lacks the first state") {
  Sound sound({});
  sound.states.clear();
  CHECK(sound.difference().kind == Kind::first_missing);
}

TEST_CASE("a state that does not belong is found for what is wrong with it") {
  Sound sound(one_crash);
  State s = sound.states.front();
  SUBCASE("a value that nothing brings about") {
    s.devices[0].priority = 219;
    sound.states.push_back(s);
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::strange);
    CHECK(difference.state == s);
    CHECK(
        sound.told(difference) ==
        "the exploration visited a state with a value that nothing brings about by the formulas: in the state that is "
        "the initial one, settled, but that priority of yard-1 is 219");
  }
  SUBCASE("a pass changes it") {
    s.devices[1].leader = {};
    sound.states.push_back(s);
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::unsettled);
    CHECK(sound.told(difference) ==
          "by the formulas a state that the exploration holds for settled settles further: in the state that is the "
          "initial one, settled, but that leader of yard-2 is none");
  }
  SUBCASE("it breaks a property") {
    s = *std::find_if(sound.states.begin(), sound.states.end(),
                      [](const State& each) { return each.done.back() != 0 && each.left.crashes == 1; });
    s.devices[3].number = 1;  // as yard-1, which it follows by now
    sound.states.push_back(s);
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::broken);
    CHECK(difference.property == AskedProperty{Property::no_clash, 0});
    CHECK(difference.events.empty());
  }
  SUBCASE("an event leads out of the set") {
    s.done[4] = 1;
    sound.states.push_back(s);
    CHECK(sound.difference().kind == Kind::leads_out);
  }
}

TEST_CASE("a formula that differs is found, and the event is named") {
  Sound sound(one_crash);
  const DeviceId yard_2(1);
  SUBCASE("a step that does not become done") {
    system::Move& move = sound.move({Event::Kind::step, 0});
    const system::VariableId done = sound.moves->space.done(StepId(0));
    move.after[done] = sound.moves->now.state[done];
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::leads_out);
    CHECK(difference.events == Trace{{Event::Kind::step, 0}});
    CHECK(sound.told(difference)
              .find("by the formulas step s1 leads to a state that the exploration did not visit: not "
                    "s1 done (by the concrete functions, true)") == 0);
  }
  SUBCASE("a crash that spends nothing") {
    system::Move& move = sound.move({Event::Kind::crashed, yard_2.value});
    const system::VariableId left = sound.moves->space.left(system::Fault::crash);
    move.after[left] = sound.moves->now.state[left];
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::leads_out);
    CHECK(difference.events == Trace{{Event::Kind::crashed, yard_2.value}});
    CHECK(sound.told(difference).find("crashes left is 1 (by the concrete functions, 0)") != std::string::npos);
  }
  SUBCASE("an event that may happen where it may not") {
    sound.move({Event::Kind::crashed, yard_2.value}).may_happen = system::always;
    CHECK(sound.difference().kind == Kind::leads_out);
  }
  SUBCASE("a pass that forgets who leads") {
    system::Value& leader = sound.moves->passed.of(system::Variable::Kind::leader, yard_2);
    leader = sound.moves->now.state.of(system::Variable::Kind::leader, yard_2);
    CHECK(sound.difference().kind == Kind::leads_out);
  }
  SUBCASE("passes that never end") {
    // Once up, yard-2 is never admitted. In the set it is without a leader only while it is down.
    system::Value& leader = sound.moves->passed.of(system::Variable::Kind::leader, yard_2);
    leader =
        choose(sound.moves->terms, sound.moves->now.state.leaderless(yard_2), system::Value(system::nobody), leader);
    sound.moves->pass.unsettled = system::always;
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::endless);
    CHECK(difference.events == Trace{{Event::Kind::started, yard_2.value}});
    CHECK(sound.told(difference).find("by the formulas the stack does not settle after started yard-2; in the state") ==
          0);
  }
  SUBCASE("an initial state that does not settle") {
    sound.moves->first.unfinished = system::always;
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::endless);
    CHECK(sound.told(difference) == "by the formulas the stack does not settle; at the start");
  }
  SUBCASE("another first state") {
    sound.moves->first.end.set_power(yard_2, Power::starting);
    const Difference difference = sound.difference();
    CHECK(difference.kind == Kind::first_missing);
    CHECK(sound.told(difference) ==
          "by the formulas the initial state settles to one that the exploration did not visit: power of yard-2 is "
          "starting (by the concrete functions, up)");
  }
}

TEST_CASE("limits end a confirmation, and are told") {
  const Sound sound(one_crash);
  ListedStates set(sound.states);
  const std::uint64_t all = sound.states.size();
  const auto ask = [&](std::uint64_t most, const solver::AskLimits& limits) {
    return solver::confirm_closed_set(*sound.moves, set, with_faults, most, limits);
  };
  const auto none = [](std::uint64_t) { return std::optional<Reason>(); };
  CHECK(ask(all - 1, none).outcome == Outcome::too_large);
  CHECK(ask(all, none).outcome == Outcome::agrees);
  for (const Reason reason : {Reason::time, Reason::memory, Reason::interrupted}) {
    int asked = 0;
    const auto after_some = [&](std::uint64_t bytes) {
      CHECK(bytes >= all * sizeof(std::uint64_t));
      return ++asked > 5 ? std::optional(reason) : std::nullopt;
    };
    const solver::SetConfirmation stopped = ask(all, after_some);
    CHECK(stopped.outcome == Outcome::stopped);
    CHECK(stopped.reason == reason);
    CHECK_FALSE(stopped.difference);
  }
}

TEST_CASE("6.7: what a cold start brings is told") {
  Sound sound({}, 2);
  const AskedProperty cold{Property::survives_cold_start, 0};
  CHECK(sound.ask({cold}).outcome == Outcome::agrees);
  SUBCASE("a number is forgotten") {
    sound.moves->cold->of(system::Variable::Kind::number, DeviceId(2)) = system::Value(1);
    const Difference difference = sound.difference({cold});
    CHECK(difference.kind == Kind::broken);
    CHECK(difference.property == cold);
    CHECK(difference.events == Trace{{Event::Kind::cold_start, 0}});
    CHECK(sound.told(difference)
              .find("by the formulas survives-cold-start is broken after cold-start, which the "
                    "exploration did not see; in the state that is the initial one") == 0);
  }
  SUBCASE("the passes do not end") {
    sound.moves->pass.unsettled = system::always;
    CHECK(sound.difference({cold}).kind == Kind::endless);
  }
}

TEST_CASE("6.8: every loss of k cables is looked at, of all where there are fewer") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2", "yard-3", "yard-4", "yard-5"});
  b.ring(yard);
  b.stack(yard[0], yard);
  b.goal(goal_of(yard));
  const Model model = b.model();
  const auto moves = parts_of(model, {});
  const auto losses = [&](std::int64_t k) {
    return confirm(*moves, reachable(model, {}), {{Property::tolerates_loss, k}});
  };
  CHECK(losses(1).outcome == Outcome::agrees);
  CHECK(losses(1).effort.losses == 5);
  for (const std::int64_t k : {2, 3, 5, 9}) {
    const solver::SetConfirmation fatal = losses(k);
    REQUIRE(fatal.outcome == Outcome::differs);
    CHECK(fatal.difference->kind == Kind::broken);
    CHECK(fatal.difference->events.size() == static_cast<std::size_t>(std::min<std::int64_t>(k, 5)));
    for (const Event& event : fatal.difference->events) CHECK(event.kind == Event::Kind::broke);
  }
}

TEST_CASE("6.8: losses count against the bound") {
  ModelBuilder b;
  const auto yard = b.devices({"yard-1", "yard-2"});
  for (int i = 0; i < 12; ++i) b.cable(b.east(yard[0]), b.west(yard[1]), i == 0);
  b.stack(yard[0], yard);
  b.goal(goal_of({yard[0]}));
  const Model model = b.model();
  const auto moves = parts_of(model, {});
  ListedStates set(reachable(model, {}));
  const auto ask = [&](std::uint64_t most) {
    return solver::confirm_closed_set(*moves, set, {{Property::tolerates_loss, 1}, {Property::tolerates_loss, 2}}, most,
                                      [](std::uint64_t) { return std::nullopt; });
  };
  CHECK(ask(2).outcome == Outcome::agrees);
  CHECK(ask(2).effort.losses == 2);
  CHECK(ask(1).outcome == Outcome::too_large);
}

// Section 5 in both writings: whose turn it is, what is refused, who is reached, and when all rests.
#include "system/steps.hpp"

#include <doctest/doctest.h>

#include <string>

#include "confront/round.hpp"
#include "semantics/events.hpp"
#include "system/events.hpp"

using namespace cairn;
using namespace cairn::confront;

TEST_CASE("5.a, 5.d, 5.h, 5.j: turns, refusals, reach and rest are the same in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::Question> turn, ready, refused, reachable;
    for (std::uint32_t i = 0; i < round.space.steps(); ++i) {
      const StepId step(i);
      const std::string verb = std::to_string(static_cast<int>(round.model[step].verb));
      turn.push_back(sheet.ask("5.a turn", verb, system::has_turn(round.terms, round.now.state, step)));
      ready.push_back(sheet.ask("5.a ready", verb, system::ready(round.terms, round.now.state, round.derived, step)));
      const system::Term no = system::refused(round.terms, round.now.state, round.derived, step);
      refused.push_back(sheet.ask("5.d refused, verb " + verb, std::to_string(i), no));
    }
    const std::uint32_t n = round.space.devices();
    for (std::uint32_t i = 0; i < n * n; ++i) {
      reachable.push_back(
          sheet.ask("5.h reachable", std::to_string(i),
                    system::reachable(round.terms, round.now.state, round.derived, DeviceId(i / n), DeviceId(i % n))));
    }
    const auto complete = sheet.ask("5.j complete", "", system::complete(round.terms, round.now.state));
    const auto at_rest = sheet.ask("5.j at rest", "", system::at_rest(round.terms, round.now.state, round.derived));
    std::vector<Event> events;
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      const semantics::Derived derived = semantics::derive(round.world, s);
      semantics::events_in(round.world, s, derived, events);
      round.open(sheet, s);
      for (std::uint32_t at = 0; at < round.space.steps(); ++at) {
        const StepId step(at);
        sheet.answer(turn[at], semantics::has_turn(round.world, s, step));
        sheet.answer(ready[at], semantics::ready(round.world, s, derived, step));
        sheet.answer(refused[at], semantics::refusal_of(round.world, s, derived, step) != Refusal::none);
      }
      for (std::uint32_t at = 0; at < n * n; ++at) {
        sheet.answer(reachable[at], semantics::reachable(s, derived, DeviceId(at / n), DeviceId(at % n)));
      }
      sheet.answer(complete, semantics::complete(s));
      sheet.answer(at_rest, semantics::at_rest(s, events));
    }
    sheet.finish();
  }
  for (const Verb verb : {Verb::await, Verb::check}) {  // 5.13, 5.14: never refused
    const auto never = tally.find("5.d refused, verb " + std::to_string(static_cast<int>(verb)));
    REQUIRE(never != tally.end());
    CHECK(never->second.held == 0);
    tally.erase(never);
  }
  check_both_answers(tally, 500);
  MESSAGE(told(tally));
}

// Section 5 in both writings: what may happen, what is refused, and what an event leaves before any pass.
#include "system/events.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "confront/round.hpp"
#include "semantics/events.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

bool among(const std::vector<Event>& events, const Event& event) {
  return std::find(events.begin(), events.end(), event) != events.end();
}

std::string kind_of(const Round& round, const Event& event) {
  if (event.kind != Event::Kind::step) return std::string(name_of(event.kind));
  return "step of verb " + std::to_string(static_cast<int>(round.model[event.step()].verb));
}

/// The questions on one event.
struct OfEvent {
  Event event;
  Sheet::Question may_happen = 0;
  Sheet::OfState after;
};

std::vector<OfEvent> ask_of_events(Round& round, Sheet& sheet) {
  std::vector<OfEvent> questions;
  for (const Event& event : system::events_of(round.space)) {
    const std::string kind = kind_of(round, event);
    const std::string place = std::to_string(event.place);
    const system::Term may = system::may_happen(round.terms, round.now.state, round.derived, event);
    const system::SymbolicState after = system::take(round.terms, round.now.state, round.derived, event);
    questions.push_back({event, sheet.ask("may happen: " + kind, place, may),
                         sheet.ask("after " + kind, place, round.now.state, after)});
  }
  return questions;
}

}  // namespace

TEST_CASE("5.a to 5.c: the same events may happen in both, and leave the same") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    const std::vector<OfEvent> questions = ask_of_events(round, sheet);
    std::vector<Event> events;
    for (int i = 0; i < 64; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      const semantics::Derived derived = semantics::derive(round.world, s);
      semantics::events_in(round.world, s, derived, events);
      round.open(sheet, s);
      std::size_t found = 0;
      for (const OfEvent& of : questions) {
        const bool may = among(events, of.event);
        found += may ? 1 : 0;
        sheet.answer(of.may_happen, may);
        // What a step does is compared wherever the procedure stands.
        if (!may && of.event.kind != Event::Kind::step) continue;
        State after = s;
        semantics::take(round.world, after, derived, of.event);
        sheet.answer(of.after, s, after);
      }
      if (found != events.size()) sheet.differs("an event that may happen is left out");
    }
    sheet.finish();
  }
  // An await that happens leaves its `done` alone changed, which is so in every state.
  std::erase_if(tally, [](const auto& each) { return each.first.starts_with("after "); });
  check_both_answers(tally, 300);
  MESSAGE(told(tally));
}

// Section 6 in both writings: what breaks each property.
#include "system/properties.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "confront/course.hpp"
#include "confront/round.hpp"
#include "semantics/loss.hpp"
#include "system/events.hpp"

using namespace cairn;
using namespace cairn::confront;

TEST_CASE("6.1, 6.4: the same states break no-split and no-clash in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::Question> broken;
    broken.reserve(on_the_way.size());
    for (const Property property : on_the_way) {
      broken.push_back(sheet.ask(std::string(name_of(property)), "in a state",
                                 system::broken_in(round.terms, round.now.state, round.derived, property)));
    }
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      const semantics::Derived derived = semantics::derive(round.world, s);
      round.open(sheet, s);
      for (std::size_t at = 0; at < on_the_way.size(); ++at) {
        const bool breaks = semantics::broken_in(round.world, s, derived, on_the_way.at(at)).has_value();
        sheet.answer(broken[at], breaks);
      }
    }
    sheet.finish();
  }
  CHECK(std::erase_if(tally, [](const auto& each) { return each.second.held == 0; }) == 3);
  check_both_answers(tally, 2000);
  MESSAGE(told(tally));
}

TEST_CASE("6.2, 6.3: the same passes break primary-stays and members-stay in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Round round(seed);
    const system::Pass pass = system::plan_pass(round.terms, round.now.state, round.derived);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::Question> broken;
    broken.reserve(on_the_way.size());
    for (const Property property : on_the_way) {
      broken.push_back(sheet.ask(std::string(name_of(property)), "by a pass",
                                 system::broken_by(round.terms, round.now.state, pass, property)));
    }
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(i % 4 == 0 ? Sort::wild : Sort::lively);
      semantics::PassPlan plan;
      semantics::plan_pass(round.world, s, semantics::derive(round.world, s), plan);
      round.open(sheet, s);
      for (std::size_t at = 0; at < on_the_way.size(); ++at) {
        sheet.answer(broken[at], semantics::broken_by(round.world, s, plan, on_the_way.at(at)).has_value());
      }
    }
    sheet.finish();
  }
  CHECK(std::erase_if(tally, [](const auto& each) { return each.second.held == 0; }) == 3);
  check_both_answers(tally, 300);
  MESSAGE(told(tally));
}

TEST_CASE("6.2, 6.3, 6.5: the same events break primary-stays, members-stay and no-refusal in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    const std::vector<Event> events = system::events_of(round.space);
    std::vector<std::array<Sheet::Question, on_the_way.size()>> broken(events.size());
    for (std::size_t i = 0; i < events.size(); ++i) {
      for (std::size_t at = 0; at < on_the_way.size(); ++at) {
        const Property property = on_the_way.at(at);
        broken[i].at(at) =
            sheet.ask(std::string(name_of(property)), std::string(name_of(events[i].kind)),
                      system::broken_by(round.terms, round.now.state, round.derived, events[i], property));
      }
    }
    for (int i = 0; i < 64; ++i) {
      const State s = round.draw(i % 2 == 0 ? Sort::settled : Sort::lively);
      const semantics::Derived derived = semantics::derive(round.world, s);
      round.open(sheet, s);
      for (std::size_t each = 0; each < events.size(); ++each) {
        const Event& event = events[each];
        const Refusal refusal = event.kind == Event::Kind::step
                                    ? semantics::refusal_of(round.world, s, derived, event.step())
                                    : Refusal::none;
        for (std::size_t at = 0; at < on_the_way.size(); ++at) {
          sheet.answer(broken[each].at(at),
                       semantics::broken_by(round.world, s, event, refusal, on_the_way.at(at)).has_value());
        }
      }
    }
    sheet.finish();
  }
  CHECK(std::erase_if(tally, [](const auto& each) { return each.second.held == 0; }) == 2);
  check_both_answers(tally, 300);
  MESSAGE(told(tally));
}

TEST_CASE("6.b, 6.6: the goal and what rest breaks are the same in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 500; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    const auto goal = sheet.ask("6.b goal", "", system::goal(round.terms, round.now.state, round.derived));
    const system::RestBreach breach =
        system::broken_at_rest(round.terms, round.now.state, round.derived, {Property::reaches_goal, 0}, 2);
    const auto broken = sheet.ask("6.6 broken at rest", "", breach.broken);
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(i % 4 == 0 ? Sort::lively : Sort::at_rest);
      const semantics::Derived derived = semantics::derive(round.world, s);
      round.open(sheet, s);
      sheet.answer(goal, !semantics::goal_missed(round.world, s, derived));
      sheet.answer(broken, rests(round.world, s) && semantics::broken_at_rest(round.world, s, derived));
    }
    sheet.finish();
  }
  check_both_answers(tally, 2000);
  MESSAGE(told(tally));
}

TEST_CASE("6.e: devices of keep lead in the same states in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    const auto leads =
        sheet.ask("6.e a kept device leads", "", system::a_kept_device_leads(round.terms, round.now.state));
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      round.open(sheet, s);
      sheet.answer(leads, semantics::a_kept_device_leads(round.world, s));
    }
    sheet.finish();
  }
  check_both_answers(tally, 2000);
  MESSAGE(told(tally));
}

TEST_CASE("6.a, 6.7: a cold start leaves the same in both, and breaks survives-cold-start from the same states") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    const system::SymbolicState cold = system::cold_start(round.terms, round.now.state);
    const auto after = sheet.ask("6.a after", "", round.now.state, cold);
    const int passes = system::passes_enough(round.model.platform);
    const system::RestBreach breach =
        system::broken_at_rest(round.terms, round.now.state, round.derived, {Property::survives_cold_start, 0}, passes);
    const auto broken = sheet.ask("6.7 broken", "", breach.broken);
    const auto unfinished = sheet.ask("6.7 unfinished", "", breach.unfinished);
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(i % 8 == 0 ? Sort::lively : Sort::at_rest);
      State end = s;
      semantics::cold_start(round.world, end);
      round.open(sheet, s);
      sheet.answer(after, s, end);
      Course course(round.world);
      course.settle(end);
      const bool misses = semantics::goal_missed(round.world, end, course.derived()).has_value();
      const bool counts = rests(round.world, s) && semantics::complete(s);
      const bool more_needed = course.unsettled >= static_cast<std::size_t>(passes);
      sheet.answer(unfinished, counts && more_needed);
      if (!more_needed) sheet.answer(broken, counts && misses);
    }
    sheet.finish();
  }
  tally.erase("6.7 unfinished");
  check_both_answers(tally, 1000);
  MESSAGE(told(tally));
}

TEST_CASE("6.8: the same losses break tolerates-loss in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Round round(seed);
    const auto k = static_cast<std::int64_t>(1 + below(round.random, 3));
    const system::RestBreach breach =
        system::broken_at_rest(round.terms, round.now.state, round.derived, {Property::tolerates_loss, k}, 2);
    std::vector<system::Term> inputs = round.now.booleans;
    inputs.insert(inputs.end(), breach.lost.begin(), breach.lost.end());
    Sheet sheet(round.terms, inputs, tally);
    const auto broken = sheet.ask("6.8 broken", "", breach.broken);
    std::vector<Sheet::Question> breakable;
    for (const system::Term each : breach.breakable) breakable.push_back(sheet.ask("6.8 breakable", "", each));
    for (int i = 0; i < 32; ++i) {
      const State s = round.draw(i % 8 == 0 ? Sort::lively : Sort::at_rest);
      const std::vector<CableId> whole = semantics::breakable(s);
      const bool counts = rests(round.world, s) && semantics::complete(s);
      const auto wanted = std::min(static_cast<std::size_t>(k), whole.size());
      bool some_loss_is_fatal = false;
      // Every set of cables, so that those of another number and of cables that cannot break are seen to be no loss.
      const std::size_t sets = std::size_t{1} << std::min<std::size_t>(round.space.cables(), 6);
      const std::size_t shift = round.space.cables() > 6 ? below(round.random, round.space.cables() - 5) : 0;
      const std::vector<std::size_t> truths = assignment_of(round.domains, values_of(round.space, s));
      for (std::size_t set = 0; set < sets; ++set) {
        State after = s;
        sheet.open(truths, [&round, s] { return told(round.space, s); });
        std::size_t lost = 0;
        bool all_whole = true;
        for (std::uint32_t c = 0; c < round.space.cables(); ++c) {
          const bool is_lost = c >= shift && (set << shift >> c & 1U) != 0;
          sheet.answer(breakable[c], std::find(whole.begin(), whole.end(), CableId(c)) != whole.end());
          if (!is_lost) continue;
          sheet.set(round.now.booleans.size() + c);
          ++lost;
          all_whole = all_whole && std::find(whole.begin(), whole.end(), CableId(c)) != whole.end();
          after.cables[c].broken = true;
        }
        const bool apart = semantics::goal_stack_apart(round.world, semantics::derive(round.world, after)).has_value();
        const bool fatal = counts && all_whole && lost == wanted && apart;
        some_loss_is_fatal = some_loss_is_fatal || fatal;
        sheet.answer(broken, fatal);
      }
      if (!counts || round.space.cables() > 6) continue;
      const semantics::Loss found = semantics::find_fatal_loss(round.world, s, k, [] { return false; });
      REQUIRE(found.fatal.has_value() == some_loss_is_fatal);
    }
    sheet.finish();
  }
  check_both_answers(tally, 2000);
  MESSAGE(told(tally));
}

// Section 4 in both writings: what a pass decides, what it leaves, when it changes nothing, and where settling ends.
#include "system/settle.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <utility>

#include "confront/course.hpp"
#include "confront/round.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

bool among(const std::vector<DeviceId>& devices, DeviceId d) {
  return std::find(devices.begin(), devices.end(), d) != devices.end();
}

}  // namespace

TEST_CASE("4.4: rank is the same in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 120; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<std::pair<DeviceId, DeviceId>> pairs;
    std::vector<Sheet::Question> outranks;
    for (std::uint32_t d = 0; d < round.space.devices(); ++d) {
      for (std::uint32_t e = 0; e < round.space.devices(); ++e) {
        if (d == e) continue;
        pairs.emplace_back(d, e);
        outranks.push_back(sheet.ask("4.4 outranks", round.model.site.devices[d].name,
                                     system::outranks(round.terms, round.now.state, DeviceId(d), DeviceId(e))));
      }
    }
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(Sort::lively);
      round.open(sheet, s);
      for (std::size_t at = 0; at < pairs.size(); ++at) {
        sheet.answer(outranks[at], semantics::outranks(round.world, s, pairs[at].first, pairs[at].second));
      }
    }
    sheet.finish();
  }
  check_both_answers(tally, 10'000);
}

TEST_CASE("4: a pass decides and leaves the same in both, and `settled` tells where it changes nothing") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Round round(seed);
    const system::Pass pass = system::plan_pass(round.terms, round.now.state, round.derived);
    const system::SymbolicState end = system::carry_out(round.terms, round.now.state, round.derived, pass);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::Question> yields, restarts, chosen;
    for (std::uint32_t i = 0; i < round.space.devices(); ++i) {
      const std::string& name = round.model.site.devices[i].name;
      yields.push_back(sheet.ask("4.1 yields", name, pass.yields[i]));
      restarts.push_back(sheet.ask("4.3.b restarts", name, pass.restarts[i]));
      chosen.push_back(sheet.ask("4.2 chosen", name, pass.chosen[i]));
    }
    const auto unsettled = sheet.ask("4.5.a unsettled", "", pass.unsettled);
    const auto settled = sheet.ask("4.5.b settled", "", system::settled(round.terms, round.now.state, round.derived));
    const auto after = sheet.ask("4.3 after the pass", "", round.now.state, end);
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      semantics::PassPlan plan;
      semantics::plan_pass(round.world, s, semantics::derive(round.world, s), plan);
      State left = s;
      semantics::carry_out(plan, left);
      round.open(sheet, s);
      for (std::uint32_t d = 0; d < round.space.devices(); ++d) {
        sheet.answer(yields[d], among(plan.held, DeviceId(d)));
        sheet.answer(restarts[d], among(plan.restarted, DeviceId(d)));
        if (s.devices[d].power != Power::up) sheet.answer(chosen[d], false);
      }
      for (const auto& [d, leader] : plan.admitted) sheet.answer(chosen[leader.value], true);
      sheet.answer(unsettled, plan.unsettled());
      sheet.answer(settled, plan.changes_nothing());
      sheet.answer(after, s, left);
    }
    sheet.finish();
  }
  check_both_answers(tally, 2000);
  MESSAGE(told(tally));
}

TEST_CASE("4.5: settling goes through the same states in both, and tells where its passes are not enough") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    Round round(seed);
    // One pass fewer than is enough after an event too, so that some settlings are not finished.
    const int passes = system::passes_enough(round.model.platform) - (chance(round.random, 50) ? 1 : 0);
    const system::Settling settling = system::settle(round.terms, round.now.state, passes);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::OfState> stages;
    for (const system::Stage& stage : settling.stages) {
      stages.push_back(sheet.ask("4.5 stage", std::to_string(stages.size()), round.now.state, stage.state));
    }
    const auto end = sheet.ask("4.5 end", "", round.now.state, settling.end);
    const auto unfinished = sheet.ask("4.5 unfinished", "", settling.unfinished);
    std::vector<Sheet::Question> linked;
    for (const system::Term link : settling.end_derived.linked) linked.push_back(sheet.ask("4.5 links", "", link));
    for (int i = 0; i < 64; ++i) {
      State s = round.draw(i % 4 == 0 ? Sort::wild : Sort::lively);
      const State begin = s;
      Course course(round.world);
      course.settle(s);
      round.open(sheet, begin);
      for (std::size_t at = 0; at < stages.size(); ++at) {
        sheet.answer(stages[at], begin, course.states[std::min(at, course.states.size() - 1)]);
      }
      const bool more_needed = course.unsettled >= static_cast<std::size_t>(passes);
      sheet.answer(unfinished, more_needed);
      if (more_needed) continue;
      sheet.answer(end, begin, s);
      for (std::size_t c = 0; c < linked.size(); ++c) sheet.answer(linked[c], course.derived().linked[c] != 0);
    }
    sheet.finish();
  }
  check_both_answers(tally, 100);
  MESSAGE(told(tally));
}

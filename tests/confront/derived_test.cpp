// Section 3 in both writings: which cables are up, which links have formed, who is together with whom.
#include "system/derived.hpp"

#include <doctest/doctest.h>

#include "confront/round.hpp"

using namespace cairn;
using namespace cairn::confront;

TEST_CASE("3: cables, links and classes are the same in both") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::Question> cable_up, linked, together;
    for (std::uint32_t c = 0; c < round.space.cables(); ++c) {
      cable_up.push_back(sheet.ask("3.a cable_up", round.model.site.cables[c].name, round.derived.cable_up[c]));
      linked.push_back(sheet.ask("3.b linked", round.model.site.cables[c].name, round.derived.linked[c]));
    }
    const std::uint32_t n = round.space.devices();
    for (std::uint32_t i = 0; i < n * n; ++i) {
      const DeviceId d(i / n), e(i % n);
      together.push_back(
          sheet.ask("3.c together", round.model[d].name + ", " + round.model[e].name, round.derived.together(d, e)));
    }
    for (int i = 0; i < 128; ++i) {
      const State s = round.draw(static_cast<Sort>(below(round.random, sort_count)));
      const semantics::Derived derived = semantics::derive(round.world, s);
      round.open(sheet, s);
      for (std::uint32_t c = 0; c < round.space.cables(); ++c) {
        sheet.answer(cable_up[c], derived.cable_up[c] != 0);
        sheet.answer(linked[c], derived.linked[c] != 0);
      }
      for (std::uint32_t at = 0; at < n * n; ++at) {
        sheet.answer(together[at], derived.together(DeviceId(at / n), DeviceId(at % n)));
      }
    }
    sheet.finish();
  }
  check_both_answers(tally, 10'000);
  MESSAGE(told(tally));
}

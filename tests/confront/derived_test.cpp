// Sections 2 and 3 in both writings: what a state is, which cables are up, which links have formed, who is together.
#include <doctest/doctest.h>

#include <utility>

#include "confront/round.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

using Kind = system::Variable::Kind;

/// A state put together anew from what a space reads of another.
State rebuilt(const system::Space& space, const State& from) {
  State s;
  for (std::uint32_t i = 0; i < space.devices(); ++i) {
    const DeviceId d(i);
    const auto read = [&](Kind kind) { return space.read(from, space.of_device(kind, d)); };
    DeviceState& device = s.devices.emplace_back();
    device.power = static_cast<Power>(read(Kind::power));
    if (read(Kind::leader) != system::nobody) device.leader = DeviceId(static_cast<std::size_t>(read(Kind::leader)));
    device.number = read(Kind::number);
    device.next_number = read(Kind::next_number);
    device.priority = read(Kind::priority);
    device.startup_priority = read(Kind::startup_priority);
    device.seniority = from.devices[i].seniority;
  }
  for (std::uint32_t i = 0; i < space.ports(); ++i) {
    const auto read = [&](Kind kind) { return space.read(from, space.of_port(kind, PortId(i))); };
    s.ports.push_back({read(Kind::enabled) != 0, read(Kind::startup_enabled) != 0, static_cast<Side>(read(Kind::side)),
                       static_cast<Side>(read(Kind::startup_side)), static_cast<Side>(read(Kind::operational_side))});
  }
  for (std::uint32_t i = 0; i < space.cables(); ++i) {
    s.cables.push_back(
        {space.read(from, space.plugged(CableId(i))) != 0, space.read(from, space.broken(CableId(i))) != 0});
  }
  for (std::uint32_t i = 0; i < space.steps(); ++i) {
    s.done.push_back(space.read(from, space.done(StepId(i))) != 0 ? 1 : 0);
  }
  const auto left = [&](system::Fault fault) { return space.read(from, space.left(fault)); };
  s.left = {left(system::Fault::cable_break), left(system::Fault::crash), left(system::Fault::omission),
            left(system::Fault::late_start), space.budget().mends};
  s.halted = space.read(from, space.halted()) != 0;
  return s;
}

bool reads_seniority(const system::Space& space, const State& s) {
  for (std::uint32_t d = 0; d < space.devices(); ++d) {
    for (std::uint32_t e = 0; e < space.devices(); ++e) {
      if (d == e) continue;
      const std::uint32_t of_d = s.devices[d].seniority;
      const std::uint32_t of_e = s.devices[e].seniority;
      const bool senior = of_d != 0 && of_e != 0 && of_d < of_e;
      if ((space.read(s, space.senior(DeviceId(d), DeviceId(e))) != 0) != senior) return false;
    }
  }
  return true;
}

/// 2.a, 1.b: whether the laws hold, told of powers, leaders, pairs and plugs that are given one by one.
struct Facts {
  const Model& model;
  std::vector<std::int64_t> power, leader;
  std::vector<std::vector<bool>> senior;
  std::vector<bool> plugged;

  [[nodiscard]] bool runs(std::size_t d) const { return power[d] >= static_cast<std::int64_t>(Power::up); }
  [[nodiscard]] bool apart(std::size_t d, std::size_t e) const { return senior[d][e] || senior[e][d]; }

  // A strict weak order: a strict order in which it is an equivalence to stand side by side.
  [[nodiscard]] bool weakly_ordered() const {
    const std::size_t n = power.size();
    for (std::size_t d = 0; d < n; ++d) {
      for (std::size_t e = 0; e < n; ++e) {
        if (senior[d][e] && (!runs(d) || !runs(e) || senior[e][d])) return false;
        for (std::size_t f = 0; f < n; ++f) {
          if (senior[d][e] && senior[e][f] && !senior[d][f]) return false;
          const bool all_run = runs(d) && runs(e) && runs(f);
          if (all_run && !apart(d, e) && !apart(e, f) && apart(d, f)) return false;
        }
      }
    }
    return true;
  }

  [[nodiscard]] bool leaders_are_up() const {
    for (std::size_t d = 0; d < power.size(); ++d) {
      if (leader[d] != system::nobody && power[d] != static_cast<std::int64_t>(Power::up)) return false;
    }
    return true;
  }

  [[nodiscard]] bool one_plug_a_port() const {
    std::vector<int> plugs(model.site.ports.size(), 0);
    for (std::size_t c = 0; c < plugged.size(); ++c) {
      if (!plugged[c]) continue;
      const Cable& cable = model.site.cables[c];
      if (++plugs[cable.a.value] > 1 || ++plugs[cable.b.value] > 1) return false;
    }
    return true;
  }

  [[nodiscard]] bool hold(system::Law law) const {
    switch (law) {
      case system::Law::leaders:
        return leaders_are_up();
      case system::Law::seniority:
        return weakly_ordered();
      case system::Law::plugs:
        return one_plug_a_port();
    }
    return false;
  }
};

Facts facts_of(const Round& round, const std::vector<std::int64_t>& values) {
  const system::Space& space = round.space;
  Facts facts{round.model, {}, {}, {}, {}};
  for (std::uint32_t d = 0; d < space.devices(); ++d) {
    facts.power.push_back(values[space.of_device(Kind::power, DeviceId(d))]);
    facts.leader.push_back(values[space.of_device(Kind::leader, DeviceId(d))]);
    std::vector<bool>& row = facts.senior.emplace_back();
    for (std::uint32_t e = 0; e < space.devices(); ++e) {
      row.push_back(d != e && values[space.senior(DeviceId(d), DeviceId(e))] != 0);
    }
  }
  for (std::uint32_t c = 0; c < space.cables(); ++c) {
    facts.plugged.push_back(values[space.plugged(CableId(c))] != 0);
  }
  return facts;
}

/// Turns a few truths round, and gives a few leaders.
void spoil(Round& round, std::vector<std::int64_t>& values) {
  for (system::VariableId v = 0; v < round.space.size(); ++v) {
    const Kind kind = round.space[v].kind;
    if ((kind == Kind::senior || kind == Kind::plugged) && chance(round.random, 4)) values[v] = 1 - values[v];
    if (kind == Kind::leader && chance(round.random, 20)) values[v] = 0;
  }
}

}  // namespace

TEST_CASE("2: a space reads every variable of a state, and nothing else") {
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    Round round(seed);
    for (int i = 0; i < 50; ++i) {
      const State s = round.draw(Sort::wild);
      REQUIRE(rebuilt(round.space, s) == s);
      REQUIRE(reads_seniority(round.space, s));
    }
  }
}

TEST_CASE("2: the initial state is the same in both") {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Round round(seed);
    const State concrete = semantics::initial_state(round.world, round.model.procedure.faults);
    const system::SymbolicState symbolic = system::initial_state(round.space);
    for (system::VariableId v = 0; v < round.space.size(); ++v) {
      INFO("model " << seed << ", " << round.space.name(v));
      REQUIRE(symbolic[v] == system::Value(round.space.read(concrete, v)));
    }
  }
}

TEST_CASE("2.a, 1.b: the laws hold of the states that obey them, and of no other") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    std::vector<Sheet::Question> laws;
    for (std::uint32_t law = 0; law < system::law_count; ++law) {
      const auto which = static_cast<system::Law>(law);
      laws.push_back(sheet.ask("law " + std::to_string(law), "", system::law(round.terms, round.now.state, which)));
    }
    for (int i = 0; i < 512; ++i) {
      const State s = round.draw(Sort::lively);
      std::vector<std::int64_t> values = values_of(round.space, s);
      if (i % 2 == 0) spoil(round, values);
      sheet.open(assignment_of(round.domains, values), [&round, s] { return told(round.space, s); });
      const Facts facts = facts_of(round, values);
      for (std::uint32_t law = 0; law < system::law_count; ++law) {
        sheet.answer(laws[law], facts.hold(static_cast<system::Law>(law)));
      }
    }
    sheet.finish();
  }
  check_both_answers(tally, 1000);
  MESSAGE(told(tally));
}

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
    const auto typing = sheet.ask("typing", "of any state", !round.now.typing);
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
      sheet.answer(typing, false);
    }
    sheet.finish();
  }
  tally.erase("typing");
  check_both_answers(tally, 10'000);
  MESSAGE(told(tally));
}

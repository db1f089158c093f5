// Section 2 in both writings: what variables are worth at first, what they may be worth, and what always holds of them.
#include "system/variables.hpp"

#include <doctest/doctest.h>

#include <utility>

#include "confront/round.hpp"

using namespace cairn;
using namespace cairn::confront;

namespace {

using Kind = system::Variable::Kind;

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

/// The Booleans of a variable that has one for each of its values.
struct Indicators {
  std::size_t first = 0, count = 0;
};

Indicators any_indicators(Round& round) {
  std::vector<Indicators> all;
  std::size_t at = 0;
  for (const std::vector<std::int64_t>& values : round.domains) {
    const std::size_t count = values.size() < 3 ? values.size() - 1 : values.size();
    if (count > 1) all.push_back({at, count});
    at += count;
  }
  return all[below(round.random, all.size())];
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

TEST_CASE("2: of the Booleans of a variable exactly one holds, as typing demands") {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    Round round(seed);
    Sheet sheet(round.terms, round.now.booleans, tally);
    const auto typing = sheet.ask("typing", "", round.now.typing);
    for (int i = 0; i < 64; ++i) {
      const State s = round.draw(Sort::wild);
      round.open(sheet, s);
      sheet.answer(typing, true);
      std::vector<std::size_t> truths = assignment_of(round.domains, values_of(round.space, s));
      const Indicators any = any_indicators(round);
      const std::size_t turned = any.first + below(round.random, any.count);
      const bool was_the_one = std::erase(truths, turned) != 0;
      if (!was_the_one) truths.push_back(turned);
      sheet.open(truths, [&round, s, was_the_one] {
        return std::string(was_the_one ? "none" : "two") + " of a variable, else " + told(round.space, s);
      });
      sheet.answer(typing, false);
    }
    sheet.finish();
  }
  check_both_answers(tally, 2000);
}

TEST_CASE("2: the Booleans of a free state are called by variable, value and prime") {
  test::ModelBuilder b;
  b.devices({"yard"});
  const Model model = b.model();
  const system::Space space(model, {});
  system::Domains domains(space.size(), {0});
  domains[space.of_device(Kind::power, DeviceId(0))] = {0, 2, 3};
  domains[space.of_device(Kind::number, DeviceId(0))] = {4, 5};
  domains[space.halted()] = {0, 1};
  system::Terms terms;
  const system::FreeState now = system::free_state(terms, space, domains, "'");
  std::vector<std::string> names;
  for (const system::Term each : now.booleans) names.emplace_back(terms.name(each.node()));
  const std::vector<std::string> wanted = {"power of yard is off'", "power of yard is up'", "power of yard is held'",
                                           "number of yard is 5'", "halted'"};
  CHECK(names == wanted);
  CHECK(now.state.of(Kind::number, DeviceId(0)).is(5) == now.booleans[3]);
  CHECK(now.state.of(Kind::number, DeviceId(0)).is(4) == !now.booleans[3]);
  CHECK(now.state.of(Kind::priority, DeviceId(0)) == system::Value(0));
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

// Facts in words: each kind of state variable, each kind of condition, all that the fact says and no more.
#include "verify/fact_words.hpp"

#include <doctest/doctest.h>

#include "support/model_builder.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Fact;
using solver::Within;
using system::Fault;
using verify::words_of;
using Kind = system::Variable::Kind;

namespace {

/// A yard of three, a cable, and three steps.
struct Yard {
  Yard() : model(build()), space(model, model.procedure.faults) {}

  static Model build() {
    ModelBuilder b;
    const auto all = b.devices({"yard-1", "yard-2", "yard-3"});
    b.chain(all);
    for (const DeviceId d : all) b.save({d});
    b.faults({.cable_breaks = 2, .crashes = 1, .omissions = 3});
    return b.model();
  }

  [[nodiscard]] Within of(Kind kind, std::uint32_t device, std::vector<std::int64_t> values) const {
    return {space.of_device(kind, DeviceId(device - 1)), std::move(values)};
  }
  [[nodiscard]] Within port(Kind kind, std::vector<std::int64_t> values) const {
    return {space.of_port(kind, PortId(1)), std::move(values)};
  }
  [[nodiscard]] Within done(std::uint32_t step, bool is = true) const {
    return {space.done(StepId(step - 1)), {is ? 1 : 0}};
  }
  [[nodiscard]] Within power(std::uint32_t device, std::vector<Power> powers) const {
    std::vector<std::int64_t> values;
    for (const Power each : powers) values.push_back(static_cast<std::int64_t>(each));
    return of(Kind::power, device, values);
  }
  [[nodiscard]] std::string words(const Within& holds, std::vector<Within> given = {}) const {
    return words_of(space, {std::move(given), Fact::Kind::within, holds});
  }

  Model model;
  system::Space space;
};

const Yard yard;
constexpr std::int64_t none = system::nobody;

}  // namespace

TEST_CASE("priorities and numbers") {
  CHECK(yard.words(yard.of(Kind::priority, 1, {220})) == "yard-1 keeps priority 220");
  CHECK(yard.words(yard.of(Kind::priority, 1, {180, 220})) == "yard-1 has priority 180 or 220");
  CHECK(yard.words(yard.of(Kind::startup_priority, 2, {90})) == "yard-2 keeps priority 90 in startup");
  CHECK(yard.words(yard.of(Kind::number, 3, {3})) == "yard-3 keeps number 3");
  CHECK(yard.words(yard.of(Kind::number, 3, {3, 4, 5})) == "yard-3 has number 3 to 5");
  CHECK(yard.words(yard.of(Kind::number, 3, {3, 4, 6})) == "yard-3 has number 3, 4 or 6");
  CHECK(yard.words(yard.of(Kind::next_number, 3, {7}), {yard.done(2)}) == "once s2 is done, yard-3 has next number 7");
}

TEST_CASE("power: what it is, or the one thing that it is not") {
  CHECK(yard.words(yard.power(1, {Power::up})) == "yard-1 stays up");
  CHECK(yard.words(yard.power(3, {Power::off, Power::starting})) == "yard-3 is off or starting");
  CHECK(yard.words(yard.power(3, {Power::off, Power::starting, Power::up})) == "yard-3 is never held");
  CHECK(yard.words(yard.power(3, {Power::off, Power::starting, Power::up}), {yard.done(1)}) ==
        "once s1 is done, yard-3 is not held");
  CHECK(yard.words(yard.power(3, {Power::off}), {yard.done(1, false)}) == "until s1 is done, yard-3 stays off");
}

TEST_CASE("leaders") {
  CHECK(yard.words(yard.of(Kind::leader, 1, {0})) == "yard-1 always leads itself");
  CHECK(yard.words(yard.of(Kind::leader, 2, {0})) == "yard-2 always follows yard-1");
  CHECK(yard.words(yard.of(Kind::leader, 2, {none})) == "yard-2 never has a leader");
  CHECK(yard.words(yard.of(Kind::leader, 3, {none, 0})) == "yard-3 follows nobody but yard-1");
  CHECK(yard.words(yard.of(Kind::leader, 3, {none, 2})) == "yard-3 leads itself or has no leader");
  CHECK(yard.words(yard.of(Kind::leader, 3, {none, 0, 1, 2})) ==
        "yard-3 leads itself, follows yard-1 or yard-2 or has no leader");
  CHECK(yard.words(yard.of(Kind::leader, 2, {0}), {yard.power(2, {Power::up})}) ==
        "where yard-2 is up, it follows yard-1");
}

TEST_CASE("ports and their configurations") {
  CHECK(yard.words(yard.port(Kind::enabled, {1})) == "yard-1/e stays enabled");
  CHECK(yard.words(yard.port(Kind::startup_enabled, {0}), {yard.done(2, false)}) ==
        "until s2 is done, yard-1/e stays disabled in startup");
  CHECK(yard.words(yard.port(Kind::enabled, {0}), {yard.done(2)}) == "once s2 is done, yard-1/e is disabled");
  CHECK(yard.words(yard.port(Kind::side, {1})) == "yard-1/e keeps side east in running");
  CHECK(yard.words(yard.port(Kind::startup_side, {0})) == "yard-1/e never has a side in startup");
  CHECK(yard.words(yard.port(Kind::operational_side, {0, 2})) == "yard-1/e has side none or west in operational");
  CHECK(yard.words(yard.port(Kind::operational_side, {0}), {yard.port(Kind::enabled, {1})}) ==
        "where yard-1/e is enabled, it has no side in operational");
}

TEST_CASE("cables, seniority, faults and the flag") {
  const auto cable = [](system::VariableId v, std::int64_t value) { return Within{v, {value}}; };
  const std::string name = yard.model[CableId(0)].name;
  CHECK(yard.words(cable(yard.space.plugged(CableId(0)), 1), {yard.done(3)}) ==
        "once s3 is done, cable " + name + " is plugged");
  CHECK(yard.words(cable(yard.space.plugged(CableId(0)), 0)) == "cable " + name + " stays unplugged");
  CHECK(yard.words(cable(yard.space.broken(CableId(0)), 0)) == "cable " + name + " stays unbroken");
  const system::VariableId senior = yard.space.senior(DeviceId(0), DeviceId(2));
  CHECK(yard.words(cable(senior, 0)) == "yard-1 has never been up longer than yard-3");
  CHECK(yard.words(cable(senior, 1), {yard.done(1)}) == "once s1 is done, yard-1 has been up longer than yard-3");
  CHECK(yard.words({yard.space.left(Fault::crash), {0, 1}}) == "0 or 1 crash is left");
  CHECK(yard.words({yard.space.left(Fault::crash), {0}}) == "0 crashes are left");
  CHECK(yard.words({yard.space.left(Fault::cable_break), {0, 1, 2}}) == "0 to 2 cable breaks are left");
  CHECK(yard.words({yard.space.halted(), {0}}) == "the procedure never halts");
  CHECK(yard.words({yard.space.halted(), {0}}, {yard.done(2)}) == "once s2 is done, the procedure has not halted");
}

TEST_CASE("conditions: how far the procedure has come, and how things stand") {
  const Within three = yard.of(Kind::number, 3, {3});
  CHECK(yard.words(three, {yard.done(1), yard.done(2, false)}) == "between s1 and s2, yard-3 has number 3");
  CHECK(yard.words(three, {yard.done(1), yard.done(2), yard.done(3, false)}) ==
        "once s1 and s2 are done, until s3 is done, yard-3 has number 3");
  CHECK(yard.words(three, {yard.done(2, false), yard.done(3, false)}) == "until s2 or s3 is done, yard-3 has number 3");
  CHECK(yard.words(three, {yard.done(1), yard.done(2, false), yard.power(3, {Power::up})}) ==
        "between s1 and s2, where yard-3 is up, it has number 3");
  CHECK(yard.words(three, {yard.power(1, {Power::up}), yard.power(2, {Power::up, Power::held})}) ==
        "where yard-1 is up and yard-2 is up or held, yard-3 has number 3");
  CHECK(yard.words(yard.done(1), {yard.done(3)}) == "s3 comes after s1");
  CHECK(yard.words(yard.done(1, false), {yard.power(3, {Power::off})}) == "where yard-3 is off, s1 is not done");
}

TEST_CASE("what never happens") {
  CHECK(yard.words(yard.of(Kind::number, 3, {}), {yard.done(2), yard.power(3, {Power::off})}) ==
        "it never happens that s2 is done and yard-3 is off");
  CHECK(yard.words(yard.of(Kind::number, 3, {})) == "there is no state at all");
}

TEST_CASE("laws, and the budget of breaks") {
  std::vector<std::string> laws;
  for (std::uint32_t place = 0; place < system::law_count; ++place) {
    Fact law;
    law.kind = Fact::Kind::law;
    law.place = place;
    laws.push_back(words_of(yard.space, law));
  }
  CHECK(laws[0] == "only a device that is up has a leader");
  CHECK(laws[1] ==
        "how long they have been up puts the devices that are up or held in an order, in which some may be equal");
  CHECK(laws[2] == "of the cables of a port at most one is plugged");
  Fact spent;
  spent.kind = Fact::Kind::spent;
  CHECK(words_of(yard.space, spent) ==
        "the cables that are broken and the breaks that are left are together at most 2");
}

TEST_CASE("what many variables have in common is said once") {
  const auto words = [](const std::vector<Within>& claims) {
    Fact fact = solver::within(claims.front());
    fact.also.assign(claims.begin() + 1, claims.end());
    return words_of(yard.space, fact);
  };
  const auto each = [](Kind kind, const std::vector<std::int64_t>& values) {
    std::vector<Within> claims;
    for (std::uint32_t d = 1; d <= 3; ++d) claims.push_back(yard.of(kind, d, {values[d - 1]}));
    return claims;
  };
  CHECK(words(each(Kind::priority, {220, 100, 100})) ==
        "yard-1 keeps priority 220; each of yard-2 and yard-3 keeps priority 100");
  CHECK(words(each(Kind::priority, {100, 100, 100})) == "each of yard-1 to yard-3 keeps priority 100");
  CHECK(words(each(Kind::number, {1, 2, 3})) == "each of yard-1 to yard-3 keeps its number: 1, 2, 3");
  CHECK(words({yard.power(1, {Power::up}), yard.power(3, {Power::up})}) == "each of yard-1 and yard-3 stays up");
  CHECK(words({yard.of(Kind::leader, 2, {0, 1}), yard.of(Kind::leader, 3, {0, 2})}) ==
        "each of yard-2 and yard-3 leads itself or follows yard-1");
  const auto senior = [](std::uint32_t one, std::uint32_t other, bool is) {
    return Within{yard.space.senior(DeviceId(one - 1), DeviceId(other - 1)), {is ? 1 : 0}};
  };
  CHECK(words({senior(1, 2, true), senior(1, 3, true), senior(2, 3, true)}) ==
        "yard-1 has been up longer than yard-2 and yard-3; yard-2 has been up longer than yard-3");
  CHECK(words({senior(3, 1, false), senior(3, 2, false)}) == "yard-3 has never been up longer than yard-1 or yard-2");
}

TEST_CASE("the order of the steps") {
  Fact order;
  order.kind = Fact::Kind::order;
  CHECK(words_of(yard.space, order) == "every step comes after those that it waits for");
}

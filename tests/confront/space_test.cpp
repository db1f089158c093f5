// Section 2 in both writings: which variables a state has, and what they are called.
#include "system/space.hpp"

#include <doctest/doctest.h>

#include "confront/round.hpp"
#include "support/printing.hpp"

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

TEST_CASE("2: variables and their values are called what they are") {
  test::ModelBuilder b;
  const DeviceId yard = b.device("yard", {.ports = {{.name = "t1"}}});
  const DeviceId lot = b.device("lot", {.ports = {{.name = "t1"}}});
  const CableId cable = b.cable(b.port(yard, "t1"), b.port(lot, "t1"));
  const StepId step = b.unplug(cable);
  const Model model = b.model();
  const system::Space space(model, {});
  const auto called = [&](system::VariableId v, std::int64_t value) {
    return space.name(v) + (space.is_truth(v) ? ": " : " is ") + space.value_name(v, value);
  };
  const auto of_lot = [&](Kind kind, std::int64_t value) { return called(space.of_device(kind, lot), value); };
  const auto of_port = [&](Kind kind, std::int64_t value) { return called(space.of_port(kind, PortId(1)), value); };
  CHECK(of_lot(Kind::power, 0) == "power of lot is off");
  CHECK(of_lot(Kind::power, 1) == "power of lot is starting");
  CHECK(of_lot(Kind::power, 2) == "power of lot is up");
  CHECK(of_lot(Kind::power, 3) == "power of lot is held");
  CHECK(of_lot(Kind::leader, system::nobody) == "leader of lot is none");
  CHECK(of_lot(Kind::leader, 0) == "leader of lot is yard");
  CHECK(of_lot(Kind::leader, 1) == "leader of lot is lot");
  CHECK(of_lot(Kind::number, 7) == "number of lot is 7");
  CHECK(of_lot(Kind::next_number, 7) == "next number of lot is 7");
  CHECK(of_lot(Kind::priority, 220) == "priority of lot is 220");
  CHECK(of_lot(Kind::startup_priority, 0) == "startup priority of lot is 0");
  CHECK(called(space.senior(lot, yard), 1) == "lot senior to yard: true");
  CHECK(called(space.senior(yard, lot), 0) == "yard senior to lot: false");
  CHECK(of_port(Kind::enabled, 1) == "lot/t1 enabled: true");
  CHECK(of_port(Kind::startup_enabled, 0) == "lot/t1 enabled in startup: false");
  CHECK(of_port(Kind::side, 0) == "side of lot/t1 is none");
  CHECK(of_port(Kind::startup_side, 1) == "startup side of lot/t1 is east");
  CHECK(of_port(Kind::operational_side, 2) == "operational side of lot/t1 is west");
  CHECK(called(space.plugged(cable), 1) == "yard/t1--lot/t1 plugged: true");
  CHECK(called(space.broken(cable), 0) == "yard/t1--lot/t1 broken: false");
  CHECK(called(space.done(step), 1) == "s1 done: true");
  CHECK(called(space.left(system::Fault::cable_break), 2) == "cable breaks left is 2");
  CHECK(called(space.left(system::Fault::crash), 1) == "crashes left is 1");
  CHECK(called(space.left(system::Fault::omission), 1) == "omissions left is 1");
  CHECK(called(space.left(system::Fault::late_start), 0) == "late starts left is 0");
  CHECK(called(space.halted(), 1) == "halted: true");
}

#include "syntax/resolve_site.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

std::string site_problems(const std::string& site) {
  return told(load(title + "properties: [no-clash]\n", site));
}

std::string of_devices(const std::string& devices) {
  return "site: x\nplatform: harbour.yaml\ndevices:\n" + devices;
}

}  // namespace

TEST_CASE("semantics 2.i: what a device entry leaves out") {
  const auto d = model("", of_devices("  a: {ports: {p: }}\n")).site.devices.at(0);
  CHECK(d.on);
  CHECK(d.number == 1);
  CHECK(!d.number_stated);
  CHECK(d.next_number == 1);
  CHECK(d.priority == 7);
  CHECK(!d.priority_stated);
  CHECK(d.startup_priority == 7);
  CHECK(d.tenure == 0);
  CHECK(!d.tenure_stated);
  CHECK(d.software == "1");
  CHECK(!d.address_stated);
}

TEST_CASE("semantics 2.i: startup and next number follow running, and running the factory") {
  const auto m =
      model("", of_devices("  a: {number: 3, priority: 4, tenure: 2, ports: {p: {side: east, enabled: false}, q: }}\n"
                           "  b: {number: 3, next-number: 5, startup: {priority: 9}, ports: {p: {side: east, "
                           "startup: {enabled: false, side: west}, operational: none}}}\n"));
  const auto& a = m.site.devices[0];
  CHECK(a.number_stated);
  CHECK(a.next_number == 3);
  CHECK(a.startup_priority == 4);
  CHECK(a.tenure_stated);
  const auto& p = m.site.ports[0];
  CHECK(p.name == "a/p");
  CHECK(!p.enabled);
  CHECK(p.enabled_stated);
  CHECK(!p.startup_enabled);
  CHECK(p.startup_side == Side::east);
  CHECK(p.operational_side == Side::east);
  const auto& q = m.site.ports[1];
  CHECK(q.enabled);
  CHECK(!q.enabled_stated);
  CHECK(!q.side_stated);
  CHECK(m.site.devices[1].next_number == 5);
  CHECK(m.site.devices[1].priority == 7);
  CHECK(m.site.devices[1].startup_priority == 9);
  const auto& r = m.site.ports[2];
  CHECK(r.device == DeviceId(1));
  CHECK(!r.startup_enabled);
  CHECK(r.startup_side == Side::west);
  CHECK(r.operational_side == Side::none);
}

TEST_CASE("addresses are given in file order, counting only the devices that leave them out") {
  const auto m = model("", of_devices("  a:\n  b: {address: 02:00:00:00:00:01}\n  c:\n"));
  CHECK(m.site.devices[0].address == 0x020001000000);
  CHECK(m.site.devices[1].address == 0x020000000001);
  CHECK(m.site.devices[2].address == 0x020002000000);
}

TEST_CASE("more given addresses than a third octet counts") {
  std::string devices;
  for (int i = 1; i <= 257; ++i) devices += "  d" + std::to_string(i) + ":\n";
  const auto m = model("", of_devices(devices));
  CHECK(m.site.devices[254].address == 0x0200ff000000);
  CHECK(m.site.devices[256].address == 0x020101000000);
}

TEST_CASE("two equal addresses are an error, given ones included") {
  CHECK(site_problems(of_devices("  a: {address: 02:00:00:00:00:0a}\n  b: {address: 02:00:00:00:00:0A}\n")) ==
        "yard.yaml:5:16 `b` and `a` have the same address");
  CHECK(site_problems(of_devices("  a: {address: 02:00:01:00:00:00}\n  b:\n")) ==
        "yard.yaml:4:16 `a` and `b` have the same address");
}

TEST_CASE("numbers and priorities lie in the platform's ranges") {
  CHECK(site_problems(of_devices("  a: {number: 10, next-number: 0, priority: 16, startup: {priority: 0}}\n")) ==
        "yard.yaml:4:15 `number` is 10\nyard.yaml:4:32 `next-number` is 0\nyard.yaml:4:45 `priority` is "
        "16\nyard.yaml:4:69 the startup priority is 0");
}

TEST_CASE("cables keep their names as the site writes them") {
  const auto m = model("");
  CHECK(m.site.cables[0].name == "yard-1/t2--yard-2/t1");
  CHECK(m.site.cables[0].plugged);
  CHECK(m.site.cables[1].name == "splice");
  CHECK(m.site.cables[1].ends == "yard-2/t2--yard-3/t1");
  CHECK(m.site.cables[1].a == PortId(3));
  CHECK(m.site.cables[1].b == PortId(4));
  CHECK(!m.site.cables[1].plugged);
}

TEST_CASE("cables: to itself, a second one, two plugged on a port, an id twice") {
  CHECK(site_problems(with(yard, "cables:\n", "cables:\n  yard-3/t1--yard-3/t2: {plugged: false}\n")) ==
        "yard.yaml:8:3 this cable joins `yard-3` to itself");
  CHECK(site_problems(with(yard, "stack:", "  yard-2/t1--yard-1/t2: {plugged: false}\nstack:")) ==
        "yard.yaml:10:3 a second cable between `yard-2/t1` and `yard-1/t2`");
  CHECK(site_problems(with(yard, "stack:", "  yard-3/t2--yard-1/t2: {}\nstack:")) ==
        "yard.yaml:10:3 two plugged cables on `yard-1/t2`");
  CHECK(site_problems(with(yard, "stack:", "  yard-3/t2--yard-1/t2: {plugged: false}\nstack:")).empty());
  CHECK(site_problems(with(yard, "stack:", "  yard-3/t2--yard-1/t1: {plugged: false, id: splice}\nstack:")) ==
        "yard.yaml:10:46 the id `splice` stands twice");
}

TEST_CASE("the running stack: members on, numbers different, its primary one of them") {
  CHECK(site_problems(with(yard, "members: [yard-1, yard-2]", "members: [yard-1, yard-2, yard-3]")) ==
        "yard.yaml:10:52 `yard-3` is a member of the running stack and its power is off");
  CHECK(site_problems(with(yard, "number: 7", "number: 4")) ==
        "yard.yaml:10:44 `yard-2` has the number 4, which `yard-1` has too");
  CHECK(site_problems(with(yard, "primary: yard-1", "primary: yard-3")) ==
        "yard.yaml:10:18 the primary `yard-3` is not among the members");
  CHECK(site_problems(with(yard, "primary: yard-1", "primary: yard-8")) ==
        "yard.yaml:10:18 there is no device `yard-8` (yard-1)");
  CHECK(site_problems(with(yard, "[yard-1, yard-2]", "[]")) == "yard.yaml:10:35 `members` is an empty list");
}

TEST_CASE("devices with equal numbers that are in no stack may stand in the site") {
  CHECK(site_problems(of_devices("  a: {number: 3}\n  b: {number: 3}\n")).empty());
}

TEST_CASE("no problem follows from another") {
  CHECK(site_problems(with(yard, "number: 7", "number: 70")) == "yard.yaml:5:20 `number` is 70");
  // Where the factory's number stands in for it, no clash with that is told.
  CHECK(site_problems(with(with(yard, "number: 7", "number: 70"), "number: 4", "number: 1")) ==
        "yard.yaml:5:20 `number` is 70");
  CHECK(site_problems(with(with(yard, "number: 7", "number: x"), "number: 4", "number: y")) ==
        "yard.yaml:4:20 `number` is `y`\nyard.yaml:5:20 `number` is `x`");
  CHECK(
      told(load(title + asks + "steps: [{plug: splice}]\n", with(yard, "yard-2/t2--yard-3/t1", "yard-2--yard-3/t1"))) ==
      "yard.yaml:9:3 a cable is `yard-2--yard-3/t1`");
}

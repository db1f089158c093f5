#include "syntax/read_site.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

Result<Document> site(const std::string& text) {
  return load_document("yard.yaml", MemoryFiles({{"yard.yaml", text}, {"harbour.yaml", harbour}}));
}

std::string with_entry(const std::string& entry) {
  return with(yard, "yard-3: {power: off, ports: {t1: {}, t2: {}}}", "yard-3: " + entry);
}

}  // namespace

TEST_CASE("a site alone: it and its platform") {
  const auto read = site(yard);
  REQUIRE_MESSAGE(read.ok(), told(read));
  CHECK(read.value().kind == DocumentKind::site);
  CHECK(read.value().model.site.title == "Quayside terminal, yard");
  CHECK(read.value().model.platform.title == "Harbour family");
  CHECK(read.value().model.files == std::vector<std::string>{"yard.yaml", "harbour.yaml"});
}

TEST_CASE("addresses: six pairs of hexadecimal digits, upper or lower case") {
  const auto read =
      site(with(yard, "{number: 4,", "{number: 4, address: 02:00:5e:00:53:aF,"));  // RFC 7042, 2.1.2: for documentation
  REQUIRE_MESSAGE(read.ok(), told(read));
  CHECK(read.value().model.site.devices[0].address == 0x02005e0053af);
  CHECK(read.value().model.site.devices[0].address_stated);
  for (const char* bad : {"02:00:00:00:01", "02:00:00:00:01:0a:0b", "02-00-00-00-01-0a", "2:0:0:0:1:a",
                          "02:00:00:00:01:0g", "02:00:00:00:01: a", "020000000000000", "+2:00:00:00:01:0a", "x"}) {
    CHECK(told(site(with(yard, "{number: 4,", "{number: 4, address: \"" + std::string(bad) + "\","))) ==
          "yard.yaml:4:32 `address` is the text `" + std::string(bad) + "`");
  }
}

TEST_CASE("types of a device entry") {
  CHECK(told(site(with_entry("{power: on}"))).find(":6:19 `power` is `on`") != std::string::npos);
  CHECK(told(site(with_entry("{tenure: -1, ports: {t1: }}"))) == "yard.yaml:6:20 `tenure` is -1");
  CHECK(told(site(with_entry("{number: \"5\", ports: {t1: }}"))) == "yard.yaml:6:20 `number` is the text `5`");
  CHECK(told(site(with_entry("{number: 9.2, ports: {t1: }}"))) == "yard.yaml:6:20 `number` is `9.2`");
  CHECK(told(site(with_entry("{startup: {prioritx: 5}, ports: {t1: }}"))) ==
        "yard.yaml:6:22 `prioritx` is no key of `startup` of a device (priority)");
  CHECK(told(site(with_entry("{ports: {t1: {enabled: yes}}}"))) == "yard.yaml:6:34 `enabled` is `yes`");
  CHECK(told(site(with_entry("{ports: {t1: {operational: up}}}"))) == "yard.yaml:6:38 `operational` is `up`");
  CHECK(told(site(with_entry("{ports: {t1: {startup: {sides: east}}}}"))) ==
        "yard.yaml:6:35 `sides` is no key of `startup` of a port (side)");
  CHECK(told(site(with_entry("{ports: [t1]}"))).find("yard.yaml:6:19 `ports` is a list") != std::string::npos);
  CHECK(told(site(with_entry("yes"))).find("yard.yaml:6:11 a device entry is `yes`") != std::string::npos);
}

TEST_CASE("`software` is text as written, whatever it looks like") {
  CHECK(site(with_entry("{software: 9.2, ports: {t1: }}")).value().model.site.devices[2].software == "9.2");
  CHECK(site(with_entry("{software: null, ports: {t1: }}")).value().model.site.devices[2].software == "null");
  CHECK(site(with_entry("{ports: {t1: }}")).value().model.site.devices[2].software == "1");
}

TEST_CASE("names of devices, ports and cables") {
  CHECK(told(site(with_entry("{ports: {t1: , t--2: }}"))) == "yard.yaml:6:26 `t--2` is no name");
  CHECK(told(site(with(yard, "id: splice", "id: -x"))) == "yard.yaml:9:46 `-x` is no name");
  CHECK(site(with(yard, "id: splice", "id: a--b")).ok());
  CHECK(told(site(with(yard, "  yard-3: {power", "  a b: {power"))) ==
        "yard.yaml:6:3 `a b` is no name\nyard.yaml:9:14 there is no device `yard-3` (yard-1)");
}

TEST_CASE("ends of cables") {
  CHECK(told(site(with(yard, "yard-1/t2--yard-2/t1:", "yard-1/t2:"))) == "yard.yaml:8:3 a cable is `yard-1/t2`");
  CHECK(told(site(with(yard, "yard-1/t2--yard-2/t1:", "yard-1/t2-yard-2/t1:"))) ==
        "yard.yaml:8:19 a cable is `yard-1/t2-yard-2/t1`");
  CHECK(told(site(with(yard, "yard-1/t2--yard-2/t1:", "yard-1/t2--yard-2:"))) ==
        "yard.yaml:8:20 a cable is `yard-1/t2--yard-2`");
}

TEST_CASE("what is required, and what may be empty") {
  CHECK(told(site("site: x\ndevices: {a: }\n")) == "yard.yaml:1:1 `platform` is missing: a site needs it");
  CHECK(told(site("site: x\nplatform: harbour.yaml\n")).find("yard.yaml:1:1 `devices` is missing: a site needs it") ==
        0);
  CHECK(told(site("site: x\nplatform: harbour.yaml\ndevices:\n")) == "yard.yaml:3:1 `devices` is empty");
  CHECK(site("site: x\nplatform: harbour.yaml\ndevices:\n  a:\ncables:\n").ok());
  CHECK(site("platform: harbour.yaml\ndevices:\n  a:\n").ok());
  CHECK(told(site("site: x\nplatform: harbour.yaml\ndevices: {a: }\nstack:\n")) ==
        "yard.yaml:4:1 `primary` is missing: `stack` needs it\nyard.yaml:4:1 `members` is missing: `stack` needs it");
}

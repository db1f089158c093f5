#include "syntax/read_platform.hpp"

#include "models.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

Result<Document> platform(const std::string& text) {
  return load_document("harbour.yaml", MemoryFiles({{"harbour.yaml", text}}));
}

}  // namespace

TEST_CASE("semantics 7: every rule is read") {
  const auto read = platform(harbour + "max-members: 6\n");
  REQUIRE_MESSAGE(read.ok(), told(read));
  CHECK(read.value().kind == DocumentKind::platform);
  const auto& p = read.value().model.platform;
  CHECK(p.title == "Harbour family");
  CHECK(p.numbers.low == 1);
  CHECK(p.numbers.high == 9);
  CHECK(p.priorities.high == 15);
  CHECK(p.factory.number == 1);
  CHECK(p.factory.priority == 7);
  CHECK(p.factory.enabled);
  CHECK(p.factory.side == Side::none);
  CHECK(p.number_takes == Takes::at_once);
  CHECK(p.priority_takes == Takes::at_restart);
  CHECK(p.settings_follow == SettingsFollow::device);
  CHECK(p.side_takes == SideTakes::at_once);
  CHECK(!p.side_needs_disabled);
  CHECK(p.facing == Facing::any);
  CHECK(p.side_leads_to == SideLeadsTo::one_neighbour);
  CHECK(p.software == Software::any);
  CHECK(p.orphans == Orphans::restart);
  CHECK(p.election == std::vector{ElectionKey::tenure, ElectionKey::priority, ElectionKey::number});
  CHECK(p.max_members == 6);
}

TEST_CASE("the other values of every rule") {
  std::string text = harbour;
  text = with(text, "number-takes: at-once", "number-takes: at-restart");
  text = with(text, "priority-takes: at-restart", "priority-takes: at-once");
  text = with(text, "settings-follow: device", "settings-follow: number");
  text = with(text, "side-takes: at-once", "side-takes: on-apply");
  text = with(text, "side-needs-disabled: false", "side-needs-disabled: true");
  text = with(text, "facing: any", "facing: opposite");
  text = with(text, "side-leads-to: one-neighbour", "side-leads-to: any");
  text = with(text, "software: any", "software: must-match");
  text = with(text, "orphans: restart", "orphans: carry-on");
  text = with(text, "[tenure, priority, number]", "[]");
  const auto read = platform(text);
  REQUIRE_MESSAGE(read.ok(), told(read));
  const auto& p = read.value().model.platform;
  CHECK(p.number_takes == Takes::at_restart);
  CHECK(p.priority_takes == Takes::at_once);
  CHECK(p.settings_follow == SettingsFollow::number);
  CHECK(p.side_takes == SideTakes::on_apply);
  CHECK(p.side_needs_disabled);
  CHECK(p.facing == Facing::opposite);
  CHECK(p.side_leads_to == SideLeadsTo::any);
  CHECK(p.software == Software::must_match);
  CHECK(p.orphans == Orphans::carry_on);
  CHECK(p.election.empty());
}

TEST_CASE("semantics 7: max-members is by default the size of numbers") {
  CHECK(platform(harbour).value().model.platform.max_members == 9);
  CHECK(platform(with(harbour, "[1, 9]", "[1, 1]")).value().model.platform.max_members == 1);
  CHECK(platform(with(harbour, "[1, 9]", "[0, 9223372036854775807]")).value().model.platform.max_members ==
        9223372036854775807);
  CHECK(told(platform(harbour + "max-members: 0\n")) == "harbour.yaml:15:14 `max-members` is `0`");
}

TEST_CASE("all other keys are required") {
  for (const char* key :
       {"numbers", "priorities", "factory", "number-takes", "priority-takes", "settings-follow", "side-takes",
        "side-needs-disabled", "facing", "side-leads-to", "software", "orphans", "election"}) {
    std::string text = "\n" + harbour;
    const auto start = text.find("\n" + std::string(key) + ":") + 1;
    text.erase(start, text.find('\n', start) + 1 - start);
    CHECK(told(platform(text)) == "harbour.yaml:2:1 `" + std::string(key) + "` is missing: a platform needs it");
  }
  for (const char* key : {"number: 1, ", "priority: 7, ", "enabled: true, "}) {
    const auto name = std::string(key).substr(0, std::string(key).find(':'));
    CHECK(told(platform(with(harbour, key, ""))) == "harbour.yaml:4:10 `" + name + "` is missing: `factory` needs it");
  }
}

TEST_CASE("ranges: factory values lie in them") {
  CHECK(told(platform(with(harbour, "number: 1", "number: 10"))) == "harbour.yaml:4:19 the factory number is `10`");
  CHECK(told(platform(with(harbour, "priority: 7", "priority: 0"))) == "harbour.yaml:4:32 the factory priority is `0`");
  CHECK(told(platform(with(harbour, "[1, 9]", "[9, 1]"))) == "harbour.yaml:2:14 the highest of `numbers` is `1`");
  CHECK(told(platform(with(harbour, "[1, 9]", "[-1, 9]"))) == "harbour.yaml:2:11 the lowest of `numbers` is `-1`");
}

TEST_CASE("words") {
  CHECK(told(platform(with(harbour, "facing: any", "facing: oposite"))) ==
        "harbour.yaml:10:9 `facing` is `oposite` (opposite)");
  CHECK(told(platform(with(harbour, "[tenure,", "[tenure, tenure,"))) ==
        "harbour.yaml:14:20 `tenure` stands twice in `election`");
  CHECK(told(platform(with(harbour, "[tenure,", "[address,"))) ==
        "harbour.yaml:14:12 a key of the election is `address`");
  CHECK(told(platform(with(harbour, "side-needs-disabled: false", "side-needs-disabled: \"false\""))) ==
        "harbour.yaml:9:22 `side-needs-disabled` is the text `false`");
}

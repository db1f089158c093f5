#include "syntax/read_platform.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

constexpr std::array<Word<Takes>, 2> takes_words = {{{"at-restart", Takes::at_restart}, {"at-once", Takes::at_once}}};
constexpr std::array<Word<SettingsFollow>, 2> settings_words = {
    {{"device", SettingsFollow::device}, {"number", SettingsFollow::number}}};
constexpr std::array<Word<SideTakes>, 2> side_takes_words = {
    {{"on-apply", SideTakes::on_apply}, {"at-once", SideTakes::at_once}}};
constexpr std::array<Word<Facing>, 2> facing_words = {{{"opposite", Facing::opposite}, {"any", Facing::any}}};
constexpr std::array<Word<SideLeadsTo>, 2> leads_words = {
    {{"one-neighbour", SideLeadsTo::one_neighbour}, {"any", SideLeadsTo::any}}};
constexpr std::array<Word<Orphans>, 2> orphans_words = {
    {{"carry-on", Orphans::carry_on}, {"restart", Orphans::restart}}};
constexpr std::array<Word<Software>, 2> software_words = {
    {{"must-match", Software::must_match}, {"any", Software::any}}};
constexpr std::array<Word<ElectionKey>, 3> election_words = {
    {{"priority", ElectionKey::priority}, {"tenure", ElectionKey::tenure}, {"number", ElectionKey::number}}};

template <class E, std::size_t N>
void require_word(Fields& fields, std::string_view key, const std::array<Word<E>, N>& words, E& into,
                  Problems& problems) {
  if (const Node* node = fields.require(key)) {
    into = read_word(*node, fmt::format("`{}`", key), words, problems).value_or(into);
  }
}

bool require_range(Fields& fields, std::string_view key, Range& into, Problems& problems) {
  const Node* node = fields.require(key);
  if (node == nullptr) return false;
  const auto range = read_range(*node, fmt::format("`{}`", key), 0, problems);
  if (range) into = *range;
  return range.has_value();
}

/// The range, where it is known; else any integer that is not negative.
Range if_known(bool known, Range range) {
  return known ? range : Range{0, no_limit};
}

void read_factory(const Node& node, const PlatformDraft& draft, Factory& factory, Problems& problems) {
  Fields fields(node, "`factory`", {"number", "priority", "enabled", "side"}, problems);
  const auto& platform = draft.platform;
  if (const Node* n = fields.require("number")) {
    factory.number =
        read_integer(*n, "the factory number", if_known(draft.numbers_known, platform.numbers), problems).value_or(0);
  }
  if (const Node* n = fields.require("priority")) {
    factory.priority =
        read_integer(*n, "the factory priority", if_known(draft.priorities_known, platform.priorities), problems)
            .value_or(0);
  }
  if (const Node* n = fields.require("enabled"))
    factory.enabled = read_boolean(*n, "`enabled`", problems).value_or(false);
  if (const Node* n = fields.require("side"))
    factory.side = read_word(*n, "`side`", side_words, problems).value_or(Side::none);
}

void read_election(const Node& node, std::vector<ElectionKey>& election, Problems& problems) {
  if (node.kind != Node::Kind::sequence) {
    wrong(node, "`election`", "a list of priority, tenure and number, each at most once, possibly empty", problems);
    return;
  }
  for (const auto& item : node.items) {
    const auto key = read_word(item, "a key of the election", election_words, problems);
    if (!key) continue;
    if (std::find(election.begin(), election.end(), *key) != election.end()) {
      problems.add(item.place, fmt::format("{} stands twice in `election`", quoted(item.text)), "each key once");
      continue;
    }
    election.push_back(*key);
  }
}

/// The size of the range, or the largest integer where it does not fit.
std::int64_t size_of(Range range) {
  return range.high - range.low == no_limit ? no_limit : range.high - range.low + 1;
}

}  // namespace

PlatformDraft read_platform(const Node& node, Problems& problems) {
  PlatformDraft draft;
  Platform& platform = draft.platform;
  Fields fields(node, "a platform",
                {"platform", "numbers", "priorities", "factory", "number-takes", "priority-takes", "settings-follow",
                 "side-takes", "side-needs-disabled", "facing", "side-leads-to", "software", "orphans", "election",
                 "max-members"},
                problems);
  if (const Node* n = fields.require("platform"))
    platform.title = read_text(*n, "`platform`", problems).value_or(Name{}).value;
  draft.numbers_known = require_range(fields, "numbers", platform.numbers, problems);
  draft.priorities_known = require_range(fields, "priorities", platform.priorities, problems);
  if (const Node* n = fields.require("factory")) read_factory(*n, draft, platform.factory, problems);
  require_word(fields, "number-takes", takes_words, platform.number_takes, problems);
  require_word(fields, "priority-takes", takes_words, platform.priority_takes, problems);
  require_word(fields, "settings-follow", settings_words, platform.settings_follow, problems);
  require_word(fields, "side-takes", side_takes_words, platform.side_takes, problems);
  if (const Node* n = fields.require("side-needs-disabled")) {
    platform.side_needs_disabled = read_boolean(*n, "`side-needs-disabled`", problems).value_or(false);
  }
  require_word(fields, "facing", facing_words, platform.facing, problems);
  require_word(fields, "side-leads-to", leads_words, platform.side_leads_to, problems);
  require_word(fields, "software", software_words, platform.software, problems);
  require_word(fields, "orphans", orphans_words, platform.orphans, problems);
  if (const Node* n = fields.require("election")) read_election(*n, platform.election, problems);
  platform.max_members = size_of(platform.numbers);
  if (const Node* n = fields.find("max-members")) {
    platform.max_members = read_integer(*n, "`max-members`", {1, no_limit}, problems).value_or(1);
  }
  return draft;
}

}  // namespace cairn::syntax

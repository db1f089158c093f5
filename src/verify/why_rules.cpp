#include "verify/why_rules.hpp"

#include <fmt/format.h>

namespace cairn::verify {

namespace {

std::string_view name_of(ElectionKey key) {
  switch (key) {
    case ElectionKey::priority:
      return "priority";
    case ElectionKey::tenure:
      return "tenure";
    case ElectionKey::number:
      return "number";
  }
  return {};
}

std::string told(const std::vector<ElectionKey>& election) {
  std::string keys;
  for (const ElectionKey key : election) keys += fmt::format("{}{}", keys.empty() ? "" : ", ", name_of(key));
  return "[" + keys + "]";
}

/// Collects platforms that differ from one in one rule.
class Others {
 public:
  explicit Others(const Platform& platform) : platform_(platform) {}

  /// A rule of two values: the one that it does not have. `names` are those of the values false and true, or of the
  /// enumerators 0 and 1.
  template <class Value>
  void flip(Value Platform::*rule, std::string_view name, std::string_view first, std::string_view second) {
    const bool is_second = platform_.*rule == static_cast<Value>(1);
    OtherRule other{std::string(name), std::string(is_second ? first : second), platform_, {}};
    other.platform.*rule = static_cast<Value>(is_second ? 0 : 1);
    all_.push_back(std::move(other));
  }

  void drop_election_keys() {
    for (std::size_t i = 0; i < platform_.election.size(); ++i) {
      OtherRule other{"election", {}, platform_, {}};
      other.platform.election.erase(other.platform.election.begin() + static_cast<std::ptrdiff_t>(i));
      other.value = told(other.platform.election);
      all_.push_back(std::move(other));
    }
  }

  std::vector<OtherRule> take() { return std::move(all_); }

 private:
  const Platform& platform_;
  std::vector<OtherRule> all_;
};

bool differs(const PropertyVerdict& before, const PropertyVerdict& now) {
  return now.verdict != before.verdict || now.vacuous != before.vacuous;
}

}  // namespace

std::vector<OtherRule> other_rules(const Platform& platform) {
  Others others(platform);
  others.flip(&Platform::number_takes, "number-takes", "at-restart", "at-once");
  others.flip(&Platform::priority_takes, "priority-takes", "at-restart", "at-once");
  others.flip(&Platform::settings_follow, "settings-follow", "device", "number");
  others.flip(&Platform::side_takes, "side-takes", "on-apply", "at-once");
  others.flip(&Platform::side_needs_disabled, "side-needs-disabled", "false", "true");
  others.flip(&Platform::facing, "facing", "opposite", "any");
  others.flip(&Platform::side_leads_to, "side-leads-to", "one-neighbour", "any");
  others.flip(&Platform::orphans, "orphans", "carry-on", "restart");
  others.flip(&Platform::software, "software", "must-match", "any");
  others.drop_election_keys();
  return others.take();
}

std::vector<OtherRule> try_rules(const Model& model, const Report& report, const Trials& trials) {
  std::vector<const PropertyVerdict*> decided;
  std::vector<AskedProperty> asked;
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict == Verdict::undecided) continue;
    decided.push_back(&p);
    asked.push_back(p.asked);
  }
  if (asked.empty()) return {};
  std::vector<OtherRule> others = other_rules(model.platform);
  for (OtherRule& other : others) {
    Model variant = model;
    variant.platform = other.platform;
    Report now = trials.ask(variant, asked);
    for (std::size_t i = 0; i < decided.size(); ++i) {
      if (differs(*decided[i], now.properties[i])) other.turned.push_back(std::move(now.properties[i]));
    }
  }
  return others;
}

}  // namespace cairn::verify

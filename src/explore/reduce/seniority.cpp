#include "explore/reduce/seniority.hpp"

#include <algorithm>

#include "semantics/events.hpp"
#include "semantics/settle.hpp"
#include "semantics/state.hpp"

namespace cairn::explore {

Seniority::Seniority(const semantics::World& world)
    : world_(world),
      devices_(world.device_count()),
      domains_(domains_of(world)),
      cuts_(world),
      meetings_(world),
      priorities_(devices_),
      numbers_(devices_),
      asked_(devices_ * devices_),
      known_(devices_ * devices_) {
  const std::vector<ElectionKey>& election = world.platform().election;
  const auto tenure = std::find(election.begin(), election.end(), ElectionKey::tenure);
  by_tenure_ = tenure != election.end();
  before_tenure_.assign(election.begin(), tenure);
  add_settings();
}

void Seniority::add_settings() {
  const Platform& platform = world_.platform();
  const bool number_at_once = platform.number_takes == Takes::at_once;
  for (std::size_t i = 0; i < world_.steps().size(); ++i) {
    const Step& step = world_.steps()[i];
    if (step.verb == Verb::set_priority && platform.priority_takes == Takes::at_once) {  // 5.5
      priorities_[step.device.value].push_back({StepId(i), step.value});
    }
    if (step.verb != Verb::set_number || !number_at_once) continue;
    numbers_[step.device.value].push_back({StepId(i), step.value});  // 5.4
    if (platform.settings_follow != SettingsFollow::number) continue;
    priorities_[step.device.value].push_back({StepId(i), platform.factory.priority});  // 5.f
  }
}

bool Seniority::may_be_equal(const State& s, std::int64_t DeviceState::*member, const Settings& settings, DeviceId d,
                             DeviceId e) const {
  const auto may_be = [&](DeviceId device, std::int64_t value) {
    const std::vector<Setting>& all = settings[device.value];
    return s[device].*member == value || std::any_of(all.begin(), all.end(), [&](const Setting& setting) {
             return setting.value == value && semantics::pending(s, setting.step);
           });
  };
  if (may_be(e, s[d].*member)) return true;
  const std::vector<Setting>& own = settings[d.value];
  return std::any_of(own.begin(), own.end(), [&](const Setting& setting) {
    return semantics::pending(s, setting.step) && may_be(e, setting.value);
  });
}

// 4.4: the keys are compared one after the other, and those before tenure decide where they differ.
bool Seniority::may_come_to_tenure(const State& s, DeviceId d, DeviceId e) const {
  return std::all_of(before_tenure_.begin(), before_tenure_.end(), [&](ElectionKey key) {
    return key == ElectionKey::priority ? may_be_equal(s, &DeviceState::priority, priorities_, d, e)
                                        : may_be_equal(s, &DeviceState::number, numbers_, d, e);
  });
}

// Those that contest are leaders (4.2.c) or, where they do not restart, orphans (4.2.a). Fresh ones (4.1.b, 4.2.b) have
// started with the event, and everyone is senior to them; a held one is up again only after a start (4.3.c).
void Seniority::find_pairs(const State& s) {
  std::fill(asked_.begin(), asked_.end(), std::uint8_t{0});
  candidates_.clear();
  if (!by_tenure_) return;
  const bool orphans = cuts_.may_follow(s);
  const bool orphans_contest = orphans && world_.platform().orphans == Orphans::carry_on;
  for (std::size_t i = 0; i < devices_; ++i) {
    const DeviceId d(i);
    if (s[d].power == Power::up && (orphans_contest || semantics::leads(s, d))) candidates_.push_back(d);
  }
  std::stable_sort(candidates_.begin(), candidates_.end(),
                   [&](DeviceId d, DeviceId e) { return s[d].seniority < s[e].seniority; });
  pairs_.clear();
  for (std::size_t i = 0; i < candidates_.size(); ++i) {
    for (std::size_t j = i + 1; j < candidates_.size(); ++j) {
      const DeviceId d = candidates_[i];
      const DeviceId e = candidates_[j];
      if (!may_come_to_tenure(s, d, e)) continue;
      if (orphans) {
        keep(d, e);
      } else {
        pairs_.push_back({0, std::min(d, e), std::max(d, e)});
      }
    }
  }
  if (!pairs_.empty()) find_meetings(s);
}

void Seniority::keep(DeviceId d, DeviceId e) {
  asked_[d.value * devices_ + e.value] = asked_[e.value * devices_ + d.value] = 1;
}

// The nearest first, since whether somebody stands between two may rest on the order of nearer ones. Of the others'
// order nothing may be read: it is not the same in all states that are alike.
void Seniority::find_meetings(const State& s) {
  meetings_.look_at(s);
  for (Pair& pair : pairs_) pair.distance = meetings_.distance(pair.d, pair.e);
  std::sort(pairs_.begin(), pairs_.end());
  const Meetings::Outranks outranks = [&](DeviceId w, DeviceId d) {
    return (may_be_asked(w, d) || !may_come_to_tenure(s, w, d)) && semantics::outranks(world_, s, w, d);
  };
  for (const Pair& pair : pairs_) {
    if (pair.distance >= devices_) break;  // no way joins them, nor those that follow
    if (meetings_.may_contest(pair.d, pair.e, outranks)) keep(pair.d, pair.e);
  }
}

// Each level as small as the pairs allow. Of equal seniority that may be asked for, both get the same level, and so on
// from pair to pair: they are equal in truth.
bool Seniority::find_levels(State& s) const {
  std::vector<std::uint32_t> levels(devices_, 0);
  for (std::size_t begin = 0; begin < candidates_.size();) {
    const std::uint32_t seniority = s[candidates_[begin]].seniority;
    std::size_t end = begin;
    while (end < candidates_.size() && s[candidates_[end]].seniority == seniority) ++end;
    for (std::size_t i = begin; i < end; ++i) {
      std::uint32_t& level = levels[candidates_[i].value] = 1;
      for (std::size_t j = 0; j < begin; ++j) {
        if (may_be_asked(candidates_[i], candidates_[j])) level = std::max(level, levels[candidates_[j].value] + 1);
      }
    }
    for (bool changes = true; changes;) {
      changes = false;
      for (std::size_t i = begin; i < end; ++i) {
        for (std::size_t j = begin; j < end; ++j) {
          std::uint32_t& level = levels[candidates_[i].value];
          if (!may_be_asked(candidates_[i], candidates_[j]) || level >= levels[candidates_[j].value]) continue;
          level = levels[candidates_[j].value];
          changes = true;
        }
      }
    }
    begin = end;
  }
  bool changed = false;
  for (std::size_t i = 0; i < devices_; ++i) {
    std::uint32_t& seniority = s.devices[i].seniority;
    if (seniority == 0) continue;
    const std::uint32_t level = std::max<std::uint32_t>(levels[i], 1);
    changed = changed || seniority != level;
    seniority = level;
  }
  return changed;
}

// That e follows first is of no use: it may restart, and come up again beside d. What they will be ranked by is not
// known before they are up: any values that they may come to have count.
bool Seniority::may_matter(const State& s, DeviceId d, DeviceId e) {
  if (!by_tenure_) return false;
  const bool comes_to_tenure = std::all_of(before_tenure_.begin(), before_tenure_.end(), [&](ElectionKey key) {
    const auto& values = key == ElectionKey::priority ? domains_.priorities : domains_.numbers;
    return share_a_value(values[d.value], values[e.value]);
  });
  if (!comes_to_tenure) return false;
  if (cuts_.may_follow(s)) return true;
  meetings_.look_at(s);
  return !meetings_.follows_before(d, e);
}

bool Seniority::level(State& s) {
  find_pairs(s);
  return find_levels(s);
}

// The order is transitive (2.a): of d before f before e, d before e follows.
void Seniority::follow_on(const State& s) {
  for (std::size_t d = 0; d < devices_; ++d) {
    for (std::size_t e = 0; e < devices_; ++e) {
      const std::size_t pair = d * devices_ + e;
      known_[pair] = asked_[pair] != 0 && s.devices[d].seniority <= s.devices[e].seniority ? 1 : 0;
    }
  }
  for (std::size_t via = 0; via < devices_; ++via) {
    for (std::size_t d = 0; d < devices_; ++d) {
      if (known_[d * devices_ + via] == 0) continue;
      for (std::size_t e = 0; e < devices_; ++e) known_[d * devices_ + e] |= known_[via * devices_ + e];
    }
  }
}

std::vector<std::pair<DeviceId, DeviceId>> Seniority::unasked(const State& s) {
  find_pairs(s);
  follow_on(s);
  std::vector<std::pair<DeviceId, DeviceId>> pairs;
  for (std::size_t d = 0; d < devices_; ++d) {
    for (std::size_t e = d + 1; e < devices_; ++e) {
      const bool both_run = semantics::running(s, DeviceId(d)) && semantics::running(s, DeviceId(e));
      const bool known = (known_[d * devices_ + e] | known_[e * devices_ + d]) != 0;
      if (both_run && !known) pairs.emplace_back(d, e);
    }
  }
  return pairs;
}

}  // namespace cairn::explore

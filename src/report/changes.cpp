#include "report/changes.hpp"

#include <fmt/format.h>

#include <map>

#include "base/text.hpp"
#include "report/why.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

using semantics::Derived;
using semantics::World;
using Phrases = std::vector<std::string>;

constexpr std::size_t most_names = 6;

// More names than fit a line are a number.
std::string cables_named(const Model& model, const std::vector<CableId>& cables) {
  if (cables.size() > 3) return fmt::format("{} links", cables.size());
  Phrases names;
  for (const CableId c : cables) names.push_back(model[c].name);
  return fmt::format("link{} {}", cables.size() == 1 ? "" : "s", listed(names));
}

// Links formed and lost between two states. Those that a device takes along as it goes down in a pass are told by it.
void add_links(const World& world, const State& from, const State& to, bool in_pass, Phrases& phrases) {
  const Model& model = world.model();
  const Derived before = derive(world, from);
  const Derived after = derive(world, to);
  std::vector<CableId> formed;
  std::vector<CableId> lost;
  for (std::size_t i = 0; i < world.cable_count(); ++i) {
    const CableId c(i);
    if (before.linked[i] == after.linked[i]) continue;
    const bool ends_up = after.is_up(device_a(model, c)) && after.is_up(device_b(model, c));
    if (after.linked[i] != 0) formed.push_back(c);
    if (after.linked[i] == 0 && (ends_up || !in_pass)) lost.push_back(c);
  }
  if (!lost.empty()) {
    phrases.push_back(fmt::format("{} {} lost", cables_named(model, lost), lost.size() == 1 ? "is" : "are"));
  }
  if (!formed.empty()) {
    phrases.push_back(fmt::format("{} form{}", cables_named(model, formed), formed.size() == 1 ? "s" : ""));
  }
}

// 5.b: what a device had in running and not in startup is gone once its start completes; 5.f: factory values return.
void add_start(const Model& model, const Moment& moment, DeviceId d, Phrases& phrases) {
  const DeviceState& before = moment.before[d];
  const DeviceState& after = moment.left[d];
  const std::string& name = model[d].name;
  if (after.number != before.number) {
    phrases.push_back(fmt::format("{} now has number {}, no longer {}", name, after.number, before.number));
  }
  const bool refiled = model.platform.settings_follow == SettingsFollow::number && after.number != before.number;
  if (refiled) phrases.push_back(fmt::format("with its number, {} falls back to factory settings", name));
  if (after.priority != before.priority) {
    phrases.push_back(fmt::format("{} now has priority {}, no longer {}", name, after.priority, before.priority));
  }
  if (refiled) return;
  Phrases lost;
  for (const PortId p : model[d].ports) {
    const PortState& was = moment.before[p];
    const PortState& is = moment.left[p];
    const std::string& port = model[p].name;
    if (was.enabled != is.enabled)
      lost.push_back(fmt::format("port {} is {}", port, is.enabled ? "enabled" : "disabled"));
    if (was.side == is.side) continue;
    lost.push_back(is.side == Side::none ? fmt::format("{} has no side", port)
                                         : fmt::format("{} has side {}", port, name_of(is.side)));
  }
  if (!lost.empty()) phrases.push_back("unsaved settings are lost: " + listed(lost));
}

// 5.f: a number that takes at once refiles the settings.
void add_set_number(const Model& model, const Moment& moment, const Step& step, Phrases& phrases) {
  const DeviceState& before = moment.before[step.device];
  const DeviceState& after = moment.left[step.device];
  if (after.number != before.number) {
    phrases.push_back(fmt::format("in force at once, no longer {}", before.number));
    if (model.platform.settings_follow == SettingsFollow::number) {
      phrases.push_back(fmt::format("with its number, {} falls back to factory settings", model[step.device].name));
    }
  } else if (after.next_number != after.number) {
    phrases.push_back(fmt::format("in force at its next start; until then {}", after.number));
  }
}

// Settings of ports that came into force, by an apply or a step that takes at once.
void add_sides(const Model& model, const Moment& moment, Phrases& phrases) {
  Phrases sides;
  for (std::size_t i = 0; i < model.site.ports.size(); ++i) {
    const PortId p(i);
    const Side is = moment.left[p].operational_side;
    if (is == moment.before[p].operational_side) continue;
    sides.push_back(is == Side::none ? fmt::format("{} has no side", model[p].name)
                                     : fmt::format("{} has side {}", model[p].name, name_of(is)));
  }
  if (!sides.empty()) phrases.push_back("in force now: " + listed_briefly(sides, most_names));
}

bool same_but_for_done(const State& a, State b) {
  b.done = a.done;
  b.left = a.left;
  return a == b;
}

// What the step itself brought about, where its sentence does not say it.
void add_step(const Model& model, const Moment& moment, Phrases& phrases) {
  const Step& step = model[moment.event.step()];
  if (moment.refusal != Refusal::none || step.verb == Verb::await || step.verb == Verb::check) return;
  if (same_but_for_done(moment.before, moment.left)) {
    phrases.emplace_back("nothing changes");
    return;
  }
  switch (step.verb) {
    case Verb::set_number:
      return add_set_number(model, moment, step, phrases);
    case Verb::set_priority:
      if (moment.left[step.device].startup_priority != moment.before[step.device].startup_priority) {
        phrases.push_back(fmt::format("in force at its next start; until then {}", moment.left[step.device].priority));
      }
      return;
    case Verb::set_side:
    case Verb::clear_side:
      if (moment.left[step.port].side != moment.left[step.port].operational_side) {
        phrases.emplace_back("in force once it is applied");
      }
      return;
    case Verb::apply:
      return add_sides(model, moment, phrases);
    default:
      return;
  }
}

// 4.2: who contested, and what decided.
std::string contest_told(const Model& model, const State& s, const Contest& contest) {
  const std::string& winner = model[contest.winner].name;
  const std::string losers = listed_briefly(names_of(model, contest.losers), most_names);
  const std::string reason = why_outranks_all(model, s, contest.winner, contest.losers);
  const std::string by = reason.empty() ? "" : " by " + reason;
  if (s[contest.winner].leader == contest.winner) {
    return fmt::format("{} and {} meet as leaders: {} wins{}", winner, losers, winner, by);
  }
  return fmt::format("{} is elected before {}{}", winner, losers, by);
}

void add_admitted(const Model& model, const State& before, const Pass& pass, Phrases& phrases) {
  std::map<DeviceId, std::vector<DeviceId>> followers;
  for (const DeviceId d : pass.admitted) followers[pass.after[d].leader].push_back(d);
  for (const auto& [leader, all] : followers) {
    std::vector<DeviceId> others;
    for (const DeviceId d : all) {
      if (d != leader) others.push_back(d);
    }
    const std::string& name = model[leader].name;
    const std::string follow = others.empty()
                                   ? ""
                                   : fmt::format("{} follow{} {}", listed_briefly(names_of(model, others), most_names),
                                                 others.size() == 1 ? "s" : "", name);
    if (before[leader].leader == leader) {
      phrases.push_back(follow);
    } else if (others.empty()) {
      phrases.push_back(fmt::format("{}, alone, leads itself", name));
    } else {
      phrases.push_back(fmt::format("{} becomes primary, {}", name, follow));
    }
  }
}

// 4.2.a and 4.2.d: who restarts, told apart by whether a leader of their own was lost to a contest.
void add_restarted(const World& world, const State& before, const Pass& pass, Phrases& phrases) {
  if (pass.restarted.empty()) return;
  const Derived derived = derive(world, before);
  std::vector<DeviceId> losers;
  std::vector<DeviceId> orphans;
  for (const DeviceId d : pass.restarted) {
    const bool leader_here =
        derived.together(d, before[d].leader) && before[before[d].leader].leader == before[d].leader;
    (leader_here ? losers : orphans).push_back(d);
  }
  const Model& model = world.model();
  if (!losers.empty()) phrases.push_back(subject(names_of(model, losers), "restart"));
  if (!orphans.empty()) {
    phrases.push_back(fmt::format("{}, cut off from {} primary, restart{}", listed(names_of(model, orphans)),
                                  orphans.size() == 1 ? "its" : "their", orphans.size() == 1 ? "s" : ""));
  }
}

void add_pass(const World& world, const State& before, const Pass& pass, Phrases& phrases) {
  const Model& model = world.model();
  for (const Contest& contest : pass.contests) phrases.push_back(contest_told(model, before, contest));
  if (!pass.held.empty()) {
    const Derived derived = derive(world, before);
    for (const DeviceId d : pass.held) {
      const DeviceId other = clashes_with(derived, before, d);
      phrases.push_back(fmt::format("{} is held: it has number {}, and so has {}", model[d].name, before[d].number,
                                    model[other].name));
    }
  }
  add_restarted(world, before, pass, phrases);
  add_admitted(model, before, pass, phrases);
  add_links(world, before, pass.after, true, phrases);
}

}  // namespace

std::vector<std::string> settling(const World& world, const State& from, const std::vector<Pass>& passes) {
  Phrases phrases;
  const State* before = &from;
  for (const Pass& pass : passes) {
    add_pass(world, *before, pass, phrases);
    before = &pass.after;
  }
  return phrases;
}

std::vector<std::string> changes(const World& world, const Moment& moment) {
  const Model& model = world.model();
  Phrases phrases;
  switch (moment.event.kind) {
    case Event::Kind::step:
      add_step(model, moment, phrases);
      break;
    case Event::Kind::started:
    case Event::Kind::started_late:
      add_start(model, moment, moment.event.device(), phrases);
      break;
    case Event::Kind::cold_start:
      for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
        if (moment.before.devices[i].power != Power::off) add_start(model, moment, DeviceId(i), phrases);
      }
      break;
    default:
      break;
  }
  add_links(world, moment.before, moment.left, false, phrases);
  for (auto& phrase : settling(world, moment.left, moment.passes)) phrases.push_back(std::move(phrase));
  return phrases;
}

}  // namespace cairn::report

#include "report/advice.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/fatal.hpp"
#include "report/narrate.hpp"
#include "report/why.hpp"
#include "report/words.hpp"
#include "semantics/events.hpp"

namespace cairn::report {

namespace {

using semantics::Derived;
using semantics::World;
using Cause = Breach::Cause;

constexpr std::size_t most_sentences = 3;

class Advisor {
 public:
  Advisor(const World& world, const Walk& walk, const Breach& breach)
      : world_(world),
        model_(world.model()),
        walk_(walk),
        breach_(breach),
        fatal_(fatal_of(world, walk, breach)),
        derived_(derive(world, *fatal_.state)) {}

  std::vector<std::string> sentences() {
    by_cause();
    by_omission();
    if (out_.size() > most_sentences) out_.resize(most_sentences);
    return std::move(out_);
  }

 private:
  [[nodiscard]] const State& s() const { return *fatal_.state; }
  [[nodiscard]] const std::string& name(DeviceId d) const { return model_[d].name; }

  void say(std::string sentence) {
    if (std::find(out_.begin(), out_.end(), sentence) == out_.end()) out_.push_back(std::move(sentence));
  }

  void by_cause() {
    switch (breach_.cause) {
      case Cause::two_leaders:
      case Cause::cut_apart:
        return against_cut();
      case Cause::settled_down:
        return against_restart();
      case Cause::kept_device_held:
      case Cause::settled_held:
      case Cause::held:
      case Cause::same_number:
        return against_clash();
      case Cause::taken_down:
        return say(fmt::format("Where this is meant, leave {} out of keep; else take step {} out.", name(breach_.a),
                               model_[breach_.step].id));
      case Cause::refused:
        return against_refusal();
      case Cause::not_complete:
        return against_standstill();
      case Cause::goal_missed:
        return towards_goal();
      case Cause::too_many_members:
        return say("Leave devices out, or split the growth into two stacks.");
      case Cause::loss_cuts:
        return say(
            fmt::format("Give {} and {} one more path that shares none of these cables; a chain gains one by "
                        "closing it into a ring.",
                        name(breach_.a), name(breach_.b)));
    }
  }

  // A step whose loss did it: nothing in the procedure notices that it was left out.
  void by_omission() {
    for (const Moment& moment : walk_.moments) {
      if (moment.event.kind != Event::Kind::omitted) continue;
      say(fmt::format("Put a check behind step {}, so that the procedure stops when it was forgotten.",
                      model_[moment.event.step()].id));
    }
  }

  void against_cut() {
    if (walk_.moments.empty()) return;
    const Moment& last = walk_.moments.back();
    const Derived before = derive(world_, last.before);
    const Derived left = derive(world_, last.left);
    if (before.linked == left.linked || !before.together(breach_.a, breach_.b)) return;
    const std::string path = fmt::format("another path links {} and {}", name(breach_.a), name(breach_.b));
    if (last.event.kind == Event::Kind::step) {
      return say(fmt::format("Do {} only while {}.", model_[last.event.step()].id, path));
    }
    say(
        fmt::format("This fault is harmless only while {}: have one before the procedure begins, or keep the time "
                    "without one outside the faults to be survived.",
                    path));
  }

  void against_restart() {
    const DeviceId leader = s()[breach_.a].leader;
    const DeviceId winner = winner_over(world_, s(), breach_.a);
    if (!winner || winner == leader) return against_cut_off_restart(leader);
    if (!derived_.together(breach_.a, leader)) return against_cut_off_restart(leader);
    // Of two that are both to be kept, which one wins is no more than a symptom.
    if (!world_.keeps(winner) || !world_.keeps(leader)) outrank(winner, leader);
    if (!world_.keeps(winner)) {
      say(
          fmt::format("Or let {} start with its link already up: a device that is new to the stack follows, whatever "
                      "its rank.",
                      name(winner)));
    }
  }

  void against_cut_off_restart(DeviceId leader) {
    if (walk_.moments.empty() || leader == breach_.a) return;
    const Event& last = walk_.moments.back().event;
    if (last.kind == Event::Kind::step) {
      return say(fmt::format("Do {} only while another path links {} and {}.", model_[last.step()].id, name(breach_.a),
                             name(leader)));
    }
    say(fmt::format("Only a path to {} that this fault leaves alone keeps {} running.", name(leader), name(breach_.a)));
  }

  // What makes `loser` win, by the key that decided.
  void outrank(DeviceId winner, DeviceId loser) {
    const auto& election = model_.platform.election;
    const auto key = deciding_key(model_, s(), winner, loser);
    const auto comes_before_the_key = [&](ElectionKey other) {
      for (const ElectionKey k : election) {
        if (k == other) return true;
        if (k == key) return false;
      }
      return false;
    };
    if (key == ElectionKey::priority || comes_before_the_key(ElectionKey::priority)) {
      const bool restart = model_.platform.priority_takes == Takes::at_restart;
      const std::int64_t below = s()[loser].priority;
      const std::string in_force = restart ? " and restart it" : "";
      if (below > model_.platform.priorities.low) {
        return say(fmt::format("Set the priority of {} below {}{}, before it is linked with {}.", name(winner), below,
                               in_force, name(loser)));
      }
      return say(fmt::format("Set the priority of {} above {}, in force before it is linked with {}.", name(loser),
                             s()[winner].priority, name(winner)));
    }
    if (key == ElectionKey::number) {
      return say(fmt::format("Give {} a number above {}, in force before it is linked with {}.", name(winner),
                             s()[loser].number, name(loser)));
    }
    if (key == ElectionKey::tenure) {
      say(fmt::format("Restart {} before it is linked, so that {} has been up longer.", name(winner), name(loser)));
    }
  }

  void against_clash() {
    const DeviceId other = breach_.cause == Cause::same_number ? breach_.b : clashes_with(derived_, s(), breach_.a);
    if (!other) return;
    // The one that joins is to change its number, not one that is to be kept.
    const DeviceId changes = world_.keeps(breach_.a) && !world_.keeps(other) ? other : breach_.a;
    say(fmt::format("Give {} a number that nobody else has, {}before it is linked.", name(changes),
                    model_.platform.number_takes == Takes::at_restart ? "and restart it, " : ""));
  }

  void against_refusal() {
    const Step& step = model_[breach_.step];
    const Moment& last = walk_.moments.back();
    switch (last.refusal) {
      case Refusal::none:
        return;
      case Refusal::not_off:
      case Refusal::already_off:
      case Refusal::already_plugged:
      case Refusal::not_plugged:
        return say(fmt::format("Take {} out, or do it at another place.", step.id));
      case Refusal::not_reachable:
        return against_unreachable(step, last.before);
      case Refusal::out_of_range: {
        const Range& range = step.verb == Verb::set_number ? model_.platform.numbers : model_.platform.priorities;
        return say(fmt::format("Ask for a value from {} to {}.", range.low, range.high));
      }
      case Refusal::port_enabled:
        return say(fmt::format("Disable {} before {}, and enable it afterwards.", model_[step.port].name, step.id));
      case Refusal::port_occupied:
        for (std::size_t i = 0; i < model_.site.cables.size(); ++i) {
          const CableId c(i);
          if (c != step.cable && last.before[c].plugged && shares_port(c, step.cable)) {
            say(fmt::format("Unplug {} before {}.", model_[c].name, step.id));
          }
        }
        return;
    }
  }

  [[nodiscard]] bool shares_port(CableId c, CableId d) const {
    const Cable& one = model_[c];
    const Cable& other = model_[d];
    return one.a == other.a || one.a == other.b || one.b == other.a || one.b == other.b;
  }

  void against_unreachable(const Step& step, const State& before) {
    const std::vector<DeviceId> asked = step.via ? std::vector{step.via} : step.devices;
    for (const DeviceId d : asked) {
      if (before[d].power == Power::starting) {
        return say(fmt::format("Put `await: up({})` before {}.", name(d), step.id));
      }
      if (before[d].power == Power::off) return say(fmt::format("Switch {} on before {}.", name(d), step.id));
    }
    if (step.via && step.device && step.via != step.device) {
      say(fmt::format("Use the console of {} itself, or wait until `together({}, {})`.", name(step.device),
                      name(step.device), name(step.via)));
    }
  }

  void against_standstill() {
    if (s().halted) return;
    for (std::size_t i = 0; i < model_.procedure.steps.size(); ++i) {
      if (!semantics::has_turn(world_, s(), StepId(i))) continue;
      const Step& step = model_.procedure.steps[i];
      std::vector<CableId> cables;
      std::vector<DeviceId> devices;
      collect(step.condition, devices, cables);
      for (const CableId c : cables) towards_link(c);
      for (const DeviceId d : devices) {
        if (s()[d].power == Power::held) held_earlier(d);
        if (s()[d].leader == d) against_leader(d);
        for (const auto& end : world_.ends_at(d)) {
          if (s()[end.cable].plugged) towards_link(end.cable);
        }
      }
    }
  }

  // A newcomer that leads what it was to follow.
  void against_leader(DeviceId d) {
    if (world_.keeps(d)) return;
    for (const DeviceId e : model_.procedure.keep) {
      if (derived_.together(d, e)) return outrank(d, e);
    }
  }

  // The devices and cables that a condition speaks of.
  static void collect(const Condition& condition, std::vector<DeviceId>& devices, std::vector<CableId>& cables) {
    devices.insert(devices.end(), condition.devices.begin(), condition.devices.end());
    if (condition.cable) cables.push_back(condition.cable);
    for (const Condition& part : condition.parts) collect(part, devices, cables);
  }

  void held_earlier(DeviceId d) {
    say(fmt::format("{} was held for its number {}: give it one that nobody else has before it is linked.", name(d),
                    s()[d].number));
  }

  void towards_goal() {
    switch (breach_.missed) {
      case Breach::GoalPart::together:
        for (const CableId c : open_cables(world_, s(), derived_, breach_.a, breach_.b)) towards_link(c);
        return;
      case Breach::GoalPart::primary:
        if (s()[breach_.b].power == Power::up) outrank(breach_.a, breach_.b);
        return;
      case Breach::GoalPart::saved:
        return towards_saved(breach_.a);
      default:
        return;
    }
  }

  void towards_saved(DeviceId d) {
    const std::vector<PortId>& ports = model_[d].ports;
    const bool apply =
        std::any_of(ports.begin(), ports.end(), [&](PortId p) { return s()[p].side != s()[p].operational_side; });
    const bool save = std::any_of(ports.begin(), ports.end(), [&](PortId p) {
      return s()[p].side != s()[p].startup_side || s()[p].enabled != s()[p].startup_enabled;
    });
    const bool pending = s()[d].next_number != s()[d].number || (s()[d].startup_priority != s()[d].priority &&
                                                                 model_.platform.priority_takes == Takes::at_restart);
    const bool priority = s()[d].startup_priority != s()[d].priority && !pending;
    if (apply) say(fmt::format("Add `apply: {}` after the last side is set.", name(d)));
    if (save || priority) say(fmt::format("Add `save: {}` after the last change.", name(d)));
    if (pending) say(fmt::format("Restart {}: a setting waits for its next start.", name(d)));
  }

  // What lets a link form on c.
  void towards_link(CableId c) {
    const Cable& cable = model_[c];
    if (derived_.linked[c.value] != 0 || !s()[c].plugged || s()[c].broken) return;
    for (const PortId p : {cable.a, cable.b}) {
      const PortState& port = s()[p];
      const std::string& owner = name(model_[p].device);
      if (s()[model_[p].device].power != Power::up) continue;
      const auto lost = lost_at(p);
      if (lost && (!port.enabled || port.side == Side::none)) {
        say(lost->refiled ? fmt::format("Set {} up after its new number is in force (event {}), since settings are "
                                        "filed under the number.",
                                        model_[p].name, lost->event)
                          : fmt::format("Save {} before event {}: its start loses what was set on {}.", owner,
                                        lost->event, model_[p].name));
      } else if (!port.enabled) {
        say(fmt::format("Enable {}.", model_[p].name));
      } else if (port.side != port.operational_side) {
        say(fmt::format("Apply {} after the side of {} is set.", owner, model_[p].name));
      } else if (port.operational_side == Side::none) {
        say(fmt::format("Set a side on {}{}.", model_[p].name,
                        model_.platform.side_takes == SideTakes::on_apply ? " and apply it" : ""));
      }
    }
    if (model_.platform.facing == Facing::opposite && s()[cable.a].operational_side != Side::none &&
        s()[cable.a].operational_side == s()[cable.b].operational_side) {
      say(fmt::format("Let one end of {} be east and the other west.", cable.name));
    }
  }

  struct Loss {
    std::size_t event = 0;  ///< from 1
    bool refiled = false;   ///< 5.f: lost because the number changed, saved or not
  };

  // The last start that lost a setting of p.
  [[nodiscard]] std::optional<Loss> lost_at(PortId p) const {
    const DeviceId d = model_[p].device;
    std::optional<Loss> loss;
    for (std::size_t i = 0; i < walk_.moments.size(); ++i) {
      const Moment& moment = walk_.moments[i];
      if (moment.left[p].enabled == moment.before[p].enabled && moment.left[p].side == moment.before[p].side) continue;
      if (moment.event.kind == Event::Kind::step) continue;
      loss = Loss{i + 1, model_.platform.settings_follow == SettingsFollow::number &&
                             moment.before[d].number != moment.left[d].number};
    }
    return loss;
  }

  const World& world_;
  const Model& model_;
  const Walk& walk_;
  const Breach& breach_;
  Fatal fatal_;
  Derived derived_;
  std::vector<std::string> out_;
};

}  // namespace

std::vector<std::string> ways_out(const World& world, const Walk& walk, const Breach& breach) {
  return Advisor(world, walk, breach).sentences();
}

}  // namespace cairn::report

#include "report/advice.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

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
        state_(fatal_state(world, walk, breach)),
        derived_(derive(world, state_)) {}

  std::vector<std::string> sentences() {
    by_cause();
    by_omission();
    if (out_.size() > most_sentences) out_.resize(most_sentences);
    return std::move(out_);
  }

 private:
  [[nodiscard]] const State& s() const { return state_; }
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
    if (!winner || winner == leader || !derived_.together(breach_.a, leader)) return against_cut_off_restart(leader);
    // Of two that are both to be kept, which one wins is no more than a symptom.
    if (!world_.keeps(winner) || !world_.keeps(leader)) {
      outrank(winner, leader, fmt::format(", before it is linked with {}", name(leader)));
    }
    if (world_.keeps(winner)) return;
    say(
        fmt::format("{} {} start with its link already up: a device that is new to the stack follows, whatever its "
                    "rank.",
                    out_.empty() ? "Let" : "Or let", name(winner)));
  }

  void against_cut_off_restart(DeviceId leader) {
    if (walk_.moments.empty() || leader == breach_.a) return;
    const Moment& last = walk_.moments.back();
    if (last.left[leader].power != Power::up) {
      return say(
          "On this platform members restart whenever their primary goes down. Where that is meant, leave them "
          "out of keep.");
    }
    if (last.event.kind == Event::Kind::step) {
      return say(fmt::format("Do {} only while another path links {} and {}.", model_[last.event.step()].id,
                             name(breach_.a), name(leader)));
    }
    say(fmt::format("Only a path to {} that this fault leaves alone keeps {} running.", name(leader), name(breach_.a)));
  }

  // What makes `loser` win, by the key that decided. `when` tells by when.
  void outrank(DeviceId winner, DeviceId loser, const std::string& when) {
    const auto key = deciding_key(model_, s(), winner, loser);
    if (key == ElectionKey::priority || comes_before(ElectionKey::priority, key)) {
      const std::string restart = model_.platform.priority_takes == Takes::at_restart ? " and restart it" : "";
      if (s()[loser].priority > model_.platform.priorities.low) {
        return say(
            fmt::format("Set the priority of {} below {}{}{}.", name(winner), s()[loser].priority, restart, when));
      }
      return say(fmt::format("Set the priority of {} above {}{}{}.", name(loser), s()[winner].priority, restart, when));
    }
    if (key == ElectionKey::number) {
      return say(fmt::format("Give {} a number above {}{}.", name(winner), s()[loser].number, when));
    }
    if (key == ElectionKey::tenure) {
      say(fmt::format("Restart {}{}, so that {} has been up longer.", name(winner), when, name(loser)));
    }
  }

  // In the election order; nothing stands for the address, which comes last.
  [[nodiscard]] bool comes_before(ElectionKey one, std::optional<ElectionKey> other) const {
    const auto& election = model_.platform.election;
    const auto at = [&](ElectionKey key) { return std::find(election.begin(), election.end(), key); };
    return at(one) != election.end() && (!other || at(one) < at(*other));
  }

  void against_clash() {
    const DeviceId other = breach_.cause == Cause::same_number ? breach_.b : clashes_with(derived_, s(), breach_.a);
    if (other) separate(breach_.a, other);
  }

  // Two devices have the same number: another one for the one that the procedure numbers, else for the newcomer.
  void separate(DeviceId d, DeviceId e) {
    for (auto moment = walk_.moments.rbegin(); moment != walk_.moments.rend(); ++moment) {
      if (moment->event.kind != Event::Kind::step) continue;
      const Step& step = model_[moment->event.step()];
      if (step.verb != Verb::set_number || step.value != s()[d].number || (step.device != d && step.device != e))
        continue;
      return say(fmt::format("Choose another number in {}: {} has {} too.", step.id, name(step.device == d ? e : d),
                             step.value));
    }
    const DeviceId changes = world_.keeps(d) && !world_.keeps(e) ? e : d;
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
      const Condition& condition = model_.procedure.steps[i].condition;
      std::vector<CableId> cables;
      std::vector<DeviceId> devices;
      collect(condition, devices, cables);
      for (const CableId c : cables) towards_link(c);
      for (const DeviceId d : devices) against_standstill_of(d, condition);
    }
  }

  // A device that an await speaks of.
  void against_standstill_of(DeviceId d, const Condition& condition) {
    if (s()[d].power == Power::held) return against_held(d);
    if (s()[d].next_number != s()[d].number) {
      say(fmt::format("Restart {}: number {} waits for its next start.", name(d), s()[d].next_number));
    }
    if (s()[d].leader == d) against_leader(d, condition);
    for (const auto& end : world_.ends_at(d)) towards_link(end.cable);
  }

  // 4.3.c: held until a restart, whatever its number is by now.
  void against_held(DeviceId d) {
    for (std::size_t i = 0; i < s().devices.size(); ++i) {
      if (DeviceId(i) != d && s().devices[i].number == s()[d].number) return separate(d, DeviceId(i));
    }
    say(fmt::format("Restart {}: a device that is held stays so until it starts again.", name(d)));
  }

  // d leads what another was to lead: the one that the await names as primary, or else the goal's.
  void against_leader(DeviceId d, const Condition& condition) {
    DeviceId meant = primary_in(condition);
    if (!meant && model_.procedure.goal) meant = model_.procedure.goal->primary;
    if (meant && meant != d && derived_.together(d, meant)) outrank(d, meant, "");
  }

  static DeviceId primary_in(const Condition& condition) {
    if (condition.kind == Condition::Kind::primary) return condition.devices.front();
    if (condition.kind != Condition::Kind::all) return {};
    for (const Condition& part : condition.parts) {
      if (const DeviceId d = primary_in(part)) return d;
    }
    return {};
  }

  // The devices and cables that a condition speaks of.
  static void collect(const Condition& condition, std::vector<DeviceId>& devices, std::vector<CableId>& cables) {
    devices.insert(devices.end(), condition.devices.begin(), condition.devices.end());
    if (condition.cable) cables.push_back(condition.cable);
    for (const Condition& part : condition.parts) collect(part, devices, cables);
  }

  void towards_goal() {
    switch (breach_.missed) {
      case Breach::GoalPart::together:
        for (const DeviceId d : {breach_.a, breach_.b}) {
          if (s()[d].power == Power::held) against_held(d);
        }
        for (const CableId c : open_cables(world_, s(), derived_, breach_.a, breach_.b)) towards_link(c);
        return;
      case Breach::GoalPart::primary:
        if (s()[breach_.b].power == Power::up) outrank(breach_.a, breach_.b, "");
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
    for (const PortId p : {cable.a, cable.b}) free_side(c, p);
  }

  // 3.b, side-leads-to: of a side that leads to two neighbours no link forms.
  void free_side(CableId c, PortId p) {
    if (model_.platform.side_leads_to == SideLeadsTo::any || derived_.cable_up[c.value] == 0) return;
    const DeviceId peer = device_a(model_, c) == model_[p].device ? device_b(model_, c) : device_a(model_, c);
    for (const auto& end : world_.ends_at(model_[p].device)) {
      if (end.other == peer || derived_.cable_up[end.cable.value] == 0) continue;
      if (s()[end.here].operational_side != s()[p].operational_side) continue;
      say(fmt::format("Unplug {} before {} is up: side {} of {} may lead to one neighbour.", model_[end.cable].name,
                      model_[c].name, name_of(s()[p].operational_side), name(model_[p].device)));
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
  const State& state_;
  Derived derived_;
  std::vector<std::string> out_;
};

}  // namespace

std::vector<std::string> ways_out(const World& world, const Walk& walk, const Breach& breach) {
  return Advisor(world, walk, breach).sentences();
}

}  // namespace cairn::report

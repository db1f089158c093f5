#include "confront/states.hpp"

#include <algorithm>
#include <set>

#include "semantics/settle.hpp"
#include "semantics/state.hpp"

namespace cairn::confront {

using system::Space;
using system::Variable;
using system::VariableId;
using Kind = Variable::Kind;

namespace {

std::vector<std::int64_t> ascending(const std::set<std::int64_t>& values) {
  return {values.begin(), values.end()};
}

std::vector<std::int64_t> up_to(std::int64_t most) {
  std::vector<std::int64_t> values;
  for (std::int64_t value = 0; value <= most; ++value) values.push_back(value);
  return values;
}

std::vector<std::int64_t> numbers_of(const Model& model) {
  std::set<std::int64_t> numbers{model.platform.factory.number};
  for (const Device& device : model.site.devices) numbers.insert({device.number, device.next_number});
  for (const Step& step : model.procedure.steps) {
    if (step.verb == Verb::set_number) numbers.insert(step.value);
  }
  return ascending(numbers);
}

std::vector<std::int64_t> priorities_of(const Model& model) {
  std::set<std::int64_t> priorities{model.platform.factory.priority};
  for (const Device& device : model.site.devices) priorities.insert({device.priority, device.startup_priority});
  for (const Step& step : model.procedure.steps) {
    if (step.verb == Verb::set_priority) priorities.insert(step.value);
  }
  return ascending(priorities);
}

class Draw {
 public:
  Draw(Random& random, const Space& space, const system::Domains& domains, Sort sort)
      : random_(random), space_(space), domains_(domains), wild_(sort == Sort::wild) {}

  State state() {
    State s;
    s.devices.resize(space_.devices());
    for (std::uint32_t i = 0; i < space_.devices(); ++i) tidy_.push_back(chance(random_, 30));
    s.ports.resize(space_.ports());
    s.cables.resize(space_.cables());
    for (std::uint32_t i = 0; i < space_.devices(); ++i) draw_device(s, DeviceId(i));
    for (std::uint32_t i = 0; i < space_.devices(); ++i) draw_leader(s, DeviceId(i));
    rank(s);
    for (std::uint32_t i = 0; i < space_.ports(); ++i) {
      s.ports[i].operational_side = static_cast<Side>(any(space_.of_port(Kind::operational_side, PortId(i))));
    }
    draw_cables(s);
    for (std::uint32_t i = 0; i < space_.ports(); ++i) draw_port(s, PortId(i));
    for (std::uint32_t i = 0; i < space_.steps(); ++i) s.done.push_back(coin() ? 1 : 0);
    using system::Fault;
    s.left.cable_breaks = any(space_.left(Fault::cable_break));
    s.left.crashes = any(space_.left(Fault::crash));
    s.left.omissions = any(space_.left(Fault::omission));
    s.left.late_starts = any(space_.left(Fault::late_start));
    s.left.mends = space_.budget().mends;
    s.halted = chance(random_, 15);
    return s;
  }

 private:
  bool coin() { return chance(random_, 50); }
  bool mostly() { return chance(random_, 94); }
  std::int64_t any(VariableId v) { return domains_[v][below(random_, domains_[v].size())]; }
  /// The value where the variable may have it, else any.
  std::int64_t rather(std::int64_t value, VariableId v) {
    return std::binary_search(domains_[v].begin(), domains_[v].end(), value) ? value : any(v);
  }

  /// Of a device that is tidy all settings are alike: saved, applied, in force.
  bool alike(DeviceId d) { return tidy_[d.value] || coin(); }

  void draw_device(State& s, DeviceId d) {
    const auto of = [&](Kind kind) { return space_.of_device(kind, d); };
    DeviceState& device = s[d];
    device.power = !wild_ && chance(random_, 85) ? Power::up : static_cast<Power>(below(random_, 4));
    device.number = any(of(Kind::number));
    device.next_number = any(of(Kind::next_number));
    if (alike(d)) device.next_number = rather(device.number, of(Kind::next_number));
    device.priority = any(of(Kind::priority));
    device.startup_priority = any(of(Kind::startup_priority));
    if (alike(d)) device.startup_priority = rather(device.priority, of(Kind::startup_priority));
  }

  // Leaders that lead, followers, orphans of some that do not lead (any more), and fresh ones.
  void draw_leader(State& s, DeviceId d) {
    if (s[d].power != Power::up || chance(random_, 20)) return;
    if (!wild_ && chance(random_, 40)) {
      s[d].leader = d;
      return;
    }
    s[d].leader = DeviceId(below(random_, space_.devices()));
    if (!wild_ && coin()) s[d].leader = DeviceId(below(random_, 2));
  }

  void rank(State& s) {
    std::set<std::uint32_t> levels;
    for (DeviceState& d : s.devices) {
      if (d.power != Power::up && d.power != Power::held) continue;
      d.seniority = static_cast<std::uint32_t>(1 + below(random_, 3));
      levels.insert(d.seniority);
    }
    for (DeviceState& d : s.devices) {
      const auto below_it = std::distance(levels.begin(), levels.lower_bound(d.seniority));
      if (d.seniority != 0) d.seniority = static_cast<std::uint32_t>(below_it) + 1;
    }
  }

  Side rather(Side side, PortId p, Kind kind) {
    return static_cast<Side>(rather(static_cast<std::int64_t>(side), space_.of_port(kind, p)));
  }

  void draw_port(State& s, PortId p) {
    const auto of = [&](Kind kind) { return any(space_.of_port(kind, p)); };
    PortState& port = s[p];
    port.enabled = wild_ ? of(Kind::enabled) != 0 : rather(mostly() ? 1 : 0, space_.of_port(Kind::enabled, p)) != 0;
    const DeviceId d = space_.model()[p].device;
    port.startup_enabled = of(Kind::startup_enabled) != 0;
    if (alike(d)) {
      port.startup_enabled = rather(port.enabled ? 1 : 0, space_.of_port(Kind::startup_enabled, p)) != 0;
    }
    port.side = static_cast<Side>(of(Kind::side));
    if (alike(d)) port.side = rather(port.operational_side, p, Kind::side);
    port.startup_side = static_cast<Side>(of(Kind::startup_side));
    if (alike(d)) port.startup_side = rather(port.side, p, Kind::startup_side);
  }

  // Of the cables of a port at most one is plugged (1.b). Of half of the plugged ones the sides face each other.
  void draw_cables(State& s) {
    std::vector<bool> occupied(space_.ports(), false);
    const std::size_t first = below(random_, space_.cables());
    for (std::uint32_t i = 0; i < space_.cables(); ++i) {
      const CableId c((first + i) % space_.cables());
      const Cable& cable = space_.model()[c];
      s[c].broken = wild_ ? coin() : !mostly();
      s[c].plugged = !occupied[cable.a.value] && !occupied[cable.b.value] && (wild_ ? coin() : mostly());
      if (!s[c].plugged) continue;
      occupied[cable.a.value] = occupied[cable.b.value] = true;
      if (wild_ || coin()) continue;
      const bool east_first = coin();
      s[cable.a].operational_side = rather(east_first ? Side::east : Side::west, cable.a, Kind::operational_side);
      s[cable.b].operational_side = rather(east_first ? Side::west : Side::east, cable.b, Kind::operational_side);
    }
  }

  Random& random_;
  const Space& space_;
  const system::Domains& domains_;
  bool wild_;
  std::vector<bool> tidy_;
};

class NobodyWatches : public semantics::Watcher {
  void see(const State&, const semantics::Derived&) override {}
  void foresee(const State&, const semantics::Derived&, const semantics::PassPlan&) override {}
};

void bring_to_rest(Random& random, State& s) {
  for (std::uint8_t& done : s.done) done = 1;
  s.halted = false;
  for (DeviceState& d : s.devices) {
    if (d.power == Power::starting) d.power = Power::off;
  }
  if (below(random, 8) == 0 && !s.done.empty()) s.done[below(random, s.done.size())] = 0;
}

}  // namespace

system::Domains wide_domains(const Space& space) {
  const Model& model = space.model();
  const std::vector<std::int64_t> numbers = numbers_of(model);
  const std::vector<std::int64_t> priorities = priorities_of(model);
  system::Domains domains(space.size());
  for (VariableId v = 0; v < space.size(); ++v) {
    const Variable& variable = space[v];
    switch (variable.kind) {
      case Kind::power:
        domains[v] = up_to(3);
        break;
      case Kind::leader:
        domains[v] = up_to(space.devices() - 1);
        domains[v].insert(domains[v].begin(), system::nobody);
        break;
      case Kind::number:
      case Kind::next_number:
        domains[v] = numbers;
        break;
      case Kind::priority:
      case Kind::startup_priority:
        domains[v] = priorities;
        break;
      case Kind::side:
      case Kind::startup_side:
      case Kind::operational_side:
        domains[v] = up_to(2);
        break;
      case Kind::left:
        domains[v] = up_to(space.budget_of(static_cast<system::Fault>(variable.place)));
        break;
      default:
        domains[v] = up_to(1);
        break;
    }
  }
  return domains;
}

State random_state(Random& random, const semantics::World& world, const Space& space, const system::Domains& domains,
                   Sort sort) {
  State s = Draw(random, space, domains, sort).state();
  if (sort != Sort::settled && sort != Sort::at_rest) return s;
  semantics::Scratch scratch;
  NobodyWatches nobody;
  semantics::settle(world, s, scratch, nobody);
  if (sort == Sort::at_rest) bring_to_rest(random, s);
  return s;
}

std::vector<std::int64_t> values_of(const Space& space, const State& s) {
  std::vector<std::int64_t> values;
  for (VariableId v = 0; v < space.size(); ++v) values.push_back(space.read(s, v));
  return values;
}

std::vector<std::size_t> assignment_of(const system::Domains& domains, const std::vector<std::int64_t>& values) {
  std::vector<std::size_t> truths;
  std::size_t at = 0;
  for (VariableId v = 0; v < values.size(); ++v) {
    const std::vector<std::int64_t>& domain = domains[v];
    const auto place =
        static_cast<std::size_t>(std::lower_bound(domain.begin(), domain.end(), values[v]) - domain.begin());
    if (domain.size() > 2) truths.push_back(at + place);
    if (domain.size() == 2 && place == 1) truths.push_back(at);
    at += domain.size() > 2 ? domain.size() : domain.size() - 1;
  }
  return truths;
}

bool within(const Space& space, const system::Domains& domains, const State& s) {
  for (VariableId v = 0; v < space.size(); ++v) {
    if (!std::binary_search(domains[v].begin(), domains[v].end(), space.read(s, v))) return false;
  }
  return true;
}

std::string told(const Space& space, const State& s) {
  std::string text;
  for (VariableId v = 0; v < space.size(); ++v) {
    const std::int64_t value = space.read(s, v);
    if (space.is_truth(v) && value == 0) continue;
    text += space.name(v) + (space.is_truth(v) ? "" : " is " + space.value_name(v, value)) + "; ";
  }
  return text;
}

}  // namespace cairn::confront

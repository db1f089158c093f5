#include "any_state.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;
using Kind = system::Variable::Kind;

namespace {

Platform platform_of(int devices, const Rules& rules) {
  Platform platform;
  platform.numbers = {1, devices};
  platform.priorities = {1, devices};
  platform.factory = {1, 1, true, Side::east};
  platform.number_takes = Takes::at_once;
  platform.priority_takes = Takes::at_once;
  platform.settings_follow = rules.settings_follow;
  platform.side_takes = SideTakes::at_once;
  platform.facing = Facing::any;
  platform.side_leads_to = rules.side_leads_to;
  platform.orphans = rules.orphans;
  platform.software = Software::any;
  platform.election = rules.election;
  platform.max_members = devices;
  return platform;
}

PortId add_port(Site& site, DeviceId d, std::size_t to) {
  Port port;
  port.name = fmt::format("{}/{}", site.devices[d.value].name, to + 1);
  port.device = d;
  port.enabled = port.startup_enabled = true;
  port.side = port.startup_side = port.operational_side = Side::east;
  const PortId id(site.ports.size());
  site.ports.push_back(port);
  site.devices[d.value].ports.push_back(id);
  return id;
}

Site site_of(std::size_t devices) {
  Site site;
  for (std::size_t i = 0; i < devices; ++i) {
    Device device;
    device.name = fmt::format("d{}", i + 1);
    device.address = i + 1;
    device.number = device.next_number = static_cast<std::int64_t>(i + 1);
    device.priority = device.startup_priority = 1;
    site.devices.push_back(device);
  }
  std::vector<std::vector<PortId>> ports(devices, std::vector<PortId>(devices));
  for (std::size_t i = 0; i < devices; ++i) {
    for (std::size_t j = 0; j < devices; ++j) {
      if (j != i) ports[i][j] = add_port(site, DeviceId(i), j);
    }
  }
  for (std::size_t i = 0; i < devices; ++i) {
    for (std::size_t j = i + 1; j < devices; ++j) {
      const std::string name = fmt::format("d{}--d{}", i + 1, j + 1);
      site.cables.push_back({name, name, ports[i][j], ports[j][i], true});
    }
  }
  return site;
}

// One more cable for a port that has one already, to the first port of the last device.
void add_rival_cable(Site& site) {
  const PortId a = site.devices.front().ports.front();
  const PortId b = site.devices.back().ports.front();
  site.cables.push_back({"rival", "rival", a, b, false});
}

// A step of every verb at the first device, its first port and the first cable.
Procedure everything() {
  Procedure procedure;
  procedure.faults = {1, 1, 1, 1, true};
  for (int verb = 0; verb <= static_cast<int>(Verb::check); ++verb) {
    Step step;
    step.id = fmt::format("s{}", verb + 1);
    step.verb = static_cast<Verb>(verb);
    step.device = step.via = DeviceId(0);
    step.port = PortId(0);
    step.cable = CableId(0);
    step.value = 1;
    step.side = step.verb == Verb::clear_side ? Side::none : Side::west;
    step.stack_of = step.device;
    procedure.steps.push_back(std::move(step));
  }
  return procedure;
}

bool asks_for(const std::vector<ElectionKey>& election, ElectionKey key) {
  return std::find(election.begin(), election.end(), key) != election.end();
}

std::vector<std::int64_t> up_to(std::int64_t first, std::int64_t last) {
  std::vector<std::int64_t> values;
  for (std::int64_t value = first; value <= last; ++value) values.push_back(value);
  return values;
}

class Ranges {
 public:
  Ranges(const system::Space& space, const Rules& rules) : space_(space), rules_(rules) {}

  [[nodiscard]] std::vector<std::int64_t> of(const system::Variable& variable) const {
    const auto devices = std::int64_t{space_.devices()};
    const auto free = [](bool is_free, std::int64_t constant) {
      return is_free ? std::vector<std::int64_t>{0, 1} : std::vector<std::int64_t>{constant};
    };
    switch (variable.kind) {
      case Kind::power:
        return up_to(0, 3);
      case Kind::leader:
        return up_to(system::nobody, devices - 1);
      case Kind::number:
      case Kind::next_number:
        return up_to(1, asks_for(rules_.election, ElectionKey::number) ? devices : variable.place + 1);
      case Kind::priority:
      case Kind::startup_priority:
        return up_to(1, asks_for(rules_.election, ElectionKey::priority) ? devices : 1);
      case Kind::senior:
        return free(asks_for(rules_.election, ElectionKey::tenure), 0);
      case Kind::enabled:
      case Kind::startup_enabled:
        return free(rules_.free_ports, 1);
      case Kind::side:
      case Kind::startup_side:
      case Kind::operational_side:
        return rules_.free_ports ? up_to(0, 2) : up_to(1, 1);
      case Kind::plugged:
        return {0, 1};
      case Kind::broken:
        return free(rules_.free_ports, 0);
      case Kind::done:
      case Kind::left:
      case Kind::halted:
        return {0, 1};
    }
    return {};
  }

 private:
  const system::Space& space_;
  const Rules& rules_;
};

Model model_of(int devices, const Rules& rules) {
  Model model;
  model.platform = platform_of(devices, rules);
  model.site = site_of(static_cast<std::size_t>(devices));
  if (rules.all_events) {
    model.procedure = everything();
    add_rival_cable(model.site);
  }
  return model;
}

}  // namespace

AnyStack::AnyStack(int devices, const Rules& rules)
    : model(model_of(devices, rules)),
      space(model, model.procedure.faults),
      variant(rules.orphans == Orphans::restart ? "restart" : "carry-on") {
  const Ranges ranges(space, rules);
  for (system::VariableId v = 0; v < space.size(); ++v) domains_.push_back(ranges.of(space[v]));
}

system::FreeState AnyStack::any(std::string_view prime) {
  return system::free_state(terms, space, domains_, prime);
}

Given a_state(Terms& terms, const system::FreeState& free) {
  std::vector<Term> demands{free.typing};
  for (std::uint32_t i = 0; i < system::law_count; ++i) {
    demands.push_back(system::law(terms, free.state, static_cast<system::Law>(i)));
  }
  return {"Every variable has one value, and the laws of all states apply.", terms.all(demands)};
}

Given is_settled(Terms& terms, const SymbolicState& s, std::string without) {
  return {"The state is settled.", system::settled(terms, s, system::derive(terms, s)), std::move(without)};
}

Term with_its_leader(Terms& terms, const SymbolicState& s, const system::Derived& derived, DeviceId d) {
  std::vector<Term> cases;
  system::for_each_device(s.space(), [&](DeviceId leader) {
    cases.push_back(terms.both(s.leader_is(d, leader), derived.together(d, leader)));
  });
  return terms.any(cases);
}

Term same_power_and_leader(Terms& terms, const SymbolicState& s, const SymbolicState& t, DeviceId d) {
  return terms.both(system::equal(terms, s.of(Kind::power, d), t.of(Kind::power, d)),
                    system::equal(terms, s.of(Kind::leader, d), t.of(Kind::leader, d)));
}

}  // namespace cairn::proofs

#include "system/variables.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace cairn::system {

using Kind = Variable::Kind;

Value value_of(Term truth) {
  return Value({{0, !truth}, {1, truth}});
}

namespace {

std::int64_t initial_leader(const Site& site, DeviceId d) {
  if (!site.devices[d.value].on) return nobody;
  const bool member =
      site.stack && std::find(site.stack->members.begin(), site.stack->members.end(), d) != site.stack->members.end();
  return member ? site.stack->primary.value : d.value;  // 2.h
}

std::int64_t initial_value(const Space& space, const Variable& variable) {
  const Site& site = space.model().site;
  const auto device = [&]() -> const Device& { return site.devices[variable.place]; };
  const auto port = [&]() -> const Port& { return site.ports[variable.place]; };
  switch (variable.kind) {
    case Kind::power:
      return static_cast<std::int64_t>(device().on ? Power::up : Power::off);  // 2.g
    case Kind::leader:
      return initial_leader(site, DeviceId(variable.place));
    case Kind::number:
      return device().number;
    case Kind::next_number:
      return device().next_number;
    case Kind::priority:
      return device().priority;
    case Kind::startup_priority:
      return device().startup_priority;
    case Kind::senior: {  // 2.j
      const Device& other = site.devices[variable.other];
      return device().on && other.on && device().tenure > other.tenure ? 1 : 0;
    }
    case Kind::enabled:
      return port().enabled ? 1 : 0;
    case Kind::startup_enabled:
      return port().startup_enabled ? 1 : 0;
    case Kind::side:
      return static_cast<std::int64_t>(port().side);
    case Kind::startup_side:
      return static_cast<std::int64_t>(port().startup_side);
    case Kind::operational_side:
      return static_cast<std::int64_t>(port().operational_side);
    case Kind::plugged:
      return site.cables[variable.place].plugged ? 1 : 0;
    case Kind::left:
      return space.budget_of(static_cast<Fault>(variable.place));
    case Kind::broken:  // 2.l
    case Kind::done:
    case Kind::halted:
      return 0;
  }
  return 0;
}

Term law_of_leaders(Terms& terms, const SymbolicState& s) {
  std::vector<Term> all;
  for_each_device(s.space(), [&](DeviceId d) { all.push_back(terms.implies(!s.leaderless(d), s.up(d))); });
  return terms.all(all);
}

Term law_of_seniority(Terms& terms, const SymbolicState& s) {
  std::vector<Term> all;
  for_each_device(s.space(), [&](DeviceId d) {
    for_each_device(s.space(), [&](DeviceId e) {
      if (d == e) return;
      const Term senior = s.senior(d, e);
      all.push_back(terms.implies(senior, terms.all({!s.senior(e, d), running(terms, s, d), running(terms, s, e)})));
      // A third device stands apart from one of the two at least: the order has levels.
      for_each_device(s.space(), [&](DeviceId f) {
        if (f == d || f == e) return;
        const Term apart = terms.either(s.senior(d, f), s.senior(f, e));
        all.push_back(terms.implies(terms.both(senior, running(terms, s, f)), apart));
      });
    });
  });
  return terms.all(all);
}

Term law_of_plugs(Terms& terms, const SymbolicState& s) {
  const Space& space = s.space();
  std::vector<Term> all;
  for (std::uint32_t c = 0; c < space.cables(); ++c) {
    for (std::uint32_t other = c + 1; other < space.cables(); ++other) {
      const Cable& one = space.model()[CableId(c)];
      const Cable& two = space.model()[CableId(other)];
      const bool share = one.a == two.a || one.a == two.b || one.b == two.a || one.b == two.b;
      if (share) all.push_back(!terms.both(s.plugged(CableId(c)), s.plugged(CableId(other))));
    }
  }
  return terms.all(all);
}

}  // namespace

SymbolicState initial_state(const Space& space) {
  SymbolicState s(space);
  for (VariableId v = 0; v < space.size(); ++v) s[v] = Value(initial_value(space, space[v]));
  return s;
}

FreeState free_state(Terms& terms, const Space& space, const Domains& domains, std::string_view prime) {
  FreeState out{SymbolicState(space), always, {}};
  for (VariableId v = 0; v < space.size(); ++v) {
    const auto declare = [&](std::int64_t value) {
      const std::string name =
          space.is_truth(v) ? space.name(v) : fmt::format("{} is {}", space.name(v), space.value_name(v, value));
      out.booleans.push_back(terms.variable(fmt::format("{}{}", name, prime)));
      return out.booleans.back();
    };
    out.state[v] = free_value(domains[v], declare);
    if (domains[v].size() < 3) continue;
    std::vector<Term> which;
    for (const Value::Case& each : out.state[v].cases()) which.push_back(each.holds);
    out.typing = terms.all({out.typing, terms.any(which), terms.at_most_one(which)});
  }
  return out;
}

Term law(Terms& terms, const SymbolicState& s, Law which) {
  switch (which) {
    case Law::leaders:
      return law_of_leaders(terms, s);
    case Law::seniority:
      return law_of_seniority(terms, s);
    case Law::plugs:
      return law_of_plugs(terms, s);
  }
  return never;
}

Term running(Terms& terms, const SymbolicState& s, DeviceId d) {
  return terms.either(s.up(d), s.power_is(d, Power::held));
}

Term fresh(Terms& terms, const SymbolicState& s, DeviceId d) {
  return terms.both(s.up(d), s.leaderless(d));
}

Term admitted(Terms& terms, const SymbolicState& s, DeviceId d) {
  return terms.both(s.up(d), !s.leaderless(d));
}

void become_junior(Terms& terms, SymbolicState& s, DeviceId d) {
  const Space& space = s.space();
  for_each_device(space, [&](DeviceId e) {
    if (e == d) return;
    s[space.senior(e, d)] = value_of(running(terms, s, e));
    s[space.senior(d, e)] = Value(0);
  });
}

void go_down(SymbolicState& s, DeviceId d, Power power) {
  const Space& space = s.space();
  s.set_power(d, power);
  s.set_leader(d, nobody);
  for_each_device(space, [&](DeviceId e) {
    if (e == d) return;
    s[space.senior(e, d)] = Value(0);
    s[space.senior(d, e)] = Value(0);
  });
}

}  // namespace cairn::system

#include "system/properties.hpp"

#include <algorithm>

#include "system/conditions.hpp"
#include "system/events.hpp"
#include "system/steps.hpp"

namespace cairn::system {

using Kind = Variable::Kind;

namespace {

bool keeps(const Space& space, DeviceId d) {
  const std::vector<DeviceId>& keep = space.model().procedure.keep;
  return std::find(keep.begin(), keep.end(), d) != keep.end();
}

// 6.1: "any two of `keep` follow the same leader". Per device, that an admitted device of keep follows it.
std::vector<Term> followed_by_keep(Terms& terms, const SymbolicState& s) {
  const Space& space = s.space();
  std::vector<Term> followed;
  for_each_device(space, [&](DeviceId leader) {
    std::vector<Term> cases;
    for (const DeviceId d : space.model().procedure.keep) {
      cases.push_back(terms.both(admitted(terms, s, d), s.leader_is(d, leader)));
    }
    followed.push_back(terms.any(cases));
  });
  return followed;
}

// 6.1: "a device of `keep` is together with every device that follows the same leader, newcomers too". Where all of
// keep follow one leader (else there is a split already), that is to follow one that keep follows.
Term cut_apart(Terms& terms, const SymbolicState& s, const Derived& derived, const std::vector<Term>& followed) {
  const Space& space = s.space();
  std::vector<Term> with_keep;
  for_each_device(space, [&](DeviceId e) {
    std::vector<Term> cases;
    for_each_device(
        space, [&](DeviceId leader) { cases.push_back(terms.both(s.leader_is(e, leader), followed[leader.value])); });
    with_keep.push_back(terms.both(admitted(terms, s, e), terms.any(cases)));
  });
  std::vector<Term> cases;
  for (const DeviceId d : space.model().procedure.keep) {
    for_each_device(space, [&](DeviceId e) {
      if (e == d) return;
      cases.push_back(terms.all({admitted(terms, s, d), with_keep[e.value], !derived.together(d, e)}));
    });
  }
  return terms.any(cases);
}

// 6.1
Term split_in(Terms& terms, const SymbolicState& s, const Derived& derived) {
  std::vector<Term> cases;
  for (const DeviceId d : s.space().model().procedure.keep) cases.push_back(s.power_is(d, Power::held));
  const std::vector<Term> followed = followed_by_keep(terms, s);
  cases.push_back(!terms.at_most_one(followed));
  cases.push_back(cut_apart(terms, s, derived, followed));
  return terms.any(cases);
}

// 6.4
Term clash_in(Terms& terms, const SymbolicState& s, const Derived& derived) {
  const Space& space = s.space();
  std::vector<Term> cases;
  for_each_device(space, [&](DeviceId d) {
    cases.push_back(s.power_is(d, Power::held));
    for (std::uint32_t i = d.value + 1; i < space.devices(); ++i) {
      const DeviceId e(i);
      cases.push_back(terms.all({admitted(terms, s, d), admitted(terms, s, e), derived.together(d, e),
                                 equal(terms, s.of(Kind::number, d), s.of(Kind::number, e))}));
    }
  });
  return terms.any(cases);
}

}  // namespace

Term broken_in(Terms& terms, const SymbolicState& s, const Derived& derived, Property property) {
  switch (property) {
    case Property::no_split:
      return split_in(terms, s, derived);
    case Property::no_clash:
      return clash_in(terms, s, derived);
    default:
      return never;
  }
}

Term broken_by(Terms& terms, const SymbolicState& s, const Pass& pass, Property property) {
  if (property != Property::primary_stays && property != Property::members_stay) return never;
  std::vector<Term> cases;
  for (const DeviceId d : s.space().model().procedure.keep) {
    const Term counts = property == Property::members_stay ? always : s.leads(d);
    cases.push_back(terms.both(counts, terms.either(pass.yields[d.value], pass.restarts[d.value])));
  }
  return terms.any(cases);
}

Term broken_by(Terms& terms, const SymbolicState& s, const Derived& derived, const Event& event, Property property) {
  if (event.kind != Event::Kind::step) return never;  // 6.c: a crash is the fault's doing; 6.d: so is an omission
  const Term no = refused(terms, s, derived, event.step());
  if (property == Property::no_refusal) return no;
  if (property != Property::primary_stays && property != Property::members_stay) return never;
  const Step& step = s.space().model()[event.step()];
  if (step.verb != Verb::restart && step.verb != Verb::power_off) return never;
  if (!keeps(s.space(), step.device)) return never;
  const Term takes_down = property == Property::members_stay ? running(terms, s, step.device) : s.leads(step.device);
  return terms.both(!no, takes_down);
}

Term a_kept_device_leads(Terms& terms, const SymbolicState& s) {
  std::vector<Term> cases;
  for (const DeviceId d : s.space().model().procedure.keep) cases.push_back(s.leads(d));
  return terms.any(cases);
}

namespace {

Term stack_together(Terms& terms, const Space& space, const Derived& derived) {
  const std::vector<DeviceId>& stack = space.model().procedure.goal->stack;
  std::vector<Term> demands;
  demands.reserve(stack.size());
  for (const DeviceId d : stack) demands.push_back(derived.together(stack.front(), d));
  return terms.all(demands);
}

// 6.6: "no class larger than max-members"
Term class_too_large(Terms& terms, const Space& space, const Derived& derived) {
  std::vector<Term> cases;
  for_each_device(space, [&](DeviceId d) {
    std::vector<Term> members;
    for_each_device(space, [&](DeviceId e) { members.push_back(derived.together(d, e)); });
    cases.push_back(terms.at_least(members, space.platform().max_members + 1));
  });
  return terms.any(cases);
}

// 6.8: "break any k cables that are plugged and unbroken at once, all of them where there are fewer"
Term fatal_loss(Terms& terms, const SymbolicState& s, std::int64_t k, RestBreach& out) {
  const Space& space = s.space();
  SymbolicState after = s;
  std::vector<Term> rules;
  std::vector<Term> all_lost;
  for (std::uint32_t i = 0; i < space.cables(); ++i) {
    const CableId c(i);
    out.breakable.push_back(terms.both(s.plugged(c), !s.broken(c)));
    out.lost.push_back(terms.variable(space.model()[c].name + " lost"));
    rules.push_back(terms.implies(out.lost[i], out.breakable[i]));
    all_lost.push_back(terms.implies(out.breakable[i], out.lost[i]));
    after[space.broken(c)] = value_of(terms.either(s.broken(c), out.lost[i]));
  }
  rules.push_back(terms.either(terms.at_least(out.lost, k), terms.all(all_lost)));
  rules.push_back(!terms.at_least(out.lost, k + 1));
  return terms.both(terms.all(rules), !stack_together(terms, space, derive(terms, after)));
}

}  // namespace

Term goal(Terms& terms, const SymbolicState& s, const Derived& derived) {
  const Goal& goal = *s.space().model().procedure.goal;
  std::vector<Term> demands{stack_together(terms, s.space(), derived)};
  const DeviceId first = goal.stack.front();
  demands.push_back(!s.leaderless(first));
  for (const DeviceId d : goal.stack) {
    demands.push_back(equal(terms, s.of(Kind::leader, d), s.of(Kind::leader, first)));
    if (goal.saved) demands.push_back(saved(terms, s, d));
  }
  if (goal.primary) demands.push_back(s.leader_is(first, goal.primary));
  if (goal.where) demands.push_back(holds(terms, s, derived, *goal.where));
  return terms.all(demands);
}

SymbolicState cold_start(Terms& terms, const SymbolicState& s) {
  const Space& space = s.space();
  SymbolicState after = s;
  for_each_device(space, [&](DeviceId d) { come_up(terms, after, d); });
  for_each_device(space, [&](DeviceId d) {
    after.set_leader(d, nobody);
    for_each_device(space, [&](DeviceId e) {
      if (e != d) after[space.senior(d, e)] = Value(0);  // "no one senior to another"
    });
  });
  // "Every device that is not off starts": what belongs to a device that is off stays as it was.
  const auto unless_off = [&](DeviceId d, VariableId v) {
    after[v] = choose(terms, s.power_is(d, Power::off), s[v], after[v]);
  };
  for_each_device(space, [&](DeviceId d) {
    for (int kind = 0; kind <= static_cast<int>(Kind::startup_priority); ++kind) {
      unless_off(d, space.of_device(static_cast<Kind>(kind), d));
    }
    for (const PortId p : space.model()[d].ports) {
      for (int kind = static_cast<int>(Kind::enabled); kind <= static_cast<int>(Kind::operational_side); ++kind) {
        unless_off(d, space.of_port(static_cast<Kind>(kind), p));
      }
    }
  });
  return after;
}

RestBreach broken_at_rest(Terms& terms, const SymbolicState& s, const Derived& derived, const AskedProperty& asked,
                          int passes) {
  RestBreach out;
  const Term at_rest_here = at_rest(terms, s, derived);
  const Term complete_at_rest = terms.both(at_rest_here, complete(terms, s));
  switch (asked.property) {
    case Property::reaches_goal: {
      const Term fine =
          terms.all({complete(terms, s), goal(terms, s, derived), !class_too_large(terms, s.space(), derived)});
      out.broken = terms.both(at_rest_here, !fine);
      break;
    }
    case Property::survives_cold_start: {
      const Settling settling = settle(terms, cold_start(terms, s), passes);
      out.broken = terms.both(complete_at_rest, !goal(terms, settling.end, settling.end_derived));
      if (!settling.bounded()) out.unfinished = terms.both(complete_at_rest, settling.unfinished);
      break;
    }
    case Property::tolerates_loss:
      out.broken = terms.both(complete_at_rest, fatal_loss(terms, s, asked.k, out));
      break;
    default:
      break;
  }
  return out;
}

}  // namespace cairn::system

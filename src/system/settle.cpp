#include "system/settle.hpp"

#include <algorithm>

namespace cairn::system {

using Kind = Variable::Kind;

Term outranks(Terms& terms, const SymbolicState& s, DeviceId d, DeviceId e) {
  const Space& space = s.space();
  // 4.4.d: lower wins, always appended
  Term outcome = space.model()[d].address < space.model()[e].address ? always : never;
  const std::vector<ElectionKey>& election = space.platform().election;
  for (auto key = election.rbegin(); key != election.rend(); ++key) {
    Term better;
    Term worse;
    switch (*key) {
      case ElectionKey::priority:  // 4.4.a: running, higher wins
        better = less(terms, s.of(Kind::priority, e), s.of(Kind::priority, d));
        worse = less(terms, s.of(Kind::priority, d), s.of(Kind::priority, e));
        break;
      case ElectionKey::tenure:  // 4.4.b
        better = s.senior(d, e);
        worse = s.senior(e, d);
        break;
      case ElectionKey::number:  // 4.4.c: lower wins
        better = less(terms, s.of(Kind::number, d), s.of(Kind::number, e));
        worse = less(terms, s.of(Kind::number, e), s.of(Kind::number, d));
        break;
    }
    outcome = terms.either(better, terms.both(!worse, outcome));
  }
  return outcome;
}

namespace {

/// One pass over a state: the terms that its rules share.
class Decision {
 public:
  Decision(Terms& terms, const SymbolicState& s, const Derived& derived)
      : terms_(terms), s_(s), derived_(derived), space_(s.space()) {}

  Pass decide() {
    for_each_device(space_, [&](DeviceId d) { look_at(d); });
    Pass pass;
    pass.chosen = best_of(candidates());
    std::vector<Term> winners;
    for_each_device(space_,
                    [&](DeviceId d) { winners.push_back(terms_.both(leading_[d.value], pass.chosen[d.value])); });
    for_each_device(space_, [&](DeviceId d) { follows_winner_.push_back(follows_one_of(d, winners)); });
    std::vector<Term> unsettled;
    for_each_device(space_, [&](DeviceId d) {
      pass.yields.push_back(yields(d));
      pass.restarts.push_back(terms_.both(!pass.yields.back(), loses(d)));
      unsettled.push_back(pass.yields.back());
      unsettled.push_back(pass.restarts.back());
    });
    pass.unsettled = terms_.any(unsettled);
    return pass;
  }

 private:
  void look_at(DeviceId d) {
    fresh_.push_back(fresh(terms_, s_, d));
    not_fresh_.push_back(admitted(terms_, s_, d));
    leading_.push_back(terms_.both(s_.up(d), s_.leads(d)));
  }

  // One of `which` is in d's class.
  Term present(DeviceId d, const std::vector<Term>& which) {
    std::vector<Term> cases;
    for_each_device(space_, [&](DeviceId e) { cases.push_back(terms_.both(derived_.together(d, e), which[e.value])); });
    return terms_.any(cases);
  }

  // d follows one of `whom`, which is in d's class.
  Term follows_one_of(DeviceId d, const std::vector<Term>& whom) {
    std::vector<Term> cases;
    for_each_device(space_, [&](DeviceId leader) {
      cases.push_back(terms_.all({s_.leader_is(d, leader), derived_.together(d, leader), whom[leader.value]}));
    });
    return terms_.any(cases);
  }

  // Per device: a candidate that outranks every other candidate of its class.
  std::vector<Term> best_of(const std::vector<Term>& candidates) {
    std::vector<Term> best;
    for_each_device(space_, [&](DeviceId d) {
      std::vector<Term> demands{candidates[d.value]};
      for_each_device(space_, [&](DeviceId e) {
        if (e == d || candidates[e.value] == never) return;
        const Term rival = terms_.both(derived_.together(d, e), candidates[e.value]);
        demands.push_back(terms_.implies(rival, outranks(terms_, s_, d, e)));
      });
      best.push_back(terms_.all(demands));
    });
    return best;
  }

  // The leaders (4.2.c) or, where none is present, who stands for election (4.2.a, 4.2.b): of orphans one is elected
  // only where the platform carries on; a class that is all fresh elects from all.
  std::vector<Term> candidates() {
    std::vector<Term> who;
    for_each_device(space_, [&](DeviceId d) {
      leader_present_.push_back(present(d, leading_));
      const Term all_fresh = terms_.both(fresh_[d.value], !present(d, not_fresh_));
      const bool carry_on = space_.platform().orphans == Orphans::carry_on;
      const Term stands = carry_on ? terms_.either(not_fresh_[d.value], all_fresh) : all_fresh;
      who.push_back(terms_.either(leading_[d.value], terms_.both(!leader_present_.back(), stands)));
    });
    return who;
  }

  // 4.1, of one other device e of K with the same number.
  Term yields_to(DeviceId d, DeviceId e, Term leader_of_e_is_here) {
    const Term as_fresh = terms_.both(fresh_[d.value], terms_.either(not_fresh_[e.value],           // 4.1.a
                                                                     outranks(terms_, s_, e, d)));  // 4.1.b
    const Term same_leader = equal(terms_, s_.of(Kind::leader, d), s_.of(Kind::leader, e));
    // 4.1.c where d's leader is in K, 4.1.d where it is not; 4.1.e else
    const Term as_loser = terms_.all(
        {not_fresh_[d.value], not_fresh_[e.value], !same_leader, leader_of_e_is_here, !follows_winner_[d.value]});
    return terms_.either(as_fresh, as_loser);
  }

  // 4.1: "A device d in K yields when some other e in K has the same number and …"
  Term yields(DeviceId d) {
    const std::vector<Term> anyone(space_.devices(), always);
    std::vector<Term> cases;
    for_each_device(space_, [&](DeviceId e) {
      if (e == d) return;
      const Term same_number = equal(terms_, s_.of(Kind::number, d), s_.of(Kind::number, e));
      const Term rivals = terms_.both(derived_.together(d, e), same_number);
      if (rivals == never) return;
      cases.push_back(terms_.both(rivals, yields_to(d, e, follows_one_of(e, anyone))));
    });
    return terms_.any(cases);
  }

  // 4.2.d; 4.2.a where the platform says `orphans: restart`
  Term loses(DeviceId d) {
    const bool restart = space_.platform().orphans == Orphans::restart;
    const Term present = leader_present_[d.value];
    const Term in_question = restart ? always : present;
    return terms_.all({not_fresh_[d.value], in_question, !terms_.both(present, follows_winner_[d.value])});
  }

  Terms& terms_;
  const SymbolicState& s_;
  const Derived& derived_;
  const Space& space_;
  std::vector<Term> fresh_, not_fresh_, leading_, leader_present_, follows_winner_;  ///< per device
};

}  // namespace

Pass plan_pass(Terms& terms, const SymbolicState& s, const Derived& derived) {
  return Decision(terms, s, derived).decide();
}

SymbolicState carry_out(Terms& terms, const SymbolicState& s, const Derived& derived, const Pass& pass) {
  const Space& space = s.space();
  SymbolicState after = s;
  for_each_device(space, [&](DeviceId d) {
    const Term yields = pass.yields[d.value];
    const Term restarts = pass.restarts[d.value];
    Value& power = after.of(Kind::power, d);
    power = choose(terms, yields, Value(static_cast<std::int64_t>(Power::held)), power);
    power = choose(terms, restarts, Value(static_cast<std::int64_t>(Power::starting)), power);
    // Whoever stays follows the one that was chosen in its class; fresh devices among orphans that restart wait.
    const Term stays = terms.all({s.up(d), !yields, !restarts});
    std::vector<Value::Case> leaders;
    std::vector<Term> any;
    for_each_device(space, [&](DeviceId leader) {
      leaders.push_back({leader.value, terms.all({stays, derived.together(d, leader), pass.chosen[leader.value]})});
      any.push_back(leaders.back().holds);
    });
    leaders.insert(leaders.begin(), {nobody, !terms.any(any)});
    Value& leader = after.of(Kind::leader, d);
    leader = choose(terms, s.up(d), Value(std::move(leaders)), leader);
  });
  for_each_device(space, [&](DeviceId d) {
    for_each_device(space, [&](DeviceId e) {
      if (d == e) return;
      Value& senior = after[space.senior(d, e)];
      senior = value_of(terms.all({senior.is(1), !pass.restarts[d.value], !pass.restarts[e.value]}));
    });
  });
  return after;
}

Term settled(Terms& terms, const SymbolicState& s, const Derived& derived) {
  const Space& space = s.space();
  std::vector<Term> demands;
  for_each_device(space, [&](DeviceId d) {
    std::vector<Term> leaders;
    for_each_device(space, [&](DeviceId leader) {
      leaders.push_back(terms.both(s.leader_is(d, leader), derived.together(d, leader)));
    });
    demands.push_back(terms.implies(s.up(d), terms.any(leaders)));
  });
  for (std::uint32_t c = 0; c < space.cables(); ++c) {
    const Value& a = s.of(Kind::leader, space.device_a(CableId(c)));
    const Value& b = s.of(Kind::leader, space.device_b(CableId(c)));
    demands.push_back(terms.implies(derived.linked[c], equal(terms, a, b)));
  }
  return terms.all(demands);
}

bool Settling::bounded() const {
  return end_derived.links_only_vanish &&
         std::all_of(stages.begin(), stages.end(), [](const Stage& stage) { return stage.derived.links_only_vanish; });
}

int passes_enough(const Platform& platform) {
  const bool one_is_enough =
      platform.orphans == Orphans::carry_on && platform.side_leads_to != SideLeadsTo::one_neighbour;
  return one_is_enough ? 2 : 3;
}

Settling settle(Terms& terms, SymbolicState s, int passes) {
  std::vector<Stage> stages;
  Term unfinished = never;
  for (int i = 0; i < passes; ++i) {
    Derived derived = derive(terms, s);
    Pass pass = plan_pass(terms, s, derived);
    SymbolicState after = carry_out(terms, s, derived, pass);
    unfinished = pass.unsettled;
    const bool at_end = after == s;
    stages.push_back({std::move(s), std::move(derived), std::move(pass)});
    s = std::move(after);
    if (at_end) break;
  }
  Derived end_derived = stages.back().derived;  // a pass that is not unsettled touches nothing that it follows from
  return {std::move(stages), std::move(s), std::move(end_derived), unfinished};
}

Settling settle_to_the_end(Terms& terms, SymbolicState s) {
  const int passes = static_cast<int>(s.space().devices()) + 2;
  return settle(terms, std::move(s), passes);
}

}  // namespace cairn::system

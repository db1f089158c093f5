#include "aged_otherwise.hpp"

#include <fmt/format.h>

#include <utility>

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;
using system::Value;
using system::VariableId;
using Kind = system::Variable::Kind;

namespace {

constexpr DeviceId newcomer{0};

SymbolicState pass_over(Terms& terms, const SymbolicState& s) {
  const system::Derived derived = derive(terms, s);
  return carry_out(terms, s, derived, plan_pass(terms, s, derived));
}

SymbolicState after_start(Terms& terms, const SymbolicState& before, Term late) {
  SymbolicState after = before;
  after.set_power(newcomer, Power::up);
  after.of(Kind::leader, newcomer) = choose(terms, late, Value(newcomer.value), Value(system::nobody));
  become_junior(terms, after, newcomer);
  return after;
}

SymbolicState after_failures(Terms& terms, const SymbolicState& before, const std::vector<Term>& goes_down) {
  SymbolicState after = before;
  for_each_device(before.space(), [&](DeviceId d) {
    SymbolicState down = after;
    go_down(down, d, Power::starting);
    for (VariableId v = 0; v < before.space().size(); ++v) {
      if (down[v] != after[v]) after[v] = choose(terms, goes_down[d.value], down[v], after[v]);
    }
  });
  return after;
}

}  // namespace

std::vector<Term> contestants(Terms& terms, const SymbolicState& s) {
  std::vector<Term> who;
  for_each_device(s.space(),
                  [&](DeviceId d) { who.push_back(terms.both(s.up(d), terms.either(s.leads(d), s.leaderless(d)))); });
  return who;
}

SymbolicState with_seniority_of(SymbolicState s, const SymbolicState& other) {
  for (VariableId v = 0; v < s.space().size(); ++v) {
    if (s.space()[v].kind == Kind::senior) s[v] = other[v];
  }
  return s;
}

TwoOrders TwoOrders::after_pass(Terms& terms) const {
  return {pass_over(terms, first), pass_over(terms, second)};
}

Term TwoOrders::same_pass(Terms& terms) const {
  const system::Pass a = plan_pass(terms, first, derive(terms, first));
  const system::Pass b = plan_pass(terms, second, derive(terms, second));
  std::vector<Term> demands;
  for_each_device(first.space(), [&](DeviceId d) {
    demands.push_back(terms.same(a.yields[d.value], b.yields[d.value]));
    demands.push_back(terms.same(a.restarts[d.value], b.restarts[d.value]));
  });
  return terms.all(demands);
}

Term TwoOrders::same_but_for_seniority(Terms& terms) const {
  std::vector<Term> demands;
  for (VariableId v = 0; v < first.space().size(); ++v) {
    if (first.space()[v].kind != Kind::senior) demands.push_back(equal(terms, first[v], second[v]));
  }
  return terms.all(demands);
}

Term TwoOrders::same_among(Terms& terms, const std::vector<Term>& who) const {
  std::vector<Term> demands;
  for_each_device(first.space(), [&](DeviceId d) {
    for_each_device(first.space(), [&](DeviceId e) {
      if (e == d) return;
      const Term both = terms.both(who[d.value], who[e.value]);
      demands.push_back(terms.implies(both, terms.same(first.senior(d, e), second.senior(d, e))));
    });
  });
  return terms.all(demands);
}

Given another_order(Terms& terms, const TwoOrders& two, const system::FreeState& other) {
  return {"A second state has an order of seniority of its own (marked '), and is the same else.",
          terms.both(other.typing, law(terms, two.second, system::Law::seniority))};
}

AnyEvent::AnyEvent(Terms& terms, const system::Space& space)
    : comes_up_(terms.variable("d1 comes up")), late_(terms.variable("d1 comes up late")) {
  for_each_device(space, [&](DeviceId d) {
    goes_down_.push_back(terms.variable(fmt::format("{} goes down", space.model()[d].name)));
  });
}

SymbolicState AnyEvent::take(Terms& terms, const SymbolicState& before, const SymbolicState& other) const {
  const SymbolicState started = after_start(terms, before, late_);
  SymbolicState after = after_failures(terms, before, goes_down_);
  for (VariableId v = 0; v < before.space().size(); ++v) {
    const Kind kind = before.space()[v].kind;
    const bool free = kind == Kind::plugged || kind == Kind::number || kind == Kind::priority;
    after[v] = free ? other[v] : choose(terms, comes_up_, started[v], after[v]);
  }
  return after;
}

Given AnyEvent::is_possible(Terms& terms, const SymbolicState& before) const {
  return {"d1 comes up only when it is starting.",
          terms.implies(comes_up_, before.power_is(newcomer, Power::starting))};
}

Given AnyEvent::one_at_a_time(Terms& terms, const SymbolicState& before, const SymbolicState& after) const {
  const system::Space& space = before.space();
  const system::Derived then = derive(terms, before);
  const system::Derived now = derive(terms, after);
  std::vector<Term> demands;
  for (std::uint32_t c = 0; c < space.cables(); ++c) {
    if (space.device_a(CableId(c)) == newcomer || space.device_b(CableId(c)) == newcomer) continue;
    demands.push_back(terms.implies(now.linked[c], then.linked[c]));
  }
  return {"Where d1 comes up, the links that form are those of d1.", terms.implies(comes_up_, terms.all(demands)),
          "one-at-a-time"};
}

Given AnyEvent::leaves_no_orphans(Terms& terms, const SymbolicState& before, const SymbolicState& after) const {
  const system::Derived then = derive(terms, before);
  system::Derived kept = derive_links(terms, after);
  for_each_device(before.space(), [&](DeviceId d) {
    for_each_device(before.space(), [&](DeviceId e) { kept.set_together(d, e, d == e ? after.up(d) : system::never); });
  });
  for (std::uint32_t c = 0; c < before.space().cables(); ++c) {
    const Term stays = terms.both(then.linked[c], kept.linked[c]);
    kept.set_together(before.space().device_a(CableId(c)), before.space().device_b(CableId(c)), stays);
  }
  close_together(terms, before.space(), kept);
  std::vector<Term> demands;
  for_each_device(before.space(), [&](DeviceId d) {
    demands.push_back(terms.implies(admitted(terms, after, d), with_its_leader(terms, after, kept, d)));
  });
  return {"Whoever followed another and is still up is together with it, by links that were there before.",
          terms.all(demands), "no-orphans"};
}

}  // namespace cairn::proofs

// proofs/settled-states.md
#include "any_state.hpp"

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

constexpr const char* page = "settled-states.md";

Term same_state(Terms& terms, const SymbolicState& s, const SymbolicState& t) {
  std::vector<Term> demands;
  for (system::VariableId v = 0; v < s.space().size(); ++v) demands.push_back(equal(terms, s[v], t[v]));
  return terms.all(demands);
}

// Each class follows one leader, which is one of the class and leads itself.
Term follows_one_inside(Terms& terms, const SymbolicState& s, const system::Derived& derived) {
  std::vector<Term> demands;
  for_each_device(s.space(), [&](DeviceId d) {
    std::vector<Term> leaders;
    for_each_device(s.space(), [&](DeviceId leader) {
      leaders.push_back(terms.all({s.leader_is(d, leader), derived.together(d, leader), s.leads(leader)}));
    });
    demands.push_back(terms.implies(s.up(d), terms.any(leaders)));
    for_each_device(s.space(), [&](DeviceId e) {
      if (e <= d) return;
      const Term same_leader =
          equal(terms, s.of(system::Variable::Kind::leader, d), s.of(system::Variable::Kind::leader, e));
      demands.push_back(terms.implies(derived.together(d, e), same_leader));
    });
  });
  return terms.all(demands);
}

void shape(const Questions& questions) {
  AnyStack stack(questions.devices(), {});
  Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const system::Derived derived = derive(terms, any.state);
  const Term told = settled(terms, any.state, derived);
  questions.ask(terms,
                {"settled-states.shape",
                 page,
                 {a_state(terms, any)},
                 {"what the formulas call settled is that each class follows one leader, which is one of the class and "
                  "leads itself.",
                  terms.same(told, follows_one_inside(terms, any.state, derived))}});
}

void passes(const Questions& questions, Orphans orphans) {
  AnyStack stack(questions.devices(), {.orphans = orphans});
  Terms& terms = stack.terms;
  const system::FreeState before = stack.any();
  const system::Derived derived = derive(terms, before.state);
  const system::Pass pass = plan_pass(terms, before.state, derived);
  const SymbolicState after = carry_out(terms, before.state, derived, pass);
  const Given given = a_state(terms, before);
  const Term settled_after = settled(terms, after, derive(terms, after));
  const Given quiet{"The pass holds and restarts no one.", !pass.unsettled, "quiet-pass"};
  questions.ask(terms, {"settled-states." + stack.variant + ".arrives",
                        page,
                        {given, quiet},
                        {"the pass leaves a settled state.", settled_after}});
  const Given settled_before{"The state is settled.", settled(terms, before.state, derived), "settled"};
  questions.ask(terms, {"settled-states." + stack.variant + ".stays",
                        page,
                        {given, settled_before},
                        {"a pass holds and restarts no one and changes nothing.",
                         terms.both(!pass.unsettled, same_state(terms, before.state, after))}});
}

}  // namespace

void settled_states(const Questions& questions) {
  shape(questions);
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) passes(questions, orphans);
}

}  // namespace cairn::proofs

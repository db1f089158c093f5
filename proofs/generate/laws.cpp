// proofs/laws.md
#include <fmt/format.h>

#include <array>

#include "any_state.hpp"
#include "system/events.hpp"
#include "system/properties.hpp"

namespace cairn::proofs {

using system::Law;
using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

constexpr const char* page = "laws.md";

struct Told {
  Law law;
  const char* name;
  const char* says;
};
constexpr std::array<Told, system::law_count> told = {{
    {Law::leaders, "leaders", "Only a device that is up has a leader."},
    {Law::seniority, "seniority",
     "Seniority is a strict weak order among the devices that are up or held, and no other has a part in it."},
    {Law::plugs, "plugs", "Of the cables of a port at most one is plugged."},
}};

// That the law applies after whatever may happen in `s`.
Term lasts(Terms& terms, const SymbolicState& s, Law which) {
  const system::Derived derived = derive(terms, s);
  std::vector<Term> demands;
  for (const Event& event : events_of(s.space())) {
    const Term after = law(terms, take(terms, s, derived, event), which);
    demands.push_back(terms.implies(may_happen(terms, s, derived, event), after));
  }
  demands.push_back(law(terms, cold_start(terms, s), which));
  demands.push_back(law(terms, carry_out(terms, s, derived, plan_pass(terms, s, derived)), which));
  return terms.all(demands);
}

// A start that completes and leaves seniority as it was.
void without_last_place(const Questions& questions, AnyStack& stack, const system::FreeState& any) {
  Terms& terms = stack.terms;
  const DeviceId x(0);
  const Event start{Event::Kind::started, x.value};
  const system::Derived derived = derive(terms, any.state);
  SymbolicState after = take(terms, any.state, derived, start);
  for_each_device(stack.space, [&](DeviceId e) {
    if (e == x) return;
    for (const system::VariableId v : {stack.space.senior(x, e), stack.space.senior(e, x)}) after[v] = any.state[v];
  });
  questions.show(
      terms, "laws.seniority.restart.without-last-place", page,
      "The lemma, with a start that does not put the device behind all others. There is such a state: the newcomer "
      "would be as old as the oldest and as young as the youngest.",
      {a_state(terms, any), {"d1 may complete its start.", may_happen(terms, any.state, derived, start)}},
      {"After a start that leaves seniority as it was, seniority is no strict weak order.",
       !law(terms, after, Law::seniority)});
}

}  // namespace

void laws(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    AnyStack stack(questions.devices(), {.orphans = orphans, .all_events = true});
    Terms& terms = stack.terms;
    const system::FreeState any = stack.any();
    for (const auto& [which, name, says] : told) {
      questions.ask(terms, {fmt::format("laws.{}.{}", name, stack.variant),
                            page,
                            {{"Every variable has one value.", any.typing},
                             {fmt::format("Before: {}", says), law(terms, any.state, which), "law"}},
                            {"the same after every event that may happen, after a cold start, and after a pass.",
                             lasts(terms, any.state, which)}});
    }
    if (orphans == Orphans::restart) without_last_place(questions, stack, any);
  }
}

}  // namespace cairn::proofs

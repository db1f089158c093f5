// proofs/quiet-events.md
#include "any_state.hpp"

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;

namespace {

constexpr const char* page = "quiet-events.md";

// Two states with the same devices up, led and linked alike; all else may differ.
void same_stacks(const Questions& questions, Orphans orphans) {
  AnyStack stack(questions.devices(), {.orphans = orphans, .free_ports = true});
  Terms& terms = stack.terms;
  const system::FreeState before = stack.any();
  const system::FreeState after = stack.any("'");
  const system::Derived derived_before = derive(terms, before.state);
  const system::Derived derived_after = derive(terms, after.state);

  std::vector<Term> devices;
  for_each_device(stack.space,
                  [&](DeviceId d) { devices.push_back(same_power_and_leader(terms, before.state, after.state, d)); });
  std::vector<Term> links;
  for (std::uint32_t c = 0; c < stack.space.cables(); ++c) {
    links.push_back(terms.same(derived_before.linked[c], derived_after.linked[c]));
  }
  const system::Pass pass = plan_pass(terms, after.state, derived_after);
  const SymbolicState next = carry_out(terms, after.state, derived_after, pass);
  std::vector<Term> unchanged{!pass.unsettled};
  for_each_device(stack.space,
                  [&](DeviceId d) { unchanged.push_back(same_power_and_leader(terms, after.state, next, d)); });

  questions.ask(
      terms,
      {"quiet-events." + stack.variant,
       page,
       {a_state(terms, before),
        {"After the event (marked ') every variable has one value again.", after.typing},
        is_settled(terms, before.state, "settled"),
        {"The event changes neither the power nor the leader of any device.", terms.all(devices), "same-devices"},
        {"The event changes no link.", terms.all(links), "same-links"}},
       {"a pass after the event holds and restarts no one and changes no leader.", terms.all(unchanged)}});
}

}  // namespace

void quiet_events(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) same_stacks(questions, orphans);
}

}  // namespace cairn::proofs

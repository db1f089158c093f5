// proofs/few-passes.md
#include "any_state.hpp"

namespace cairn::proofs {

using system::Settling;
using system::Term;

namespace {

constexpr const char* page = "few-passes.md";

// A link is there after a pass exactly where it was and both its devices stayed up.
void links_follow_power(const Questions& questions, SideLeadsTo side_leads_to) {
  AnyStack stack(questions.devices(), {.side_leads_to = side_leads_to, .free_ports = true});
  system::Terms& terms = stack.terms;
  const system::FreeState before = stack.any();
  const system::Derived derived = derive(terms, before.state);
  const system::SymbolicState after = carry_out(terms, before.state, derived, plan_pass(terms, before.state, derived));
  const system::Derived derived_after = derive(terms, after);
  std::vector<Term> alike;
  for (std::uint32_t c = 0; c < stack.space.cables(); ++c) {
    const Term both_up =
        terms.both(after.up(stack.space.device_a(CableId(c))), after.up(stack.space.device_b(CableId(c))));
    alike.push_back(terms.same(derived_after.linked[c], terms.both(derived.linked[c], both_up)));
  }
  const system::Assertion claim{
      "after a pass a link is there exactly where it was before and both its devices are still up.", terms.all(alike)};
  const Given given = a_state(terms, before);
  if (side_leads_to == SideLeadsTo::any) return questions.ask(terms, {"few-passes.links", page, {given}, claim});
  questions.show(
      terms, "few-passes.links.without-any", page,
      "The lemma on links, with \"side-leads-to: any\" left out. There is such a state: where a side leads to one "
      "neighbour, a restart can form a link.",
      {given}, {"This is false: " + claim.says, !claim.term});
}

void bound(const Questions& questions, Orphans orphans) {
  AnyStack stack(questions.devices(), {.orphans = orphans});
  const std::string name = "few-passes." + stack.variant;
  system::Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const Settling settling = settle(terms, any.state, system::passes_enough(stack.model.platform));
  const Given given = a_state(terms, any);
  const Term done = terms.both(!settling.unfinished, settled(terms, settling.end, settling.end_derived));
  questions.ask(
      terms,
      {name, page, {given}, {"the last of the passes held and restarted no one, and left a settled state.", done}});

  std::vector<Term> unsettled;
  for (std::size_t i = 0; i + 1 < settling.stages.size(); ++i) unsettled.push_back(settling.stages[i].pass.unsettled);
  questions.show(terms, name + ".reached", page,
                 "That all passes but the last are unsettled. There is such a state: one pass less would be too few.",
                 {given}, {"Every pass but the last held or restarted a device.", terms.all(unsettled)});
}

// As many passes as are enough elsewhere, where a side leads to one neighbour.
void too_few(const Questions& questions, Orphans orphans) {
  if (orphans == Orphans::restart && questions.devices() < 4) return;  // three devices are too few for it
  AnyStack stack(questions.devices(),
                 {.orphans = orphans, .side_leads_to = SideLeadsTo::one_neighbour, .free_ports = true});
  system::Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const Settling settling = settle(terms, any.state, orphans == Orphans::carry_on ? 2 : 3);
  questions.show(
      terms, "few-passes." + stack.variant + ".without-any", page,
      "The lemma, with \"side-leads-to: any\" left out. There is such a state: where a side leads to one neighbour, a "
      "restart can form a link, and settling goes on.",
      {a_state(terms, any)}, {"The last of the passes held or restarted a device.", settling.unfinished});
}

}  // namespace

void few_passes(const Questions& questions) {
  links_follow_power(questions, SideLeadsTo::any);
  links_follow_power(questions, SideLeadsTo::one_neighbour);
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    bound(questions, orphans);
    too_few(questions, orphans);
  }
}

}  // namespace cairn::proofs

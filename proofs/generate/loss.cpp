// proofs/loss.md
#include "any_state.hpp"

#include <fmt/format.h>

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;
using Kind = system::Variable::Kind;

namespace {

constexpr const char* page = "loss.md";

// `s` after any cables have broken and any devices have gone down, whatever the numbers have become.
SymbolicState after_loss(AnyStack& stack, const SymbolicState& s, const SymbolicState& other) {
  Terms& terms = stack.terms;
  SymbolicState after = s;
  for (std::uint32_t c = 0; c < stack.space.cables(); ++c) {
    const Term breaks = terms.variable(fmt::format("{} breaks", stack.model[CableId(c)].name));
    after[stack.space.broken(CableId(c))] = system::value_of(breaks);
  }
  for_each_device(stack.space, [&](DeviceId d) {
    const Term fails = terms.variable(fmt::format("{} goes down", stack.model[d].name));
    after.of(Kind::power, d) =
        choose(terms, fails, system::Value(static_cast<std::int64_t>(Power::starting)), s.of(Kind::power, d));
    after.of(Kind::leader, d) = choose(terms, fails, system::Value(system::nobody), s.of(Kind::leader, d));
    after.of(Kind::number, d) = other.of(Kind::number, d);
  });
  return after;
}

// What the lemma says of one device: nobody is held; who is together with its leader stays and goes on following it;
// who is cut off restarts where orphans restart, and else does not.
Term as_told(Terms& terms, const system::Settling& settling, DeviceId d, Orphans orphans) {
  const system::Stage& first = settling.stages[0];
  const Term up = first.state.up(d);
  const Term kept = with_its_leader(terms, first.state, first.derived, d);
  const Term cut_off = terms.both(up, !kept);
  const Term restarts = orphans == Orphans::restart ? cut_off : system::never;
  return terms.all({!first.pass.yields[d.value], terms.same(first.pass.restarts[d.value], restarts),
                    terms.implies(kept, same_power_and_leader(terms, first.state, settling.end, d))});
}

std::string claim_of(Orphans orphans) {
  std::string claim =
      "the next pass holds no one; whoever is together with its leader goes on following it; whoever is not ";
  claim += orphans == Orphans::restart ? "restarts, and no one else does" : "does not restart, nor does anyone else";
  return claim + "; and all is settled after two passes.";
}

}  // namespace

void loss(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    AnyStack stack(questions.devices(), {.orphans = orphans});
    Terms& terms = stack.terms;
    const std::string name = "loss." + stack.variant;
    const system::FreeState before = stack.any();
    const system::FreeState other = stack.any("'");
    const std::vector<Given> given{a_state(terms, before),
                                   {"The numbers after the loss, marked ', may be any.", other.typing},
                                   is_settled(terms, before.state, "settled")};
    SymbolicState lost = after_loss(stack, before.state, other.state);
    const system::Settling settling = settle(terms, lost, 2);
    std::vector<Term> demands{settled(terms, settling.end, settling.end_derived)};
    for_each_device(stack.space, [&](DeviceId d) { demands.push_back(as_told(terms, settling, d, orphans)); });
    questions.ask(terms, {name, page, given, {claim_of(orphans), terms.all(demands)}});

    if (orphans == Orphans::restart) {
      questions.show(terms, name + ".reached", page,
                     "That a loss makes a device restart. There is such a state: where orphans restart, \"restarts and "
                     "holds no one\" "
                     "would be false.",
                     given, {"A device restarts.", terms.any(settling.stages[0].pass.restarts)});
    }
    for (std::uint32_t c = 0; c < stack.space.cables(); ++c) {
      const system::VariableId plugged = stack.space.plugged(CableId(c));
      lost[plugged] = other.state[plugged];
    }
    const system::Derived derived = derive(terms, lost);
    const system::Pass pass = plan_pass(terms, lost, derived);
    std::vector<Term> cases;
    for_each_device(stack.space, [&](DeviceId d) {
      const Term kept = with_its_leader(terms, lost, derived, d);
      cases.push_back(terms.either(pass.yields[d.value], terms.both(pass.restarts[d.value], kept)));
    });
    questions.show(
        terms, name + ".without-only-loss", page,
        "The lemma, where cables may also be plugged. There is such a state: a link that forms can bring leaders "
        "together.",
        given, {"A device is held, or restarts while it is together with its leader.", terms.any(cases)});
  }
}

}  // namespace cairn::proofs

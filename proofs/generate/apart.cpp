// proofs/apart.md
#include <fmt/format.h>

#include "any_state.hpp"
#include "system/events.hpp"
#include "system/steps.hpp"

namespace cairn::proofs {

using system::Derived;
using system::SymbolicState;
using system::Term;
using system::Terms;
using system::VariableId;
using Kind = system::Variable::Kind;

namespace {

constexpr const char* page = "apart.md";

/// The devices on two sides, which may be any.
class Sides {
 public:
  explicit Sides(AnyStack& stack) : terms_(stack.terms), space_(stack.space) {
    for_each_device(space_, [&](DeviceId d) {
      here_.push_back(terms_.variable(fmt::format("{} is on this side", stack.model[d].name)));
    });
  }

  [[nodiscard]] Term here(DeviceId d) const { return here_[d.value]; }

  /// Each side as in a state of its own. What is about the procedure is as for this side, what is between the sides as
  /// for the other.
  SymbolicState joined(const SymbolicState& this_side, const SymbolicState& other_side) {
    SymbolicState s = other_side;
    for (VariableId v = 0; v < space_.size(); ++v) {
      s[v] = of_procedure(v) ? this_side[v] : choose(terms_, inside(v), this_side[v], other_side[v]);
    }
    return s;
  }

  Term nothing_between(const SymbolicState& s) {
    std::vector<Term> demands;
    for (std::uint32_t i = 0; i < space_.cables(); ++i) {
      const CableId c(i);
      const Term across = terms_.differ(here(space_.device_a(c)), here(space_.device_b(c)));
      demands.push_back(terms_.implies(across, !s.plugged(c)));
    }
    return terms_.all(demands);
  }

  /// What has to do with the event is on this side.
  Term is_here(const Event& event) {
    const auto both_ends = [&](CableId c) { return terms_.both(here(space_.device_a(c)), here(space_.device_b(c))); };
    switch (event.kind) {
      case Event::Kind::step:
      case Event::Kind::omitted: {
        const Step& step =
            space_.model()[event.step()];  // of its verb's device, port and cable; AnyStack has all three
        return terms_.both(here(step.device), both_ends(step.cable));
      }
      case Event::Kind::broke:
      case Event::Kind::mended:
        return both_ends(event.cable());
      default:
        return here(event.device());
    }
  }

  /// An event of this side may happen in both states or in neither, is refused in both or in neither, does the same to
  /// this side and the procedure, and nothing to the other side.
  Term same_event(const SymbolicState& s, const SymbolicState& t, const Event& event) {
    const Derived in_s = derive(terms_, s);
    const Derived in_t = derive(terms_, t);
    const Term may = may_happen(terms_, s, in_s, event);
    const SymbolicState after = take(terms_, s, in_s, event);
    std::vector<Term> demands{terms_.same(may, may_happen(terms_, t, in_t, event))};
    if (event.kind == Event::Kind::step) {
      demands.push_back(terms_.same(refused(terms_, s, in_s, event.step()), refused(terms_, t, in_t, event.step())));
    }
    const Term effect = terms_.both(same(after, take(terms_, t, in_t, event)), untouched_elsewhere(s, after));
    demands.push_back(terms_.implies(may, effect));
    return terms_.implies(is_here(event), terms_.all(demands));
  }

  /// A pass decides the same of this side in both states.
  Term same_pass(const SymbolicState& s, const SymbolicState& t) {
    const Derived in_s = derive(terms_, s);
    const Derived in_t = derive(terms_, t);
    const system::Pass of_s = plan_pass(terms_, s, in_s);
    const system::Pass of_t = plan_pass(terms_, t, in_t);
    std::vector<Term> demands{same(carry_out(terms_, s, in_s, of_s), carry_out(terms_, t, in_t, of_t))};
    for_each_device(space_, [&](DeviceId d) {
      demands.push_back(
          terms_.implies(here(d), terms_.both(terms_.same(of_s.yields[d.value], of_t.yields[d.value]),
                                              terms_.same(of_s.restarts[d.value], of_t.restarts[d.value]))));
    });
    return terms_.all(demands);
  }

  /// Every variable of this side, and of the procedure, is equal.
  Term same(const SymbolicState& s, const SymbolicState& t) {
    std::vector<Term> demands;
    for (VariableId v = 0; v < space_.size(); ++v) {
      const Term counts = of_procedure(v) ? system::always : inside(v);
      demands.push_back(terms_.implies(counts, equal(terms_, s[v], t[v])));
    }
    return terms_.all(demands);
  }

  /// All is equal but who of two devices on different sides is senior.
  Term same_on_each(const SymbolicState& s, const SymbolicState& t) {
    std::vector<Term> demands;
    for (VariableId v = 0; v < space_.size(); ++v) {
      const Term counts = space_[v].kind == Kind::senior ? one_side(v) : system::always;
      demands.push_back(terms_.implies(counts, equal(terms_, s[v], t[v])));
    }
    return terms_.all(demands);
  }

 private:
  [[nodiscard]] bool of_procedure(VariableId v) const {
    const Kind kind = space_[v].kind;
    return kind == Kind::done || kind == Kind::left || kind == Kind::halted;
  }

  // Of two devices: that they are on one side.
  Term one_side(VariableId v) { return terms_.same(here(DeviceId(space_[v].place)), here(DeviceId(space_[v].other))); }

  Term untouched_elsewhere(const SymbolicState& before, const SymbolicState& after) {
    std::vector<Term> demands;
    for (VariableId v = 0; v < space_.size(); ++v) {
      if (of_procedure(v)) continue;
      const Term elsewhere = space_[v].kind == Kind::senior ? terms_.both(!inside(v), one_side(v)) : !inside(v);
      demands.push_back(terms_.implies(elsewhere, equal(terms_, before[v], after[v])));
    }
    return terms_.all(demands);
  }

  // What the variable is about is on this side.
  Term inside(VariableId v) {
    const system::Variable& variable = space_[v];
    switch (variable.kind) {
      case Kind::senior:
        return terms_.both(here(DeviceId(variable.place)), here(DeviceId(variable.other)));
      case Kind::plugged:
      case Kind::broken: {
        const CableId c(variable.place);
        return terms_.both(here(space_.device_a(c)), here(space_.device_b(c)));
      }
      case Kind::enabled:
      case Kind::startup_enabled:
      case Kind::side:
      case Kind::startup_side:
      case Kind::operational_side:
        return here(space_.model()[PortId(variable.place)].device);
      default:
        return here(DeviceId(variable.place));
    }
  }

  Terms& terms_;
  const system::Space& space_;
  std::vector<Term> here_;
};

std::vector<Given> two_states(Terms& terms, Sides& sides, const system::FreeState& any,
                              const system::FreeState& second) {
  return {
      a_state(terms, any),
      {"A second state is the same on this side, and any on the other side (marked ').", a_state(terms, second).term},
      {"In neither state a cable is plugged between the sides.",
       terms.both(sides.nothing_between(any.state), sides.nothing_between(second.state)), "nothing-between"}};
}

// A pass looks at each side alone.
void passes(const Questions& questions, Orphans orphans) {
  AnyStack stack(questions.devices(), {.orphans = orphans});
  Terms& terms = stack.terms;
  Sides sides(stack);
  const system::FreeState any = stack.any();
  const system::FreeState other = stack.any("'");
  const system::FreeState second{sides.joined(any.state, other.state), other.typing, {}};
  questions.ask(terms, {"apart.passes." + stack.variant,
                        page,
                        two_states(terms, sides, any, second),
                        {"a pass holds and restarts the same devices of this side in both, and leaves this side the "
                         "same.",
                         sides.same_pass(any.state, second.state)}});
}

// An event looks at its side alone, and touches nothing else.
void events(const Questions& questions) {
  AnyStack stack(questions.devices(), {.free_ports = true, .all_events = true});
  Terms& terms = stack.terms;
  Sides sides(stack);
  const system::FreeState any = stack.any();
  const system::FreeState other = stack.any("'");
  const system::FreeState second{sides.joined(any.state, other.state), other.typing, {}};
  std::vector<Term> demands;
  for (const Event& event : events_of(stack.space)) {
    demands.push_back(sides.same_event(any.state, second.state, event));
  }
  questions.ask(terms, {"apart.events",
                        page,
                        two_states(terms, sides, any, second),
                        {"an event of this side may happen in both or in neither, and is refused in both or in "
                         "neither; it leaves this side the same, and the other side as it was.",
                         terms.all(demands)}});
}

// Two devices on different sides start, with all passes, one first or the other.
void orders(const Questions& questions, Orphans orphans) {
  AnyStack stack(questions.devices(), {.orphans = orphans});
  Terms& terms = stack.terms;
  Sides sides(stack);
  const system::FreeState any = stack.any();
  const auto start = [&](const SymbolicState& s, DeviceId d) {
    const SymbolicState left = take(terms, s, derive(terms, s), {Event::Kind::started, d.value});
    return settle(terms, left, system::passes_enough(stack.model.platform)).end;
  };
  const DeviceId a(0);
  const DeviceId b(1);
  const SymbolicState one = start(start(any.state, a), b);
  const SymbolicState two = start(start(any.state, b), a);
  questions.ask(
      terms, {"apart.orders." + stack.variant,
              page,
              {a_state(terms, any),
               is_settled(terms, any.state, "settled"),
               {"d1 and d2 are starting.",
                terms.both(any.state.power_is(a, Power::starting), any.state.power_is(b, Power::starting))},
               {"d1 is on this side and d2 is not.", terms.both(sides.here(a), !sides.here(b))},
               {"No cable is plugged between the sides.", sides.nothing_between(any.state), "nothing-between"}},
              {"whichever of the two starts first, with all passes after each, the end is the same, but for the order "
               "of seniority between the sides.",
               sides.same_on_each(one, two)}});
}

}  // namespace

void apart(const Questions& questions) {
  events(questions);
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    passes(questions, orphans);
    orders(questions, orphans);
  }
}

}  // namespace cairn::proofs

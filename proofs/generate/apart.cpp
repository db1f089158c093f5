// proofs/apart.md
#include <fmt/format.h>

#include "any_state.hpp"
#include "system/events.hpp"

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

  /// The state of this side and that of the other side are two states' own. What is between the sides is the other's.
  SymbolicState joined(const SymbolicState& this_side, const SymbolicState& other_side) {
    SymbolicState s = other_side;
    for (VariableId v = 0; v < space_.size(); ++v) s[v] = choose(terms_, inside(v), this_side[v], other_side[v]);
    return s;
  }

  /// No cable between the sides is plugged.
  Given apart(const SymbolicState& s, const char* says) {
    std::vector<Term> demands;
    for (std::uint32_t i = 0; i < space_.cables(); ++i) {
      const CableId c(i);
      const Term across = terms_.differ(here(space_.device_a(c)), here(space_.device_b(c)));
      demands.push_back(terms_.implies(across, !s.plugged(c)));
    }
    return {says, terms_.all(demands), "nothing-between"};
  }

  /// A pass decides the same of this side in both states.
  Term same_pass(const SymbolicState& s, const SymbolicState& t) {
    const Derived in_s = derive(terms_, s);
    const Derived in_t = derive(terms_, t);
    const system::Pass of_s = plan_pass(terms_, s, in_s);
    const system::Pass of_t = plan_pass(terms_, t, in_t);
    std::vector<Term> demands{same(carry_out(terms_, s, in_s, of_s), carry_out(terms_, t, in_t, of_t))};
    for_each_device(space_, [&](DeviceId d) {
      demands.push_back(terms_.implies(here(d), terms_.both(terms_.same(of_s.yields[d.value], of_t.yields[d.value]),
                                                            terms_.same(of_s.restarts[d.value], of_t.restarts[d.value]))));
    });
    return terms_.all(demands);
  }

  /// Every variable of this side is equal.
  Term same(const SymbolicState& s, const SymbolicState& t) {
    std::vector<Term> demands;
    for (VariableId v = 0; v < space_.size(); ++v) {
      demands.push_back(terms_.implies(inside(v), equal(terms_, s[v], t[v])));
    }
    return terms_.all(demands);
  }

  /// All is equal but who of two devices on different sides is senior.
  Term same_on_each(const SymbolicState& s, const SymbolicState& t) {
    std::vector<Term> demands;
    for (VariableId v = 0; v < space_.size(); ++v) {
      const bool of_two = space_[v].kind == Kind::senior;
      const Term counts = of_two ? terms_.same(here(DeviceId(space_[v].place)), here(DeviceId(space_[v].other)))
                                 : system::always;
      demands.push_back(terms_.implies(counts, equal(terms_, s[v], t[v])));
    }
    return terms_.all(demands);
  }

 private:
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
      case Kind::done:
      case Kind::left:
      case Kind::halted:
        return system::never;
      default:
        return here(DeviceId(variable.place));
    }
  }

  Terms& terms_;
  const system::Space& space_;
  std::vector<Term> here_;
};

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
                        {a_state(terms, any),
                         {"A second state is the same on one side and any on the other side (marked ').",
                          a_state(terms, second).term},
                         sides.apart(any.state, "In the first state no cable is plugged between the sides."),
                         sides.apart(second.state, "In the second state no cable is plugged between the sides.")},
                        {"a pass holds and restarts the same devices of this side in both, and leaves this side the "
                         "same.",
                         sides.same_pass(any.state, second.state)}});
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
               {"d1 and d2 are starting.", terms.both(any.state.power_is(a, Power::starting),
                                                      any.state.power_is(b, Power::starting))},
               {"d1 is on this side and d2 is not.", terms.both(sides.here(a), !sides.here(b))},
               sides.apart(any.state, "No cable is plugged between the sides.")},
              {"whichever of the two starts first, with all passes after each, the end is the same, but for the order "
               "of seniority between the sides.",
               sides.same_on_each(one, two)}});
}

}  // namespace

void apart(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    passes(questions, orphans);
    orders(questions, orphans);
  }
}

}  // namespace cairn::proofs

// proofs/overwritten.md
#include <fmt/format.h>

#include "any_state.hpp"
#include "system/events.hpp"
#include "system/properties.hpp"
#include "system/steps.hpp"

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;
using system::VariableId;
using Kind = system::Variable::Kind;

namespace {

constexpr const char* page = "overwritten.md";
constexpr DeviceId x{0};

/// What the next start of x brings anew, but for its number.
bool is_overwritten(const system::Space& space, VariableId v) {
  const system::Variable& variable = space[v];
  switch (variable.kind) {
    case Kind::priority:
      return DeviceId(variable.place) == x;
    case Kind::enabled:
    case Kind::side:
    case Kind::operational_side:
      return space.model()[PortId(variable.place)].device == x;
    default:
      return false;
  }
}

/// d1 has values of its own in each of two states, which are the same else.
class TwoStates {
 public:
  TwoStates(AnyStack& stack, const system::FreeState& any, const system::FreeState& other)
      : terms_(stack.terms),
        follow_number_(stack.model.platform.settings_follow == SettingsFollow::number),
        s_(any.state),
        t_(any.state) {
    for (VariableId v = 0; v < stack.space.size(); ++v) {
      if (is_overwritten(stack.space, v) || v == number()) t_[v] = other.state[v];
    }
  }

  [[nodiscard]] const SymbolicState& second() const { return t_; }
  static Term down(Terms& terms, const SymbolicState& s) {
    return terms.either(s.power_is(x, Power::off), s.power_is(x, Power::starting));
  }
  Term same_number() { return equal(terms_, s_[number()], t_[number()]); }

  // Whatever may happen in one may in the other, and leads to states that are alike again.
  Term lead_alike() {
    const system::Derived in_s = derive(terms_, s_);
    const system::Derived in_t = derive(terms_, t_);
    std::vector<Term> demands{same_pass(in_s, in_t), alike(cold_start(terms_, s_), cold_start(terms_, t_))};
    for (const Event& event : events_of(s_.space())) {
      const Term may = may_happen(terms_, s_, in_s, event);
      demands.push_back(terms_.same(may, may_happen(terms_, t_, in_t, event)));
      demands.push_back(terms_.implies(may, alike(take(terms_, s_, in_s, event), take(terms_, t_, in_t, event))));
      if (event.kind != Event::Kind::step) continue;
      demands.push_back(terms_.same(refused(terms_, s_, in_s, event.step()), refused(terms_, t_, in_t, event.step())));
    }
    return terms_.all(demands);
  }

 private:
  [[nodiscard]] VariableId number() const { return s_.space().of_device(Kind::number, x); }

  Term same_pass(const system::Derived& in_s, const system::Derived& in_t) {
    const system::Pass of_s = plan_pass(terms_, s_, in_s);
    const system::Pass of_t = plan_pass(terms_, t_, in_t);
    std::vector<Term> demands{alike(carry_out(terms_, s_, in_s, of_s), carry_out(terms_, t_, in_t, of_t))};
    for_each_device(s_.space(), [&](DeviceId d) {
      demands.push_back(terms_.same(of_s.yields[d.value], of_t.yields[d.value]));
      demands.push_back(terms_.same(of_s.restarts[d.value], of_t.restarts[d.value]));
    });
    for (std::uint32_t c = 0; c < s_.space().cables(); ++c) {
      demands.push_back(terms_.same(in_s.linked[c], in_t.linked[c]));
    }
    return terms_.all(demands);
  }

  // Equal, but for what the next start of d1 overwrites as long as it is down.
  Term alike(const SymbolicState& a, const SymbolicState& b) {
    std::vector<Term> same;
    std::vector<Term> same_settings;
    for (VariableId v = 0; v < a.space().size(); ++v) {
      const bool overwritten = is_overwritten(a.space(), v) || (v == number() && !follow_number_);
      (overwritten ? same_settings : same).push_back(equal(terms_, a[v], b[v]));
    }
    return terms_.both(terms_.all(same), terms_.either(down(terms_, a), terms_.all(same_settings)));
  }

  Terms& terms_;
  bool follow_number_;
  SymbolicState s_, t_;
};

void ask(const Questions& questions, Orphans orphans, SettingsFollow settings_follow) {
  AnyStack stack(questions.devices(), {.orphans = orphans,
                                       .side_leads_to = SideLeadsTo::one_neighbour,
                                       .settings_follow = settings_follow,
                                       .free_ports = true,
                                       .all_events = true});
  Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const system::FreeState other = stack.any("'");
  TwoStates two(stack, any, other);
  std::vector<Given> given{a_state(terms, any),
                           {"In the other state the priority, the number, and `enabled` and the sides of the ports of "
                            "d1 are those marked '; all else is the same.",
                            other.typing},
                           {"d1 is off or starting.", TwoStates::down(terms, any.state), "down"}};
  const bool follow_number = settings_follow == SettingsFollow::number;
  if (follow_number) given.push_back({"d1 has the same number in both.", two.same_number(), "same-number"});
  questions.ask(terms, {fmt::format("overwritten.{}.{}", stack.variant, follow_number ? "number" : "device"),
                        page,
                        given,
                        {"the same links have formed; a pass holds and restarts the same devices; the same events may "
                         "happen, and the same steps are refused; and after a pass, any event or a cold start the two "
                         "states differ in nothing but the same values of d1, and not even there when it is up.",
                         two.lead_alike()}});
}

}  // namespace

void overwritten(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    for (const SettingsFollow follow : {SettingsFollow::device, SettingsFollow::number}) {
      ask(questions, orphans, follow);
    }
  }
}

}  // namespace cairn::proofs

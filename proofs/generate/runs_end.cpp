// proofs/runs-end.md
#include "any_state.hpp"
#include "system/events.hpp"

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;
using Kind = system::Variable::Kind;

namespace {

constexpr const char* page = "runs-end.md";

/// d1 starts in a settled state and everything settles. That the measure falls, told by the place where it does.
class Start {
 public:
  Start(Terms& terms, const SymbolicState& before, SymbolicState left, int passes)
      : terms_(terms), before_(before), settling_(settle(terms, std::move(left), passes)) {}

  // Someone is newly held, or the stacks have grown, or it has not come to an end.
  Term measure_falls() {
    std::vector<Term> newly_held;
    std::vector<Term> still_held;
    for_each_device(space(), [&](DeviceId d) {
      newly_held.push_back(terms_.both(held(settling_.end, d), !held(before_, d)));
      still_held.push_back(terms_.implies(held(before_, d), held(settling_.end, d)));
    });
    return terms_.all({terms_.all(still_held), terms_.either(terms_.any(newly_held), stacks_grow())});
  }

 private:
  static constexpr DeviceId x{0};

  [[nodiscard]] const system::Space& space() const { return before_.space(); }
  /// The state that the start leaves, before any pass.
  [[nodiscard]] const SymbolicState& left() const { return settling_.stages[0].state; }
  static Term held(const SymbolicState& s, DeviceId d) { return s.power_is(d, Power::held); }

  // The place p where the order of stacks grows is the stack that x is in afterwards.
  Term stacks_grow() {
    std::vector<Term> cases;
    for_each_device(space(), [&](DeviceId p) {
      const Term here = p == x ? new_stack() : larger_stack(p);
      cases.push_back(terms_.all({settling_.end.leader_is(x, p), here, better_stacks_stay(p)}));
    });
    return terms_.any(cases);
  }

  // x has joined p, which goes on leading all that it led.
  Term larger_stack(DeviceId p) { return terms_.all({before_.leads(p), same_stack(p)}); }

  // x leads, and whoever comes after it in rank was beaten by keys that do not age.
  Term new_stack() {
    std::vector<Term> demands;
    for_each_device(space(), [&](DeviceId q) {
      if (q == x) return;
      const Term behind = terms_.both(before_.leads(q), outranks(terms_, left(), x, q));
      demands.push_back(terms_.implies(behind, has_better_prefix(q)));
    });
    return terms_.all(demands);
  }

  // The keys before tenure; with an election that does not ask for tenure, the whole rank.
  Term has_better_prefix(DeviceId q) {
    const std::vector<ElectionKey>& election = space().platform().election;
    if (std::find(election.begin(), election.end(), ElectionKey::tenure) == election.end()) {
      return outranks(terms_, left(), x, q);
    }
    return less(terms_, left().of(Kind::priority, q), left().of(Kind::priority, x));
  }

  // Whoever outranks p leads afterwards if it led before, and the same devices.
  Term better_stacks_stay(DeviceId p) {
    std::vector<Term> demands;
    for_each_device(space(), [&](DeviceId q) {
      if (q == p) return;
      const Term better = outranks(terms_, left(), q, p);
      const Term lead = terms_.either(before_.leads(q), settling_.end.leads(q));
      demands.push_back(terms_.implies(
          terms_.both(better, lead),
          terms_.all({before_.leads(q), settling_.end.leads(q), !settling_.end.leader_is(x, q), same_stack(q)})));
    });
    return terms_.all(demands);
  }

  // But for x, the same devices follow q as before.
  Term same_stack(DeviceId q) {
    std::vector<Term> demands;
    for_each_device(space(), [&](DeviceId d) {
      if (d != x) demands.push_back(terms_.same(before_.leader_is(d, q), settling_.end.leader_is(d, q)));
    });
    return terms_.all(demands);
  }

  Terms& terms_;
  const SymbolicState& before_;
  system::Settling settling_;
};

// A start that changes nothing about the device but its power, leader and seniority: number and priority come up as
// they are.
void make_plain(AnyStack& stack, SymbolicState& s) {
  for_each_device(stack.space, [&](DeviceId d) {
    s.of(Kind::next_number, d) = s.of(Kind::number, d);
    s.of(Kind::startup_priority, d) = s.of(Kind::priority, d);
  });
}

void start(const Questions& questions, Orphans orphans, const std::vector<ElectionKey>& election, const char* by) {
  AnyStack stack(questions.devices(), {.orphans = orphans, .election = election});
  Terms& terms = stack.terms;
  const std::string name = "runs-end." + stack.variant + "." + by;
  system::FreeState any = stack.any();
  make_plain(stack, any.state);
  const system::Derived derived = derive(terms, any.state);
  const Event event{Event::Kind::started, 0};
  const std::vector<Given> given{a_state(terms, any),
                                 is_settled(terms, any.state, "settled"),
                                 {"d1 is starting.", may_happen(terms, any.state, derived, event)}};
  const SymbolicState left = take(terms, any.state, derived, event);
  const int passes = system::passes_enough(stack.model.platform);
  questions.ask(
      terms,
      {name,
       page,
       given,
       {"when d1 has started and all has settled, more devices are held than before, or as many and the order of "
        "stacks has grown.",
        Start(terms, any.state, left, passes).measure_falls()}});
  if (std::string_view(by) != "tenure") return;

  // The same, but the newcomer keeps the seniority it is given here: any.
  SymbolicState senior = left;
  std::vector<Term> lawful;
  for_each_device(stack.space, [&](DeviceId d) {
    if (d.value == 0) return;
    senior[stack.space.senior(DeviceId(0), d)] = system::value_of(running(terms, left, d));
    senior[stack.space.senior(d, DeviceId(0))] = system::Value(0);
  });
  questions.show(
      terms, name + ".without-last-place", page,
      "The lemma, with a start that puts the device before all others in seniority. There is such a state: a newcomer "
      "could then displace a leader only because it is new, and be displaced in its turn.",
      given, {"The measure does not fall.", !Start(terms, any.state, senior, passes).measure_falls()});
}

void one_neighbour(const Questions& questions, Orphans orphans) {
  if (questions.devices() > 3) return;  // three are enough, and more make it a hard question
  AnyStack stack(questions.devices(), {.orphans = orphans,
                                       .side_leads_to = SideLeadsTo::one_neighbour,
                                       .election = {ElectionKey::priority},
                                       .free_ports = true});
  Terms& terms = stack.terms;
  system::FreeState any = stack.any();
  make_plain(stack, any.state);
  for (std::uint32_t p = 0; p < stack.space.ports(); ++p) {
    any.state.of(Kind::startup_enabled, PortId(p)) = any.state.of(Kind::enabled, PortId(p));
    any.state.of(Kind::side, PortId(p)) = any.state.of(Kind::operational_side, PortId(p));
    any.state.of(Kind::startup_side, PortId(p)) = any.state.of(Kind::operational_side, PortId(p));
  }
  const system::Derived derived = derive(terms, any.state);
  const Event event{Event::Kind::started, 0};
  Start start(terms, any.state, take(terms, any.state, derived, event), questions.devices() + 1);
  questions.show(terms, "runs-end." + stack.variant + ".no-tenure.without-any", page,
                 "The lemma, with \"side-leads-to: any\" left out. There is such a state: where a side leads to one "
                 "neighbour, a start "
                 "can cut links, and devices can restart one another for ever.",
                 {a_state(terms, any),
                  is_settled(terms, any.state),
                  {"d1 is starting.", may_happen(terms, any.state, derived, event)}},
                 {"The measure does not fall.", !start.measure_falls()});
}

}  // namespace

void runs_end(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    start(questions, orphans, {ElectionKey::priority}, "no-tenure");
    start(questions, orphans, {ElectionKey::priority, ElectionKey::tenure}, "tenure");
    one_neighbour(questions, orphans);
  }
}

}  // namespace cairn::proofs

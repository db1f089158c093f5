// proofs/somebody-between.md
#include "aged_otherwise.hpp"
#include "any_state.hpp"

#include <fmt/format.h>

namespace cairn::proofs {

using system::SymbolicState;
using system::Term;
using system::Terms;
using Kind = system::Variable::Kind;

namespace {

constexpr const char* page = "somebody-between.md";

/// Any lines and rings, or parts of the ring of all devices in the site's order. In other lines and rings the devices
/// have other names, and of several that are apart each is one by itself: that leaves out little.
enum class Shape : std::uint8_t { any, ring };

/// Which pairs of devices may be linked, now or later.
class Ways {
 public:
  Ways(AnyStack& stack, Shape shape)
      : terms_(stack.terms), space_(stack.space), two_at_most_(shape == Shape::ring || space_.devices() < 4) {
    for (std::uint32_t c = 0; c < space_.cables(); ++c) {
      const bool may_be_open = shape == Shape::any || is_of_ring(space_, CableId(c));
      open_.push_back(may_be_open ? terms_.variable(fmt::format("{} is open", stack.model[CableId(c)].name))
                                  : system::never);
    }
  }

  /// The cable joins neighbours of the ring.
  static bool is_of_ring(const system::Space& space, CableId c) {
    const std::uint32_t a = space.device_a(c).value;
    const std::uint32_t b = space.device_b(c).value;
    return b == a + 1 || (a == 0 && b + 1 == space.devices());
  }

  Given hold_what_is_plugged(const SymbolicState& before, const SymbolicState& after) {
    std::vector<Term> demands;
    for (std::uint32_t c = 0; c < space_.cables(); ++c) {
      const Term plugged = terms_.either(before.plugged(CableId(c)), after.plugged(CableId(c)));
      demands.push_back(terms_.implies(plugged, open_[c]));
    }
    return {"Cables that are plugged, before the event or after it, are open.", terms_.all(demands), "open"};
  }

  Given two_neighbours() {
    std::vector<Term> demands;
    for_each_device(space_, [&](DeviceId d) {
      std::vector<Term> neighbours;
      for (std::uint32_t c = 0; c < space_.cables(); ++c) {
        if (space_.device_a(CableId(c)) == d || space_.device_b(CableId(c)) == d) neighbours.push_back(open_[c]);
      }
      demands.push_back(!terms_.at_least(neighbours, 3));
    });
    return {"Open cables lead from each device to two neighbours at most.", terms_.all(demands),
            two_at_most_ ? "" : "two-neighbours"};
  }

  /// Where any two leaders d and e have another order in one state than in the other, somebody stands between.
  Term stands_between(const TwoOrders& two) {
    std::vector<Term> demands;
    for_each_device(space_, [&](DeviceId d) {
      for_each_device(space_, [&](DeviceId e) {
        if (e <= d) return;
        const Term both_lead = terms_.both(leads(two.first, d), leads(two.first, e));
        const Term differ = terms_.differ(outranks(terms_, two.first, d, e), outranks(terms_, two.second, d, e));
        demands.push_back(terms_.implies(terms_.both(both_lead, differ), !open_way(two, d, e)));
      });
    });
    return terms_.all(demands);
  }

 private:
  Term leads(const SymbolicState& s, DeviceId d) { return terms_.both(s.up(d), s.leads(d)); }

  /// v follows another than d and e, which outranks d in both states, or outranks e in both.
  Term stands(const TwoOrders& two, DeviceId v, DeviceId d, DeviceId e) {
    std::vector<Term> cases;
    for_each_device(space_, [&](DeviceId w) {
      if (w == d || w == e) return;
      const auto in_both = [&](DeviceId other) {
        return terms_.both(outranks(terms_, two.first, w, other), outranks(terms_, two.second, w, other));
      };
      cases.push_back(terms_.all({two.first.up(v), two.first.leader_is(v, w), terms_.either(in_both(d), in_both(e))}));
    });
    return terms_.any(cases);
  }

  // A way of open cables from d to e on which nobody stands.
  Term open_way(const TwoOrders& two, DeviceId d, DeviceId e) {
    system::Derived ways(space_.devices());
    std::vector<Term> free(space_.devices(), system::always);
    for_each_device(space_, [&](DeviceId v) {
      if (v != d && v != e) free[v.value] = !stands(two, v, d, e);
      ways.set_together(v, v, free[v.value]);
    });
    for (std::uint32_t c = 0; c < space_.cables(); ++c) {
      const DeviceId a = space_.device_a(CableId(c));
      const DeviceId b = space_.device_b(CableId(c));
      ways.set_together(a, b, terms_.all({open_[c], free[a.value], free[b.value]}));
    }
    close_together(terms_, space_, ways);
    return ways.together(d, e);
  }

  Terms& terms_;
  const system::Space& space_;
  bool two_at_most_;        ///< no device has a third neighbour in any case
  std::vector<Term> open_;  ///< per cable
};

Given same_ranks(AnyStack& stack, const TwoOrders& before, const TwoOrders& left) {
  std::vector<Term> demands;
  for_each_device(stack.space, [&](DeviceId d) {
    if (d.value == 0) return;  // who comes up may bring other values; before, nobody ranks it
    for (const Kind kind : {Kind::number, Kind::priority}) {
      demands.push_back(equal(stack.terms, before.first.of(kind, d), left.first.of(kind, d)));
    }
  });
  for (const Kind kind : {Kind::number, Kind::priority}) {
    const DeviceId x(0);
    demands.push_back(
        stack.terms.implies(before.first.up(x), equal(stack.terms, before.first.of(kind, x), left.first.of(kind, x))));
  }
  return {"The event leaves number and priority of every device as they are, but for d1 where it comes up.",
          stack.terms.all(demands), "same-ranks"};
}

void unplug_all_but_ring(system::SymbolicState& s) {
  for (std::uint32_t c = 0; c < s.space().cables(); ++c) {
    if (!Ways::is_of_ring(s.space(), CableId(c))) s[s.space().plugged(CableId(c))] = system::Value(0);
  }
}

void one_event(const Questions& questions, Orphans orphans, Shape shape) {
  AnyStack stack(questions.devices(), {.orphans = orphans});
  Terms& terms = stack.terms;
  system::FreeState any = stack.any();
  system::FreeState other = stack.any("'");
  if (shape == Shape::ring) {
    unplug_all_but_ring(any.state);
    unplug_all_but_ring(other.state);
  }
  const TwoOrders before(any.state, with_seniority_of(any.state, other.state));
  const AnyEvent event(terms, stack.space);
  const TwoOrders left(event.take(terms, before.first, other.state), event.take(terms, before.second, other.state));
  const TwoOrders after = left.after_pass(terms);
  Ways ways(stack, shape);
  const system::Derived derived = derive(terms, after.first);
  questions.ask(
      terms,
      {"somebody-between." + stack.variant,
       page,
       {a_state(terms, any),
        another_order(terms, before, other),
        is_settled(terms, any.state, "settled"),
        event.is_possible(terms, before.first),
        event.one_at_a_time(terms, before.first, left.first),
        event.leaves_no_orphans(terms, before.first, left.first),
        same_ranks(stack, before, left),
        ways.hold_what_is_plugged(before.first, left.first),
        ways.two_neighbours(),
        {"Between any two leaders whose order is not the same in both states somebody stands, on every open way.",
         ways.stands_between(before), "somebody"},
        {"The event takes no device down.", !terms.any(event.goes_down()), "nobody-down"}},
       {"the first pass holds, restarts and admits the same devices in both; after it all is settled; and between any "
        "two leaders whose order is not the same in both somebody stands again.",
        terms.all({left.same_pass(terms), after.same_but_for_seniority(terms), settled(terms, after.first, derived),
                   ways.stands_between(after)})}});
}

}  // namespace

void somebody_between(const Questions& questions) {
  for (const Orphans orphans : {Orphans::carry_on, Orphans::restart}) {
    // Of any lines and rings, six devices are too hard a question: no answer in four minutes of processor time.
    one_event(questions, orphans, questions.devices() > 5 ? Shape::ring : Shape::any);
  }
}

}  // namespace cairn::proofs

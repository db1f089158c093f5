#include "system/derived.hpp"

namespace cairn::system {

using Kind = Variable::Kind;

namespace {

// 3.a: plugged, not broken, both devices up or held, both ports enabled in running.
Term cable_up(Terms& terms, const SymbolicState& s, CableId c) {
  const Space& space = s.space();
  const Cable& cable = space.model()[c];
  return terms.all({s.plugged(c), !s.broken(c), running(terms, s, space.device_a(c)),
                    running(terms, s, space.device_b(c)), s.enabled(cable.a), s.enabled(cable.b)});
}

// 3.b: "the operational sides face each other"
Term facing(Terms& terms, const Space& space, const Value& a, const Value& b) {
  const auto east = static_cast<std::int64_t>(Side::east);
  const auto west = static_cast<std::int64_t>(Side::west);
  const auto none = static_cast<std::int64_t>(Side::none);
  if (space.platform().facing == Facing::any) return terms.both(!a.is(none), !b.is(none));
  return terms.either(terms.both(a.is(east), b.is(west)), terms.both(a.is(west), b.is(east)));
}

// 3.b: "no other cable that is cable_up joins a third device to a port of either device whose operational side equals
// that of the same device's end of c", seen from the end `here`, whose peer is another device. A cable at the same port
// is not up while c is, since only one of the two is plugged (1.b).
Term leads_to_one_neighbour(Terms& terms, const SymbolicState& s, const Derived& derived, CableId c, PortId here,
                            DeviceId peer) {
  const Space& space = s.space();
  const Model& model = space.model();
  const DeviceId d = model[here].device;
  std::vector<Term> none_other;
  for (std::uint32_t i = 0; i < space.cables(); ++i) {
    const CableId other(i);
    if (other == c) continue;
    for (const auto& [mine, theirs] : {std::pair(model[other].a, model[other].b), {model[other].b, model[other].a}}) {
      if (mine == here || model[mine].device != d || model[theirs].device == peer) continue;
      const Term same_side = equal(terms, s.of(Kind::operational_side, mine), s.of(Kind::operational_side, here));
      none_other.push_back(!terms.both(derived.cable_up[i], same_side));
    }
  }
  return terms.all(none_other);
}

// 3.b
Term linked(Terms& terms, const SymbolicState& s, Derived& derived, CableId c) {
  const Space& space = s.space();
  const Platform& platform = space.platform();
  const Model& model = space.model();
  const Cable& cable = model[c];
  const DeviceId d = space.device_a(c);
  const DeviceId e = space.device_b(c);
  if (platform.software == Software::must_match && model[d].software != model[e].software) return never;
  const Value& side_a = s.of(Kind::operational_side, cable.a);
  const Value& side_b = s.of(Kind::operational_side, cable.b);
  std::vector<Term> demands{derived.cable_up[c.value], s.up(d), s.up(e), facing(terms, space, side_a, side_b)};
  if (platform.side_leads_to == SideLeadsTo::one_neighbour) {
    const Term one_neighbour = terms.both(leads_to_one_neighbour(terms, s, derived, c, cable.a, e),
                                          leads_to_one_neighbour(terms, s, derived, c, cable.b, d));
    derived.links_only_vanish = derived.links_only_vanish && one_neighbour == always;
    demands.push_back(one_neighbour);
  }
  return terms.all(demands);
}

}  // namespace

void close_together(Terms& terms, const Space& space, Derived& derived) {
  for_each_device(space, [&](DeviceId via) {
    for_each_device(space, [&](DeviceId d) {
      if (d == via || derived.together(d, via) == never) return;
      for (std::uint32_t i = d.value + 1; i < space.devices(); ++i) {
        const DeviceId e(i);
        if (e == via) continue;
        const Term by_way = terms.both(derived.together(d, via), derived.together(via, e));
        derived.set_together(d, e, terms.either(derived.together(d, e), by_way));
      }
    });
  });
}

Derived derive_links(Terms& terms, const SymbolicState& s) {
  const Space& space = s.space();
  Derived derived(space.devices());
  for (std::uint32_t c = 0; c < space.cables(); ++c) derived.cable_up.push_back(cable_up(terms, s, CableId(c)));
  for (std::uint32_t c = 0; c < space.cables(); ++c) derived.linked.push_back(linked(terms, s, derived, CableId(c)));
  return derived;
}

Derived derive(Terms& terms, const SymbolicState& s) {
  const Space& space = s.space();
  Derived derived = derive_links(terms, s);
  for_each_device(space, [&](DeviceId d) { derived.set_together(d, d, s.up(d)); });
  for (std::uint32_t c = 0; c < space.cables(); ++c) {
    const DeviceId d = space.device_a(CableId(c));
    const DeviceId e = space.device_b(CableId(c));
    derived.set_together(d, e, terms.either(derived.together(d, e), derived.linked[c]));
  }
  close_together(terms, space, derived);
  return derived;
}

}  // namespace cairn::system

#include "semantics/derived.hpp"

#include "semantics/state.hpp"

namespace cairn::semantics {

namespace {

// 3.a: plugged, not broken, both devices up or held, both ports enabled in running.
bool cable_up(const State& s, CableId c, const Joint& joint) {
  return s[c].plugged && !s[c].broken && running(s, joint.device_a) && running(s, joint.device_b) &&
         s[joint.port_a].enabled && s[joint.port_b].enabled;
}

// 3.b: "the operational sides face each other"
bool facing(const Platform& platform, Side a, Side b) {
  if (a == Side::none || b == Side::none) return false;
  return platform.facing == Facing::any || a != b;
}

// 3.b: "no other cable that is cable_up joins a third device to a port of either device whose operational side equals
// that of the same device's end of c", seen from the device d, whose end of c is at `side`.
bool leads_to_one_neighbour(const World& world, const State& s, const Derived& derived, CableId c, DeviceId d,
                            Side side, DeviceId peer) {
  for (const CableEnd& end : world.ends_at(d)) {
    if (end.cable != c && end.other != peer && derived.cable_up[end.cable.value] != 0 &&
        s[end.here].operational_side == side) {
      return false;
    }
  }
  return true;
}

// 3.b, of a cable that is up.
bool linked(const World& world, const State& s, const Derived& derived, CableId c, const Joint& joint) {
  const DeviceId d = joint.device_a;
  const DeviceId e = joint.device_b;
  if (s[d].power != Power::up || s[e].power != Power::up) return false;
  const Side side_d = s[joint.port_a].operational_side;
  const Side side_e = s[joint.port_b].operational_side;
  if (!joint.software_fits || !facing(world.platform(), side_d, side_e)) return false;
  return world.platform().side_leads_to == SideLeadsTo::any ||
         (leads_to_one_neighbour(world, s, derived, c, d, side_d, e) &&
          leads_to_one_neighbour(world, s, derived, c, e, side_e, d));
}

// The device that stands for d's class so far; the classes are joined link by link.
DeviceId head(Derived& derived, DeviceId d) {
  while (derived.class_of[d.value] != d) {
    DeviceId& above = derived.class_of[d.value];
    above = derived.class_of[above.value];
    d = above;
  }
  return d;
}

// 3.c, 3.d: connected through formed links, directly or by way of other devices.
void join_classes(const World& world, const State& s, Derived& derived) {
  const std::size_t n = world.device_count();
  derived.class_of.resize(n);
  derived.next_in_class.assign(n, DeviceId());
  for (std::size_t i = 0; i < n; ++i) {
    derived.class_of[i] = s.devices[i].power == Power::up ? DeviceId(i) : DeviceId();
  }
  for (std::size_t i = 0; i < world.cable_count(); ++i) {
    if (derived.linked[i] == 0) continue;
    const DeviceId d = head(derived, world.joint(CableId(i)).device_a);
    const DeviceId e = head(derived, world.joint(CableId(i)).device_b);
    // The first in the site's order stands for the class.
    if (d < e) derived.class_of[e.value] = d;
    if (e < d) derived.class_of[d.value] = e;
  }
}

void chain_classes(Derived& derived) {
  // From the back: next_in_class of a head holds, until the head itself is reached, the first of its class seen so far.
  for (std::size_t i = derived.class_of.size(); i-- > 0;) {
    const DeviceId d(i);
    if (!derived.class_of[i]) continue;
    const DeviceId top = head(derived, d);
    derived.class_of[i] = top;
    if (top == d) continue;
    derived.next_in_class[i] = derived.next_in_class[top.value];
    derived.next_in_class[top.value] = d;
  }
}

}  // namespace

void derive(const World& world, const State& s, Derived& out) {
  const std::size_t cables = world.cable_count();
  out.cable_up.resize(cables);
  out.linked.resize(cables);
  for (std::size_t i = 0; i < cables; ++i) out.cable_up[i] = cable_up(s, CableId(i), world.joint(CableId(i))) ? 1 : 0;
  for (std::size_t i = 0; i < cables; ++i) {
    out.linked[i] = out.cable_up[i] != 0 && linked(world, s, out, CableId(i), world.joint(CableId(i))) ? 1 : 0;
  }
  join_classes(world, s, out);
  chain_classes(out);
}

Derived derive(const World& world, const State& s) {
  Derived derived;
  derive(world, s, derived);
  return derived;
}

}  // namespace cairn::semantics

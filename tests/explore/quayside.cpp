#include "explore/quayside.hpp"

#include <string>

#include "support/model_builder.hpp"

namespace cairn::test {

namespace {

void set_rules(Platform& p) {
  p.numbers = {1, 24};
  p.priorities = {0, 255};
  p.max_members = 24;
  p.factory = {1, 10, false, Side::none};
  p.number_takes = Takes::at_restart;
  p.priority_takes = Takes::at_once;
  p.side_takes = SideTakes::on_apply;
  p.side_needs_disabled = true;
  p.facing = Facing::opposite;
  p.side_leads_to = SideLeadsTo::one_neighbour;
  p.software = Software::must_match;
  p.orphans = Orphans::carry_on;
  p.election = {ElectionKey::priority, ElectionKey::tenure};
}

std::vector<DeviceId> chain_of(ModelBuilder& b, int n) {
  std::vector<DeviceId> yard;
  for (int i = 1; i <= n; ++i) {
    DeviceIs is;
    is.number = i;
    is.priority = i == 1 ? 220 : i == 2 ? 180 : 100;
    is.tenure = n + 1 - i;
    is.address = static_cast<std::uint64_t>(i);
    const bool first = i == 1;
    const bool last = i == n;
    is.ports = {{"w", first ? Side::none : Side::west, !first}, {"e", last ? Side::none : Side::east, !last}};
    yard.push_back(b.device("yard-" + std::to_string(i), is));
  }
  b.chain(yard);
  b.stack(yard.front(), yard);
  return yard;
}

DeviceId factory_new(ModelBuilder& b, int n) {
  DeviceIs is;
  is.on = false;
  is.number = 1;
  is.priority = 10;
  is.address = static_cast<std::uint64_t>(n) + 1;
  is.ports = {{"w", Side::none, false}, {"e", Side::none, false}};
  return b.device("new-1", is);
}

}  // namespace

Model append_to_chain(int n) {
  ModelBuilder b;
  set_rules(b.platform());
  std::vector<DeviceId> stack = chain_of(b, n);
  const DeviceId primary = stack.front();
  const DeviceId last = stack.back();
  const DeviceId joiner = factory_new(b, n);
  const CableId run = b.cable(b.east(last), b.west(joiner), false);
  b.power_on(joiner);
  b.await(when::up(joiner));
  b.set_number(joiner, n + 1);
  b.restart(joiner);
  b.await(when::all({when::up(joiner), when::number(joiner, Sign::equal, n + 1)}));
  b.set_priority(joiner, 50);
  b.set_side(b.west(joiner), Side::west);
  b.enable(b.west(joiner));
  b.save({joiner});
  b.apply({joiner});
  b.plug(run);
  b.set_side(b.east(last), Side::east, {primary});
  b.enable(b.east(last), {primary});
  b.apply({last}, {primary});
  b.await(when::all({when::follower(joiner), when::together({primary, joiner})}));
  b.save_stack_of(primary, {primary});
  stack.push_back(joiner);
  b.goal({stack, primary, true, {}, {}});
  return b.model();
}

}  // namespace cairn::test

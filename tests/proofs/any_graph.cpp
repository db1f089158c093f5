#include "proofs/any_graph.hpp"

#include <string>
#include <utility>

#include "semantics/state.hpp"

namespace cairn::test {

namespace {

Model model_of(std::size_t devices, Orphans orphans, std::vector<ElectionKey> election) {
  ModelBuilder b;
  b.platform().orphans = orphans;
  b.platform().election = std::move(election);
  for (std::size_t i = 0; i < devices; ++i) {
    DeviceIs is;
    is.ports.clear();
    for (std::size_t j = 0; j < devices; ++j) {
      if (j != i) is.ports.push_back({.name = "to-" + std::to_string(j), .side = Side::east});
    }
    b.device("d" + std::to_string(i), std::move(is));
  }
  for (std::size_t i = 0; i < devices; ++i) {
    for (std::size_t j = i + 1; j < devices; ++j) {
      b.cable(b.port(DeviceId(i), "to-" + std::to_string(j)), b.port(DeviceId(j), "to-" + std::to_string(i)));
    }
  }
  return b.model();
}

std::size_t below(std::mt19937_64& random, std::size_t n) {
  return static_cast<std::size_t>(random() % n);
}

}  // namespace

AnyGraph::AnyGraph(std::size_t devices, Orphans orphans, std::vector<ElectionKey> election)
    : model_(model_of(devices, orphans, std::move(election))), world_(model_) {
  state = semantics::initial_state(world_, {});
}

void AnyGraph::draw(std::mt19937_64& random) {
  const std::size_t n = size();
  const std::size_t levels = 1 + below(random, n);
  for (DeviceState& d : state.devices) {
    d.power = below(random, 4) != 0 ? Power::up : static_cast<Power>(below(random, 4));
    const bool led = d.power == Power::up && below(random, 3) != 0;
    d.leader = led ? DeviceId(below(random, n)) : DeviceId();
    const bool running = d.power == Power::up || d.power == Power::held;
    d.seniority = running ? static_cast<std::uint32_t>(1 + below(random, levels)) : 0;
    d.number = d.next_number = static_cast<std::int64_t>(1 + below(random, n));
    d.priority = d.startup_priority = static_cast<std::int64_t>(1 + below(random, n));
  }
  const std::size_t density = 1 + below(random, 4);
  for (CableState& c : state.cables) c = {below(random, 5) < density, false};
}

void AnyGraph::draw_leaders_of_a_settled_state(std::mt19937_64& random) {
  const semantics::Derived derived = semantics::derive(world_, state);
  std::vector<DeviceId> leader_of_class(size());
  for (std::size_t i = 0; i < size(); ++i) {
    // Of the devices of a class each is as likely as any other to be the last one that is chosen.
    const DeviceId head = derived.class_of[i];
    if (head && (!leader_of_class[head.value] || below(random, 2) == 0)) leader_of_class[head.value] = DeviceId(i);
  }
  for (std::size_t i = 0; i < size(); ++i) {
    const DeviceId head = derived.class_of[i];
    state.devices[i].leader = head ? leader_of_class[head.value] : DeviceId();
  }
}

bool each_class_follows_one_inside(const semantics::World& world, const State& s) {
  const semantics::Derived derived = semantics::derive(world, s);
  for (std::size_t i = 0; i < s.devices.size(); ++i) {
    const DeviceId head = derived.class_of[i];
    if (!head) continue;
    const DeviceId leader = s.devices[i].leader;
    if (!leader || !derived.together(DeviceId(i), leader) || leader != s[head].leader) return false;
  }
  return true;
}

bool pass(const semantics::World& world, State& s, semantics::Scratch& scratch) {
  semantics::derive(world, s, scratch.derived);
  semantics::plan_pass(world, s, scratch.derived, scratch.plan);
  semantics::carry_out(scratch.plan, s);
  return scratch.plan.unsettled();
}

}  // namespace cairn::test

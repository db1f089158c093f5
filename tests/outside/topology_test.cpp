// The topology of RFC 8345, appendix C: network "otn-hc" of three nodes, each with a termination point of its own use
// and one towards each of the others (node D3 without the former), and six links. Carried over: the nodes as devices,
// the termination points as ports, and each pair of links that run in opposite directions between the same two
// termination points as one cable, since the RFC's links are unidirectional and our cables are not. Not carried over:
// the supporting (underlay) networks and nodes of the example.
#include <map>
#include <string>

#include "semantics/loss.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

struct Link {
  const char* source_node;
  const char* source_tp;
  const char* dest_node;
  const char* dest_tp;
};

// As the RFC names them: "D1,1-2-1,D2,2-1-1" and so on.
constexpr Link links[] = {
    {"D1", "1-2-1", "D2", "2-1-1"}, {"D2", "2-1-1", "D1", "1-2-1"}, {"D1", "1-3-1", "D3", "3-1-1"},
    {"D3", "3-1-1", "D1", "1-3-1"}, {"D2", "2-3-1", "D3", "3-2-1"}, {"D3", "3-2-1", "D2", "2-3-1"},
};

struct Topology {
  ModelBuilder b;
  std::map<std::string, DeviceId> node;
  std::vector<CableId> cables;

  Topology() {
    add("D1", {"1-0-1", "1-2-1", "1-3-1"});
    add("D2", {"2-0-1", "2-1-1", "2-3-1"});
    add("D3", {"3-1-1", "3-2-1"});
    std::map<std::pair<PortId, PortId>, int> directions;
    for (const Link& link : links) {
      const PortId from = b.port(node.at(link.source_node), link.source_tp);
      const PortId to = b.port(node.at(link.dest_node), link.dest_tp);
      ++directions[std::minmax(from, to)];
    }
    for (const auto& [ends, count] : directions) {
      REQUIRE(count == 2);
      cables.push_back(b.cable(ends.first, ends.second));
    }
    const std::vector<DeviceId> all = {node["D1"], node["D2"], node["D3"]};
    b.stack(node["D1"], all);
    b.goal(goal_of(all));
  }

  void add(const std::string& name, const std::vector<std::string>& termination_points) {
    DeviceIs is;
    is.ports.clear();
    for (const std::string& tp : termination_points) is.ports.push_back({.name = tp, .side = Side::east});
    node[name] = b.device(name, is);
  }
};

}  // namespace

TEST_CASE("3.c RFC 8345 appendix C: three nodes, each linked with both others") {
  const Topology topology;
  CHECK(topology.cables.size() == 3);
  Run run(topology.b);
  run.settle();
  for (const CableId c : topology.cables) CHECK(run.linked(c));
  CHECK(run.holds(when::together({topology.node.at("D1"), topology.node.at("D2"), topology.node.at("D3")})));
}

TEST_CASE("3.c 6.8 RFC 8345 appendix C: the triangle survives the loss of any one link, and of no two") {
  const Topology topology;
  Run run(topology.b);
  run.settle();
  const auto never = [] { return false; };
  CHECK_FALSE(semantics::find_fatal_loss(run.world(), run.state(), 1, never).fatal);
  for (std::size_t i = 0; i < 3; ++i) {
    State left = run.state();
    for (std::size_t j = 0; j < 3; ++j) left[topology.cables[j]].broken = j != i;
    CHECK(semantics::goal_stack_apart(run.world(), semantics::derive(run.world(), left)));
  }
}

// `together` (semantics 3.c) and `tolerates-loss` (6.8) against Boost.Graph, and against facts of graph theory that any
// textbook has (R. Diestel, Graph Theory, chapter 1: connectivity, bridges): where any sides face, and a side may lead
// to several neighbours, the formed links are the edges of an undirected graph with parallel edges.
#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/biconnected_components.hpp>
#include <boost/graph/connected_components.hpp>
#include <boost/graph/stoer_wagner_min_cut.hpp>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "semantics/loss.hpp"
#include "spec/random_models.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

struct Graph {
  std::size_t vertices = 0;
  std::vector<std::pair<std::size_t, std::size_t>> edges;
};

/// A stack with a device a vertex, a plugged cable an edge, and a port of its own at each end of each cable. The goal
/// is that all devices are one stack.
Model stack_of(const Graph& graph) {
  ModelBuilder b;
  std::vector<std::vector<PortIs>> ports(graph.vertices);
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    const Side side = i % 2 == 0 ? Side::east : Side::west;
    for (const std::size_t end : {graph.edges[i].first, graph.edges[i].second}) {
      ports[end].push_back({.name = std::to_string(i), .side = side});
    }
  }
  std::vector<DeviceId> d;
  for (std::size_t i = 0; i < graph.vertices; ++i) {
    d.push_back(b.device("d" + std::to_string(i), {.ports = ports[i]}));
  }
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    const auto [x, y] = graph.edges[i];
    b.cable(b.port(d[x], std::to_string(i)), b.port(d[y], std::to_string(i)));
  }
  b.stack(d.front(), d);
  b.goal(goal_of(d));
  return b.model();
}

/// The cables whose loss alone takes the stack apart.
std::vector<std::size_t> fatal_cables(const Graph& graph) {
  Run run(stack_of(graph));
  std::vector<std::size_t> fatal;
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    State& s = run.state();
    s.cables[i].broken = true;
    if (semantics::goal_stack_apart(run.world(), run.derived())) fatal.push_back(i);
    s.cables[i].broken = false;
  }
  return fatal;
}

/// Whether some loss of k cables (or of all, where there are fewer) takes the stack apart.
bool some_loss_is_fatal(const Graph& graph, std::int64_t k) {
  const Run run(stack_of(graph));
  return semantics::find_fatal_loss(run.world(), run.state(), k, [] { return false; }).fatal.has_value();
}

namespace reference {

using Plain = boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS, boost::no_property,
                                    boost::property<boost::edge_index_t, std::size_t>>;
using Weighted = boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS, boost::no_property,
                                       boost::property<boost::edge_weight_t, int>>;

/// The graph without parallel edges, which Boost.Graph's biconnected_components takes for one another, and how many
/// edges each of its edges stands for.
struct Simple {
  Graph graph;
  std::vector<int> weights;
  std::vector<std::size_t> edge_of;  ///< per edge of the graph that it was made from

  explicit Simple(const Graph& from) : graph{from.vertices, {}} {
    std::map<std::pair<std::size_t, std::size_t>, std::size_t> places;
    for (const auto& [x, y] : from.edges) {
      const auto [place, fresh] = places.try_emplace(std::minmax(x, y), graph.edges.size());
      if (fresh) {
        graph.edges.push_back(place->first);
        weights.push_back(0);
      }
      ++weights[place->second];
      edge_of.push_back(place->second);
    }
  }
};

Plain plain(const Graph& graph) {
  Plain out(graph.vertices);
  for (std::size_t i = 0; i < graph.edges.size(); ++i) add_edge(graph.edges[i].first, graph.edges[i].second, i, out);
  return out;
}

std::vector<std::size_t> components(const Graph& graph) {
  std::vector<std::size_t> component(graph.vertices);
  boost::connected_components(plain(graph), component.data());
  return component;
}

/// An edge is a bridge when it is a biconnected component by itself.
std::vector<std::size_t> bridges(const Graph& graph) {
  const Simple simple(graph);
  const Plain g = plain(simple.graph);
  std::vector<std::size_t> component(simple.graph.edges.size());
  const auto index = get(boost::edge_index, g);
  boost::biconnected_components(g, boost::make_iterator_property_map(component.begin(), index));
  std::map<std::size_t, int> sizes;
  for (std::size_t i = 0; i < component.size(); ++i) sizes[component[i]] += simple.weights[i];
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    if (sizes[component[simple.edge_of[i]]] == 1) out.push_back(i);
  }
  return out;
}

/// The least number of edges whose loss disconnects the graph.
int edge_connectivity(const Graph& graph) {
  const Simple simple(graph);
  Weighted g(graph.vertices);
  for (std::size_t i = 0; i < simple.weights.size(); ++i) {
    add_edge(simple.graph.edges[i].first, simple.graph.edges[i].second, simple.weights[i], g);
  }
  return boost::stoer_wagner_min_cut(g, get(boost::edge_weight, g));
}

}  // namespace reference

bool connected(const Graph& graph) {
  const auto component = reference::components(graph);
  return std::all_of(component.begin(), component.end(), [&](std::size_t c) { return c == component.front(); });
}

Graph random_graph(Random& random, std::size_t most_vertices, std::size_t most_edges) {
  Graph graph{2 + below(random, most_vertices - 1), {}};
  const std::size_t edges = below(random, most_edges + 1);
  for (std::size_t i = 0; i < edges; ++i) {
    const std::size_t x = below(random, graph.vertices);
    graph.edges.emplace_back(x, (x + 1 + below(random, graph.vertices - 1)) % graph.vertices);
  }
  return graph;
}

Graph path(std::size_t n) {
  Graph graph{n, {}};
  for (std::size_t i = 0; i + 1 < n; ++i) graph.edges.emplace_back(i, i + 1);
  return graph;
}

Graph cycle(std::size_t n) {
  Graph graph = path(n);
  graph.edges.emplace_back(n - 1, 0);
  return graph;
}

Graph complete(std::size_t n) {
  Graph graph{n, {}};
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = i + 1; j < n; ++j) graph.edges.emplace_back(i, j);
  }
  return graph;
}

/// Outer cycle 0 to 4, inner star 5 to 9, spokes.
Graph petersen() {
  Graph graph{10, {}};
  for (std::size_t i = 0; i < 5; ++i) {
    graph.edges.emplace_back(i, (i + 1) % 5);
    graph.edges.emplace_back(5 + i, 5 + (i + 2) % 5);
    graph.edges.emplace_back(i, 5 + i);
  }
  return graph;
}

}  // namespace

TEST_CASE("3.c together is Boost.Graph's connected_components") {
  Random random(1);
  for (int i = 0; i < 400; ++i) {
    CAPTURE(i);
    const Graph graph = random_graph(random, 12, 14);
    const Run run(stack_of(graph));
    const auto component = reference::components(graph);
    const semantics::Derived derived = run.derived();
    for (std::size_t x = 0; x < graph.vertices; ++x) {
      for (std::size_t y = 0; y < graph.vertices; ++y) {
        CHECK(derived.together(DeviceId(x), DeviceId(y)) == (component[x] == component[y]));
      }
    }
  }
}

TEST_CASE("6.8 the cables that no loss may strike are the bridges that Boost.Graph's biconnected_components tell") {
  Random random(2);
  int with_bridges = 0;
  int without = 0;
  for (int i = 0; i < 400; ++i) {
    const Graph graph = random_graph(random, 8, 14);
    if (!connected(graph)) continue;
    CAPTURE(i);
    const auto bridges = reference::bridges(graph);
    ++(bridges.empty() ? without : with_bridges);
    CHECK(fatal_cables(graph) == bridges);
    CHECK(some_loss_is_fatal(graph, 1) == !bridges.empty());
  }
  CHECK(with_bridges > 40);
  CHECK(without > 40);
}

TEST_CASE("6.8 a stack tolerates the loss of k cables where Boost.Graph's minimum cut is larger than k") {
  Random random(3);
  std::map<int, int> met;
  for (int i = 0; i < 250; ++i) {
    const Graph graph = random_graph(random, 6, 12);
    CAPTURE(i);
    const int cut = reference::edge_connectivity(graph);
    ++met[cut];
    for (int k = 1; k <= 4; ++k) {
      CAPTURE(k);
      CHECK(some_loss_is_fatal(graph, k) == (cut <= k));
    }
  }
  for (int cut = 0; cut <= 3; ++cut) CHECK(met[cut] > 10);
}

TEST_CASE("6.8 a path of n vertices has n - 1 bridges, a cycle none") {
  for (std::size_t n = 2; n <= 12; ++n) {
    CHECK(fatal_cables(path(n)).size() == n - 1);
    if (n >= 3) CHECK(fatal_cables(cycle(n)).empty());
  }
}

TEST_CASE("6.8 edge connectivity: a cycle 2, the complete graph of n vertices n - 1, the Petersen graph 3") {
  const auto connectivity_is = [](const Graph& graph, std::int64_t n) {
    return !some_loss_is_fatal(graph, n - 1) && some_loss_is_fatal(graph, n);
  };
  for (std::size_t n = 3; n <= 8; ++n) CHECK(connectivity_is(cycle(n), 2));
  for (std::size_t n = 3; n <= 5; ++n) CHECK(connectivity_is(complete(n), static_cast<std::int64_t>(n) - 1));
  CHECK(connectivity_is(petersen(), 3));
}

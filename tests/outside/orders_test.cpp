// How many orders `any-order` and `after` leave open (semantics 5.a; docs/format.md, Procedure): as many as the partial
// order of the steps has linear extensions, which are published for some families of orders. The values of A000111 were
// compared with the published sequence; those of the others are from memory.
#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "cairn/load.hpp"
#include "support/partial_orders.hpp"
#include "support/run.hpp"

using namespace cairn;
using namespace cairn::test;

namespace {

/// Counts the complete runs of a procedure whose steps change nothing but what is done.
class Runs {
 public:
  explicit Runs(Model model) : run_(std::move(model)) {}

  std::uint64_t count() {
    run_.settle();
    return from(State(run_.state()));
  }

 private:
  std::uint64_t from(const State& s) {
    const auto known = counts_.find(s.done);
    if (known != counts_.end()) return known->second;
    run_.state() = s;
    std::uint64_t count = semantics::complete(s) ? 1 : 0;
    for (const Event& event : run_.events()) {
      run_.state() = s;
      run_.take(event);
      count += from(State(run_.state()));
    }
    return counts_[s.done] = count;
  }

  Run run_;
  std::map<std::vector<std::uint8_t>, std::uint64_t> counts_;
};

std::uint64_t runs_of(const Order& order) {
  ModelBuilder b;
  b.device("a");
  b.unordered();
  for (const auto& after : order) {
    StepIs is;
    for (const std::size_t before : after) is.after.emplace_back(before);
    b.await(when::always(), is);
  }
  return Runs(b.model()).count();
}

/// A procedure with these steps on a site of one switch; the platform does not matter.
std::uint64_t runs_of_text(const std::string& steps) {
  const std::string text =
      "procedure: count\n"
      "site:\n"
      "  site: one switch\n"
      "  platform:\n"
      "    platform: any\n"
      "    numbers: [1, 9]\n"
      "    priorities: [1, 15]\n"
      "    factory: {number: 1, priority: 7, enabled: true, side: none}\n"
      "    number-takes: at-once\n"
      "    priority-takes: at-once\n"
      "    settings-follow: device\n"
      "    side-takes: at-once\n"
      "    side-needs-disabled: false\n"
      "    facing: any\n"
      "    side-leads-to: any\n"
      "    software: any\n"
      "    orphans: restart\n"
      "    election: [priority]\n"
      "  devices: {a: {}}\n"
      "properties: [no-split]\n"
      "steps:\n" +
      steps;
  const MemoryFiles files({{"count.yaml", text}});
  auto model = load_procedure("count.yaml", files);
  REQUIRE(model.ok());
  return Runs(std::move(model).value()).count();
}

/// Steps that follow one another are written one after the other; every other order by `after`.
std::string text_by_after(const Order& order) {
  std::string text = "  - any-order:\n";
  for (std::size_t i = 0; i < order.size(); ++i) {
    text += "      - await: {condition: up(a), id: x" + std::to_string(i) + ", after: [";
    for (std::size_t j = 0; j < order[i].size(); ++j) text += (j == 0 ? "x" : ", x") + std::to_string(order[i][j]);
    text += "]}\n";
  }
  return text;
}

std::string chains_text(const std::vector<std::size_t>& lengths) {
  std::string text = "  - any-order:\n";
  for (const std::size_t length : lengths) {
    for (std::size_t i = 0; i < length; ++i) text += i == 0 ? "      - - await: up(a)\n" : "        - await: up(a)\n";
  }
  return text;
}

}  // namespace

// OEIS A000111: "Number of linear extensions of the zig-zag poset".
TEST_CASE("5.a zigzag orders: OEIS A000111") {
  constexpr std::uint64_t published[] = {1, 1, 1, 2, 5, 16, 61, 272, 1385};
  for (std::size_t n = 0; n <= 8; ++n) {
    CAPTURE(n);
    CHECK(runs_of(zigzag(n)) == published[n]);
    if (n > 0) CHECK(runs_of_text(text_by_after(zigzag(n))) == published[n]);
  }
}

// Two chains of p and q steps: the binomial coefficient (p + q over p), OEIS A007318; its centre 1, 2, 6, 20, 70, 252,
// OEIS A000984.
TEST_CASE("5.a two chains: binomials, OEIS A000984") {
  constexpr std::uint64_t published[] = {1, 2, 6, 20, 70, 252};
  for (std::size_t n = 1; n <= 5; ++n) {
    CAPTURE(n);
    CHECK(runs_of(chains({n, n})) == published[n]);
    CHECK(runs_of_text(chains_text({n, n})) == published[n]);
    CHECK(interleavings({n, n}) == published[n]);
  }
  CHECK(runs_of(chains({5, 2})) == 21);
  CHECK(runs_of_text(chains_text({5, 2})) == 21);
}

TEST_CASE("5.a several chains: multinomials, and no order at all: factorials, OEIS A000142") {
  for (const auto& lengths : std::vector<std::vector<std::size_t>>{{2, 2, 2}, {3, 2, 1}, {4, 1, 3}, {1, 1, 1, 1, 1}}) {
    CHECK(runs_of(chains(lengths)) == interleavings(lengths));
    CHECK(runs_of_text(chains_text(lengths)) == interleavings(lengths));
  }
  CHECK(interleavings({1, 1, 1, 1, 1}) == 120);
  CHECK(interleavings({2, 2, 2}) == 90);
}

// The 2 × n grid: the Catalan numbers, OEIS A000108; the 3 × n grid: OEIS A005789 (standard tableaux of three rows).
TEST_CASE("5.a grids: Catalan numbers, OEIS A000108, and three-dimensional ones, OEIS A005789") {
  constexpr std::uint64_t catalan[] = {1, 1, 2, 5, 14, 42, 132, 429};
  constexpr std::uint64_t of_three_rows[] = {1, 1, 5, 42, 462};
  for (std::size_t n = 1; n <= 7; ++n) {
    CAPTURE(n);
    CHECK(runs_of(grid(2, n)) == catalan[n]);
    if (n <= 6) CHECK(runs_of_text(text_by_after(grid(2, n))) == catalan[n]);
  }
  for (std::size_t n = 1; n <= 4; ++n) CHECK(runs_of(grid(3, n)) == of_three_rows[n]);
}

// OEIS A046873: "Number of total orders extending inclusion on P({1,...,n})".
TEST_CASE("5.a subsets after their subsets: OEIS A046873") {
  constexpr std::uint64_t published[] = {1, 1, 2, 48};
  for (std::size_t n = 0; n <= 3; ++n) {
    CHECK(runs_of(boolean_lattice(n)) == published[n]);
    CHECK(runs_of_text(text_by_after(boolean_lattice(n))) == published[n]);
  }
}

// A series-parallel order: what follows `any-order` waits for all branches, and orders nest. The number of linear
// extensions of a series composition is the product, of a parallel one the product times the interleavings.
TEST_CASE("5.a any-order nests, and what follows it waits for all branches") {
  const std::string text =
      "  - await: up(a)\n"
      "  - any-order:\n"
      "      - await: up(a)\n"
      "      - - await: up(a)\n"
      "        - any-order:\n"
      "            - await: up(a)\n"
      "            - await: up(a)\n"
      "            - - await: up(a)\n"
      "              - await: up(a)\n"
      "        - await: up(a)\n"
      "  - await: up(a)\n";
  // The inner any-order: 4! / (1! 1! 2!) = 12 orders; with a step before and after it 6 steps; beside one step: 7.
  CHECK(runs_of_text(text) == 12 * 7);
}

// How many orders of events the constraints leave open (semantics 5.a, 5.b, 5.c.4), counted by asking for one after
// another and excluding each that was told: as many as the partial order has linear extensions, which are published for
// some families of orders. tests/outside counts the same on the concrete semantics. The values of A000111 were compared
// with the published sequence; those of the others are from memory.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <set>
#include <string>
#include <vector>

#include "solver/decode.hpp"
#include "solver/unroller.hpp"
#include "solver/z3_solver.hpp"
#include "support/model_builder.hpp"
#include "support/partial_orders.hpp"

using namespace cairn;
using namespace cairn::test;
using solver::Outcome;

namespace {

/// All runs of `length` events that the constraints allow, each told once.
std::vector<Trace> runs_of(const Model& model, std::size_t length) {
  const FaultBudget& faults = model.procedure.faults;
  system::System system(model, faults, system::static_domains(model, faults));
  solver::Unroller unroller(system);
  const auto z3 = solver::make_z3_solver(nullptr);
  solver::Clauses clauses(system.terms, *z3);
  for (std::size_t t = 0; t < length; ++t) clauses.require(unroller.one_event(t));
  std::vector<Trace> runs;
  while (z3->check({}, {}) == Outcome::satisfiable) {
    const std::vector<std::size_t> places = solver::decode(unroller, clauses, length);
    runs.push_back(solver::trace_of(system, places));
    std::vector<system::Term> another;
    for (std::size_t t = 0; t < length; ++t) another.push_back(!unroller.happens(t, places[t]));
    clauses.require(system.terms.any(another));
  }
  return runs;
}

/// That they differ from one another, and that nothing can follow them.
std::size_t count_of_longest(const Model& model, std::size_t length) {
  const std::vector<Trace> runs = runs_of(model, length);
  CHECK(std::set<Trace>(runs.begin(), runs.end()).size() == runs.size());
  CHECK(runs_of(model, length + 1).empty());
  return runs.size();
}

/// What is done in the steps does not matter, as long as none of them ever has to wait.
enum class Kind { awaits, checks, saves };

Model procedure_of(const Order& order, Kind kind) {
  ModelBuilder b;
  const DeviceId a = b.device("gate-1");
  b.unordered();
  for (const auto& after : order) {
    StepIs is;
    for (const std::size_t before : after) is.after.emplace_back(before);
    if (kind == Kind::awaits) b.await(when::up(a), is);
    if (kind == Kind::checks) b.check(when::up(a), is);
    if (kind == Kind::saves) b.save({a}, is);
  }
  return b.model();
}

std::size_t orders_of(const Order& order, Kind kind = Kind::checks) {
  return count_of_longest(procedure_of(order, kind), order.size());
}

bool keeps_to(const Trace& run, const Order& order) {
  std::vector<std::size_t> place(order.size());
  for (std::size_t t = 0; t < run.size(); ++t) place[run[t].place] = t;
  for (std::size_t step = 0; step < order.size(); ++step) {
    if (std::ranges::any_of(order[step], [&](std::size_t before) { return place[before] > place[step]; })) return false;
  }
  return true;
}

/// Switches that are off and joined by nothing, each switched on by a step.
ModelBuilder apart(std::size_t devices, bool one_after_another) {
  ModelBuilder b;
  std::vector<DeviceId> all;
  DeviceIs off;
  off.on = false;
  for (std::size_t i = 1; i <= devices; ++i) all.push_back(b.device("gate-" + std::to_string(i), off));
  if (!one_after_another) b.unordered();
  for (const DeviceId d : all) b.power_on(d);
  return b;
}

}  // namespace

// OEIS A000111: "Number of linear extensions of the zig-zag poset".
TEST_CASE("zigzag orders: OEIS A000111") {
  constexpr std::size_t published[] = {1, 1, 1, 2, 5, 16, 61, 272};
  for (std::size_t n = 1; n <= 7; ++n) {
    CAPTURE(n);
    CHECK(orders_of(zigzag(n)) == published[n]);
    if (n > 5) continue;
    CHECK(orders_of(zigzag(n), Kind::awaits) == published[n]);
    CHECK(orders_of(zigzag(n), Kind::saves) == published[n]);
  }
}

TEST_CASE("each run told keeps to the order, and none that does is missing") {
  const Order order = zigzag(5);
  const std::vector<Trace> runs = runs_of(procedure_of(order, Kind::checks), order.size());
  for (const Trace& run : runs) CHECK(keeps_to(run, order));
  std::size_t kept = 0;
  Trace any(order.size());
  for (std::size_t i = 0; i < any.size(); ++i) any[i] = {Event::Kind::step, static_cast<std::uint32_t>(i)};
  do {
    if (!keeps_to(any, order)) continue;
    ++kept;
    CHECK(std::ranges::count(runs, any) == 1);
  } while (std::ranges::next_permutation(any).found);
  CHECK(kept == runs.size());
}

// Two chains of n steps: the central binomial coefficients, OEIS A000984; others: OEIS A007318.
TEST_CASE("two chains: binomials, OEIS A000984") {
  constexpr std::size_t published[] = {1, 2, 6, 20, 70, 252};
  for (std::size_t n = 1; n <= 5; ++n) CHECK(orders_of(chains({n, n})) == published[n]);
  CHECK(orders_of(chains({5, 2})) == 21);
  CHECK(orders_of(chains({7, 3})) == 120);
  CHECK(orders_of(chains({3, 2, 1})) == interleavings({3, 2, 1}));
}

// The 2 × n grid: the Catalan numbers, OEIS A000108.
TEST_CASE("grids: Catalan numbers, OEIS A000108") {
  constexpr std::size_t published[] = {1, 1, 2, 5, 14, 42, 132};
  for (std::size_t n = 1; n <= 6; ++n) CHECK(orders_of(grid(2, n)) == published[n]);
  // Three rows: OEIS A005789.
  CHECK(orders_of(grid(3, 3)) == 42);
}

// OEIS A046873: "Number of total orders extending inclusion on P({1,...,n})".
TEST_CASE("subsets after their subsets: OEIS A046873") {
  constexpr std::size_t published[] = {1, 1, 2, 48};
  for (std::size_t n = 0; n <= 3; ++n) CHECK(orders_of(boolean_lattice(n)) == published[n]);
}

// A start completes at any time after its step. Where the steps follow one another, each further start has one place
// more on either side of all before it: 1, 3, 15, 105, the double factorials, OEIS A001147. Where they do not, n pairs
// are in order: (2n)! / 2^n, OEIS A000680.
TEST_CASE("5.b the moments of starts: OEIS A001147 and A000680") {
  constexpr std::size_t in_a_row[] = {1, 1, 3, 15, 105};
  constexpr std::size_t free[] = {1, 1, 6, 90};
  for (std::size_t n = 1; n <= 4; ++n) CHECK(count_of_longest(apart(n, true).model(), 2 * n) == in_a_row[n]);
  for (std::size_t n = 1; n <= 3; ++n) CHECK(count_of_longest(apart(n, false).model(), 2 * n) == free[n]);
}

// Of n steps in a row at most k are omitted: partial sums of binomials, OEIS A008949.
TEST_CASE("5.c.4 which steps are omitted: sums of binomials, OEIS A008949") {
  constexpr std::size_t published[] = {1, 6, 16, 26, 31, 32};
  for (std::int64_t k = 0; k <= 5; ++k) {
    Model model = procedure_of(chains({5}), Kind::saves);
    model.procedure.faults.omissions = k;
    CHECK(count_of_longest(model, 5) == published[k]);
  }
}

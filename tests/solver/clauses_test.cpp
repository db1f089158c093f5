// Terms as clauses: a literal is equal to its term, whatever the values of the variables.
#include <doctest/doctest.h>

#include <random>
#include <vector>

#include "solver/clauses.hpp"
#include "solver/plain_solver.hpp"
#include "solver/scripted_solver.hpp"
#include "solver/z3_solver.hpp"
#include "system/evaluate.hpp"

using namespace cairn::solver;
using cairn::system::Lanes;
using cairn::system::Program;
using cairn::system::Term;
using cairn::system::Terms;
using cairn::test::make_plain_solver;
using cairn::test::ScriptedSolver;

namespace {

// Six variables: 64 assignments, one a lane.
constexpr std::size_t width = 6;

struct Pool {
  Terms terms;
  std::vector<Term> variables;

  Pool() {
    for (std::size_t i = 0; i < width; ++i) variables.push_back(terms.variable("v" + std::to_string(i)));
  }

  Term random_term(std::mt19937& random, int operations) {
    std::vector<Term> made = variables;
    made.push_back(cairn::system::always);
    const auto any = [&] {
      const Term picked = made[random() % made.size()];
      return random() % 2 == 0 ? picked : !picked;
    };
    for (int i = 0; i < operations; ++i) {
      switch (random() % 5) {
        case 0:
          made.push_back(terms.both(any(), any()));
          break;
        case 1:
          made.push_back(terms.any({any(), any(), any()}));
          break;
        case 2:
          made.push_back(terms.choose(any(), any(), any()));
          break;
        case 3:
          made.push_back(terms.differ(any(), any()));
          break;
        default:
          made.push_back(terms.all({any(), any(), any(), any()}));
          break;
      }
    }
    return made.back();
  }

  // Bit i of the result: the term under the assignment in which variable j is bit j of i.
  [[nodiscard]] Lanes truth_table(Term term) const {
    const std::vector<Term> outputs{term};
    const Program program(terms, variables, outputs);
    std::vector<Lanes> inputs(width, 0);
    for (std::size_t lane = 0; lane < 64; ++lane) {
      for (std::size_t j = 0; j < width; ++j) inputs[j] |= Lanes{lane >> j & 1U} << lane;
    }
    std::vector<Lanes> results(1), scratch;
    program.run(inputs, results, scratch);
    return results[0];
  }
};

std::vector<Literal> assignment(Clauses& clauses, const Pool& pool, std::size_t lane) {
  std::vector<Literal> assumed;
  for (std::size_t j = 0; j < width; ++j) {
    const Literal variable = clauses.literal_of(pool.variables[j]);
    assumed.push_back((lane >> j & 1U) != 0 ? variable : !variable);
  }
  return assumed;
}

bool can(Solver& solver, std::vector<Literal> assumptions, Literal and_this) {
  assumptions.push_back(and_this);
  return solver.check(assumptions, {}) == Outcome::satisfiable;
}

}  // namespace

TEST_CASE("the literal of a term has its value, both ways") {
  std::mt19937 random(5);
  for (int round = 0; round < 12; ++round) {
    Pool pool;
    const auto solver = round % 2 == 0 ? make_plain_solver() : make_z3_solver(nullptr);
    Clauses clauses(pool.terms, *solver);
    const Term term = pool.random_term(random, 15);
    const Literal literal = clauses.literal_of(term);
    const Lanes truth = pool.truth_table(term);
    for (std::size_t lane = 0; lane < 64; ++lane) {
      const std::vector<Literal> assumed = assignment(clauses, pool, lane);
      const bool holds = (truth >> lane & 1U) != 0;
      CHECK(can(*solver, assumed, literal) == holds);
      CHECK(can(*solver, assumed, !literal) == !holds);
    }
  }
}

TEST_CASE("what is demanded holds, with a condition or without") {
  std::mt19937 random(6);
  for (int round = 0; round < 40; ++round) {
    Pool pool;
    const auto solver = round % 2 == 0 ? make_plain_solver() : make_z3_solver(nullptr);
    Clauses clauses(pool.terms, *solver);
    const Term term = pool.random_term(random, 12), other = pool.random_term(random, 12);
    if (round % 3 == 0) clauses.literal_of(term);  // what is known already is demanded by its literal
    clauses.require(term);
    const Literal condition = solver->declare();
    clauses.require_if(condition, other);
    const Lanes truth = pool.truth_table(term), other_truth = pool.truth_table(other);
    for (std::size_t lane = 0; lane < 64; ++lane) {
      const std::vector<Literal> assumed = assignment(clauses, pool, lane);
      const bool holds = (truth >> lane & 1U) != 0;
      CHECK(can(*solver, assumed, !condition) == holds);
      CHECK(can(*solver, assumed, condition) == (holds && (other_truth >> lane & 1U) != 0));
    }
  }
}

TEST_CASE("a node is translated once, and its negation for nothing") {
  Pool pool;
  ScriptedSolver solver;
  Clauses clauses(pool.terms, solver);
  const Term a = pool.variables[0], b = pool.variables[1];
  const Term both = pool.terms.both(a, b);
  const Literal literal = clauses.literal_of(both);
  CHECK(solver.variables() == 3);
  CHECK(solver.clauses() == 3);
  CHECK(clauses.literal_of(both) == literal);
  CHECK(clauses.literal_of(!both) == !literal);
  CHECK(solver.variables() == 3);
  CHECK(solver.clauses() == 3);
}

TEST_CASE("outermost conjunctions and disjunctions cost no Booleans") {
  Pool pool;
  ScriptedSolver solver;
  Clauses clauses(pool.terms, solver);
  const std::vector<Term>& v = pool.variables;
  clauses.require(pool.terms.all({pool.terms.any({v[0], !v[1], v[2]}), !v[3], pool.terms.either(v[4], v[5])}));
  CHECK(solver.variables() == width);
  CHECK(solver.clauses() == 3);
}

TEST_CASE("constants are literals too, and demands") {
  for (const auto& solver : {make_plain_solver(), make_z3_solver(nullptr)}) {
    Pool pool;
    Clauses clauses(pool.terms, *solver);
    clauses.require(cairn::system::always);
    CHECK(solver->clauses() == 0);
    CHECK(can(*solver, {}, clauses.literal_of(cairn::system::always)));
    CHECK_FALSE(can(*solver, {}, clauses.literal_of(cairn::system::never)));
    clauses.require(cairn::system::never);
    CHECK(solver->check({}, {}) == Outcome::unsatisfiable);
  }
}

TEST_CASE("values of terms are read from the model; variables that no clause knows are false") {
  Pool pool;
  const auto solver = make_z3_solver(nullptr);
  Clauses clauses(pool.terms, *solver);
  const Term a = pool.variables[0], b = pool.variables[1];
  const Term differ = pool.terms.differ(a, b);
  clauses.require(differ);
  clauses.require(a);
  REQUIRE(solver->check({}, {}) == Outcome::satisfiable);
  CHECK(clauses.value_of(a));
  CHECK_FALSE(clauses.value_of(b));
  CHECK(clauses.value_of(!b));
  CHECK_FALSE(clauses.value_of(pool.variables[5]));
  CHECK(clauses.value_of(!pool.variables[5]));
}

TEST_CASE("terms as deep as a run is long are translated without running out of stack") {
  Terms terms;
  Term chain = terms.variable("first");
  for (int i = 0; i < 200'000; ++i) chain = terms.choose(terms.variable(""), chain, terms.variable(""));
  ScriptedSolver solver;
  Clauses clauses(terms, solver);
  clauses.require(chain);
  CHECK(solver.clauses() > 200'000);
}

// What every implementation of the port promises (src/solver/solver.hpp).
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <functional>
#include <memory>
#include <random>
#include <vector>

#include "solver/cadical_solver.hpp"
#include "solver/pigeonholes.hpp"
#include "solver/plain_solver.hpp"
#include "solver/z3_solver.hpp"

using namespace cairn::solver;
using cairn::test::add_pigeonholes;
using cairn::test::make_plain_solver;

namespace {

using Clause = std::vector<Literal>;

void for_each_solver(const std::function<void(Solver&)>& test) {
  SUBCASE("Z3") {
    const auto solver = make_z3_solver(nullptr);
    test(*solver);
  }
  SUBCASE("CaDiCaL") {
    const auto solver = make_cadical_solver(nullptr);
    test(*solver);
  }
  SUBCASE("plain") {
    const auto solver = make_plain_solver();
    test(*solver);
  }
}

bool has(const std::vector<Literal>& all, Literal one) {
  return std::find(all.begin(), all.end(), one) != all.end();
}

Clause random_clause(std::mt19937& random, const std::vector<Literal>& variables, std::size_t size) {
  Clause clause;
  for (std::size_t i = 0; i < size; ++i) {
    const Literal each = variables[random() % variables.size()];
    clause.push_back(random() % 2 == 0 ? each : !each);
  }
  return clause;
}

}  // namespace

TEST_CASE("a literal is a variable and a sign") {
  constexpr Literal a(3);
  CHECK(a.variable() == 3);
  CHECK_FALSE(a.negated());
  CHECK((!a).negated());
  CHECK((!a).variable() == 3);
  CHECK(!!a == a);
  CHECK(Literal(3, true) == !a);
}

TEST_CASE("without clauses all can hold") {
  for_each_solver([](Solver& solver) {
    CHECK(solver.check({}, {}) == Outcome::satisfiable);
    const Literal a = solver.declare();
    CHECK(solver.check({}, {}) == Outcome::satisfiable);
    CHECK(solver.check(Clause{a}, {}) == Outcome::satisfiable);
    CHECK(solver.value(a));
    CHECK_FALSE(solver.value(!a));
    CHECK(solver.check(Clause{!a}, {}) == Outcome::satisfiable);
    CHECK_FALSE(solver.value(a));
    CHECK(solver.value(!a));
    CHECK(solver.cause() == Cause::none);
  });
}

TEST_CASE("variables and clauses are counted as declared and added") {
  for_each_solver([](Solver& solver) {
    CHECK(solver.variables() == 0);
    CHECK(solver.clauses() == 0);
    const Literal a = solver.declare(), b = solver.declare();
    CHECK(a.variable() == 0);
    CHECK(b.variable() == 1);
    solver.add({a, b});
    solver.add({a, b});
    CHECK(solver.variables() == 2);
    CHECK(solver.clauses() == 2);
  });
}

TEST_CASE("assumptions count for one question, clauses for all that follow") {
  for_each_solver([](Solver& solver) {
    const Literal a = solver.declare(), b = solver.declare();
    solver.add({!a, b});
    CHECK(solver.check(Clause{a, !b}, {}) == Outcome::unsatisfiable);
    CHECK(solver.check(Clause{a}, {}) == Outcome::satisfiable);
    CHECK(solver.value(b));
    CHECK(solver.check(Clause{!b}, {}) == Outcome::satisfiable);
    CHECK_FALSE(solver.value(a));
    solver.add({a});
    CHECK(solver.check(Clause{!b}, {}) == Outcome::unsatisfiable);
    solver.add({!b});
    CHECK(solver.check({}, {}) == Outcome::unsatisfiable);
    CHECK(solver.core().empty());
    CHECK(solver.check(Clause{a}, {}) == Outcome::unsatisfiable);
  });
}

TEST_CASE("the empty clause cannot hold, and nothing can with it") {
  for_each_solver([](Solver& solver) {
    const Literal a = solver.declare();
    CHECK(solver.check(Clause{a}, {}) == Outcome::satisfiable);
    solver.add({});
    CHECK(solver.clauses() == 1);
    CHECK(solver.check({}, {}) == Outcome::unsatisfiable);
    CHECK(solver.core().empty());
    CHECK(solver.check(Clause{a}, {}) == Outcome::unsatisfiable);
    CHECK(solver.core().empty());
  });
}

TEST_CASE("a clause may name a literal twice, or both signs of a variable") {
  for_each_solver([](Solver& solver) {
    const Literal a = solver.declare(), b = solver.declare();
    solver.add({a, !a});
    CHECK(solver.check(Clause{!a}, {}) == Outcome::satisfiable);
    solver.add({b, b});
    CHECK(solver.check(Clause{!b}, {}) == Outcome::unsatisfiable);
  });
}

TEST_CASE("assumptions that contradict each other are the core") {
  for_each_solver([](Solver& solver) {
    const Literal a = solver.declare(), b = solver.declare();
    CHECK(solver.check(Clause{b, a, !a}, {}) == Outcome::unsatisfiable);
    const std::vector<Literal> core = solver.core();
    CHECK(has(core, a));
    CHECK(has(core, !a));
    CHECK(core.size() == 2);
    CHECK(solver.check(Clause{a, a}, {}) == Outcome::satisfiable);
  });
}

TEST_CASE("a core tells assumptions that cannot hold, in the order asked") {
  for_each_solver([](Solver& solver) {
    std::vector<Literal> chain;
    for (int i = 0; i < 10; ++i) chain.push_back(solver.declare());
    for (std::size_t i = 0; i + 1 < chain.size(); ++i) solver.add({!chain[i], chain[i + 1]});
    const Literal idle = solver.declare();
    const Clause asked{idle, chain[0], !chain[9]};
    CHECK(solver.check(asked, {}) == Outcome::unsatisfiable);
    CHECK(solver.core() == Clause{chain[0], !chain[9]});
    const Clause negated{!chain[9], !idle, chain[3]};
    CHECK(solver.check(negated, {}) == Outcome::unsatisfiable);
    CHECK(solver.core() == Clause{!chain[9], chain[3]});
  });
}

TEST_CASE("variables may be declared between questions") {
  for_each_solver([](Solver& solver) {
    Literal last = solver.declare();
    solver.add({last});
    for (int i = 0; i < 50; ++i) {
      const Literal next = solver.declare();
      solver.add({!last, next});
      CHECK(solver.check(Clause{!next}, {}) == Outcome::unsatisfiable);
      CHECK(solver.check({}, {}) == Outcome::satisfiable);
      CHECK(solver.value(next));
      last = next;
    }
  });
}

TEST_CASE("one pigeon too many does not fit") {
  for_each_solver([](Solver& solver) {
    const auto [sits] = add_pigeonholes(solver, 6, 5);
    CHECK(solver.variables() == 30);
    CHECK(solver.clauses() == 6 + 5 * 15);
    CHECK(solver.check({}, {}) == Outcome::unsatisfiable);
  });
}

TEST_CASE("as many pigeons as holes fit, one each") {
  for_each_solver([](Solver& solver) {
    const auto [sits] = add_pigeonholes(solver, 5, 5);
    const Clause first_sits_last{sits[0][4]};
    REQUIRE(solver.check(first_sits_last, {}) == Outcome::satisfiable);
    CHECK(solver.value(sits[0][4]));
    for (std::size_t j = 0; j < 5; ++j) {
      std::size_t pigeons = 0;
      for (std::size_t i = 0; i < 5; ++i) pigeons += solver.value(sits[i][j]) ? 1 : 0;
      CHECK(pigeons == 1);
    }
  });
}

TEST_CASE("the effort of a question is counted, and can be bounded") {
  for_each_solver([](Solver& solver) {
    add_pigeonholes(solver, 7, 6);
    const std::uint64_t before = solver.effort();
    CHECK(solver.check({}, {.seconds = {}, .effort = 0, .megabytes = {}}) == Outcome::unknown);
    CHECK(solver.cause() == Cause::effort);
    CHECK(solver.effort() == before);
    CHECK(solver.check({}, {.seconds = {}, .effort = 20, .megabytes = {}}) == Outcome::unknown);
    CHECK(solver.cause() == Cause::effort);
    const std::uint64_t little = solver.effort() - before;
    CHECK(little >= 20);
    CHECK(solver.check({}, {}) == Outcome::unsatisfiable);
    CHECK(solver.cause() == Cause::none);
    CHECK(solver.effort() - before > little);
  });
}

TEST_CASE("random questions are answered alike, and answers hold what they say") {
  std::mt19937 random(41);
  std::size_t satisfiable = 0, unsatisfiable = 0;
  for (int round = 0; round < 60; ++round) {
    const auto plain = make_plain_solver();
    const std::array<std::unique_ptr<Solver>, 2> solvers{make_z3_solver(nullptr), make_cadical_solver(nullptr)};
    std::vector<Literal> variables(12);
    for (Literal& variable : variables) {
      variable = plain->declare();
      for (const auto& solver : solvers) REQUIRE(solver->declare() == variable);
    }
    std::vector<Clause> clauses;
    for (int question = 0; question < 10; ++question) {
      for (int i = 0; i < 6; ++i) {
        clauses.push_back(random_clause(random, variables, 2 + random() % 3));
        plain->add(clauses.back());
        for (const auto& solver : solvers) solver->add(clauses.back());
      }
      const Clause assumptions = random_clause(random, variables, random() % 5);
      const Outcome outcome = plain->check(assumptions, {});
      ++(outcome == Outcome::satisfiable ? satisfiable : unsatisfiable);
      for (const auto& solver : solvers) {
        REQUIRE(solver->check(assumptions, {}) == outcome);
        if (outcome == Outcome::satisfiable) {
          const auto holds = [&](Literal each) { return solver->value(each); };
          for (const Clause& clause : clauses) CHECK(std::any_of(clause.begin(), clause.end(), holds));
          CHECK(std::all_of(assumptions.begin(), assumptions.end(), holds));
        } else {
          const std::vector<Literal> core = solver->core();
          for (const Literal each : core) CHECK(has(assumptions, each));
          CHECK(plain->check(core, {}) == Outcome::unsatisfiable);
          CHECK(solver->check(core, {}) == Outcome::unsatisfiable);
        }
      }
    }
  }
  CHECK(satisfiable > 100);
  CHECK(unsatisfiable > 100);
}

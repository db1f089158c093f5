// The fake does as it is told.
#include <doctest/doctest.h>

#include "solver/scripted_solver.hpp"

using namespace cairn::solver;
using cairn::test::ScriptedSolver;

TEST_CASE("a scripted solver gives the answers of its script and remembers the questions") {
  ScriptedSolver solver;
  const Literal a = solver.declare(), b = solver.declare();
  solver.add({a, !b});
  solver.then({.outcome = Outcome::satisfiable, .holds = {a}})
      .then({.outcome = Outcome::unsatisfiable, .core = {b}})
      .then({.outcome = Outcome::unknown, .cause = Cause::failed, .complaint = "out of luck"});

  const std::vector<Literal> assumptions{b};
  CHECK(solver.check(assumptions, {}) == Outcome::satisfiable);
  CHECK(solver.value(a));
  CHECK_FALSE(solver.value(!a));
  CHECK(solver.value(!b));
  CHECK(solver.check(assumptions, {}) == Outcome::unsatisfiable);
  CHECK(solver.core() == assumptions);
  CHECK_FALSE(solver.used_up());
  CHECK(solver.check({}, {}) == Outcome::unknown);
  CHECK(solver.cause() == Cause::failed);
  CHECK(solver.complaint() == "out of luck");

  CHECK(solver.used_up());
  CHECK(solver.added() == std::vector<ScriptedSolver::Clause>{{a, !b}});
  REQUIRE(solver.asked().size() == 3);
  CHECK(solver.asked()[0].assumptions == assumptions);
  CHECK(solver.asked()[0].clauses == 1);
  CHECK_THROWS(static_cast<void>(solver.check({}, {})));
}

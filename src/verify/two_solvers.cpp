#include "verify/two_solvers.hpp"

#include "solver/cadical_solver.hpp"
#include "solver/z3_solver.hpp"

namespace cairn::verify {

solver::SolverMaker TwoSolvers::searching(const Limits& limits) {
  return counting([interrupt = limits.interrupt] { return solver::make_cadical_solver(interrupt); }, searching_);
}

solver::SolverMaker TwoSolvers::judging(const Limits& limits) {
  return counting([interrupt = limits.interrupt] { return solver::make_z3_solver(interrupt); }, judging_);
}

SolverWork TwoSolvers::work() const {
  return {searching_.questions + judging_.questions, searching_.effort, judging_.effort};
}

}  // namespace cairn::verify

#include "solver/counting_solver.hpp"

#include <utility>

namespace cairn::solver {

namespace {

/// Hands everything on.
class CountingSolver final : public Solver {
 public:
  CountingSolver(std::unique_ptr<Solver> solver, Tally& tally) : solver_(std::move(solver)), tally_(tally) {}

  Literal declare() override { return solver_->declare(); }
  void add(std::span<const Literal> clause) override { solver_->add(clause); }
  Outcome check(std::span<const Literal> assumptions, const Bounds& bounds) override {
    const std::uint64_t before = solver_->effort();
    const Outcome outcome = solver_->check(assumptions, bounds);
    ++tally_.questions;
    tally_.effort += solver_->effort() - before;
    return outcome;
  }
  [[nodiscard]] bool value(Literal literal) override { return solver_->value(literal); }
  [[nodiscard]] std::vector<Literal> core() override { return solver_->core(); }
  [[nodiscard]] Cause cause() const override { return solver_->cause(); }
  [[nodiscard]] std::string complaint() const override { return solver_->complaint(); }
  [[nodiscard]] std::uint64_t effort() const override { return solver_->effort(); }
  [[nodiscard]] std::size_t variables() const override { return solver_->variables(); }
  [[nodiscard]] std::size_t clauses() const override { return solver_->clauses(); }

 private:
  std::unique_ptr<Solver> solver_;
  Tally& tally_;
};

}  // namespace

SolverMaker counting(SolverMaker maker, Tally& tally) {
  return [maker = std::move(maker), &tally] { return std::make_unique<CountingSolver>(maker(), tally); };
}

}  // namespace cairn::solver

/// \file
/// A solver that answers what it was told to answer, and remembers what it was asked: for tests of what asks.
#pragma once

#include <algorithm>
#include <deque>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "solver/solver.hpp"

namespace cairn::test {

class ScriptedSolver final : public solver::Solver {
 public:
  using Literal = solver::Literal;
  using Clause = std::vector<Literal>;

  /// One answer. What does not go with the outcome is left empty.
  struct Answer {
    solver::Outcome outcome = solver::Outcome::unknown;
    std::vector<Literal> holds{};  ///< satisfiable: the variables that are true
    std::vector<Literal> core{};   ///< unsatisfiable
    solver::Cause cause = solver::Cause::none;
    std::string complaint{};
  };
  /// One question, as it was asked.
  struct Question {
    std::vector<Literal> assumptions;
    solver::Bounds bounds;
    std::size_t clauses;  ///< that had been added before
  };

  /// Answers are given in the order of these calls; a question too many throws.
  ScriptedSolver& then(Answer answer) {
    script_.push_back(std::move(answer));
    return *this;
  }

  [[nodiscard]] const std::vector<Clause>& added() const { return clauses_; }
  [[nodiscard]] const std::vector<Question>& asked() const { return asked_; }
  [[nodiscard]] bool used_up() const { return script_.empty(); }

  Literal declare() override { return Literal(variables_++); }
  void add(std::span<const Literal> clause) override { clauses_.emplace_back(clause.begin(), clause.end()); }
  using Solver::add;
  solver::Outcome check(std::span<const Literal> assumptions, const solver::Bounds& bounds) override {
    asked_.push_back({{assumptions.begin(), assumptions.end()}, bounds, clauses_.size()});
    if (script_.empty()) throw std::logic_error("the script has no answer left");
    answer_ = std::move(script_.front());
    script_.pop_front();
    return answer_.outcome;
  }
  [[nodiscard]] bool value(Literal literal) override {
    const bool holds =
        std::find(answer_.holds.begin(), answer_.holds.end(), Literal(literal.variable())) != answer_.holds.end();
    return holds != literal.negated();
  }
  [[nodiscard]] std::vector<Literal> core() override { return answer_.core; }
  [[nodiscard]] solver::Cause cause() const override { return answer_.cause; }
  [[nodiscard]] std::string complaint() const override { return answer_.complaint; }
  [[nodiscard]] std::uint64_t effort() const override { return asked_.size(); }
  [[nodiscard]] std::size_t variables() const override { return variables_; }
  [[nodiscard]] std::size_t clauses() const override { return clauses_.size(); }

 private:
  std::deque<Answer> script_;
  Answer answer_;
  std::vector<Clause> clauses_;
  std::vector<Question> asked_;
  std::uint32_t variables_ = 0;
};

}  // namespace cairn::test

#include "solver/plain_solver.hpp"

#include <algorithm>
#include <optional>
#include <vector>

namespace cairn::test {

namespace {

using solver::Bounds;
using solver::Cause;
using solver::Literal;
using solver::Outcome;

class PlainSolver final : public solver::Solver {
 public:
  Literal declare() override { return Literal(variables_++); }
  void add(std::span<const Literal> clause) override { clauses_.emplace_back(clause.begin(), clause.end()); }
  using Solver::add;

  Outcome check(std::span<const Literal> assumptions, const Bounds& bounds) override {
    cause_ = Cause::none;
    core_.clear();
    limit_ = bounds.effort ? std::optional(effort_ + *bounds.effort) : std::nullopt;
    Outcome outcome = decide(assumptions);
    if (outcome == Outcome::unsatisfiable) {
      // Assumptions go one after another as long as the rest will do.
      core_.assign(assumptions.begin(), assumptions.end());
      for (std::size_t i = core_.size(); i-- > 0;) {
        std::vector<Literal> fewer = core_;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        if (decide(fewer) == Outcome::unsatisfiable) core_ = fewer;
      }
    }
    if (outcome == Outcome::unknown) cause_ = Cause::effort;
    return outcome;
  }

  [[nodiscard]] bool value(Literal literal) override { return holds(literal) == true; }
  [[nodiscard]] std::vector<Literal> core() override { return core_; }
  [[nodiscard]] Cause cause() const override { return cause_; }
  [[nodiscard]] std::string complaint() const override { return {}; }
  [[nodiscard]] std::uint64_t effort() const override { return effort_; }
  [[nodiscard]] std::size_t variables() const override { return variables_; }
  [[nodiscard]] std::size_t clauses() const override { return clauses_.size(); }

 private:
  [[nodiscard]] std::optional<bool> holds(Literal literal) const {
    const std::optional<bool>& value = values_[literal.variable()];
    if (!value) return std::nullopt;
    return *value != literal.negated();
  }

  Outcome decide(std::span<const Literal> assumptions) {
    values_.assign(variables_, std::nullopt);
    for (const Literal each : assumptions) {
      if (holds(each) == false) return Outcome::unsatisfiable;
      values_[each.variable()] = !each.negated();
    }
    return search();
  }

  // True where nothing contradicts; `changed` where a clause with one literal left was heeded.
  bool heed_clauses(bool& changed) {
    for (const std::vector<Literal>& clause : clauses_) {
      std::optional<Literal> open;
      std::size_t left = 0;
      bool satisfied = false;
      for (const Literal each : clause) {
        satisfied = satisfied || holds(each) == true;
        if (holds(each)) continue;
        if (open != each) ++left;
        open = each;
      }
      if (satisfied || left > 1) continue;
      if (left == 0) return false;
      values_[open->variable()] = !open->negated();
      changed = true;
    }
    return true;
  }

  Outcome search() {
    for (bool changed = true; changed;) {
      changed = false;
      if (!heed_clauses(changed)) return Outcome::unsatisfiable;
    }
    const auto open = std::find(values_.begin(), values_.end(), std::nullopt);
    if (open == values_.end()) return Outcome::satisfiable;
    const auto place = static_cast<std::size_t>(open - values_.begin());
    const std::vector<std::optional<bool>> before = values_;
    for (const bool value : {true, false}) {
      if (limit_ && effort_ >= *limit_) return Outcome::unknown;
      ++effort_;
      values_ = before;
      values_[place] = value;
      const Outcome outcome = search();
      if (outcome != Outcome::unsatisfiable) return outcome;
    }
    return Outcome::unsatisfiable;
  }

  std::vector<std::vector<Literal>> clauses_;
  std::vector<std::optional<bool>> values_;
  std::vector<Literal> core_;
  std::optional<std::uint64_t> limit_;
  std::uint64_t effort_ = 0;
  std::uint32_t variables_ = 0;
  Cause cause_ = Cause::none;
};

}  // namespace

std::unique_ptr<solver::Solver> make_plain_solver() {
  return std::make_unique<PlainSolver>();
}

}  // namespace cairn::test

#include "solver/cadical_solver.hpp"

#include <algorithm>
#include <cadical.hpp>
#include <limits>

#include "solver/watcher.hpp"

namespace cairn::solver {

namespace {

class CadicalSolver final : public Solver {
 public:
  explicit CadicalSolver(const std::atomic<bool>* interrupt) : interrupt_(interrupt) { solver_.set("quiet", 1); }

  Literal declare() override { return Literal(static_cast<std::uint32_t>(declared_++)); }

  void add(std::span<const Literal> clause) override {
    ++added_;
    for (const Literal literal : clause) solver_.add(signed_of(literal));
    solver_.add(0);
  }
  using Solver::add;

  Outcome check(std::span<const Literal> assumptions, const Bounds& bounds) override {
    assumptions_.assign(assumptions.begin(), assumptions.end());
    cause_ = Cause::none;
    if (interrupt_ != nullptr && interrupt_->load(std::memory_order_relaxed)) cause_ = Cause::interrupted;
    if (bounds.effort == 0) cause_ = Cause::effort;
    if (cause_ != Cause::none) return Outcome::unknown;
    if (bounds.effort) {
      constexpr std::uint64_t most = std::numeric_limits<int>::max();
      solver_.limit("conflicts", static_cast<int>(std::min(*bounds.effort, most)));
    }
    for (const Literal literal : assumptions_) solver_.assume(signed_of(literal));
    return ask(bounds);
  }

  [[nodiscard]] bool value(Literal literal) override {
    // A variable that no clause mentions may have either value.
    if (signed_of(Literal(literal.variable())) > solver_.vars()) return literal.negated();
    return solver_.val(signed_of(literal)) > 0;
  }

  [[nodiscard]] std::vector<Literal> core() override {
    std::vector<Literal> needed;
    for (const Literal literal : assumptions_) {
      if (solver_.failed(signed_of(literal))) needed.push_back(literal);
    }
    return needed;
  }

  [[nodiscard]] Cause cause() const override { return cause_; }
  [[nodiscard]] std::string complaint() const override { return {}; }
  [[nodiscard]] std::uint64_t effort() const override { return effort_; }
  [[nodiscard]] std::size_t variables() const override { return declared_; }
  [[nodiscard]] std::size_t clauses() const override { return added_; }

 private:
  static int signed_of(Literal literal) {
    const int variable = static_cast<int>(literal.variable()) + 1;
    return literal.negated() ? -variable : variable;
  }

  Outcome ask(const Bounds& bounds) {
    const Watcher watcher({interrupt_, bounds.seconds, std::nullopt, {}, [this] { solver_.terminate(); }});
    const int answer = solver_.solve();
    ++effort_;
    if (answer == 10) return Outcome::satisfiable;
    if (answer == 20) return Outcome::unsatisfiable;
    cause_ = watcher.met();
    if (cause_ == Cause::none) cause_ = Cause::effort;
    return Outcome::unknown;
  }

  CaDiCaL::Solver solver_;
  std::vector<Literal> assumptions_;
  const std::atomic<bool>* interrupt_;
  std::size_t declared_ = 0, added_ = 0;
  std::uint64_t effort_ = 0;
  Cause cause_ = Cause::none;
};

}  // namespace

std::unique_ptr<Solver> make_cadical_solver(const std::atomic<bool>* interrupt) {
  return std::make_unique<CadicalSolver>(interrupt);
}

}  // namespace cairn::solver

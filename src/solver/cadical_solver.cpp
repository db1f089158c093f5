#include "solver/cadical_solver.hpp"

#include <algorithm>
#include <cadical.hpp>
#include <chrono>

#include "base/heap.hpp"

namespace cairn::solver {

namespace {

/// Counts what is learned, about a clause a conflict, and wants none of it.
class Counter final : public CaDiCaL::Learner {
 public:
  bool learning(int) override {
    ++learned;
    return false;
  }
  void learn(int) override {}
  std::uint64_t learned = 0;
};

/// Asked by CaDiCaL again and again whether to stop, at points that do not depend on time.
class Stop final : public CaDiCaL::Terminator {
 public:
  Stop(const std::atomic<bool>* interrupt, const Counter& counter) : interrupt_(interrupt), counter_(counter) {}

  /// A question begins now.
  void begin(const Bounds& bounds) {
    cause = Cause::none;
    bounds_ = bounds;
    learned_before_ = counter_.learned;
    looks_ = 0;
    start_ = std::chrono::steady_clock::now();
  }
  [[nodiscard]] std::uint64_t spent() const { return counter_.learned - learned_before_; }

  bool terminate() override {
    if (cause == Cause::none) cause = look();
    return cause != Cause::none;
  }

  Cause cause = Cause::none;  ///< the limit that was met

 private:
  [[nodiscard]] Cause look() {
    if (interrupt_ != nullptr && interrupt_->load(std::memory_order_relaxed)) return Cause::interrupted;
    if (bounds_.effort && spent() >= *bounds_.effort) return Cause::effort;
    const std::chrono::duration<double> elapsed = std::chrono::steady_clock::now() - start_;
    if (bounds_.seconds && elapsed.count() >= *bounds_.seconds) return Cause::time;
    return holds_too_much() ? Cause::memory : Cause::none;
  }

  // Walking the heap takes longer than the other looks, and it grows slowly beside the pace of these.
  [[nodiscard]] bool holds_too_much() {
    constexpr std::uint64_t looks_between = 256;
    return bounds_.megabytes && looks_++ % looks_between == 0 && heap_in_use() / 1'000'000 >= *bounds_.megabytes;
  }

  const std::atomic<bool>* interrupt_;
  const Counter& counter_;
  Bounds bounds_;
  std::uint64_t learned_before_ = 0;
  std::uint64_t looks_ = 0;  ///< since the question began
  std::chrono::steady_clock::time_point start_;
};

class CadicalSolver final : public Solver {
 public:
  explicit CadicalSolver(const std::atomic<bool>* interrupt) : stop_(interrupt, counter_) {
    solver_.set("quiet", 1);
    solver_.connect_learner(&counter_);
    solver_.connect_terminator(&stop_);
  }

  Literal declare() override { return Literal(static_cast<std::uint32_t>(declared_++)); }

  void add(std::span<const Literal> clause) override {
    ++added_;
    for (const Literal literal : clause) solver_.add(signed_of(literal));
    solver_.add(0);
  }
  using Solver::add;

  Outcome check(std::span<const Literal> assumptions, const Bounds& bounds) override {
    assumptions_.assign(assumptions.begin(), assumptions.end());
    stop_.begin(bounds);
    if (stop_.terminate()) return Outcome::unknown;
    for (const Literal literal : assumptions_) solver_.assume(signed_of(literal));
    const int answer = solver_.solve();
    effort_ += std::max<std::uint64_t>(1, stop_.spent());
    if (answer != satisfiable && answer != unsatisfiable) return Outcome::unknown;
    stop_.cause = Cause::none;
    return answer == satisfiable ? Outcome::satisfiable : Outcome::unsatisfiable;
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

  [[nodiscard]] Cause cause() const override { return stop_.cause; }
  [[nodiscard]] std::string complaint() const override { return {}; }
  [[nodiscard]] std::uint64_t effort() const override { return effort_; }
  [[nodiscard]] std::size_t variables() const override { return declared_; }
  [[nodiscard]] std::size_t clauses() const override { return added_; }

 private:
  static int signed_of(Literal literal) {
    const int variable = static_cast<int>(literal.variable()) + 1;
    return literal.negated() ? -variable : variable;
  }

  // What CaDiCaL answers, after IPASIR, the interface of incremental solvers.
  static constexpr int satisfiable = 10, unsatisfiable = 20;

  // The solver calls these until it is gone.
  Counter counter_;
  Stop stop_;
  CaDiCaL::Solver solver_;
  std::vector<Literal> assumptions_;
  std::size_t declared_ = 0, added_ = 0;
  std::uint64_t effort_ = 0;
};

}  // namespace

std::unique_ptr<Solver> make_cadical_solver(const std::atomic<bool>* interrupt) {
  return std::make_unique<CadicalSolver>(interrupt);
}

}  // namespace cairn::solver

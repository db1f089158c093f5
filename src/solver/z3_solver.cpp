#include "solver/z3_solver.hpp"

#include <z3++.h>

#include <algorithm>
#include <limits>

#include "solver/watcher.hpp"

namespace cairn::solver {

namespace {

// QF_FD is the logic of finite domains: its solver is the SAT solver, which keeps what it has learned from question to
// question (docs/decisions/clauses-for-the-solver.md).
constexpr const char* logic = "QF_FD";

// Two assumptions that contradict each other, in the order asked; empty where there are none. Z3 4.8.12 sees that they
// cannot hold, but may then tell an empty core.
std::vector<Literal> opposites_among(const std::vector<Literal>& assumptions) {
  std::vector<Literal> sorted = assumptions;
  std::sort(sorted.begin(), sorted.end());
  const auto first = std::adjacent_find(sorted.begin(), sorted.end(), [](Literal a, Literal b) { return b == !a; });
  if (first == sorted.end()) return {};
  const std::uint32_t variable = first->variable();
  std::vector<Literal> both;
  for (const Literal each : assumptions) {
    if (each.variable() == variable && (both.empty() || each != both.front())) both.push_back(each);
    if (both.size() == 2) break;
  }
  return both;
}

/// Clauses go through the C interface, without the counted handles that the C++ one makes for every literal.
class Z3Solver final : public Solver {
 public:
  explicit Z3Solver(const std::atomic<bool>* interrupt)
      : solver_(context_, logic), positive_(context_), negative_(context_), interrupt_(interrupt) {}

  Literal declare() override {
    const Literal literal(static_cast<std::uint32_t>(declared_++));
    guarded([&] {
      const z3::expr variable =
          context_.constant(context_.int_symbol(static_cast<int>(literal.variable())), context_.bool_sort());
      positive_.push_back(variable);
      negative_.push_back(!variable);
    });
    return literal;
  }

  void add(std::span<const Literal> clause) override {
    ++added_;
    guarded([&] {
      asts_.clear();
      for (const Literal literal : clause) asts_.push_back(ast(literal));
      const auto size = static_cast<unsigned>(asts_.size());
      const Z3_ast either = size == 1 ? asts_.front() : Z3_mk_or(context_, size, asts_.data());
      solver_.add(z3::expr(context_, either));
    });
  }
  using Solver::add;

  Outcome check(std::span<const Literal> assumptions, const Bounds& bounds) override {
    model_.reset();
    assumptions_.assign(assumptions.begin(), assumptions.end());
    opposites_ = opposites_among(assumptions_);
    if (!failed_) cause_ = Cause::none;
    if (!failed_ && interrupted()) cause_ = Cause::interrupted;
    if (cause_ == Cause::none && bounds.seconds && *bounds.seconds <= 0) cause_ = Cause::time;
    if (bounds.effort == 0) cause_ = Cause::effort;
    if (cause_ != Cause::none) return Outcome::unknown;
    if (!opposites_.empty()) return Outcome::unsatisfiable;
    Outcome outcome = Outcome::unknown;
    guarded([&] { outcome = ask(bounds); });
    return outcome;
  }

  [[nodiscard]] bool value(Literal literal) override {
    bool is_true = false;
    guarded([&] {
      if (!model_) model_ = std::make_unique<z3::model>(solver_.get_model());
      const Z3_func_decl variable = Z3_get_app_decl(context_, Z3_to_app(context_, ast(Literal(literal.variable()))));
      // A variable that the model does not mention may have either value.
      const Z3_ast found = Z3_model_get_const_interp(context_, *model_, variable);
      is_true = found != nullptr && Z3_get_bool_value(context_, found) == Z3_L_TRUE;
    });
    return is_true != literal.negated();
  }

  [[nodiscard]] std::vector<Literal> core() override {
    if (!opposites_.empty()) return opposites_;
    std::vector<Literal> needed;
    guarded([&] {
      const z3::expr_vector found = solver_.unsat_core();
      std::vector<Z3_ast> asts;
      for (unsigned i = 0; i < found.size(); ++i) asts.push_back(found[static_cast<int>(i)]);
      std::sort(asts.begin(), asts.end());
      // In the order asked, which is the same on every machine; addresses are not.
      for (const Literal literal : assumptions_) {
        if (std::binary_search(asts.begin(), asts.end(), ast(literal))) needed.push_back(literal);
      }
    });
    return needed;
  }

  [[nodiscard]] Cause cause() const override { return cause_; }
  [[nodiscard]] std::string complaint() const override { return complaint_; }
  [[nodiscard]] std::uint64_t effort() const override { return effort_; }
  [[nodiscard]] std::size_t variables() const override { return declared_; }
  [[nodiscard]] std::size_t clauses() const override { return added_; }

 private:
  // Z3's exceptions end here. After one, nothing that Z3 says is believed any more.
  template <class Work>
  void guarded(Work work) {
    if (failed_) return;
    try {
      work();
    } catch (const z3::exception& e) {
      failed_ = true;
      cause_ = Z3_get_error_code(context_) == Z3_MEMOUT_FAIL ? Cause::memory : Cause::failed;
      complaint_ = e.what();
    }
  }

  [[nodiscard]] bool interrupted() const {
    return interrupt_ != nullptr && interrupt_->load(std::memory_order_relaxed);
  }

  [[nodiscard]] Z3_ast ast(Literal literal) const {
    const z3::expr_vector& side = literal.negated() ? negative_ : positive_;
    return Z3_ast_vector_get(context_, side, literal.variable());
  }

  // What Z3 has counted since the context was made.
  [[nodiscard]] std::uint64_t counted() {
    const z3::stats statistics = solver_.statistics();
    for (unsigned i = 0; i < statistics.size(); ++i) {
      if (statistics.key(i) == "rlimit count") return statistics.uint_value(i);
    }
    return 0;
  }

  Outcome ask(const Bounds& bounds) {
    z3::params limits(context_);
    constexpr std::uint64_t most = std::numeric_limits<unsigned>::max();
    limits.set("rlimit", static_cast<unsigned>(std::min(bounds.effort.value_or(0), most)));  // 0: none
    solver_.set(limits);
    std::vector<Z3_ast> assumed;
    for (const Literal literal : assumptions_) assumed.push_back(ast(literal));
    const std::uint64_t before = counted();
    Z3_lbool answer = Z3_L_UNDEF;
    {
      const Watcher watcher({interrupt_, bounds.seconds, bounds.megabytes, [] { return Z3_get_estimated_alloc_size(); },
                             [this] { Z3_interrupt(context_); }});
      cause_ = watcher.met();
      if (cause_ == Cause::memory) return Outcome::unknown;
      answer = Z3_solver_check_assumptions(context_, solver_, static_cast<unsigned>(assumed.size()), assumed.data());
      context_.check_error();
      cause_ = watcher.met();
    }
    const std::uint64_t spent = counted() - before;
    effort_ += spent;
    if (answer != Z3_L_UNDEF) {
      cause_ = Cause::none;
      return answer == Z3_L_TRUE ? Outcome::satisfiable : Outcome::unsatisfiable;
    }
    if (cause_ == Cause::none && bounds.effort && spent >= *bounds.effort) cause_ = Cause::effort;
    if (cause_ == Cause::none) {
      cause_ = Cause::failed;
      complaint_ = solver_.reason_unknown();
    }
    return Outcome::unknown;
  }

  // Nothing of Z3 may outlive its context: it comes first and goes last.
  z3::context context_;
  z3::solver solver_;
  z3::expr_vector positive_, negative_;  ///< by variable: it, and its negation
  std::unique_ptr<z3::model> model_;     ///< fetched when a value is asked for
  std::vector<Z3_ast> asts_;
  std::vector<Literal> assumptions_, opposites_;
  const std::atomic<bool>* interrupt_;
  std::size_t declared_ = 0, added_ = 0;
  std::uint64_t effort_ = 0;
  bool failed_ = false;
  Cause cause_ = Cause::none;
  std::string complaint_;
};

}  // namespace

std::unique_ptr<Solver> make_z3_solver(const std::atomic<bool>* interrupt) {
  return std::make_unique<Z3Solver>(interrupt);
}

std::string z3_version() {
  unsigned major = 0, minor = 0, build = 0, revision = 0;
  Z3_get_version(&major, &minor, &build, &revision);
  return "Z3 " + std::to_string(major) + "." + std::to_string(minor) + "." + std::to_string(build);
}

}  // namespace cairn::solver

/// \file
/// The port: all that cairn asks of a SAT solver.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <initializer_list>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cairn::solver {

/// A Boolean of a solver, or its negation.
class Literal {
 public:
  constexpr Literal() = default;
  /// The variable `variable`, from 0.
  constexpr explicit Literal(std::uint32_t variable, bool negated = false)
      : code_(variable << 1U | static_cast<std::uint32_t>(negated)) {}
  constexpr Literal operator!() const {
    Literal other = *this;
    other.code_ ^= 1U;
    return other;
  }
  [[nodiscard]] constexpr std::uint32_t variable() const { return code_ >> 1U; }
  [[nodiscard]] constexpr bool negated() const { return (code_ & 1U) != 0; }
  [[nodiscard]] constexpr std::uint32_t code() const { return code_; }
  constexpr auto operator<=>(const Literal&) const = default;

 private:
  std::uint32_t code_ = 0;
};

enum class Outcome : std::uint8_t { satisfiable, unsatisfiable, unknown };

/// Why an outcome is unknown.
enum class Cause : std::uint8_t { none, time, memory, interrupted, effort, failed };

/// What one question may cost.
struct Bounds {
  std::optional<double> seconds;        ///< wall clock
  std::optional<std::uint64_t> effort;  ///< the solver's own count of steps: the same on every machine
  /// Of 10^6 bytes, in use by all solvers of the process together; more may be counted where the solver cannot tell.
  std::optional<std::uint64_t> megabytes;
};

/// Clauses are only ever added. Not to be used from two threads at once; other solvers may be used meanwhile.
class Solver {
 public:
  Solver() = default;
  Solver(const Solver&) = delete;
  Solver& operator=(const Solver&) = delete;
  virtual ~Solver() = default;
  /// A new Boolean.
  virtual Literal declare() = 0;
  /// Demands that one of the literals holds; none: the solver is unsatisfiable from now on.
  virtual void add(std::span<const Literal> clause) = 0;
  void add(std::initializer_list<Literal> clause) { add(std::span(clause.begin(), clause.size())); }
  /// Whether all clauses can hold together with all assumptions.
  virtual Outcome check(std::span<const Literal> assumptions, const Bounds& bounds) = 0;
  /// After `satisfiable`: the literal's value in the model found.
  [[nodiscard]] virtual bool value(Literal literal) = 0;
  /// After `unsatisfiable`: assumptions that cannot hold together with the clauses, a subset of those asked, not
  /// necessarily a smallest; empty where the clauses alone cannot hold.
  [[nodiscard]] virtual std::vector<Literal> core() = 0;
  /// After `unknown`: why.
  [[nodiscard]] virtual Cause cause() const = 0;
  /// After `unknown` with Cause::failed: what the solver said.
  [[nodiscard]] virtual std::string complaint() const = 0;
  /// What all questions so far have cost, in the count of Bounds::effort.
  [[nodiscard]] virtual std::uint64_t effort() const = 0;
  /// Variables and clauses so far.
  [[nodiscard]] virtual std::size_t variables() const = 0;
  [[nodiscard]] virtual std::size_t clauses() const = 0;
};

/// Makes solvers without clauses.
using SolverMaker = std::function<std::unique_ptr<Solver>()>;

}  // namespace cairn::solver

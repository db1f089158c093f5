#include "verify/why_uses.hpp"

#include <algorithm>
#include <atomic>
#include <optional>

#include "base/contradiction.hpp"
#include "solver/allowance.hpp"
#include "solver/cadical_solver.hpp"
#include "solver/deadline.hpp"
#include "solver/step_found.hpp"
#include "system/domains.hpp"
#include "verify/solver_limits.hpp"

namespace cairn::verify {

namespace {

using solver::Fact;
using solver::Within;
using system::Space;
using system::VariableId;
using Kind = system::Variable::Kind;

/// Carries facts over to the procedure without some step.
class WithoutStep {
 public:
  /// \param step  the one that is left out; nothing where all steps are left
  WithoutStep(const Space& from, const Space& to, std::optional<StepId> step) : from_(from), to_(to), step_(step) {}

  /// Nothing where the fact speaks of that step.
  [[nodiscard]] std::optional<Fact> carried(Fact fact) const {
    const auto carry_all = [this](std::vector<Within>& claims) {
      return std::ranges::all_of(claims, [this](Within& claim) { return carry(claim.variable); });
    };
    if (!carry_all(fact.given) || !carry_all(fact.also)) return {};
    if (fact.kind == Fact::Kind::within && !carry(fact.holds.variable)) return {};
    return fact;
  }

 private:
  // Only what stands behind the steps' own variables changes its place.
  bool carry(VariableId& v) const {
    if (!step_) return true;
    const system::Variable& variable = from_[v];
    if (variable.kind == Kind::done) {
      if (variable.place == step_->value) return false;
      v = to_.done(StepId(variable.place - (variable.place > step_->value ? 1 : 0)));
    } else if (variable.kind == Kind::left) {
      v = to_.left(static_cast<system::Fault>(variable.place));
    } else if (variable.kind == Kind::halted) {
      v = to_.halted();
    }
    return true;
  }

  const Space& from_;
  const Space& to_;
  std::optional<StepId> step_;
};

/// The facts of a proof in the procedure without a part. Its questions may throw Unanswered.
class Trial {
 public:
  Trial(const Model& variant, const ToldProof& proof, const std::vector<std::optional<Fact>>& facts,
        const std::atomic<bool>* interrupt, const solver::Bounds& bounds)
      : facts_(facts),
        solver_(solver::make_cadical_solver(interrupt)),
        obligations_({variant, proof.faults, system::stated_domains(variant, proof.faults)}, present(facts), *solver_),
        reader_(obligations_),
        allowance_(*solver_, bounds) {
    for (const Fact& fact : present(facts)) obligations_.demand(fact);
  }

  /// Which of the facts some event loses.
  std::vector<bool> lost() {
    std::vector<bool> lost(facts_.size(), false);
    while (finds_another(lost)) {
      const solver::Values after = reader_.after(reader_.read(true));
      system::System& system = obligations_.system();
      const std::vector<bool> before = lost;
      for (std::size_t i = 0; i < facts_.size(); ++i) {
        lost[i] = lost[i] || (facts_[i] && fails_in(system.terms, system.space, *facts_[i], after));
      }
      if (lost == before) throw Contradiction("a fact that an event loses is there when it is evaluated");
    }
    return lost;
  }

  bool is_bad(const AskedProperty& asked) {
    const solver::Obligations::Bad bad = obligations_.bad(asked);
    std::vector<solver::Literal> assumed{obligations_.literal_of(bad.term)};
    if (bad.on_the_way) assumed.push_back(obligations_.event());
    return allowance_.can(assumed);
  }

 private:
  static std::vector<Fact> present(const std::vector<std::optional<Fact>>& facts) {
    std::vector<Fact> all;
    for (const std::optional<Fact>& fact : facts) {
      if (fact) all.push_back(*fact);
    }
    return all;
  }

  bool finds_another(const std::vector<bool>& lost) {
    std::vector<system::Term> cases;
    for (std::size_t i = 0; i < facts_.size(); ++i) {
      if (facts_[i] && !lost[i]) cases.push_back(obligations_.lost(*facts_[i]));
    }
    const system::Term any = obligations_.system().terms.any(cases);
    if (any == system::never) return false;
    const std::vector<solver::Literal> assumed{obligations_.event(), obligations_.literal_of(any)};
    return allowance_.can(assumed);
  }

  const std::vector<std::optional<Fact>>& facts_;
  std::unique_ptr<solver::Solver> solver_;
  solver::Obligations obligations_;
  solver::StepReader reader_;
  solver::Allowance allowance_;
};

}  // namespace

std::optional<Uses> uses_of(const Model& model, const ToldProof& proof, const Limits& limits) {
  constexpr std::uint64_t conflicts = 20'000;  // many times what a part of models/ takes
  Uses uses{proof.asked, {}, std::vector<std::vector<Part>>(proof.facts.size())};
  const Space space(model, proof.faults);
  const solver::Deadline deadline(limits.seconds);
  solver::Bounds bounds = bounds_of(limits);
  bounds.effort = conflicts;
  for (const Part& part : parts_of(model)) {
    bounds.seconds = deadline.left();
    const Model variant = without(model, {part});
    const Space variant_space(variant, proof.faults);
    const bool is_step = part.kind != Part::Kind::ordering;
    const WithoutStep without_step(space, variant_space, is_step ? std::optional(part.step) : std::nullopt);
    std::vector<std::optional<Fact>> facts;
    for (const Fact& fact : proof.facts) facts.push_back(without_step.carried(fact));
    try {
      Trial trial(variant, proof, facts, limits.interrupt, bounds);
      const std::vector<bool> lost = trial.lost();
      bool is_used = trial.is_bad(proof.asked);
      const auto speaks_of_it = [](const std::optional<Fact>& fact) { return !fact; };
      const bool is_spoken_of = std::ranges::any_of(facts, speaks_of_it);
      for (std::size_t i = 0; i < facts.size(); ++i) {
        if (facts[i] && !lost[i]) continue;
        is_used = true;
        // Where the facts that speak of the part had to go, others may be lost only for want of them.
        if (!is_spoken_of || speaks_of_it(facts[i])) uses.by_fact[i].push_back(part);
      }
      if (is_used) uses.parts.push_back(part);
    } catch (const solver::Unanswered&) {
      return {};
    }
  }
  return uses;
}

}  // namespace cairn::verify

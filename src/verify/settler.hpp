/// \file
/// Settles what is asked under one budget of faults.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cairn/options.hpp"
#include "cairn/verdict.hpp"
#include "explore/explore.hpp"
#include "semantics/world.hpp"
#include "verify/by_facts.hpp"
#include "verify/by_unrolling.hpp"
#include "verify/emptiness.hpp"
#include "verify/searcher.hpp"
#include "verify/told_proofs.hpp"

namespace cairn::verify {

using Verdicts = std::vector<PropertyVerdict*>;

/// By states, by facts or by constraints, as the engine has it; each claim audited. Several may settle different
/// properties of one world at the same time.
class Settler {
 public:
  /// What is found beside the verdicts.
  struct Yield {
    Emptinesses empty;
    std::vector<UnstatedTie> ties;  ///< in no order, some of them more than once
    std::vector<ToldProof> proofs;
    Timing timing;
    Savings savings;
  };

  /// \param allowed  the faults of the question
  /// \param faults   the same, or none: what the verdicts are asked with
  /// All of these must outlive this.
  Settler(const semantics::World& world, const ProveOptions& options, const FaultBudget& allowed,
          const FaultBudget& faults, const explore::Guard& guard);

  /// Fills the verdicts, which are not empty.
  void settle(const Verdicts& verdicts);

  [[nodiscard]] const Yield& yield() const { return yield_; }

 private:
  class Timed;

  static void claim_nothing_more(const std::string& why, const Verdicts& verdicts);
  static void leave_for_want_of_memory(PropertyVerdict& verdict);
  void by_states(const Verdicts& asked);
  [[nodiscard]] bool is_settled_by_forgetting(const Verdicts& asked, Verdicts& verdicts);
  void by_leaving_out(const Verdicts& asked, const Verdicts& verdicts);
  [[nodiscard]] std::vector<Verdicts> searched_together(const Verdicts& verdicts) const;
  [[nodiscard]] explore::Exploration take_reduced(explore::Exploration all, Verdicts& verdicts);
  void by_facts_of_what_is_left(Verdicts& verdicts);
  [[nodiscard]] bool may_be_vacuous_by_orders(const explore::Exploration& all, const Verdicts& verdicts) const;
  void go_on_after(const explore::Exploration& all, const Verdicts& left);
  void conclude(const explore::Exploration& all, const Verdicts& asked, const Verdicts& left);
  [[nodiscard]] Reductions forgetting() const;
  [[nodiscard]] explore::Exploration taken(Found found, const Verdicts& verdicts);
  void take_refutations(const explore::Exploration& all, Verdicts& verdicts);
  void take_refutation(const Trace& events, PropertyVerdict& verdict);
  void by_facts(const explore::Exploration& all, Verdicts& verdicts);
  [[nodiscard]] bool is_proved_by_facts(ByFacts& facts, const explore::Exploration& all, PropertyVerdict& verdict);
  [[nodiscard]] std::variant<solver::FactsProof, solver::NoFactsProof> proved(ByFacts& facts, PropertyVerdict& verdict);
  [[nodiscard]] bool may_be_vacuous(const explore::Exploration& all, Property property) const;
  void take_proofs(const explore::Exploration& all, const Verdicts& verdicts);
  void confirm(const explore::Exploration& all, const Verdicts& verdicts);
  void by_constraints(const Verdicts& verdicts);
  void by_constraints(ByFacts& facts, ByUnrolling& unrolling, PropertyVerdict& verdict);
  void compare(const Verdicts& verdicts);
  [[nodiscard]] std::string endless_run(const std::vector<DeviceId>& devices) const;
  [[nodiscard]] std::string vacuity_of(const explore::Exploration& all, Property property) const;

  const semantics::World& world_;
  const Model& model_;
  const ProveOptions& options_;
  const FaultBudget& allowed_;
  const FaultBudget& faults_;
  const explore::Guard& guard_;
  Searcher searcher_;
  Yield yield_;
};

}  // namespace cairn::verify

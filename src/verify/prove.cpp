#include "cairn/prove.hpp"

#include <algorithm>
#include <future>
#include <system_error>

#include "verify/by_instances.hpp"
#include "verify/emptiness.hpp"
#include "verify/question.hpp"
#include "verify/rests_on.hpp"
#include "verify/settler.hpp"
#include "verify/told_proofs.hpp"

namespace cairn {

namespace {

using verify::Question;
using verify::Settler;
using verify::Verdicts;

/// Settles one question: in one go, or in two where faults may strike and properties are asked without.
class Prover {
 public:
  Prover(const Model& model, const ProveOptions& options, std::vector<verify::ToldProof>& proofs)
      : model_(model),
        options_(options),
        proofs_(proofs),
        world_(model),
        question_(verify::question_of(model, options)),
        guard_(options.limits, options.progress),
        empty_(model) {}

  Report run() {
    report_.faults = question_.faults;
    for (const AskedProperty& asked : question_.properties) report_.properties.emplace_back().asked = asked;
    Verdicts with_faults;
    Verdicts without;
    for (PropertyVerdict& verdict : report_.properties) {
      const bool faults = !question_.faults.none() && asked_with_faults(verdict.asked.property);
      (faults ? with_faults : without).push_back(&verdict);
    }
    if (model_.unknowns.any()) {
      settle_instances(without, no_faults_);
      settle_instances(with_faults, question_.faults);
    } else {
      settle(without, with_faults);
    }
    std::sort(report_.rests_on.ties.begin(), report_.rests_on.ties.end());
    const auto repeated = std::unique(report_.rests_on.ties.begin(), report_.rests_on.ties.end());
    report_.rests_on.ties.erase(repeated, report_.rests_on.ties.end());
    report_.rests_on.factory = verify::factory_values(model_);
    report_.findings = empty_.told(question_.faults);
    return std::move(report_);
  }

 private:
  // Both at a time, each with its part of the memory; or the smaller first, so that a limit met in the larger leaves
  // its answers standing. Either way the memory is shared, so that the number of jobs makes no difference.
  void settle(const Verdicts& without, const Verdicts& with_faults) {
    const bool both = !without.empty() && !with_faults.empty();
    const explore::Guard guard = both ? guard_.for_one_of(2) : guard_;
    const explore::Guard silent = guard.without_progress();
    const bool side_by_side = both && options_.jobs > 1;
    Settler faultless(world_, options_, question_.faults, no_faults_, side_by_side ? silent : guard);
    Settler faulty(world_, options_, question_.faults, question_.faults, guard);
    std::future<void> other;
    if (side_by_side) other = in_a_thread([&] { faultless.settle(without); });
    if (!other.valid() && !without.empty()) faultless.settle(without);
    if (!with_faults.empty()) faulty.settle(with_faults);
    if (other.valid()) other.get();
    take(faultless.yield());
    take(faulty.yield());
  }

  void settle_instances(const Verdicts& verdicts, const FaultBudget& faults) {
    if (verdicts.empty()) return;
    verify::ByInstances by_instances(model_, options_, faults, guard_);
    by_instances.settle(verdicts);
    take(by_instances.yield());
  }

  /// Not valid where the system grants no thread.
  template <class Work>
  static std::future<void> in_a_thread(Work work) {
    try {
      return std::async(std::launch::async, work);
    } catch (const std::system_error&) {
      return {};
    }
  }

  void take(const Settler::Yield& yield) {
    empty_.add(yield.empty);
    report_.rests_on.ties.insert(report_.rests_on.ties.end(), yield.ties.begin(), yield.ties.end());
    proofs_.insert(proofs_.end(), yield.proofs.begin(), yield.proofs.end());
    report_.timing.add(yield.timing);
    report_.savings.add(yield.savings);
  }

  const Model& model_;
  const ProveOptions& options_;
  std::vector<verify::ToldProof>& proofs_;
  semantics::World world_;
  Question question_;
  FaultBudget no_faults_;
  explore::Guard guard_;
  verify::Emptinesses empty_;
  Report report_;
};

}  // namespace

Diagnostics objections(const Model& model, const ProveOptions& options) {
  const bool by_constraints = options.engine == Engine::solver || options.engine == Engine::both;
  Diagnostics problems = verify::objections(model, verify::question_of(model, options));
  if (by_constraints) {
    const Diagnostics more = objections_to_template(model, "proving by constraints");
    problems.insert(problems.end(), more.begin(), more.end());
  }
  return problems;
}

Result<Report> verify::prove(const Model& model, const ProveOptions& options, std::vector<ToldProof>& proofs) {
  if (Diagnostics problems = cairn::objections(model, options); !problems.empty()) return problems;
  return Prover(model, options, proofs).run();
}

Result<Report> prove(const Model& model, const ProveOptions& options) {
  std::vector<verify::ToldProof> proofs;
  return verify::prove(model, options, proofs);
}

}  // namespace cairn

#include "cairn/prove.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/contradiction.hpp"
#include "explore/explore.hpp"
#include "verify/audit.hpp"
#include "verify/emptiness.hpp"
#include "verify/question.hpp"
#include "verify/rests_on.hpp"

namespace cairn {

namespace {

using verify::Question;

/// Settles one question: with one exploration, or with two where faults may strike and properties are asked without.
class Prover {
 public:
  Prover(const Model& model, const ProveOptions& options)
      : model_(model),
        world_(model),
        question_(verify::question_of(model, options)),
        empty_(model),
        guard_(options.limits, options.progress) {}

  Report run() {
    report_.faults = question_.faults;
    for (const AskedProperty& asked : question_.properties) report_.properties.emplace_back().asked = asked;
    if (question_.faults.none()) {
      settle(FaultBudget{}, [](Property) { return true; });
    } else {
      // The smaller question first, so that a limit met in the larger leaves its answers standing.
      settle(FaultBudget{}, [](Property p) { return !asked_with_faults(p); });
      settle(question_.faults, [](Property p) { return asked_with_faults(p); });
    }
    std::sort(report_.rests_on.ties.begin(), report_.rests_on.ties.end());
    const auto repeated = std::unique(report_.rests_on.ties.begin(), report_.rests_on.ties.end());
    report_.rests_on.ties.erase(repeated, report_.rests_on.ties.end());
    report_.rests_on.factory = verify::factory_values(model_);
    report_.findings = empty_.told(question_.faults);
    return std::move(report_);
  }

 private:
  // One exploration under `faults` for those of the asked properties that `belongs` chooses.
  template <class Belongs>
  void settle(const FaultBudget& faults, Belongs belongs) {
    std::vector<PropertyVerdict*> verdicts;
    std::vector<AskedProperty> asked;
    for (PropertyVerdict& verdict : report_.properties) {
      if (!belongs(verdict.asked.property)) continue;
      verdicts.push_back(&verdict);
      asked.push_back(verdict.asked);
    }
    if (asked.empty()) return;
    const explore::Watch watch;
    try {
      const explore::Exploration all = explore::explore(world_, faults, asked, guard_);
      report_.timing.exploring += watch.seconds();
      for (std::size_t i = 0; i < asked.size(); ++i) judge(all, all.answers[i], *verdicts[i]);
      empty_.add(all, faults);
      report_.rests_on.ties.insert(report_.rests_on.ties.end(), all.ties.begin(), all.ties.end());
    } catch (const Contradiction& contradiction) {
      empty_.add_nothing();
      for (PropertyVerdict* verdict : verdicts) verify::claim_nothing(contradiction.what(), *verdict);
    }
  }

  void judge(const explore::Exploration& all, const explore::Answer& answer, PropertyVerdict& verdict) {
    verdict.explored = all.explored;
    // A refutation stands by itself, whatever else is amiss: it has been replayed.
    if (answer.refutation) {
      const explore::Watch watch;
      verify::judge_refutation(model_, question_.faults, *answer.refutation, verdict);
      report_.timing.replaying += watch.seconds();
    } else if (!all.endless.empty()) {
      verify::claim_nothing(endless_run(all.endless), verdict);
    } else if (all.stopped) {
      verdict.verdict = Verdict::undecided;
      verdict.reason = *all.stopped;
    } else {
      verdict.verdict = Verdict::proved;
      verdict.vacuous = vacuity(all, verdict.asked.property);
    }
  }

  // Semantics 5.k. The lemma has counterexamples: docs/semantics-questions.md.
  [[nodiscard]] std::string endless_run(const std::vector<DeviceId>& devices) const {
    std::vector<std::string_view> names;
    names.reserve(devices.size());
    for (const DeviceId d : devices) names.push_back(model_[d].name);
    return fmt::format(
        "a run need not end: {} restart one another for ever, where semantics 5.k says that every run ends (see "
        "docs/semantics-questions.md). Such a stack never comes to rest: do not carry this procedure out",
        fmt::join(names, " and "));
  }

  // Semantics 6.e
  [[nodiscard]] std::string vacuity(const explore::Exploration& all, Property property) const {
    switch (property) {
      case Property::primary_stays:
        return all.a_kept_device_led ? "" : "no device of keep ever leads";
      case Property::no_refusal:
        return model_.procedure.steps.empty() ? "there is no step" : "";
      case Property::survives_cold_start:
      case Property::tolerates_loss:
        return all.a_run_completed ? "" : "no run is complete";
      default:
        return "";
    }
  }

  const Model& model_;
  semantics::World world_;
  Question question_;
  verify::Emptinesses empty_;
  explore::Guard guard_;
  Report report_;
};

}  // namespace

Diagnostics objections(const Model& model, const ProveOptions& options) {
  return verify::objections(model, verify::question_of(model, options));
}

Result<Report> prove(const Model& model, const ProveOptions& options) {
  if (Diagnostics problems = objections(model, options); !problems.empty()) return problems;
  return Prover(model, options).run();
}

}  // namespace cairn

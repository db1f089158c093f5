#include "verify/by_instances.hpp"

#include <fmt/format.h>

#include <utility>

#include "base/contradiction.hpp"
#include "cairn/prove.hpp"
#include "unknowns/instantiate.hpp"
#include "unknowns/words.hpp"
#include "verify/audit.hpp"
#include "verify/vacuity.hpp"

namespace cairn::verify {

ByInstances::ByInstances(const Model& model, const ProveOptions& options, const FaultBudget& faults,
                         const explore::Guard& guard)
    : model_(model),
      options_(options),
      faults_(faults),
      guard_(guard),
      space_(model),
      yield_{Emptinesses(model), {}, {}, {}, {}} {}

void ByInstances::settle(const Verdicts& verdicts) {
  std::vector<AskedProperty> asked;
  for (const PropertyVerdict* verdict : verdicts) asked.push_back(verdict->asked);
  const explore::Watch watch;
  try {
    explore::SplitExploration all = explore::explore_instances(model_, space_, faults_, asked, guard_);
    yield_.timing.exploring += watch.seconds();
    for (PropertyVerdict* verdict : verdicts) verdict->cost.timing.exploring += watch.seconds();
    take(std::move(all), verdicts);
  } catch (const Contradiction& contradiction) {
    yield_.empty.add_nothing();
    for (PropertyVerdict* verdict : verdicts) {
      if (verdict->verdict != Verdict::refuted) claim_nothing(contradiction.what(), *verdict);
    }
  }
}

void ByInstances::take(explore::SplitExploration all, const Verdicts& verdicts) {
  yield_.empty.add(all, faults_);
  yield_.ties.insert(yield_.ties.end(), all.ties.begin(), all.ties.end());
  for (std::size_t i = 0; i < verdicts.size(); ++i) {
    PropertyVerdict& verdict = *verdicts[i];
    verdict.explored = all.explored;
    if (all.answers[i].refutation) {
      take_refutation(*all.answers[i].refutation, verdict);
    } else if (all.stopped) {
      verdict.verdict = Verdict::undecided;
      verdict.reason = *all.stopped;
    } else if (all.endless) {
      claim_nothing(fmt::format("a run need not end, where semantics 5.k says that every run ends (see "
                                "docs/semantics-questions.md). Prove this instance by itself: {}",
                                unknowns::words_of(model_, *all.endless)),
                    verdict);
    } else {
      verdict.verdict = Verdict::proved;
      verdict.settled.every_instance = true;
      verdict.vacuous = vacuity(model_, verdict.asked.property, {all.a_kept_device_led, all.a_run_completed});
    }
  }
}

// No instance has a shorter one, so that the shortest of this instance is one of the template.
void ByInstances::take_refutation(const explore::SplitRefutation& refutation, PropertyVerdict& verdict) {
  const Model instance = unknowns::instantiate(model_, refutation.instance);
  ProveOptions options = options_;
  options.properties = {verdict.asked};
  options.engine = Engine::explore;
  options.cable_breaks = faults_.cable_breaks;
  options.crashes = faults_.crashes;
  options.omissions = faults_.omissions;
  options.late_starts = faults_.late_starts;
  options.mends = faults_.mends;
  options.limits = guard_.left();
  options.progress = {};
  const Result<Report> proved = cairn::prove(instance, options);
  if (!proved) throw Contradiction("an instance of a template cannot be asked what the template can");
  const PropertyVerdict& found = proved.value().properties.front();
  const std::uint64_t explored = verdict.explored;
  Cost cost = verdict.cost;
  cost.add(found.cost);
  yield_.timing.add(proved.value().timing);
  verdict = found;
  verdict.explored = explored;
  verdict.cost = cost;
  if (found.verdict == Verdict::undecided) return;
  if (found.verdict != Verdict::refuted || found.events.size() != refutation.length) {
    return claim_nothing(
        fmt::format("of all instances together one is refuted by {} events, and by itself it is {}: {}",
                    refutation.length,
                    found.verdict == Verdict::refuted ? fmt::format("refuted by {}", found.events.size())
                                                      : std::string(name_of(found.verdict)),
                    unknowns::words_of(model_, refutation.instance)),
        verdict);
  }
  verdict.instance = refutation.instance;
}

}  // namespace cairn::verify

// What is legal but suspicious: a procedure's steps judged by everything that ever happens to them.
#include "cairn/lint.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "base/contradiction.hpp"
#include "base/text.hpp"
#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "verify/observed.hpp"

namespace cairn {

namespace {

using verify::StepHistory;
using verify::StepObserver;
using Kind = Finding::Kind;

/// Collects the findings on one procedure.
class Linter {
 public:
  Linter(const Model& model, const Limits& limits) : model_(model), world_(model), guard_(limits, {}) {}

  LintReport run() {
    StepObserver all_runs(world_);
    const FaultBudget& own = model_.procedure.faults;
    explore(own, all_runs);
    if (own.none()) {
      judge_consoles(all_runs);
    } else {
      StepObserver without_faults(world_);
      explore(FaultBudget{}, without_faults);
      judge_consoles(without_faults);
    }
    if (!report_.cut_short) judge_what_never_happens(all_runs);
    judge_numbers(all_runs);
    judge_goal(all_runs);
    std::stable_sort(report_.findings.begin(), report_.findings.end(), [](const Finding& a, const Finding& b) {
      return std::tuple(a.span.line, a.span.column, a.kind) < std::tuple(b.span.line, b.span.column, b.kind);
    });
    return std::move(report_);
  }

 private:
  void explore(const FaultBudget& faults, StepObserver& observer) {
    try {
      const explore::Exploration all = explore::explore(world_, faults, {}, guard_, {.observer = &observer});
      if (faults == model_.procedure.faults) seen_ = all.seen;
      if (!report_.cut_short) report_.cut_short = all.stopped;
      if (!all.endless.empty()) report_.cut_short = Reason::contradiction;  // semantics 5.k
    } catch (const Contradiction&) {
      report_.cut_short = Reason::contradiction;
    }
  }

  void find(Kind kind, const Span& span, std::string message, std::string advice) {
    report_.findings.push_back({kind, span, std::move(message), std::move(advice)});
  }

  template <class Judge>
  void for_each_step(Judge judge) {
    for (std::size_t i = 0; i < model_.procedure.steps.size(); ++i) judge(StepId(i), model_.procedure.steps[i]);
  }

  // With what is true of a step that was never seen otherwise, every run must have been looked at.
  void judge_what_never_happens(const StepObserver& observer) {
    for_each_step([&](StepId id, const Step& step) {
      const StepHistory& history = observer.of(id);
      if (!history.had_turn && !history.was_done) return judge_never_reached(observer, id, step);
      if (step.verb == Verb::await) return judge_await(id, step);
      if (step.verb == Verb::check) return judge_check(id, step);
      if (history.was_refused && !history.was_taken) {
        find(Kind::changes_nothing, step.span,
             fmt::format("step {} changes nothing in any run: it is always refused", step.id),
             "see `cairn prove --property no-refusal` for the reason");
      } else if (history.was_taken && !history.changed) {
        find(Kind::changes_nothing, step.span,
             fmt::format("step {} changes nothing in any run: all is already as it asks for", step.id),
             "take it out, or see whether another device or port was meant");
      } else {
        judge_side(history, step);
      }
    });
  }

  // Of a whole stretch that is out of reach only its first step is told.
  void judge_never_reached(const StepObserver& observer, StepId id, const Step& step) {
    const auto reached = [&](StepId s) { return observer.of(s).had_turn || observer.of(s).was_done; };
    if (!std::all_of(step.after.begin(), step.after.end(), reached)) return;
    const std::size_t followers = followers_of(id);
    std::string message = fmt::format("step {} is never reached", step.id);
    if (followers > 0) message += fmt::format(", nor {} after it", counted(followers, "step"));
    find(Kind::never_reached, step.span, message + blocked_by(observer, step),
         "walk the procedure (`cairn walk`) to see where it stops");
  }

  std::string blocked_by(const StepObserver& observer, const Step& step) const {
    for (const StepId before : step.after) {
      if (observer.of(before).was_done && !seen_->failed(before)) continue;
      const Step& blocking = model_[before];
      return blocking.verb == Verb::await
                 ? fmt::format(": step {} waits for ever for {}", blocking.id, blocking.condition_text)
                 : fmt::format(": step {} stops every run", blocking.id);
    }
    return "";
  }

  // How many steps follow `id`, directly or not.
  std::size_t followers_of(StepId id) const {
    const auto& steps = model_.procedure.steps;
    std::vector<bool> follows(steps.size(), false);
    follows[id.value] = true;
    // `after` may point forward in the file, so that one round is not always enough.
    for (bool grew = true; grew;) {
      grew = false;
      for (std::size_t i = 0; i < steps.size(); ++i) {
        if (follows[i]) continue;
        follows[i] = std::any_of(steps[i].after.begin(), steps[i].after.end(),
                                 [&](StepId before) { return follows[before.value]; });
        grew = grew || follows[i];
      }
    }
    return static_cast<std::size_t>(std::count(follows.begin(), follows.end(), true)) - 1;
  }

  void judge_await(StepId id, const Step& step) {
    if (seen_->waited(id)) return;
    find(Kind::never_waits, step.span,
         fmt::format("step {} never waits: {} holds whenever its turn comes", step.id, step.condition_text),
         "take it out, or wait for what the next step really needs");
  }

  void judge_check(StepId id, const Step& step) {
    if (seen_->failed(id)) return;
    find(Kind::cannot_fail, step.span,
         fmt::format("step {} cannot fail: {} holds whenever its turn comes", step.id, step.condition_text),
         "take it out, or allow the faults that it guards against (`faults:`)");
  }

  void judge_side(const StepHistory& history, const Step& step) {
    if (step.verb != Verb::set_side && step.verb != Verb::clear_side) return;
    if (history.came_into_force || !history.was_taken) return;
    find(Kind::never_applied, step.span,
         fmt::format("the side that step {} sets on {} never comes into force", step.id, model_[step.port].name),
         fmt::format("add `apply: {0}` after it, or `save: {0}` before its next start", model_[step.device].name));
  }

  // One state is enough for these. Of a stretch that misses the same console only the first step is told.
  void judge_consoles(const StepObserver& observer) {
    for_each_step([&](StepId id, const Step& step) {
      const DeviceId lost = observer.of(id).lost_console;
      const auto told = [&](StepId before) { return observer.of(before).lost_console == lost; };
      if (!lost || std::any_of(step.after.begin(), step.after.end(), told)) return;
      const std::string& name = model_[lost].name;
      find(Kind::console_lost, step.span,
           fmt::format("step {} may come while its console, {}, is off or still starting", step.id, name),
           fmt::format("put `await: up({})` before it", name));
    });
  }

  void judge_numbers(const StepObserver& observer) {
    for_each_step([&](StepId id, const Step& step) {
      const bool number = step.verb == Verb::set_number;
      if (!number && step.verb != Verb::set_priority) return;
      const Range& range = number ? model_.platform.numbers : model_.platform.priorities;
      if (!range.contains(step.value)) {
        find(Kind::out_of_range, step.span,
             fmt::format("step {} asks for {} {}, which the platform does not have", step.id,
                         number ? "number" : "priority", step.value),
             fmt::format("ask for one from {} to {}", range.low, range.high));
      }
      const DeviceId other = observer.of(id).same_number;
      if (!number || !other) return;
      find(Kind::number_in_use, step.span,
           fmt::format("step {} gives {} number {}, which {} has too", step.id, model_[step.device].name, step.value,
                       model_[other].name),
           "choose a number that no device on the site has");
    });
  }

  void judge_goal(const StepObserver& observer) {
    if (!observer.goal_from_the_start() || model_.procedure.steps.empty()) return;
    Span span;
    span.file = model_.files.empty() ? std::string() : model_.files.front();
    find(Kind::goal_from_the_start, span, "the goal holds before the first step",
         "say in the goal what the procedure is to change, for instance with `where:`");
  }

  const Model& model_;
  semantics::World world_;
  explore::Guard guard_;
  std::optional<explore::Sightings> seen_;  ///< under the procedure's own faults
  LintReport report_;
};

// Two entries that state the same number will clash once they are together.
std::vector<Finding> same_numbers(const Site& site, const std::string& path) {
  std::vector<Finding> findings;
  for (std::size_t i = 0; i < site.devices.size(); ++i) {
    for (std::size_t k = 0; k < i; ++k) {
      const Device& one = site.devices[k];
      const Device& other = site.devices[i];
      if (!one.number_stated || !other.number_stated || one.number != other.number) continue;
      Span span;
      span.file = path;
      findings.push_back({Kind::number_in_use, span,
                          fmt::format("devices {} and {} both have number {}", one.name, other.name, one.number),
                          "see that they never meet, or give one of them another number"});
    }
  }
  return findings;
}

}  // namespace

LintReport lint(const std::string& path, const Files& files, const Limits& limits) {
  const auto document = load_document(path, files);
  LintReport report;
  if (!document) {
    report.problems = document.problems();
    return report;
  }
  const Model& model = document.value().model;
  switch (document.value().kind) {
    case DocumentKind::procedure:
      report.problems = objections_to_template(model, "`cairn lint`");
      if (!report.problems.empty()) return report;
      return Linter(model, limits).run();
    case DocumentKind::site:
      report.findings = same_numbers(model.site, path);
      return report;
    case DocumentKind::platform:
      return report;
  }
  return report;
}

}  // namespace cairn

#include "differential/jobs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "cairn/prove.hpp"
#include "cairn/render.hpp"

namespace cairn::differential {

namespace {

struct Way {
  std::string_view name;
  std::uint64_t confirm_limit, forgetting_limit;
  Reductions reductions;
};

const std::array<Way, 5> ways{{{"every state", 1'000'000, 1'000'000, Reductions::none()},
                               {"cut short", 10, 20, Reductions()},
                               {"reduced", 0, 1'000'000, Reductions()},
                               {"alike", 0, 0, {false, false, false, false, true}},
                               {"with orders", 0, 0, Reductions()}}};

Report told_by(const Model& model, const Way& way, unsigned jobs, std::uint32_t stretch) {
  ProveOptions options;
  options.engine = Engine::explore;
  options.confirm_limit = way.confirm_limit;
  options.forgetting_limit = way.forgetting_limit;
  options.reductions = way.reductions;
  options.jobs = jobs;
  options.stretch = stretch;
  options.limits.megabytes = 50;  // far more than `most_states` states take
  return prove(model, options).value();
}

// The document, and the counts that it leaves out where nobody asks for times.
std::string all_of(const Model& model, const Report& report) {
  const Savings& s = report.savings;
  return fmt::format("{}\n{} {} {} {} {} {} {} {}", render_json(model, report), s.outcomes, s.by_seniority,
                     s.by_settings, s.by_budgets, s.by_alike, s.events_left_out, s.states_left, s.states_alone);
}

std::uint64_t most_visited(const Report& report) {
  std::uint64_t most = 0;
  for (const PropertyVerdict& p : report.properties) most = std::max(most, p.explored);
  return most;
}

}  // namespace

Comparison compare_jobs(const Model& model) {
  constexpr std::uint32_t stretch = 2;
  Comparison comparison;
  for (const Way& way : ways) {
    const Report alone = told_by(model, way, 1, stretch);
    comparison.states = std::max(comparison.states, most_visited(alone));
    if (comparison.states > most_states) {
      comparison.outcome = Comparison::Outcome::too_large;
      return comparison;
    }
    const std::string wanted = all_of(model, alone);
    for (const unsigned jobs : {2U, 4U, 8U}) {
      const std::string got = all_of(model, told_by(model, way, jobs, stretch));
      if (got == wanted) continue;
      comparison.outcome = Comparison::Outcome::disagree;
      comparison.difference =
          fmt::format("jobs: {} with {} jobs tells\n{}\nand with one\n{}", way.name, jobs, got, wanted);
      return comparison;
    }
    if (&way != ways.data()) continue;
    for (const PropertyVerdict& p : alone.properties) {
      comparison.verdicts.push_back({p.asked, p.verdict == Verdict::refuted, !p.vacuous.empty(), p.settled.by});
    }
  }
  return comparison;
}

Comparison compare_jobs(const Draft& draft) {
  if (const auto model = read(draft)) return compare_jobs(*model);
  Comparison unreadable;
  unreadable.outcome = Comparison::Outcome::unreadable;
  return unreadable;
}

}  // namespace cairn::differential

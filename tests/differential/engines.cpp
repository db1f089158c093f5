#include "differential/engines.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "cairn/prove.hpp"

namespace cairn::differential {

namespace {

Report told_by(const Model& model, Engine engine) {
  ProveOptions options;
  options.engine = engine;
  options.confirm_limit = 0;
  // Of an exploration; far more than `most_states` states take.
  if (engine == Engine::explore) options.limits.megabytes = 50;
  return prove(model, options).value();
}

bool has(const Report& report, Reason reason) {
  return std::any_of(report.properties.begin(), report.properties.end(),
                     [&](const PropertyVerdict& p) { return p.verdict == Verdict::undecided && p.reason == reason; });
}

bool is_endless(const Report& explored) {
  return std::any_of(explored.properties.begin(), explored.properties.end(),
                     [](const PropertyVerdict& p) { return p.contradiction.starts_with("a run need not end"); });
}

bool is_too_large(const Report& explored) {
  return has(explored, Reason::memory) ||
         std::any_of(explored.properties.begin(), explored.properties.end(),
                     [](const PropertyVerdict& p) { return p.explored > most_states; });
}

// Where `side-leads-to: one-neighbour` lets links form between passes, the formulas say so when theirs are not enough.
bool has_too_few_passes(const Report& solved) {
  return std::any_of(solved.properties.begin(), solved.properties.end(), [](const PropertyVerdict& p) {
    return p.contradiction.starts_with("the formulas have too few settling passes");
  });
}

std::string told(const Model& model, const PropertyVerdict& p) {
  switch (p.verdict) {
    case Verdict::refuted:
      return fmt::format("refuted by {} events ({})", p.events.size(), tell(model, p.events));
    case Verdict::proved:
      return p.vacuous.empty() ? "proved" : fmt::format("proved of nothing ({})", p.vacuous);
    case Verdict::undecided:
      return fmt::format("undecided by {}: {}", name_of(p.reason), p.contradiction);
  }
  return {};
}

std::string first_difference(const Model& model, const Report& explored, const Report& solved) {
  for (std::size_t i = 0; i < explored.properties.size(); ++i) {
    const std::string by_states = told(model, explored.properties[i]);
    const std::string by_constraints = told(model, solved.properties[i]);
    if (by_states == by_constraints && explored.properties[i].verdict != Verdict::undecided) continue;
    return fmt::format("engines on {}: {} by states, {} by constraints", name_of(explored.properties[i].asked.property),
                       by_states, by_constraints);
  }
  return {};
}

}  // namespace

Comparison compare_engines(const Model& model) {
  Comparison comparison;
  const Report explored = told_by(model, Engine::explore);
  if (is_endless(explored)) {
    comparison.outcome = Comparison::Outcome::endless;
    return comparison;
  }
  if (is_too_large(explored)) {
    comparison.outcome = Comparison::Outcome::too_large;
    return comparison;
  }
  const Report solved = told_by(model, Engine::solver);
  if (has_too_few_passes(solved)) {
    comparison.outcome = Comparison::Outcome::unsettled;
    return comparison;
  }
  for (const PropertyVerdict& p : solved.properties) {
    comparison.verdicts.push_back({p.asked, p.verdict == Verdict::refuted, !p.vacuous.empty(), p.settled.by});
  }
  for (const PropertyVerdict& p : explored.properties) comparison.states = std::max(comparison.states, p.explored);
  comparison.difference = first_difference(model, explored, solved);
  if (!comparison.difference.empty()) comparison.outcome = Comparison::Outcome::disagree;
  return comparison;
}

Comparison compare_engines(const Draft& draft) {
  if (const auto model = read(draft)) return compare_engines(*model);
  Comparison unreadable;
  unreadable.outcome = Comparison::Outcome::unreadable;
  return unreadable;
}

}  // namespace cairn::differential

#include "differential/campaign.hpp"

#include <fmt/format.h>

#include "differential/copies.hpp"
#include "differential/engines.hpp"
#include "differential/jobs.hpp"
#include "differential/loners.hpp"
#include "differential/reduced_sets.hpp"
#include "differential/reductions.hpp"
#include "differential/shrink.hpp"
#include "differential/templates.hpp"

namespace cairn::differential {

namespace {

/// Seeds of neighbouring campaigns are far apart.
constexpr std::uint64_t seeds_per_campaign = 1'000'000'000;

void count(const Comparison& comparison, Tally& tally) {
  tally.compared += 1;
  tally.states += comparison.states;
  tally.sets += comparison.sets;
  tally.unclear += comparison.unclear;
  tally.swapped += comparison.swapped != 0 ? 1 : 0;
  for (const Comparison::Verdict& verdict : comparison.verdicts) {
    Tally::OfProperty& of = tally.properties[static_cast<std::size_t>(verdict.asked.property)];
    of.asked += 1;
    of.refuted += verdict.refuted ? 1 : 0;
    of.vacuous += verdict.vacuous ? 1 : 0;
    of.by_facts += verdict.settled == Settled::By::facts ? 1 : 0;
    of.by_unrolling += verdict.settled == Settled::By::unrolling ? 1 : 0;
  }
}

/// What the difference is about: a property, or the reading.
std::string subject(const Comparison& comparison) {
  return comparison.difference.substr(0, comparison.difference.find(':'));
}

Tally::Disagreement settle_disagreement(const Contest& contest, const Draft& draft, std::uint64_t seed,
                                        const std::string& found) {
  const std::string about = subject(contest.compare(draft));
  const Draft minimal = shrink(draft, [&](const Draft& d) {
    const Comparison comparison = contest.compare(d);
    return comparison.outcome == Comparison::Outcome::disagree && subject(comparison) == about;
  });
  const std::string difference = contest.compare(minimal).difference;
  return {seed, difference, keep_found(minimal, found, fmt::format("{}seed-{}", contest.name, seed), difference)};
}

}  // namespace

double Tally::OfProperty::refuted_percent() const {
  return asked == 0 ? 0 : 100.0 * static_cast<double>(refuted) / static_cast<double>(asked);
}

std::string Tally::text() const {
  std::string text = fmt::format("{} models compared, {} states; {} more were not readable, {} had too many states\n",
                                 compared, states, unreadable, too_large);
  text += fmt::format(
      "against the lemmas of the text: {} models have a run without end (5.k), {} settle in more passes "
      "(4.5.c), {} in more than the formulas have\n",
      endless, settles_slowly, unsettled);
  if (swapped > 0) text += fmt::format("{} models have devices that are alike\n", swapped);
  if (sets > 0) text += fmt::format("{} reduced sets were put to the formulas; {} stayed unclear\n", sets, unclear);
  for (std::size_t i = 0; i < properties.size(); ++i) {
    const OfProperty& of = properties[i];
    text += fmt::format("  {:<20} asked {:>6}   refuted {:>5.1f} %   vacuous {:>5}", name_of(static_cast<Property>(i)),
                        of.asked, of.refuted_percent(), of.vacuous);
    if (of.by_facts + of.by_unrolling > 0) {
      text += fmt::format("   by facts {:>5}   by unrolling {:>5}", of.by_facts, of.by_unrolling);
    }
    text += "\n";
  }
  for (const Disagreement& d : disagreements) {
    text += fmt::format("DISAGREEMENT (model seed {}): {}\n  smallest model: {}\n", d.seed, d.difference, d.kept_at);
  }
  return text;
}

Contest library_and_reference() {
  return {"", [](const Draft& draft) { return compare(draft); }};
}

Contest states_and_constraints() {
  return {"engines-", [](const Draft& draft) { return compare_engines(draft); }};
}

Contest reduced_and_whole() {
  return {"reductions-", [](const Draft& draft) { return compare_reductions(draft); }};
}

Contest one_and_several_jobs() {
  return {"jobs-", [](const Draft& draft) { return compare_jobs(draft); }};
}

Contest templates_and_instances() {
  return {"templates-", [](const Draft& draft) { return compare_instances(draft); }, generate_template};
}

Contest reduced_and_whole_of_loners() {
  return {"reductions-loners-", reduced_and_whole().compare, generate_loners};
}

Contest reduced_and_whole_of_copies() {
  return {"reductions-copies-", reduced_and_whole().compare, generate_copies};
}

Contest reduced_sets_and_formulas(bool strict) {
  return {"sets-", [strict](const Draft& draft) {
            const auto model = read(draft);
            if (model) return confirm_reduced_sets(*model, strict);
            Comparison unreadable;
            unreadable.outcome = Comparison::Outcome::unreadable;
            return unreadable;
          }};
}

Contest reduced_sets_and_formulas_of_loners(bool strict) {
  return {"sets-loners-", reduced_sets_and_formulas(strict).compare, generate_loners};
}

Tally run_campaign(const Contest& contest, std::size_t models, std::uint64_t seed, const std::string& found,
                   std::size_t enough) {
  Tally tally;
  for (std::uint64_t i = seed * seeds_per_campaign; tally.compared < models; ++i) {
    const Draft draft = contest.generate(i);
    const Comparison comparison = contest.compare(draft);
    tally.settles_slowly += comparison.settles_slowly ? 1 : 0;
    switch (comparison.outcome) {
      case Comparison::Outcome::unreadable:
        tally.unreadable += 1;
        break;
      case Comparison::Outcome::too_large:
        tally.too_large += 1;
        break;
      case Comparison::Outcome::endless:
        tally.endless += 1;
        break;
      case Comparison::Outcome::unsettled:
        tally.unsettled += 1;
        break;
      case Comparison::Outcome::disagree:
        tally.disagreements.push_back(settle_disagreement(contest, draft, i, found));
        [[fallthrough]];
      case Comparison::Outcome::agree:
        count(comparison, tally);
        break;
    }
    if (tally.disagreements.size() >= enough) break;
  }
  return tally;
}

}  // namespace cairn::differential

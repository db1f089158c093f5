// The report on one procedure for a person: verdict first, then each refutation, then what it all rests on.
#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/cost.hpp"
#include "report/findings.hpp"
#include "report/layout.hpp"
#include "report/outcomes.hpp"
#include "report/refutation.hpp"
#include "report/rests_on.hpp"
#include "report/settled.hpp"
#include "report/words.hpp"
#include "unknowns/instantiate.hpp"
#include "unknowns/words.hpp"

namespace cairn {

namespace {

using report::Page;
using report::Tone;

constexpr std::size_t verdict_width = 11;

Tone tone_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::proved:
      return Tone::good;
    case Verdict::refuted:
      return Tone::bad;
    case Verdict::undecided:
      return Tone::open;
  }
  return Tone::plain;
}

// What a proof of the property means, at a glance.
std::string meaning_of(const AskedProperty& asked) {
  switch (asked.property) {
    case Property::no_split:
      return "what is to be kept stays one stack";
    case Property::primary_stays:
      return "no primary to be kept goes down";
    case Property::members_stay:
      return "no device to be kept goes down";
    case Property::no_clash:
      return "no two members share a number";
    case Property::no_refusal:
      return "no device refuses a step";
    case Property::reaches_goal:
      return "every run ends at the goal";
    case Property::survives_cold_start:
      return "the goal holds again after a power cut";
    case Property::tolerates_loss:
      return asked.k == 1 ? "in the end any one cable may fail"
                          : fmt::format("in the end any {} cables may fail", asked.k);
  }
  return {};
}

std::string beside(const PropertyVerdict& p) {
  if (p.verdict == Verdict::refuted) return "by " + report::length_in_words(p.asked.property, p.events);
  if (p.verdict == Verdict::undecided) {
    return report::reason_in_words(p) + (p.reason == Reason::memory ? " (see --memory-limit)" : "");
  }
  if (!p.vacuous.empty()) return fmt::format("of nothing: {}", p.vacuous);
  return meaning_of(p.asked);
}

std::string heading_word(const Report& report) {
  if (report.contradicted()) return "NO ANSWER";
  switch (report.verdict()) {
    case Verdict::proved:
      return "PROVED";
    case Verdict::refuted:
      return "REFUTED";
    case Verdict::undecided:
      return "UNDECIDED";
  }
  return {};
}

void tell_verdicts(Page& page, const Model& model, const Report& report) {
  std::size_t longest = 0;
  for (const PropertyVerdict& p : report.properties) longest = std::max(longest, report::name_with_k(p.asked).size());
  const Tone tone = report.contradicted() ? Tone::bad : tone_of(report.verdict());
  page.entry(0, heading_word(report), 2 + verdict_width, model.procedure.title, tone, Tone::heading);
  page.line();
  for (const PropertyVerdict& p : report.properties) {
    const std::string label = report::padded(name_of(p.verdict), verdict_width) + report::name_with_k(p.asked);
    page.entry(2, label, verdict_width + longest + 2, beside(p), tone_of(p.verdict));
  }
}

// Those that shared an exploration have the same count.
void tell_counts(Page& page, const Report& report) {
  std::vector<std::pair<std::uint64_t, std::vector<std::string>>> counts;
  for (const PropertyVerdict& p : report.properties) {
    if (p.explored == 0) continue;
    const auto same = std::find_if(counts.begin(), counts.end(), [&](const auto& c) { return c.first == p.explored; });
    if (same == counts.end()) {
      counts.push_back({p.explored, {report::name_with_k(p.asked)}});
    } else {
      same->second.push_back(report::name_with_k(p.asked));
    }
  }
  std::vector<std::string> told;
  told.reserve(counts.size());
  for (const auto& [states, names] : counts) {
    told.push_back(counts.size() == 1 ? report::grouped(states)
                                      : fmt::format("{} for {}", report::grouped(states), report::listed(names)));
  }
  if (!told.empty()) page.entry(2, "States visited", 16, report::listed(told) + ".", Tone::faint);
}

void tell_findings(Page& page, const Model& model, const Report& report) {
  const char* label = "Findings";
  for (const std::string& sentence : report::findings_in_words(model, report)) {
    page.entry(2, label, 16, sentence, Tone::faint);
    label = "";
  }
}

void tell_contradictions(Page& page, const Report& report) {
  if (!report.contradicted()) return;
  page.line();
  page.paragraph(
      2,
      "Cairn is wrong here, or the semantics that it follows is. Nothing is claimed: do not act on the lines above. "
      "Please report it, with the three files.",
      Tone::bad);
}

/// Tells the refutations one after the other, in the order asked: those by the same events together, and no long
/// beginning twice.
class RefutationTeller {
 public:
  RefutationTeller(Page& page, const Model& model, const Report& report)
      : page_(page), model_(model), report_(report) {}

  void tell() {
    for (const PropertyVerdict& p : report_.properties) {
      const bool told = std::any_of(told_.begin(), told_.end(), [&](const Told& t) { return t.is_by(p); });
      if (p.verdict == Verdict::refuted && !told) tell_all_as(p);
    }
  }

 private:
  struct Told {
    Trace events;
    std::optional<Instance> instance;
    std::string names;
    [[nodiscard]] bool is_by(const PropertyVerdict& p) const { return events == p.events && instance == p.instance; }
  };

  // A beginning shorter than this is told again.
  static constexpr std::size_t worth_leaving_out = 5;

  void tell_all_as(const PropertyVerdict& first) {
    const Model plain = first.instance ? unknowns::instantiate(model_, *first.instance) : model_;
    Told now{first.events, first.instance, {}};
    std::vector<report::Refuted> refuted;
    std::vector<std::string> names;
    for (const PropertyVerdict& p : report_.properties) {
      if (p.verdict != Verdict::refuted || !now.is_by(p)) continue;
      auto walked = replay(plain, report_.faults, p.asked, p.events);
      if (auto* walk = std::get_if<Walk>(&walked)) refuted.push_back({p.asked, std::move(*walk)});
      names.push_back(report::name_with_k(p.asked));
    }
    if (!refuted.empty()) {
      const semantics::World world(plain);
      const std::string instance = first.instance ? unknowns::words_of(model_, *first.instance) : "";
      report::tell_refutation(page_, world, refuted, instance, told_before(first), told_.empty());
    }
    now.names = report::listed(names);
    told_.push_back(std::move(now));
  }

  [[nodiscard]] report::ToldBefore told_before(const PropertyVerdict& p) const {
    const Trace& events = p.events;
    report::ToldBefore longest;
    for (const Told& told : told_) {
      if (told.instance != p.instance) continue;
      const auto end = std::mismatch(events.begin(), events.end(), told.events.begin(), told.events.end()).first;
      const auto common = static_cast<std::size_t>(end - events.begin());
      if (common >= worth_leaving_out && common > longest.events) longest = {common, told.names};
    }
    return longest;
  }

  Page& page_;
  const Model& model_;
  const Report& report_;
  std::vector<Told> told_;
};

}  // namespace

std::string render_text(const Model& model, const Report& report, const TextStyle& style) {
  Page page(style);
  tell_verdicts(page, model, report);
  tell_contradictions(page, report);
  if (style.brief) {
    if (style.timing) report::tell_cost(page, report);
    return page.take();
  }
  report::tell_settled(page, report);
  tell_counts(page, report);
  if (!report.contradicted()) tell_findings(page, model, report);
  if (!report.contradicted()) RefutationTeller(page, model, report).tell();
  report::tell_rests_on(page, model, report);
  if (style.timing) report::tell_cost(page, report);
  return page.take();
}

std::string render_summary_line(const std::string& path, const Model& model, const Report& report,
                                const TextStyle& style) {
  Page page(style);
  std::vector<std::string> names;
  const Verdict whole = report.verdict();
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict == whole && whole != Verdict::proved) names.push_back(report::name_with_k(p.asked));
  }
  std::string word = heading_word(report);
  std::transform(word.begin(), word.end(), word.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  const Tone tone = report.contradicted() ? Tone::bad : tone_of(whole);
  const std::string which = names.empty() || report.contradicted() ? model.procedure.title : report::listed(names);
  page.line(page.painted(report::padded(word, verdict_width), tone) +
            report::in_one_line(fmt::format("{}: {}", path, which)));
  return page.take();
}

}  // namespace cairn

// Why the verdicts are what they are, for a person: what each step is for, and which rules decided.
#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/findings.hpp"
#include "report/layout.hpp"
#include "report/narrate.hpp"
#include "report/outcomes.hpp"
#include "report/parts.hpp"
#include "report/refutation.hpp"
#include "report/repairs.hpp"
#include "report/rests_on.hpp"
#include "report/settled.hpp"
#include "report/words.hpp"

namespace cairn {

namespace {

using report::name_in;
using report::names_in;
using report::Page;
using report::Tone;

// What is undecided for another reason is told one by one.
bool met_a_limit(const PropertyVerdict& p) {
  return p.verdict == Verdict::undecided && p.reason != Reason::contradiction;
}

/// Tells what proved properties owe to each part.
class PartsTeller {
 public:
  PartsTeller(Page& page, const Model& model, const Why& why) : page_(page), model_(model), why_(why) {
    for (const PropertyWhy& p : why.properties) {
      if (p.verdict == Verdict::proved) proved_.push_back(&p);
    }
  }

  void tell() {
    if (proved_.empty() || proved_.front()->parts.empty()) return;
    page_.heading(proved_.size() == why_.properties.size() ? "What the proofs need"
                                                           : "What the proofs that stand need");
    page_.line();
    for (std::size_t i = 0; i < proved_.front()->parts.size(); ++i) tell_part(i);
    if (last_step_) page_.line();
    tell_idle();
    tell_one_of();
    tell_unknown();
  }

 private:
  [[nodiscard]] const Part& part(std::size_t i) const { return proved_.front()->parts[i].parts.front(); }

  // The verdicts on the model without this part that are of this standing.
  [[nodiscard]] std::vector<PropertyVerdict> outcomes(std::size_t i, Standing standing) const {
    std::vector<PropertyVerdict> all;
    for (const PropertyWhy* p : proved_) {
      if (p->parts[i].standing == standing) all.push_back(p->parts[i].outcome);
    }
    return all;
  }

  void tell_part(std::size_t i) {
    if (outcomes(i, Standing::idle).size() == proved_.size()) return idle_.push_back(part(i));
    const auto unknown = outcomes(i, Standing::unknown);
    if (unknown.size() == proved_.size() && std::all_of(unknown.begin(), unknown.end(), met_a_limit)) {
      reason_ = report::reason_in_words(unknown.front());
      return unknown_.push_back(part(i));
    }
    std::vector<PropertyVerdict> otherwise;
    for (const Standing standing : {Standing::needed, Standing::vacuous, Standing::unknown}) {
      const auto all = outcomes(i, standing);
      otherwise.insert(otherwise.end(), all.begin(), all.end());
    }
    auto said = report::outcomes_in_words(without(model_, {part(i)}), why_.report.faults, otherwise);
    if (const auto used = outcomes(i, Standing::used); !used.empty()) said.push_back(used_by(used));
    tell_step(part(i).step);
    std::string label =
        part(i).before ? fmt::format("before {}", model_[part(i).before].id) : std::string("without it");
    for (const std::string& text : said) {
      page_.entry(6, label, 12, text, Tone::heading);
      label.clear();
    }
  }

  // Once a step, above what is said of it or of its orderings.
  void tell_step(StepId id) {
    if (last_step_ == id) return;
    const Step& step = model_[id];
    page_.entry(2, step.id, std::max<std::size_t>(4, step.id.size() + 2), report::what_to_do(model_, step));
    last_step_ = id;
  }

  static std::string used_by(const std::vector<PropertyVerdict>& used) {
    std::vector<std::string> names;
    names.reserve(used.size());
    for (const PropertyVerdict& p : used) names.push_back(report::name_with_k(p.asked));
    return fmt::format("{} still {}, by another proof.", report::listed(names), names.size() == 1 ? "holds" : "hold");
  }

  // The steps first, then the orderings.
  void tell_idle() {
    if (idle_.empty()) return;
    std::stable_partition(idle_.begin(), idle_.end(), [](const Part& p) { return p.kind != Part::Kind::ordering; });
    page_.entry(2, "Idle", 12, fmt::format("{}.", fmt::join(names_in(model_, idle_), ", ")), Tone::heading);
    page_.entry(2, "", 12, "Each may be left out by itself, and every proof above stands.", Tone::plain, Tone::faint);
  }

  // Each set of awaits once, with all the properties that need one of it.
  void tell_one_of() {
    std::vector<std::pair<std::vector<Part>, std::vector<PropertyVerdict>>> sets;
    for (const PropertyWhy* p : proved_) {
      for (const LeftOut& set : p->one_of) {
        const auto same = std::find_if(sets.begin(), sets.end(), [&](const auto& s) { return s.first == set.parts; });
        if (same == sets.end()) {
          sets.push_back({set.parts, {set.outcome}});
        } else {
          same->second.push_back(set.outcome);
        }
      }
    }
    const char* label = "One of";
    for (const auto& [parts, outcomes] : sets) {
      const auto said = report::outcomes_in_words(without(model_, parts), why_.report.faults, outcomes);
      page_.entry(2, label, 12,
                  fmt::format("{} has to stay. Without {}: {}", report::listed(names_in(model_, parts), "or"),
                              parts.size() == 2 ? "both" : "all of them", fmt::join(said, " ")),
                  Tone::heading);
      label = "";
    }
  }

  void tell_unknown() {
    if (unknown_.empty()) return;
    page_.entry(2, "Unknown", 12, fmt::format("{}: {}.", fmt::join(names_in(model_, unknown_), ", "), reason_),
                Tone::heading);
  }

  Page& page_;
  const Model& model_;
  const Why& why_;
  std::vector<const PropertyWhy*> proved_;
  std::vector<Part> idle_;     ///< for every property
  std::vector<Part> unknown_;  ///< for every property
  std::string reason_;         ///< why the last of them is
  StepId last_step_;           ///< that was told
};

void tell_rules(Page& page, const Model& model, const Why& why) {
  if (why.rules.empty()) return;
  page.heading("Which rules of the platform decided");
  page.line();
  std::vector<std::string> without_effect;
  std::vector<std::string> unknown;
  for (const OtherRule& other : why.rules) {
    const std::string name = fmt::format("{}: {}", other.rule, other.value);
    if (std::all_of(other.turned.begin(), other.turned.end(), met_a_limit)) {
      (other.turned.empty() ? without_effect : unknown).push_back(name);
      continue;
    }
    Model variant = model;
    variant.platform = other.platform;
    page.paragraph(2, "With " + name, Tone::heading);
    for (const std::string& text : report::outcomes_in_words(variant, why.report.faults, other.turned)) {
      page.paragraph(6, text);
    }
  }
  const auto list = [&](std::string_view heading, const std::vector<std::string>& names) {
    if (names.empty()) return;
    page.paragraph(2, heading, Tone::heading);
    page.paragraph(6, fmt::format("{}.", fmt::join(names, "; ")));
  };
  list("No verdict would be another with", without_effect);
  list("A limit was met before it was known for", unknown);
}

void tell_rest(Page& page, const Model& model, const Report& report) {
  page.heading("Mind also");
  page.line();
  const char* label = "Findings";
  for (const std::string& sentence : report::findings_in_words(model, report)) {
    page.entry(2, label, 15, sentence);
    label = "";
  }
  report::tell_ties(page, model, report);
  report::tell_caution(page);
}

}  // namespace

std::string render_why_text(const Model& model, const Why& why, const TextStyle& style) {
  std::string verdicts = render_text(model, why.report, {style.colour, false, true});
  if (why.report.contradicted()) return verdicts;
  Page page(style);
  report::tell_settled(page, why.report);
  report::tell_repairs(page, model, why);
  PartsTeller(page, model, why).tell();
  report::tell_facts(page, model, why);
  tell_rules(page, model, why);
  tell_rest(page, model, why.report);
  return verdicts + "\n" + page.take();
}

}  // namespace cairn

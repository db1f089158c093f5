// Why the verdicts are what they are, for a person: what each step is for, and which rules decided.
#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/findings.hpp"
#include "report/layout.hpp"
#include "report/narrate.hpp"
#include "report/outcomes.hpp"
#include "report/refutation.hpp"
#include "report/repairs.hpp"
#include "report/rests_on.hpp"
#include "report/words.hpp"

namespace cairn {

namespace {

using report::Page;
using report::Tone;

std::string name_in(const Model& model, const Part& part) {
  if (part.kind != Part::Kind::ordering) return model[part.step].id;
  return fmt::format("{} before {}", model[part.before].id, model[part.step].id);
}

std::vector<std::string> names_in(const Model& model, const std::vector<Part>& parts) {
  std::vector<std::string> names;
  names.reserve(parts.size());
  for (const Part& part : parts) names.push_back(name_in(model, part));
  return names;
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
    tell_idle();
    tell_one_of();
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
    const bool step = part(i).kind != Part::Kind::ordering;
    if (step) told_step_ = false;
    std::vector<PropertyVerdict> otherwise;
    for (const Standing standing : {Standing::needed, Standing::vacuous, Standing::unknown}) {
      const auto all = outcomes(i, standing);
      otherwise.insert(otherwise.end(), all.begin(), all.end());
    }
    auto said = report::outcomes_in_words(without(model_, {part(i)}), why_.report.faults, otherwise);
    if (const auto used = outcomes(i, Standing::used); !used.empty()) said.push_back(used_by(used));
    if (said.empty()) {
      if (outcomes(i, Standing::idle).size() == proved_.size()) idle_.push_back(part(i));
      return;
    }
    tell_step(part(i).step);
    std::string label = step ? "without it" : fmt::format("before {}", model_[part(i).before].id);
    for (const std::string& text : said) {
      page_.entry(6, label, 12, text, Tone::heading);
      label.clear();
    }
  }

  // Once a step, above what is said of it or of its orderings.
  void tell_step(StepId id) {
    if (told_step_ && last_step_ == id) return;
    const Step& step = model_[id];
    page_.entry(2, step.id, std::max<std::size_t>(4, step.id.size() + 2), report::what_to_do(model_, step));
    last_step_ = id;
    told_step_ = true;
  }

  static std::string used_by(const std::vector<PropertyVerdict>& used) {
    std::vector<std::string> names;
    names.reserve(used.size());
    for (const PropertyVerdict& p : used) names.push_back(report::name_with_k(p.asked));
    return fmt::format("{} would need another proof.", report::listed(names));
  }

  // The steps first, then the orderings.
  void tell_idle() {
    if (idle_.empty()) return;
    if (last_step_) page_.line();
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

  Page& page_;
  const Model& model_;
  const Why& why_;
  std::vector<const PropertyWhy*> proved_;
  std::vector<Part> idle_;  ///< of every property
  StepId last_step_;
  bool told_step_ = false;
};

void tell_rules(Page& page, const Model& model, const Why& why) {
  if (why.rules.empty()) return;
  page.heading("Which rules of the platform decided");
  page.line();
  std::vector<std::string> without_effect;
  for (const OtherRule& other : why.rules) {
    const std::string name = fmt::format("{}: {}", other.rule, other.value);
    if (other.turned.empty()) {
      without_effect.push_back(name);
      continue;
    }
    Model variant = model;
    variant.platform = other.platform;
    page.paragraph(2, "With " + name, Tone::heading);
    for (const std::string& text : report::outcomes_in_words(variant, why.report.faults, other.turned)) {
      page.paragraph(6, text);
    }
  }
  if (without_effect.empty()) return;
  page.paragraph(2, "No verdict would be another with", Tone::heading);
  page.paragraph(6, fmt::format("{}.", fmt::join(without_effect, "; ")));
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
  report::tell_repairs(page, model, why);
  PartsTeller(page, model, why).tell();
  tell_rules(page, model, why);
  tell_rest(page, model, why.report);
  return verdicts + "\n" + page.take();
}

}  // namespace cairn
